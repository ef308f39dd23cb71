import { good, refuse } from '../outcome.ts';
import type { Outcome } from '../outcome.ts';
/**
 * How a book numbers: in one run, so that a stroke between two numbers is a range; afresh in each volume, which must be named;
 * or by pairs, of which `44/5` or `84-7` is one number.
 */
export const NUMBERINGS = ['straight', 'by-volume', 'with-strokes', 'with-hyphens'] as const;
export type Numbering = (typeof NUMBERINGS)[number];

/** Whether a large and a small letter behind a figure make two numbers (`8a` and `8A`) or are two ways of printing one. */
export const LETTERINGS = ['apart', 'alike'] as const;
export type Lettering = (typeof LETTERINGS)[number];

/** Books whose every number is an issue and a coin, separated by a stroke: `44/5` is one number. M. H. Crawford, *Roman Republican Coinage* (1974). */
export const NUMBERED_BY_STROKE = /crawford|rrc/iu;
/**
 * Books that number by a type, a plate or a chapter, a hyphen and a number: `1526-9` is one. R. D. Van Arsdell, *Celtic Coinage
 * of Britain* (1989); A. Vives, *La moneda hispánica* (1926); A. Heiss, *Monnaies antiques de l'Espagne* (1870); the Swiss
 * handbook *HMZ*; the Japanese catalogue *JNDA*. From memory.
 */
const NUMBERED_BY_HYPHEN = /van.?arsdell|^va$|^vives$|^heiss$|^hmz$|^jnda$/iu;

/** `45.1/45.2`: two numbers that begin alike. */
const PAIR_OF_TWO = /^(.+\D)(\d+)\/\1(\d+)$/u;

/** Whether a number with a stroke in it could be two or a range: `1022/3`, `12/13`, `1492A/B`, and not `1018/2` or `10/18`. */
export function readsAsRange(number: string): boolean {
  const [, letter = '', next = ''] = /\d(\p{L})\/(\p{L})$/u.exec(number) ?? [];
  if (letter < next) return true;
  const [, from = '', last = ''] =
    PAIR_OF_TWO.exec(number)?.slice(1) ?? /(?:^|[^\d/])(\d+)\p{L}?\/\p{L}?(\d+)\p{L}?$/u.exec(number) ?? [];
  if (from === '' || last.length > from.length) return false;
  const step = BigInt(completed(from, last)) - BigInt(from);
  return step === 1n || (step > 0n && (last.length < from.length || from.length >= 3));
}

/** The figures that a last number leaves out, taken from the first: 223-5 runs to 225. */
function completed(from: string, last: string): string {
  return from.slice(0, Math.max(0, from.length - last.length)) + last;
}

const HYPHEN = '\\s*[-–—]\\s*';
const WHOLE = new RegExp(`^(.+?)(\\d+)(\\p{L}?)${HYPHEN}\\1(\\d+)(\\p{L}?)$`, 'su');
const FIGURES = new RegExp(`^(.*?)(\\d+)(\\p{L}?)${HYPHEN}(\\d+)(\\p{L}?)$`, 'su');
const LETTERS = new RegExp(`^(.*\\d)(\\p{L})${HYPHEN}(?:\\1)?(\\p{L})$`, 'su');
const DECIMALS = new RegExp(`^(.*\\d\\.)(\\d+)${HYPHEN}\\.(\\d+)$`, 'su');
const JOINED = new RegExp(`(?<=[\\p{L}\\p{N}])${HYPHEN}(?=[.\\p{L}\\p{N}])`, 'gu');

/**
 * The ends of a range of numbers. The last may be cut short as in print: `223-5` is 223 to 225, `12a-c` is 12a to 12c; or
 * written out: `44/5-44/7`, `London 121-London 123`, `199-203a`. Without `to`, what was printed is no range that runs forward.
 */
export function splitRange(printed: string): { readonly number: string; readonly to?: string } {
  if ((printed.replace(/^\p{L}+-/u, '').match(JOINED) ?? []).length > 1) return { number: printed };
  for (const form of [WHOLE, FIGURES]) {
    const [all, head = '', from = '', a = '', short = '', b = ''] = form.exec(printed) ?? [];
    const last = form === WHOLE ? short : completed(from, short);
    const rises = all !== undefined && (BigInt(last) > BigInt(from) || (BigInt(last) === BigInt(from) && a < b));
    if (rises) return { number: head + from + a, to: head + last + b };
  }
  const [, head = '', from = '', last = ''] = DECIMALS.exec(printed) ?? LETTERS.exec(printed) ?? [];
  const isRising = /^\d/u.test(from) ? BigInt(last) > BigInt(from) : last > from;
  const isOneCase = /\p{Lu}/u.test(from) === /\p{Lu}/u.test(last);
  return from !== '' && isRising && isOneCase ? { number: head + from, to: head + last } : { number: printed };
}

