/** How long and how heavy the old units are. Exact where the law makes them exact. */

/** Grams in a grain, troy and avoirdupois alike. International yard and pound agreement of 1959. */
export const GRAIN = 0.06479891;

/** Grams in a pennyweight of 24 grains. */
export const PENNYWEIGHT = 24 * GRAIN;

/** Grams in a troy ounce of 480 grains: 31.1034768. */
export const TROY_OUNCE = 480 * GRAIN;

/** Grams in an avoirdupois ounce of 437.5 grains: 28.349523125. */
export const AVOIRDUPOIS_OUNCE = 437.5 * GRAIN;

/** Millimetres in an inch. International yard and pound agreement of 1959. */
export const INCH = 25.4;

/** Millimetres in an English line, the twelfth of an inch. */
export const LINE = INCH / 12;

/** Millimetres in a Paris line: the law of 19 Frimaire VIII (10 December 1799) made the metre 443.296 lines. */
export const PARIS_LINE = 1000 / 443.296;

/** A low and a high end, both included. */
export type Interval = { readonly low: number; readonly high: number };

export type WeightUnit =
  | 'g' | 'mg' | 'kg' | 'gr' | 'dwt' | 'oz t' | 'oz av' | 'lb t' | 'lb av' | 'lb tower' | 'scruple' | 'drachm ap' | 'dram av'
  | 'mark cologne' | 'mark paris' | 'mark vienna' | 'mark castile' | 'tola' | 'zolotnik' | 'dolya' | 'momme' | 'tael kuping'; // prettier-ignore

type UnitRow = { readonly perUnit: number; readonly sign: string; readonly names: readonly string[] };

/** Every word with every standard, before it and behind it: `troy oz`, `oz troy`. */
function named(words: string, standards: string): readonly string[] {
  return words.split(', ').flatMap((word) => standards.split(', ').flatMap((of) => [`${word} ${of}`, `${of} ${word}`]));
}

const listed = (words: string): readonly string[] => words.split(', ');

const OUNCES = 'oz, ounce, ounces, ozs';
const POUNDS = 'lb, lbs, pound, pounds';
const DRACHMS = 'drachm, drachms, dram, drams';
const MARKS = 'mark, marks, marc, marcs, marco, marcos';
const TROY = 'troy, t, tr';
const AVOIRDUPOIS = 'av, avdp, avoir, avoirdupois';

/** The law of 19 Frimaire VIII made the kilogram 18827.15 grains of the pile of Charlemagne, of which a marc has 4608. */
const MARC_OF_PARIS = (1000 * 4608) / 18827.15;
/** The Russian pound of 1899: 409.51241 g, of 96 zolotniks of 96 dolyas (law of 4 June 1899). */
const RUSSIAN_POUND = 409.51241;

/**
 * Grams in each unit, the sign it is printed with, and the ways people write it. From memory, but for the British ones: the
 * mark of Cologne as the coinage treaties of Munich (1837) and Dresden (1838) have it, those of Vienna and Castile as
 * handbooks of metrology give them, the tola of Regulation VII of 1833 (180 grains), the momme of the Japanese law of 1891,
 * the Kuping tael of the Chinese rules of 1908. A coin is rarely weighed in them, a standard often stated.
 */
