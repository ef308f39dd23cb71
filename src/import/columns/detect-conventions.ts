import { parseDate } from '../../core/dating/parse-date.ts';
import type { SheetCell } from '../sheets/sheet.ts';
import { blankIn } from '../cells/blank.ts';
import { readChoice } from '../cells/word-cell.ts';

/** The cells of a column that say something. */
export function filled(cells: readonly SheetCell[]): readonly SheetCell[] {
  return cells.filter(({ text }) => blankIn(text, {}) === null);
}

/** The decimal mark that figures show: both signs in one, or digits after it that are no thousands. */
export function decimalIn(cells: readonly SheetCell[]): 'point' | 'comma' | 'both' | 'two ways' | null {
  const texts = cells.filter(({ value }) => value === undefined).map(({ text }) => text);
  const shows = (sign: string) => {
    const other = sign === ',' ? '\\.' : ',';
    const one = sign === '.' ? '\\.' : ',';
    const form = new RegExp(
      `\\d${other}\\d{3}${one}\\d|(?<![\\d.,])(?:0${one}\\d{3}|\\d+${one}(?:\\d{1,2}|\\d{4,}))(?![\\d.,]\\d|\\d)`,
    );
    return texts.some((text) => form.test(text));
  };
  const [point, comma] = [shows('.'), shows(',')];
  if (point && comma) return 'both';
  if (point || comma) return point ? 'point' : 'comma';
  return texts.some((text) => /\d,\d{3}(?!\d)/.test(text)) ? 'two ways' : null;
}

const SLASHED = /^(\d{1,2})[./-](\d{1,2})[./-](?:\d{4}|\d{2})$/;

/** What comes first in days such as 14/05/2011; `'two ways'` where no day tells. */
export function daysIn(cells: readonly SheetCell[]): 'day first' | 'month first' | 'two ways' | null {
  const days = cells.flatMap(({ text, value }) => {
    const [, a, b] = value?.kind === 'day' ? [] : (SLASHED.exec(text) ?? []);
    return a === undefined || b === undefined ? [] : [[Number(a), Number(b)] as const];
  });
  if (days.length === 0 || days.every(([a, b]) => a === b)) return null;
  const [first, second] = [days.some(([a]) => a > 12), days.some(([, b]) => b > 12)];
  if (first !== second) return first ? 'day first' : 'month first';
  return 'two ways';
}

/** A day whose year has two figures, as in 12/3/98. */
export function shortDayIn(cells: readonly SheetCell[]): string | null {
  const short = cells.find(({ text, value }) => value?.kind !== 'day' && SLASHED.test(text) && !/\d{4}$/.test(text));
  return short?.text ?? null;
}

/** Whether a column of dates tells when pieces were struck: some before 1900, or in another era than ours. */
export function tellsStriking(cells: readonly SheetCell[]): boolean {
  const told = cells.filter(({ text, value }) => value?.kind !== 'day' && !SLASHED.test(text));
  const old = told.filter(({ text }) => {
    if (/^-?\d{1,3}(?:\s*[-–/]\s*\d{1,3})?$/.test(text)) return true;
    const read = parseDate(text);
    return read.ok && typeof read.value.latest === 'number' && read.value.latest < 1900;
  });
  return told.length > 0 && told.length * 2 >= cells.length && old.length > 0;
}

/** Whether bare years below 1000, or below nought, are in a column. */
export function smallYears(cells: readonly SheetCell[]): {
  readonly bare: string | null;
  readonly minus: string | null;
} {
  const bare = cells.find(({ text }) => BARE.test(text) && text !== '0');
  return { bare: bare?.text ?? null, minus: cells.find(({ text }) => MINUS.test(text))?.text ?? null };
}

const BARE = /^(?:c\.? ?|ca\.? ?)?\d{1,3}(?:\.0+)?(?:\s*(?:[-–/]|to|bis)\s*\d{1,3}(?:\.0+)?)*$/;
const MINUS = /^(?:c\.? ?|ca\.? ?)?[-\u2212]\d{1,4}(?!\d)/;

