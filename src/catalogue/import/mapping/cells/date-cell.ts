import { parseDate } from '../../../../core/dating/parse-date.ts';
import type { Settings } from '../mapping.ts';
import type { Cell, Said } from './said.ts';
import { fact, unread } from './said.ts';

/** Dutch as the core does not read it, in words it does. */
const DUTCH: readonly (readonly [RegExp, string])[] = [
  [/^(?:ongedateerd|zonder jaar(?:tal)?|z\. ?j\.?)/i, 'n.d.'],
  [/(\d{1,2})(?:e|ste|de) eeuw/i, '$1. Jh.'],
  [/\bv\. ?Chr\.?|\bvoor Chr(?:istus|\.)/gi, 'v. Chr.'],
  [/\bna Chr(?:istus|\.)/gi, 'n. Chr.'],
  [/\b(?:omstreeks|rond)\b/i, 'um'],
  [/\bjanuari\b/i, 'January'], [/\bfebruari\b/i, 'February'], [/\bmaart\b/i, 'March'], [/\bmei\b/i, 'May'], [/\bjuni\b/i, 'June'],
  [/\bjuli\b/i, 'July'], [/\baugustus\b/i, 'August'], [/\boktober\b/i, 'October'],
]; // prettier-ignore

/** The date as the form reads it, or why it cannot be read. A day of the calendar is written year first. */
export function readDate(cell: Cell, field: string): readonly Said[] {
  const read = datingOf(cell);
  return read.ok ? fact(field, read.text) : unread(field, read.because);
}

type Read = { readonly ok: true; readonly text: string } | { readonly ok: false; readonly because: string };

/** The first way of writing the cell that the core reads. */
export function datingOf({ text, value, settings }: Cell): Read {
  if (value?.kind === 'day') return { ok: true, text: value.iso };
  const day = slashedDay(text, settings.days);
  if (day === 'two ways') {
    const [a, b, year] = text.split(/[./-]/);
    return {
      ok: false,
      because: `"${text}" may be ${year ?? ''}-${two(b)}-${two(a)} or ${year ?? ''}-${two(a)}-${two(b)}. Say in the mapping whether the day or the month comes first, or write the year first.`,
    };
  }
  const plain = plainEra(text);
  const ways = [text, plain, ...(day === null ? [] : [day]), ...bareYears(plain, settings)];
  const found = ways.find((way) => parseDate(way).ok);
  if (found !== undefined) return { ok: true, text: found };
  const said = parseDate(text);
  return { ok: false, because: said.ok ? '' : said.problem };
}

/** `A.D. 134-138`, `134-138 A.D.`, `98 AD-99 AD` in the one form that the core reads; Dutch words in others. */
function plainEra(text: string): string {
  const plain = DUTCH.reduce((words, [pattern, instead]) => words.replace(pattern, instead), text)
    .replace(/\bA\. ?D\.?(?=\W|$)/gi, 'AD')
    .replace(/\bB\. ?C\. ?E\.?(?=\W|$)|\bB\. ?C\.?(?=\W|$)/gi, 'BC')
    .replace(/\s+/g, ' ')
    .trim();
  const after = /^(\d{1,4}) ?[-–/] ?(\d{1,4}) ?(?:AD|CE)$/i.exec(plain);
  const both = /^AD (\d{1,4}) ?[-–/] ?(?:AD )?(\d{1,4})$/i.exec(plain);
  const [, from, to] = after ?? both ?? [];
  return from === undefined || to === undefined ? plain : years(from, to);
}

/** `134/138` with figures left out put back: `134-38`. */
function years(from: string, to: string): string {
  const last = to.length < from.length ? from.slice(0, from.length - to.length) + to : to;
  return `${from.padStart(4, '0')}/${last.padStart(4, '0')}`;
}

/** A year below 1000, or below nought, by what the keeper settled of the era. */
function bareYears(text: string, settings: Settings): readonly string[] {
  const [, about = '', from, to] = /^(c\.? ?|ca\.? ?|circa )?(\d{1,3})(?: ?[-–/] ?(\d{1,3}))?$/i.exec(text) ?? [];
  const minus = /^-(\d{1,4})$/.exec(text)?.[1];
  if (minus !== undefined && settings.minus === 'BC') return [`${minus} BC`];
  if (minus !== undefined && settings.minus === 'astronomical') return [`-${minus.padStart(4, '0')}`];
  if (from === undefined || settings.years === undefined) return [];
  if (settings.years === 'AD' && to !== undefined) return [years(from, to), `AD ${from}-${to}`];
  const written = to === undefined ? from : `${from}-${to}`;
  return [settings.years === 'BC' ? `${about}${written} BC` : `${about}${settings.years} ${written}`];
}

/** `14/05/2011` with the year first; null when it is no day, `'two ways'` when nobody said which comes first. */
function slashedDay(text: string, order: Settings['days']): string | null {
  const [, first = '', second = '', year] = /^(\d{1,2})[./-](\d{1,2})[./-](\d{4})$/.exec(text.trim()) ?? [];
  if (year === undefined) return null;
  const [a, b] = [Number(first), Number(second)];
  const dayFirst = b > 12 ? false : a > 12 || a === b ? true : order === undefined ? null : order === 'day first';
  if (dayFirst === null) return 'two ways';
  return dayFirst ? `${year}-${two(second)}-${two(first)}` : `${year}-${two(first)}-${two(second)}`;
}

function two(digits = ''): string {
  return digits.padStart(2, '0');
}

/** The fact two columns make, a first year and a last one; either may be empty. */
export function readSpan(from: Cell | null, to: Cell | null, field: string): readonly Said[] {
  const settings = (from ?? to)?.settings ?? {};
  const [first, last] = [from, to].map((cell) => (cell === null ? null : edtfOf(cell)));
  if (first?.ok === false) return unread(field, first.because);
  if (last?.ok === false) return unread(field, last.because);
  const text = spanText(first?.text ?? null, last?.text ?? null, settings.alone);
  const read = parseDate(text);
  return read.ok ? fact(field, text) : unread(field, read.problem);
}

function spanText(first: string | null, last: string | null, alone: Settings['alone']): string {
  if (first === null) return `/${last ?? ''}`;
  if (last === null) return alone === 'that year' || first.includes('/') ? first : `${first}/`;
  return first === last ? first : `${first.split('/')[0] ?? ''}/${last.split('/').at(-1) ?? ''}`;
}

function edtfOf(cell: Cell): Read {
  const read = datingOf(cell);
  const dating = read.ok ? parseDate(read.text) : null;
  return dating?.ok === true ? { ok: true, text: dating.value.edtf } : read;
}
