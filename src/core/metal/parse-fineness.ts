import { AMOUNT, quoted, readAmount, tidy, writeAmount } from '../measures/amount.ts';
import type { Interval } from '../measures/units.ts';
import { good, refuse } from '../outcome.ts';
import type { Outcome } from '../outcome.ts';

/** How fine a metal is: parts of the precious metal in one part of the alloy, from nothing to 1. */
export type Fineness = Interval & {
  readonly text: string;
  /** It is one end or the other and nothing between: `.500 or .800`. */
  readonly isEither?: true;
};

/** A way to count fineness: so many parts make it wholly fine, and each part holds so many smaller ones. */
export type FinenessScale = {
  readonly parts: number;
  readonly perPart: number;
  readonly names: readonly string[];
  readonly smaller: readonly string[];
  readonly called: string;
  /** What a single part is called in a refusal, and the sign to write. */
  readonly write: string;
  readonly source: string;
};

const MEMORY = 'standard metrological handbooks; from memory';

/** The ways of counting that the books use. A smaller part is named only where the scale has one. */
export const FINENESS_SCALES: readonly FinenessScale[] = [
  {
    parts: 24,
    perPart: 4,
    called: 'carats',
    write: 'ct',
    source: 'common practice',
    names: ['ct', 'cts', 'carat', 'carats', 'karat', 'karats', 'kt', 'k', 'c'],
    smaller: ['gr', 'grs', 'grain', 'grains', 'carat grain', 'carat grains'],
  },
  {
    parts: 24,
    perPart: 12,
    called: 'Karat',
    write: 'Karat',
    source: MEMORY,
    names: ['karat', 'kar'],
    smaller: ['grän', 'graen', 'grn'],
  },
  {
    parts: 12,
    perPart: 20,
    called: 'ounces in the pound',
    write: 'oz',
    source: 'common practice',
    names: ['oz', 'ozs', 'ounce', 'ounces'],
    smaller: ['dwt', 'dwts', 'pennyweight', 'pennyweights'],
  },
  {
    parts: 16,
    perPart: 18,
    called: 'loth',
    write: 'loth',
    source: 'common practice for the loth; the Grän from memory',
    names: ['loth', 'lot', 'lötig', 'loetig', 'löthig'],
    smaller: ['grän', 'graen', 'grn'],
  },
  {
    parts: 96,
    perPart: 96,
    called: 'zolotniks',
    write: 'zolotnik',
    source: 'common practice',
    names: ['zolotnik', 'zolotniks', 'zol', 'золотник', 'золотника', 'золотников'],
    smaller: ['dolya', 'doli', 'dolyas'],
  },
  {
    parts: 12,
    perPart: 24,
    called: 'deniers',
    write: 'deniers',
    source: MEMORY,
    names: ['denier', 'deniers', 'dinero', 'dineros'],
    smaller: ['grain', 'grains', 'grano', 'granos', 'gr'],
  },
  {
    parts: 24,
    perPart: 4,
    called: 'quilates',
    write: 'quilates',
    source: MEMORY,
    names: ['quilate', 'quilates'],
    smaller: ['grano', 'granos'],
  },
];

/** Standards that have a name of their own. */
export const NAMED_FINENESS: readonly { readonly name: string; readonly fineness: number; readonly source: string }[] =
  [
    { name: 'sterling', fineness: 222 / 240, source: '11 oz 2 dwt in the pound; common practice' },
    {
      name: 'britannia silver',
      fineness: 230 / 240,
      source: '11 oz 10 dwt in the pound; Act of 1696 (8 & 9 Will. III c. 8)',
    },
    { name: 'crown gold', fineness: 22 / 24, source: '22 carats; common practice' },
    { name: 'angel gold', fineness: 191 / 192, source: '23 carats 3½ grains; common practice' },
    {
      name: 'ducat gold',
      fineness: 71 / 72,
      source: '67 ducats of 71/72 from the Cologne mark, imperial ordinance of 1559; from memory',
    },
  ];

