import { good, refuse } from '../outcome.ts';
import type { Outcome } from '../outcome.ts';
import { AMOUNT, mayBeRange, quoted, readAmount, tidy, writeAmount } from './amount.ts';
import { GRAIN, WEIGHT_UNITS, besidePennyweights, isGr, oneUnit, readWeightUnit } from './units.ts';
import type { Interval, OpenUnit, WeightUnit } from './units.ts';

/** A weight as it was written. */
export type Weight = {
  readonly text: string;
  readonly grams: number;
  /** How far off it may be, in grams; null when that was not stated. */
  readonly plusMinus: number | null;
  /** The unit it was written in; the smallest, where there were several. */
  readonly unit: WeightUnit;
  /** Digits after the point, in that unit; null for a vulgar fraction. */
  readonly decimals: number | null;
  /** True when two ends were written, `1.42/1.45 g`; `grams` is then the middle. */
  readonly range: boolean;
};

const PRECISION = new RegExp(`^(.*?) ?(?:±|\\+/-|\\+-) ?(${AMOUNT}) ?(.*)$`);
const RANGE = new RegExp(`^(${AMOUNT}) ?([^\\d-]*?) ?(?:-|/| to | or ) ?(${AMOUNT}) ?([^\\d]+)$`, 'i');
const PART = new RegExp(`(${AMOUNT}) ?([a-zа-я][a-zа-яäöé'’. -]*?)(?=[ ,]+[\\d½¼¾]|$)`, 'gi');
const TWICE = /^(.+?) ?(?:\((.+)\)|= ?(.+))$/;
const SIDE_BY_SIDE = new RegExp(`^(${AMOUNT} ?[a-zа-я][a-zа-яäöé'’. ]*?) ?[,;/]? ?(${AMOUNT} ?[a-zа-я].*)$`, 'i');
const METRIC: ReadonlySet<WeightUnit> = new Set(['g', 'mg', 'kg']);
/** `1 lb (troy)` is `1 lb troy`. */
const STANDARD_AFTER = / \(([a-z]+)\)$/i;
/** What a list puts before a weight and says nothing of it: `Wt: 1.41g`, `Gew. 1,41 g`. Brackets round the whole say no more. */
const CALLED =
  'weight|wgt|wt|mass|masse|massa|masa|gewicht|gew|raugewicht|rauhgewicht|poids|pds|peso|vægt|vekt|vikt|waga|hmotnost|paino|вес';
const LABEL = new RegExp(`^(?:${CALLED})(?:[.:=]| ?[:=])* ?(?=[\\dg½¼¾.])`, 'i');
const LABEL_AFTER = /(?<=[a-z.]) (?:in weight|de poids|di peso|de peso)$/i;
const IN_BRACKETS = /^[([]([^()[\]]+)[)\]]$/;
/** `Peso g 1,41`: Italian and Spanish lists put the unit first. */
/** There a point may part the thousands: `g 1.075` of a cast bronze is over a kilogram. */
const FIRST_TWO_WAYS = /^(g|gm|grammi|gramos)\.? (\d{1,3})\.(\d{3})$/i;
const UNIT_FIRST = new RegExp(`^(g|gr|gm|grammi|gramos)\\.? (${AMOUNT})$`, 'i');
/** A weight that is not this piece's. */
const NOT_OF_ONE = 'av average mean theoretical theor legal statutory standard nominal soll';
const OF_ANOTHER = new RegExp(
  `^(?:(?:${NOT_OF_ONE.replaceAll(' ', '|')})\\.? ?-?)(?:weight|wt|gewicht)?[.:]? ?(?=[\\d.])`,
  'i',
);
const LONGEST = 80;
const ASK = 'Write a number and its unit, like 1.38 g, 21.3 grains, 2 dwt or 0.5 oz t.';

/** What `gr` means where nothing beside it tells; left out, it is asked about. */
export type WeightOptions = { readonly gr?: 'grains' | 'grams' | undefined };