/** "And following" behind a number, in the letters of English, German, French, Spanish and Latin books; common practice. */
const FOLLOWING = /\d\s?(?:ff?|ss?|sqq?|seqq?|segg?|vv)$/u;
/** A letter by itself behind a number: a degree of rarity or a letter of the number. */
const RARE_OR_LETTER = /\d\p{Ll}?\s[RSCNU]$/u;
/** A hyphen or a plus behind a figure, before more: several numbers; a single last figure is how some books number, `52-1`. */
const SEVERAL = /\d[\p{L}*'’†]*\s*[-–—+]\s*\.?[\p{L}\p{N}]/u;
const NUMBER_OF_A_BOOK = /^\D*\d+-\d$/u;
/** A range as long as this is asked about: `2-345` may be a volume and a number. */
const LONGEST = 200n;
/** With more figures in the last number than in the first, as in `45-123`, a shorter one is. */
const LONGEST_OF_SHORT = 20n;

/** Why a number of a book named so may be more than one or less, and what to write for either, under the book as cited; undefined where it is one, or a range. */
export function askOfNumber(number: string, named: string, book = named): string | undefined {
  const one = `${book} no. ${number}`;
  const bare = number.replace(/\s\p{L}+$|(?<=\d)\p{L}+$/u, '');
  if (FOLLOWING.test(number)) {
    const all = `${book} ${bare} (and following)`;
    return `"${number}" may say "and following", or the letter may be part of the number. Write ${all}, or ${one}.`;
  }
  if (RARE_OR_LETTER.test(number)) {
    const letter = number.slice(-1);
    return `The ${letter} of "${number}" may be a degree of rarity or part of the number. Write ${book} ${bare} (${letter}), or ${book} ${bare}${letter}.`;
  }
  if (!mayBeSeveral(number, named)) return undefined;
  const [, head = '', from = '', short = ''] = /^(.*?)(\d+)-(\d+)$/su.exec(number) ?? [];
  const next =
    short === '' || short.length >= from.length ? '' : BigInt(completed(from, short)) + 10n ** BigInt(short.length);
  const range = next === '' ? 'each by itself, with a semicolon between' : `${book} ${head}${from}-${String(next)}`;
  return `"${number}" may be several numbers. Write ${range}, or ${one} if it is one.`;
}

function mayBeSeveral(number: string, named: string): boolean {
  if (NUMBERED_BY_HYPHEN.test(named) || NUMBER_OF_A_BOOK.test(number)) return false;
  return SEVERAL.test(number) && splitRange(number).to === undefined;
}

/** Why a range may be one number: it begins with a nought, or would be very long. Undefined for any other. */
export function askOfRange(
  { number, to }: { readonly number: string; readonly to?: string },
  named: string,
): string | undefined {
  const [from = '', last = ''] = [number, to ?? ''].map((end) => /(\d+)\p{L}?$/u.exec(end)?.[1] ?? '');
  if (to === undefined || from === '' || last === '') return undefined;
  const most = last.length > from.length ? LONGEST_OF_SHORT : LONGEST;
  const isOdd = (from.startsWith('0') && from.length > 1) || BigInt(last) - BigInt(from) > most;
  if (!isOdd) return undefined;
  const printed = `${number}-${to}`;
  return `"${printed}" may be one number of a book that numbers so, or many. Write ${named} no. ${printed}, or ${named} ${number}; ${named} ${to} for the two ends.`;
}

/** Whether a number must be printed with *no.* to be read back as one. */
export function asksAlone(number: string, named: string): boolean {
  const byStroke = readsAsRange(number) && !NUMBERED_BY_STROKE.test(named);
  const ways = [askOfNumber(number, named), hasRanges(named) ? askOfRange(splitRange(number), named) : undefined];
  return byStroke || ways.some((way) => way !== undefined);
}

/** Whether a hyphen may stand between two numbers of a book. */
export function hasRanges(named: string): boolean {
  return !NUMBERED_BY_HYPHEN.test(named);
}

/** The number of an entry, or the first and last of several, as its book numbers. */
export function readNumber(
  number: string,
  { work, named, numbers }: { readonly work: string; readonly named: string; readonly numbers?: Numbering },
  book: string,
  { lettered }: { readonly lettered: boolean },
): Outcome<{ readonly number: string; readonly to?: string }> {
  if (number.startsWith('#')) {
    const [one, ends] = [{ number: number.slice(1) }, splitRange(number.slice(1))];
    return good(number.includes('/') || askOfRange(ends, book) !== undefined ? one : ends);
  }
  const bare = number.replace(/^(?:no|nr|num)?[.#°º№]?\s*(?=\d)/iu, '');
  if (numbers === 'with-hyphens' || ![work, named].every(hasRanges)) return good({ number: bare });
  const range = splitRange(bare);
  if (numbers === 'with-strokes' && range.to === undefined && bare.includes('/')) return good(range);
  const run = numbers === 'straight' && readsAsRange(bare) ? splitRange(bare.replace('/', '-')) : range;
  if (run.to !== undefined && range.to === undefined) return good(run);
  if (range.to === undefined && readsAsRange(bare) && !NUMBERED_BY_STROKE.test(`${work} ${named}`)) {
    const { number: first, to } = splitRange(bare.replace('/', '-'));
    const ways = to === undefined ? 'each by itself' : `${book} ${bare.replace('/', '-')}`;
    const two = to === undefined ? 'two numbers' : `${first} to ${to}`;
    return refuse(`"${bare}" may be ${two}, or one number with a stroke. Write ${ways}, or ${book} no. ${bare}.`);
  }
  const problem = lettered
    ? undefined
    : range.to === undefined
      ? askOfNumber(bare, named, book)
      : askOfRange(range, book);
  return problem === undefined ? good(range) : refuse(problem);
}

/** `RIC 123 and 124`, `RIC 123 or 124`: a second number of the same book. */
const SECOND = /^(?<joint>and|und|et|e|y|&|\+|or|oder|ou|o) (?<number>\p{L}{0,2}\d[\p{L}\d./]*)$/u;

export function askForEach(text: string, cited: string, number: string, rest: string): string | undefined {
  const { joint = '', number: second = '' } = SECOND.exec(rest)?.groups ?? {};
  if (second === '' || number === '') return undefined;
  const doubt = /^o/u.test(joint) ? ' (?)' : '';
  return `"${shown(text)}" names two numbers. Write each with its work: ${cited} ${number}${doubt}; ${cited} ${second}${doubt}.`;
}

/** A text in a sentence, cut where it is long. */
export function shown(text: string): string {
  return text.length > 80 ? `${text.slice(0, 77)}…` : text;
}