/** What hyphens between a year and two figures mean in a column, by the cells that have one reading. */
export function hyphensIn(cells: readonly SheetCell[]): 'range' | 'month' | 'two ways' | null {
  const pairs = cells.flatMap(({ text, value }) => {
    const [, year, last] = value?.kind === 'day' ? [] : (/^(\d{4})-(\d\d)$/.exec(text.trim()) ?? []);
    return year === undefined || last === undefined ? [] : [{ ends: Number(year.slice(2)), last: Number(last) }];
  });
  if (!pairs.some(({ last }) => last >= 1 && last <= 12)) return null;
  const isRange = pairs.some(({ ends, last }) => last > 12 && last > ends);
  const isMonth = pairs.some(({ ends, last }) => last >= 1 && last <= 12 && last <= ends);
  return isRange === isMonth ? 'two ways' : isRange ? 'range' : 'month';
}

const BEFORE = String.raw`b\.? ?c\.?(?: ?e\.?)?|v\. ?chr\.?|av\. ?j\.-c\.|a\. ?c\.`;
const AFTER = String.raw`a\.? ?d\.?|c\.? ?e\.?|n\. ?chr\.?|ap\. ?j\.-c\.|d\. ?c\.`;
const ERA_WORDS = new RegExp(`^(?:(${BEFORE})|${AFTER})$`, 'i');

/** The words of a column that says of each row whether its years are before Christ or after, with what each means; null for any other. */
export function erasIn(
  cells: readonly SheetCell[],
): readonly { readonly is: string; readonly years: 'AD' | 'BC' }[] | null {
  const words = new Set<string>();
  for (const { text } of cells) {
    const word = text.trim();
    if (words.has(word) || blankIn(word, {}) !== null) continue;
    if (words.size === 8 || !ERA_WORDS.test(word)) return null;
    words.add(word);
  }
  if (words.size === 0) return null;
  return [...words].map((is) => ({ is, years: ERA_WORDS.exec(is)?.[1] === undefined ? 'AD' : 'BC' }));
}

/** A cell with `gr` for its unit. */
export function grIn(cells: readonly SheetCell[]): string | null {
  return cells.find(({ text }) => /\d\s*grs?\.?$/i.test(text))?.text ?? null;
}

/** A sum without its currency. */
export function bareSumIn(cells: readonly SheetCell[]): string | null {
  return cells.find(({ text, value }) => value?.kind !== 'money' && /^[\d.,'’\s]+[-–]*$/.test(text))?.text ?? null;
}

/**
 * Whether nearly every row has a short text of its own with a figure in it, as inventory numbers are: this share of the rows has one,
 * and this share of them is distinct. A line of totals has none, and twenty years bring a number given twice.
 */
export function numbersEachRow(cells: readonly SheetCell[], share = 0.95): boolean {
  const texts = cells.map(({ text }) => text).filter((text) => text !== '');
  return (
    texts.length > 0 &&
    texts.length >= cells.length * share &&
    new Set(texts).size >= texts.length * share &&
    texts.every((text) => text.length <= 24 && /\d/.test(text))
  );
}

/** `VF (20)` is a grade, `1.38 g` a weight: what the cells of a column nobody knows look like. */
export function looksPaid(cells: readonly SheetCell[]): boolean {
  return cells.some(({ text, value }) => value?.kind === 'money' || /[£€$]|\b(?:EUR|GBP|USD|CHF|DM)\b/.test(text));
}

/** Whether every cell says what sort of object a piece is: coin, token, medal. */
export function saysKinds(cells: readonly SheetCell[]): boolean {
  return cells.length > 0 && cells.every(({ text }) => readChoice(text, 'kind').every(({ kind }) => kind === 'fact'));
}