/** How a sum reads `gr`: as it was settled, as grains because a second weight bears it out, or not at all. */
type Gr = 'grains' | 'grams' | 'asks';

/**
 * Reads `1.38 g`, `21.3 grains`, `1 dwt 4½ gr`, `1.38 g ± 0.01`, `1.42/1.45 g`, `1.38 g (21.3 gr)`. A `gr` is a grain beside a
 * pennyweight or an ounce, or where grams beside it agree; else it asks, unless `gr` says what it is.
 */
export function parseWeight(text: string, options: WeightOptions = {}): Outcome<Weight> {
  const told = tidy(text).replace(IN_BRACKETS, '$1').replace(LABEL, '').replace(LABEL_AFTER, '');
  const [, , whole = '', rest = ''] = FIRST_TWO_WAYS.exec(told) ?? [];
  if (whole !== '' && whole !== '0')
    return refuse(`The point in ${quoted(text)} can be read two ways. Write ${whole}.${rest} g, or ${whole}${rest} g.`);
  const said = told.replace(UNIT_FIRST, '$2 $1');
  const words = said.replace(STANDARD_AFTER, ' $1');
  if (words === '' || words.length > LONGEST) return refuse(`${quoted(text)} is not a weight. ${ASK}`);
  if (OF_ANOTHER.test(words))
    return refuse(
      `${quoted(text)} is what such a piece should weigh, or others do. Write what this one weighs, or leave the weight out.`,
    );
  const gr = options.gr ?? 'asks';
  const outcome = readPrecise(words, gr) ?? readTwice(words) ?? readSpan(words, gr) ?? readSum(words, gr);
  return outcome.ok ? good({ ...outcome.value, text: text.trim() }) : outcome;
}

/** The weight in the unit it was written in, so that it can be read back: `1.38 g ± 0.01`. */
export function formatWeight(weight: Weight): string {
  const { perUnit, sign } = WEIGHT_UNITS[weight.unit];
  const number = (grams: number) => writeAmount(grams / perUnit, 4);
  const { low, high } = weightSpan(weight);
  if (weight.range) return `${number(low)}–${number(high)} ${sign}`;
  const value = weight.decimals === null ? number(weight.grams) : (weight.grams / perUnit).toFixed(weight.decimals);
  return weight.plusMinus === null ? `${value} ${sign}` : `${value} ${sign} ± ${number(weight.plusMinus)}`;
}

/** Where the weight lies, in grams; a weight with no stated precision is taken as written. */
export function weightSpan(weight: { readonly grams: number; readonly plusMinus: number | null }): Interval {
  const off = weight.plusMinus ?? 0;
  return { low: weight.grams - off, high: weight.grams + off };
}

function readPrecise(words: string, gr: Gr): Outcome<Weight> | null {
  const [, before = '', amount = '', after = ''] = PRECISION.exec(words) ?? [];
  if (amount === '') return null;
  const unitAfter = oneUnit(readWeightUnit(after));
  const whole = readSum(/[a-z]/i.test(before) ? before : `${before} ${after}`, gr);
  if (!whole.ok) return whole;
  const unit = after === '' ? whole.value.unit : unitAfter;
  const off = readAmount(amount);
  if (unit === null || off === null || off === 'two ways') {
    return refuse(`The precision in ${quoted(words)} cannot be read. Write it like 1.38 g ± 0.01.`);
  }
  const plusMinus = off.value * WEIGHT_UNITS[unit].perUnit;
  if (plusMinus >= whole.value.grams) {
    return refuse(`${quoted(words)} leaves no weight at its low end. Write a precision smaller than the weight.`);
  }
  return good({ ...whole.value, plusMinus });
}