/** Denominators a fineness is written over; other figures under a thousand could be the end of a range. */
export const FINENESS_DENOMINATORS: ReadonlySet<number> = new Set([
  2, 3, 4, 5, 6, 8, 10, 12, 16, 20, 24, 32, 40, 48, 72, 96, 100, 144, 192, 240, 288, 384, 1000, 10000,
]);

const PARTS = new RegExp(`^(${AMOUNT}) ?([^\\d½¼¾]+?)(?:[ ,]+(${AMOUNT}) ?([^\\d½¼¾]+))?$`, 'i');

/** Reads the old counts, `23 ct 3½ gr`, `11 oz 2 dwt`, `13 loth 6 Grän`; null when it is none of them. */
export function readOldFineness(words: string): Outcome<number> | null {
  const [, number = '', name = '', smallNumber, smallName = ''] = PARTS.exec(words) ?? [];
  const whole = readAmount(number);
  if (whole === null || whole === 'two ways') return null;
  const scale = FINENESS_SCALES.find(
    ({ names, smaller }) =>
      names.includes(bare(name)) && (smallNumber === undefined || smaller.includes(bare(smallName))),
  );
  if (scale === undefined) return null;
  const small = smallNumber === undefined ? { value: 0 } : readAmount(smallNumber);
  if (small === null || small === 'two ways') return null;
  return count(scale, whole.value, small.value, words);
}

function count(scale: FinenessScale, whole: number, small: number, words: string): Outcome<number> {
  const { parts, perPart, called, write } = scale;
  if (small >= perPart) {
    const instead = `${whole + Math.floor(small / perPart)} ${write}`;
    return refuse(
      `${quoted(words)} has ${perPart} or more of the smaller part, which make a whole one. Write ${instead}.`,
    );
  }
  if (whole + small / perPart > parts) {
    return refuse(
      `${quoted(words)} is finer than fine: there are ${parts} ${called}. Write at most ${writeAmount(parts)} ${write}.`,
    );
  }
  return good((whole * perPart + small) / (parts * perPart));
}

function bare(name: string): string {
  return name.toLowerCase().replace(/\./g, '').trim();
}

const ASK = 'Write it like 925/1000, 0.925, 92.5 %, 22 ct or 11 oz 2 dwt.';
const RANGE = /^(.+?) ?(?<joint>-| to | or ) ?(.+)$/i;
/** `22/23 ct`: two numbers of parts, or a share of one part. */
const PAIR_OF_PARTS = /^(?<low>\d{1,2})\/(?<high>\d{1,2}) ?(?<name>[^\d/ ]+)$/;
const SLASH = /^(\d{1,5}(?:[.,]\d{1,3})?|\d*[.,]\d+) ?\/ ?(\d{1,5}|\d*[.,]\d+)$/;
const PERCENT = new RegExp(`^(${AMOUNT}) ?(?:%|per ?cent|pct)$`, 'i');
const MILLESIMAL = /^(\d{3}(?:[.,]\d{1,4})?|1000)(?: ?(?:‰|thousandths?|tausendteilen?|mill[eè]mes?|fine))?$/i;
const DECIMAL = /^(0?[.,]\d{1,21}|1[.,]0{1,9})$/;
/** The metal has a field of its own; `925/1000 fine` says no more than `925/1000`. */
const METAL_BEFORE = /^(?:silver|gold|silber|argent|ag|au|ar|av),? (?=[\d.])/i;
const FINE_AFTER = /(?<=\d) (?:fine|fein|fin)$/i;
/** `15-lötig`, `22-carat`: no range. */
const HYPHEN = /(?<=\d)-(?=l(?:ö|oe)th?ig|[ck]arat)/i;
/** A law may count in odd parts, 1485/1664; a share this small of so many is a slip of the pen. */
/** `925er Silber`, `Feingehalt 750/1000`, `titre 900`: words around a figure that say no more than that it is a fineness. */
const FINENESS_BEFORE = /^(?:feingehalt|feinheit|titre|titolo|ley|fineness|gehalte)[: ]+(?=[\d.,])/i;
const GERMAN_AFTER = /^(\d{3}(?:[.,]\d)?)er(?:[ -]?(?:silber|gold))?$/i;
/** `XI ounces`, `XI oz. II dwt.`, as indentures write them. */
const ROMAN_OUNCES = /\b([ivx]{1,4})(?=\.? ?(?:oz|ounces?|dwts?|pennyweights?|car(?:at|rat)s?)\b)/gi;
const LEAST_ODD = 0.05;
/** A part of a carat is written as half, quarters or eighths of one, under a whole number. */
const MOST_OF_A_PART = 4;
const LONGEST = 60;

