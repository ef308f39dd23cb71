import { AMOUNT, quoted, readAmount, tidy, writeAmount } from '../measures/amount.ts';
import { NAMED_FINENESS, readOldFineness } from './fineness-scales.ts';
import type { Interval } from '../measures/units.ts';
import { good, refuse } from '../outcome.ts';
import type { Outcome } from '../outcome.ts';

/** How fine a metal is: parts of the precious metal in one part of the alloy, from nothing to 1. */
export type Fineness = Interval & {
  readonly text: string;
  /** It is one end or the other and nothing between: `.500 or .800`. */
  readonly isEither?: true;
};

/** Denominators a fineness is written over; other figures under a thousand could be the end of a range. */
export const FINENESS_DENOMINATORS: ReadonlySet<number> = new Set([
  2, 3, 4, 5, 6, 8, 10, 12, 16, 20, 24, 32, 40, 48, 72, 96, 100, 144, 192, 240, 288, 384, 1000, 10000,
]);

const ASK = 'Write it like 925/1000, 0.925, 92.5 %, 22 ct or 11 oz 2 dwt.';
const RANGE = /^(.+?) ?(?<joint>-| to | or ) ?(.+)$/i;
/** `22/23 ct`: two numbers of parts, or a share of one part. */
const PAIR_OF_PARTS = /^(?<low>\d{1,2})\/(?<high>\d{1,2}) ?(?<name>[^\d/ ]+)$/;
const SLASH = /^(\d{1,5}(?:[.,]\d{1,3})?|\d*[.,]\d+) ?\/ ?(\d{1,5}|\d*[.,]\d+)$/;
const PERCENT = new RegExp(`^(${AMOUNT}) ?(?:%|per ?cent|pct)$`, 'i');
const MILLESIMAL =
  /^(\d{3}(?:[.,]\d{1,4})?|1000)(?: ?(?:‰|thousandths?|tausendteilen?|milli?[eè]mes?|millesimi|mil[eé]simas|fine))?$/i;
const DECIMAL = /^(0?[.,]\d{1,21}|1[.,]0{1,9})$/;
/** The metal has a field of its own; `925/1000 fine` says no more than `925/1000`, and `Silver (.900)` no more than `.900`. */
const METAL_BEFORE =
  /^(?:(?:silver|gold|silber|argent|or|oro|plata|argento|zilver|goud|prata|ouro|ag|au|ar|av)[,:]? |a[gu])(?=\(?[\d.])/i;
const IN_BRACKETS = /^\(([^()]+)\)$/;
/** `90 % silver, 10 % copper`: the rest of a hundred is the base metal. */
const BASE_METAL = /^(?<fine>[\d.,]+) ?% ?(?:silver|gold|Ag|Au)[,;/ ]+(?:and )?(?<base>[\d.,]+) ?% ?(?:copper|Cu)$/i;
/** `c. 900`: near it, and nobody says how near. */
const ABOUT = /^(?:c|ca|circa|about|approx|approximately|etwa|env|environ|around)\.? (?=[\d.])/i;
/** A standard named beside its figure: `925 sterling`, `Sterling silver (.925)`. */
const STANDARD = '(?<name>sterling|britannia)(?: silver)?';
const FIGURE = '\\(?(?<figure>[\\d.,]+(?:/1000| ?[%‰])?)(?: fine)?\\)?';
const NAMED_TWICE = [new RegExp(`^${FIGURE} ${STANDARD}$`, 'i'), new RegExp(`^${STANDARD}[,:]? ${FIGURE}$`, 'i')];
const FINE_AFTER = /(?<=[\d%‰]) (?:fine|fein|fin)(?: (?:metal|silver|gold))?$/i;
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
    .replace(IN_BRACKETS, '$1')
    .replace(GERMAN_AFTER, '$1')
    .replace(ROMAN_OUNCES, (_, roman: string) => String(romanValue(roman)))
    .replace(FINE_AFTER, '')
    .replace(HYPHEN, ' ');
  if (words === '' || words.length > LONGEST) return refuse(`${quoted(text)} is not a fineness. ${ASK}`);
  if (ABOUT.test(words))
    return refuse(
      `${quoted(text)} does not say how near it is. Write a range, such as 0.89/0.91, or the figure alone.`,
    );
  const ends = readNamedTwice(words) ?? readAlloy(words) ?? readSlash(words) ?? readRange(words) ?? readOne(words);
  if (!ends.ok) return ends;
  if (ends.value.high > 1) return refuse(`Nothing is finer than fine; ${quoted(text)} is more than 1000/1000. ${ASK}`);
  if (!(ends.value.low > 0))
    return refuse(`${quoted(text)} leaves no fine metal. Leave the fineness out when it is not known.`);
  return good({ ...ends.value, text: text.trim() });
}