/** Grams and grains side by side are one weight told twice, never a sum: `1.38 g, 21.3 gr`, `1.38 g / 21.3 gr`. */
function sideBySide(words: string): readonly [string, string] | null {
  const [, first = '', second = ''] = SIDE_BY_SIDE.exec(words) ?? [];
  const units = [first, second].map((part) => readWeightUnit(/[a-zа-я][a-zа-яäöé'’. ]*$/i.exec(part)?.[0] ?? ''));
  const [one, other] = units.map(oneUnit).map((unit) => (unit === null ? null : METRIC.has(unit)));
  return one == null || other == null || one === other ? null : [first, second];
}

/** A weight in two units, as English lists give it; the two must agree as far as the rougher of them goes. */
function readTwice(words: string): Outcome<Weight> | null {
  const [, before, inside, after] = TWICE.exec(words) ?? [];
  const [first = before, second = inside ?? after] = sideBySide(words) ?? [];
  if (first === undefined || second === undefined) return null;
  const [one, other] = [readSum(first, 'grains'), readSum(second, 'grains')];
  if (!one.ok) return one;
  if (!other.ok) return other;
  const apart = Math.abs(one.value.grams - other.value.grams);
  // What agrees only because one of them is so rough does not agree: `1 oz t 2 g` may be a sum.
  const isNear = sideBySide(words) === null || apart <= 0.05 * one.value.grams;
  if (isNear && apart <= lastPlace(one.value) + lastPlace(other.value)) return one;
  const instead = `${writeAmount(other.value.grams, 3)} g`;
  return refuse(`${quoted(second)} is ${instead}, not ${first}. Write the one that is right.`);
}

function readSpan(words: string, gr: Gr): Outcome<Weight> | null {
  const match = RANGE.exec(words);
  const fraction = readAmount(words.replace(/ ?[a-z. ]+$/i, ''));
  if (match === null || (fraction !== null && fraction !== 'two ways')) return null;
  const [, from = '', unitFrom = '', to = '', unitTo = ''] = match;
  const low = readSum(`${from} ${unitFrom === '' ? unitTo : unitFrom}`, gr);
  const high = readSum(`${to} ${unitTo}`, gr);
  if (!low.ok) return low;
  if (!high.ok) return high;
  const [a, b] = [low.value.grams, high.value.grams];
  if (a > b) return refuse(`${quoted(words)} runs from heavy to light. Write ${to}/${from} ${unitTo.trim()}.`);
  const decimals = Math.max(low.value.decimals ?? 4, high.value.decimals ?? 4);
  return good({ ...high.value, grams: (a + b) / 2, plusMinus: (b - a) / 2, decimals, range: true });
}

function readSum(words: string, gr: Gr): Outcome<Weight> {
  const parts = [...words.matchAll(PART)];
  if (parts.length === 0 || words.replace(PART, '').replace(/[ ,]/g, '') !== '') return refuse(blame(words));
  const pennyweights = parts.some(([, , unit = '']) => readWeightUnit(unit) === 'dwt');
  let grams = 0;
  let last: { unit: WeightUnit; decimals: number | null } | null = null;
  for (const [, number = '', unitText = ''] of parts) {
    const read = readWeightUnit(unitText);
    const known = pennyweights ? besidePennyweights(read) : read;
    const alone: boolean = isGr(unitText) && !(last !== null && (last.unit === 'dwt' || last.unit === 'oz t'));
    const unit: typeof known = alone && gr === 'grams' ? 'g' : known;
    if (unit === 'ancient') return refuse(noStandard(words));
    if (unit !== null && typeof unit !== 'string') return refuse(whichUnit(words, number, unit));
    if (unit === null) return refuse(blame(words));
    const amount = readAmount(number);
    if (amount === 'two ways') return refuse(whichComma(words, number));
    if (amount === null) return refuse(blame(words));
    if (alone && gr === 'asks') return refuse(whichGr(words, number));
    const { perUnit } = WEIGHT_UNITS[unit];
    if (mayBeRange(number, METRIC.has(unit)))
      return refuse(
        `${quoted(words)} may be a range or a fraction. Write ${number.replace('/', '-')} ${unitText} for the range.`,
      );
    if (last !== null && (perUnit >= WEIGHT_UNITS[last.unit].perUnit || METRIC.has(last.unit) !== METRIC.has(unit)))
      return refuse(blame(words));
    grams += amount.value * perUnit;
    // A fraction of the larger unit leaves the smaller one no last place.
    last = { unit, decimals: last !== null && last.decimals !== 0 ? null : amount.decimals };
  }
  if (last === null || !(grams > 0))
    return refuse(`${quoted(words)} weighs nothing. Leave the weight out when it was not taken.`);
  return good({ text: words, grams, plusMinus: null, ...last, range: false });
}

/** Grams in one step of the last digit written; half a thousandth of the unit for a fraction. */
export function lastPlace(weight: Pick<Weight, 'unit' | 'decimals'>): number {
  return WEIGHT_UNITS[weight.unit].perUnit * (weight.decimals === null ? 0.0005 : 10 ** -weight.decimals);
}

function whichUnit(words: string, number: string, { called, means }: OpenUnit): string {
  const ways = means.map((unit) => {
    const { sign, perUnit } = WEIGHT_UNITS[unit];
    return `${number} ${sign} (${perUnit.toFixed(3)} g)`;
  });
  const [first = '', ...others] = ways;
  const said = `${quoted(words)} does not say which ${called}.`;
  if (others.length === 0) return `${said} Write ${first} if it is that one, or grams.`;
  return `${said} Write ${[first, ...others.slice(0, -1)].join(', ')} or ${others.at(-1) ?? ''}.`;
}

const noStandard = (words: string) =>
  `${quoted(words)} names a standard of antiquity, whose weight no law fixed. Write what the piece weighs in grams.`;

const whichGr = (words: string, number: string) =>
  `The gr in ${quoted(words)} may be grams or grains. Write ${number} g or ${number} grains, or once in cabinet.yaml, gr: grains.`;

const whichComma = (words: string, number: string) =>
  `The comma in ${quoted(words)} can be read two ways. Write ${number.replace(',', '.')} or ${number.replace(',', '')}.`;

const ABOUT =
  'c ca about circa approx approximately around nearly etwa ungefähr env environ vers ok około omkring noin';
const NEAR = new RegExp(`^(?:${ABOUT.replaceAll(' ', '|')})\\b\\.? ?(?<figure>\\d[\\d.,]*)`, 'iu');

function blame(words: string): string {
  if (/^[\d.,/ ½¼¾]+$/.test(words))
    return `${quoted(words)} has no unit. Write ${words} g for grams or ${words} grains.`;
  const near = NEAR.exec(words)?.groups?.['figure'];
  if (near !== undefined) {
    const off =
      near.includes('.') || near.includes(',') ? near.replace(/\d(?=.*[.,])|\d(?=\d*$)/g, '0').replace(/0$/, '1') : '1';
    return `${quoted(words)} does not say how near it is. Write it like ${words.replace(NEAR, near)} ± ${off.replace(/^0+(?=\d)/, '')}, or without the word.`;
  }
  return `${quoted(words)} is not a weight. ${ASK}`;
}

/** A weight in grams or in grains, `1.42–1.45` or `406.5 ± 0.3`, never with more figures than were weighed. */
export function weightIn(weight: Weight, unit: 'g' | 'gr'): string {
  const { low, high } = weightSpan(weight);
  const places = decimalsOfGrams(weight);
  const number = (grams: number): string =>
    // A grain is about a fifteenth of a gram: one figure fewer says as much.
    unit === 'g' ? grams.toFixed(places) : (grams / GRAIN).toFixed(Math.max(0, places - 1));
  if (weight.range) return number(low) === number(high) ? number(low) : `${number(low)}–${number(high)}`;
  return weight.plusMinus === null ? number(weight.grams) : `${number(weight.grams)} ± ${number(weight.plusMinus)}`;
}

/** Figures after the point that the weighing bears out, once in grams. Two for a vulgar fraction or a large unit. */
function decimalsOfGrams({ unit, decimals }: Weight): number {
  if (decimals === null) return 2;
  if (unit === 'g') return decimals;
  if (unit === 'gr') return decimals + 1;
  if (unit === 'kg') return Math.max(0, decimals - 3);
  return unit === 'mg' ? decimals + 3 : 2;
}