/** Reads `925/1000`, `.925`, `92.5 %`, `22 ct`, `23 ct 3½ gr`, `11 oz 2 dwt`, `15 loth`, `0.90/0.92`, `sterling`. */
export function parseFineness(text: string): Outcome<Fineness> {
  const words = tidy(text)
    .replace(FINENESS_BEFORE, '')
    .replace(METAL_BEFORE, '')
    .replace(GERMAN_AFTER, '$1')
    .replace(ROMAN_OUNCES, (_, roman: string) => String(romanValue(roman)))
    .replace(FINE_AFTER, '')
    .replace(HYPHEN, ' ');
  if (words === '' || words.length > LONGEST) return refuse(`${quoted(text)} is not a fineness. ${ASK}`);
  const ends = readSlash(words) ?? readRange(words) ?? readOne(words);
  if (!ends.ok) return ends;
  if (ends.value.high > 1) return refuse(`Nothing is finer than fine; ${quoted(text)} is more than 1000/1000. ${ASK}`);
  if (!(ends.value.low > 0))
    return refuse(`${quoted(text)} leaves no fine metal. Leave the fineness out when it is not known.`);
  return good({ ...ends.value, text: text.trim() });
}

/** A numeral up to the thirties. */
function romanValue(roman: string): number {
  const values = Array.from(roman.toLowerCase(), (letter) => ({ i: 1, v: 5, x: 10 })[letter] ?? 0);
  return values.reduce((sum, value, at) => sum + (value < (values[at + 1] ?? 0) ? -value : value), 0);
}

/** In parts, to be read back: `925/1000`, `11/12`, `0.9–0.94`, `11/12–23/24`, `500/1000 or 800/1000`. */
export function formatFineness({ low, high, isEither }: Interval & { readonly isEither?: true }): string {
  if (low === high) return writeOne(low);
  return isEither === true ? `${writeOne(low)} or ${writeOne(high)}` : `${writeEnd(low)}–${writeEnd(high)}`;
}

/** An end of a range: decimal where that is short, and else in the parts it was counted in. */
function writeEnd(value: number): string {
  return value < 1 && String(value).length <= 6 ? String(value) : writeOne(value);
}

function writeOne(value: number): string {
  for (const below of [1000, 12, 16, 24, 96, 72, 192, 240, 288, 384]) {
    const above = Math.round(value * below * (below === 1000 ? 10 : 1)) / (below === 1000 ? 10 : 1);
    if (above > 0 && above / below === value) return `${writeAmount(above)}/${below}`;
  }
  return String(value);
}