/** A standard and its figure, which must be one fineness as far as the figure goes. */
function readNamedTwice(words: string): Outcome<Interval> | null {
  const groups = NAMED_TWICE.map((form) => form.exec(words)?.groups).find((found) => found !== undefined);
  const { name = '', figure = '' } = groups ?? {};
  const standard = NAMED_FINENESS.find((one) => one.name.startsWith(name.toLowerCase()))?.fineness;
  if (groups === undefined || standard === undefined) return null;
  const said = readSlash(figure) ?? readOne(figure);
  if (!said.ok) return said;
  if (Math.abs(said.value.low - standard) < 0.0005) return good({ low: standard, high: standard });
  return refuse(
    `${quoted(words)} says ${writeOne(said.value.low)} and ${name}, which is ${writeOne(standard)}. Write the one that is right.`,
  );
}

function readAlloy(words: string): Outcome<Interval> | null {
  const { fine = '', base = '' } = BASE_METAL.exec(words)?.groups ?? {};
  if (fine === '') return null;
  const [one, other] = [fine, base].map((figure) => Number(figure.replace(',', '.')));
  if (Math.abs((one ?? 0) + (other ?? 0) - 100) < 1e-9) return readOne(`${fine} %`);
  return refuse(`${quoted(words)} does not add up to a hundred. Write the part of fine metal, such as ${fine} %.`);
}

/** A numeral up to the thirties. */
function romanValue(roman: string): number {
  const values = Array.from(roman.toLowerCase(), (letter) => ({ i: 1, v: 5, x: 10 })[letter] ?? 0);
  return values.reduce((sum, value, at) => sum + (value < (values[at + 1] ?? 0) ? -value : value), 0);
}

/** In parts, to be read back: `925/1000`, `11/12`, `0.90–0.94`, `11/12–23/24`, `500/1000 or 800/1000`. */
export function formatFineness({ low, high, isEither }: Interval & { readonly isEither?: true }): string {
  if (low === high) return writeOne(low);
  if (isEither === true) return `${writeOne(low)} or ${writeOne(high)}`;
  const isShort = [low, high].map((end) => end < 1 && String(end).length <= 6);
  // Two decimals are written alike: 0.90–0.94.
  const places = Math.max(2, ...[low, high].map((end) => String(end).length - 2));
  const [from, to] = [low, high].map((end, at) =>
    isShort[at] !== true ? writeOne(end) : isShort.includes(false) ? String(end) : end.toFixed(places),
  );
  return `${from ?? ''}–${to ?? ''}`;
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
  if (/^[\d.,½¼¾ /]+$/.test(plain)) return refuse(askOfHowMany(words, plain));
  return refuse(`${quoted(words)} is not a fineness. ${ASK}`);
}

/** A bare number, with the counts it may be of. */
function askOfHowMany(words: string, plain: string): string {
  const value = Number(plain.replace(',', '.'));
  const counts = [[16, 'loth'], [24, 'ct'], [96, 'zolotnik'], [100, '%']] as const; // prettier-ignore
  const ways = counts.filter(([most]) => value <= most).map(([, sign]) => `${plain} ${sign}`);
  const nines = /^\d{4,}$/.test(plain) ? [`0.${plain}`] : ways.slice(0, 3);
  if (Number.isNaN(value) || nines.length === 0) return `${quoted(words)} does not say of how many. ${ASK}`;
  return `${quoted(words)} does not say of how many. Write ${nines.join(', ')} or the like.`;
}