export const WEIGHT_UNITS: Readonly<Record<WeightUnit, UnitRow>> = {
  'g': { perUnit: 1, sign: 'g', names: listed('g, gm, gms, gram, grams, gramme, grammes, gramm, grammi, gramos, г, грамм') },
  'mg': { perUnit: 0.001, sign: 'mg', names: listed('mg, milligram, milligrams') },
  'kg': { perUnit: 1000, sign: 'kg', names: listed('kg, kgs, kilo, kilogram, kilograms') },
  'gr': { perUnit: GRAIN, sign: 'grains', names: listed('gr, grs, gn, gns, grain, grains, troy grain, troy grains') },
  'dwt': { perUnit: PENNYWEIGHT, sign: 'dwt', names: listed('dwt, dwts, pennyweight, pennyweights') },
  'oz t': { perUnit: TROY_OUNCE, sign: 'oz t', names: [...named(OUNCES, TROY), 'ozt', ...named(OUNCES, 'apothecaries')] },
  'oz av': { perUnit: AVOIRDUPOIS_OUNCE, sign: 'oz av', names: named(OUNCES, AVOIRDUPOIS) },
  'lb t': { perUnit: 12 * TROY_OUNCE, sign: 'lb t', names: named(POUNDS, TROY) },
  'lb av': { perUnit: 16 * AVOIRDUPOIS_OUNCE, sign: 'lb av', names: named(POUNDS, AVOIRDUPOIS) },
  'lb tower': { perUnit: 5400 * GRAIN, sign: 'lb Tower', names: named(POUNDS, 'tower') },
  'scruple': { perUnit: 20 * GRAIN, sign: 'scruple', names: listed('scruple, scruples') },
  'drachm ap': { perUnit: 60 * GRAIN, sign: 'drachm ap', names: named(DRACHMS, 'ap, apoth, apothecaries') },
  'dram av': { perUnit: AVOIRDUPOIS_OUNCE / 16, sign: 'dram av', names: named(DRACHMS, AVOIRDUPOIS) },
  'mark cologne': { perUnit: 233.855, sign: 'Cologne mark', names: named(MARKS, 'cologne, of cologne, köln, kölner, kölnische, kölnisch') },
  'mark paris': { perUnit: MARC_OF_PARIS, sign: 'Paris marc', names: named(MARKS, 'paris, of paris, de paris') },
  'mark vienna': { perUnit: 280.668, sign: 'Vienna mark', names: named(MARKS, 'vienna, of vienna, wien, wiener') },
  'mark castile': { perUnit: 230.0465, sign: 'Castilian mark', names: named(MARKS, 'castile, of castile, de castilla, castilian') },
  'tola': { perUnit: 180 * GRAIN, sign: 'tola', names: listed('tola, tolas') },
  'zolotnik': { perUnit: RUSSIAN_POUND / 96, sign: 'zolotnik', names: listed('zolotnik, zolotniks, zolotniki, russian zolotnik, золотник, золотника, золотников') },
  'dolya': { perUnit: RUSSIAN_POUND / 9216, sign: 'dolya', names: listed('dolya, dolyas, doli, доля, доли, долей') },
  'momme': { perUnit: 3.75, sign: 'momme', names: listed('momme, monme') },
  'tael kuping': { perUnit: 37.301, sign: 'Kuping tael', names: named('tael, taels, liang', 'kuping, k\'u-p\'ing, treasury') },
}; // prettier-ignore

const UNITS = Object.keys(WEIGHT_UNITS) as readonly WeightUnit[];
const BY_NAME: ReadonlyMap<string, WeightUnit> = new Map(
  UNITS.flatMap((unit) => WEIGHT_UNITS[unit].names.map((name) => [name, unit] as const)),
);

/** A word that names a unit and not which of several: the word in the sentence, and the units it may be. */
export type OpenUnit = { readonly called: string; readonly means: readonly WeightUnit[] };

const OUNCE: OpenUnit = { called: 'ounce', means: ['oz t', 'oz av'] };
const POUND: OpenUnit = { called: 'pound', means: ['lb t', 'lb av', 'lb tower'] };
const OPEN: ReadonlyMap<string, OpenUnit> = new Map(
  [
    { words: OUNCES, open: OUNCE },
    { words: POUNDS, open: POUND },
    { words: DRACHMS, open: { called: 'drachm', means: ['drachm ap', 'dram av'] as const } },
    {
      words: MARKS,
      open: { called: 'mark', means: ['mark cologne', 'mark paris', 'mark vienna', 'mark castile'] as const },
    },
    { words: 'tael, taels, liang', open: { called: 'tael', means: ['tael kuping'] as const } },
  ].flatMap(({ words, open }) => listed(words).map((word) => [word, open] as const)),
);

/** Standards of antiquity, which no law fixed: the drachm of Athens is put at 4.25 to 4.37 g. */
const ANCIENT =
  /\b(?:attic|aeginetan|aiginetan|corinthian|euboean|euboic|persic|rhodian|chian|phoenician|milesian|roman|babylonian)\b/;

/** `gr` and `grs`: grains in Britain and America, grams to many on the Continent. */
export function isGr(text: string): boolean {
  return /^grs?\.?$/i.test(text.trim());
}

/** Only troy weight is counted in pennyweights, so an ounce or a pound beside them is no guess. */
export function besidePennyweights(
  unit: WeightUnit | OpenUnit | 'ancient' | null,
): WeightUnit | OpenUnit | 'ancient' | null {
  return unit === OUNCE ? 'oz t' : unit === POUND ? 'lb t' : unit;
}

/** The unit meant; an open one when a pound or a mark is named and not which; null when it is none we know. */
export function readWeightUnit(text: string): WeightUnit | OpenUnit | 'ancient' | null {
  const name = text
    .toLowerCase()
    .replace(/[.’']/g, (mark) => (mark === '.' ? ' ' : ''))
    .replace(/ +/g, ' ')
    .trim();
  if (ANCIENT.test(name)) return 'ancient';
  return OPEN.get(name) ?? BY_NAME.get(name) ?? null;
}

/** The unit meant, when it is one. */
export function oneUnit(unit: WeightUnit | OpenUnit | 'ancient' | null): WeightUnit | null {
  return typeof unit === 'string' && unit !== 'ancient' ? unit : null;
}