function readSlash(words: string): Outcome<Interval> | null {
  const [, first, second = ''] = SLASH.exec(words) ?? [];
  if (first === undefined) return null;
  const [a, b] = [Number(first.replace(',', '.')), Number(second.replace(',', '.'))];
  // 0.900/1000 is nine tenths written twice, or next to nothing.
  if (a < 1 && b >= 100)
    return refuse(
      `${quoted(words)} mixes two ways of writing. Write ${writeAmount(a * 1000)}/1000, or ${writeAmount(a)}.`,
    );
  if (a <= 1 && b <= 1 && /[.,]/.test(words)) return ordered(a, b, words);
  if (FINENESS_DENOMINATORS.has(b) || (b > 1000 && a / b > LEAST_ODD)) return good({ low: a / b, high: a / b });
  if (a >= 100 && a < b && b < 1000) {
    return refuse(`${quoted(words)} may be a range or a fraction. Write ${a / 1000}/${b / 1000} for the range.`);
  }
  return refuse(`${quoted(words)} is not a fineness. ${ASK}`);
}

type Ends = Interval & { readonly isEither?: true };

function readRange(words: string): Outcome<Ends> | null {
  const { low: few, high: many, name = '' } = PAIR_OF_PARTS.exec(words)?.groups ?? {};
  if (few !== undefined && many !== undefined && Number(few) > MOST_OF_A_PART)
    return refuse(`${quoted(words)} may be a range or a fraction. Write ${few}-${many} ${name} for the range.`);
  const [, first, joint = '', second = ''] = RANGE.exec(words) ?? [];
  if (first === undefined) return null;
  const high = readSlash(second) ?? readOne(second);
  if (!high.ok) return high;
  // In `900-925/1000` and `20-22 ct` the first number borrows what stands after the second.
  const borrowed = /^[\d.,½¼¾ /]+$/.test(first) ? `${first}${second.replace(/^[\d.,½¼¾]+/, '')}` : first;
  const alone = readSlash(first) ?? readOne(first);
  const low = alone.ok ? alone : (readSlash(borrowed) ?? readOne(borrowed));
  if (!low.ok) return low;
  if (joint.trim().toLowerCase() !== 'or') return ordered(low.value.low, high.value.high, words);
  const [one, other] = [low.value.low, high.value.high];
  return good({ low: Math.min(one, other), high: Math.max(one, other), ...(one === other ? {} : { isEither: true }) });
}

function ordered(low: number, high: number, words: string): Outcome<Interval> {
  if (low <= high) return good({ low, high });
  return refuse(`${quoted(words)} runs from fine to base. Write ${writeAmount(high, 4)}/${writeAmount(low, 4)}.`);
}

function readOne(words: string): Outcome<Interval> {
  const exactly = (value: number) => good<Interval>({ low: value, high: value });
  const plain = words.toLowerCase().replace(/ (?:fine|silver|gold)$/, '');
  const named = NAMED_FINENESS.find(({ name }) => name === words.toLowerCase() || name === plain);
  if (named !== undefined) return exactly(named.fineness);
  const decimal = DECIMAL.exec(plain)?.[1];
  if (decimal !== undefined) return exactly(Number(decimal.replace(',', '.')));
  const percent = PERCENT.exec(plain)?.[1];
  if (percent !== undefined) {
    const amount = readAmount(percent.replace(',', '.'));
    if (amount !== null && amount !== 'two ways') return exactly(Number((amount.value / 100).toFixed(12)));
  }
  // `916 2/3`, `916⅔`: thousandths with a fraction.
  const mixed = /^\d{3} ?(?:\d\/\d|[⅓⅔½¼¾])(?: ?(?:‰|fine))?$/.test(plain)
    ? readAmount(plain.replace(/ ?(?:‰|fine)$/, ''))
    : null;
  if (mixed !== null && mixed !== 'two ways') return exactly(mixed.value / 1000);
  const millesimal = MILLESIMAL.exec(plain)?.[1];
  if (millesimal !== undefined) return exactly(Number(millesimal.replace(',', '.')) / 1000);
  const old = readOldFineness(plain);
  if (old !== null) return old.ok ? exactly(old.value) : old;
  if (/^[\d.,½¼¾ /]+$/.test(plain))
    return refuse(`${quoted(words)} does not say of how many. Write ${plain} ct, ${plain} % or the like.`);
  return refuse(`${quoted(words)} is not a fineness. ${ASK}`);
}
