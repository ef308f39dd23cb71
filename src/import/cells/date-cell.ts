import { parseDate } from '../../core/dating/parse-date.ts';
import type { Settings } from '../columns/mapping.ts';
import type { Cell, Said } from './cell-result.ts';
import { fact, unread } from './cell-result.ts';
import { besideYear } from './beside-year.ts';
import { yearSpan } from './year-span.ts';

/** The date as the form reads it, or why it cannot be read; what stands beside a year is kept in a field that takes it, or told of. */
export function readDate(cell: Cell, field: string): readonly Said[] {
  const read = datingOf(cell);
  if (read.ok) return fact(field, read.text);
  const beside = besideYear(cell.text);
  const year = beside === null ? null : datingOf({ ...cell, text: beside.year });
  if (beside === null || year?.ok !== true) return unread(field, read.because);
  if (beside.kind === 'letter') return [...fact(field, year.text), ...fact('dated', beside.asStands)];
  if (beside.kind === 'restrike') {
    // The year on it is not the year it was made in.
    const later = `after ${year.text}`;
    const again: Said = { kind: 'more', field: 'peculiarities', values: ['restrike'] };
    return [...(parseDate(later).ok ? fact(field, later) : []), ...fact('dated', beside.year), again];
  }
  const because = `The year is read; "${beside.text}" beside it has no field of its own. Write it in a column of what it is about, such as peculiarities or notes.`;
  return [...fact(field, year.text), { kind: 'unread', field, because, text: beside.text }];
}

type Read = { readonly ok: true; readonly text: string } | { readonly ok: false; readonly because: string };

/** The first way of writing the cell that the core reads. A day of the calendar is written year first. */
export function datingOf({ text, value, settings }: Cell): Read {
  if (value?.kind === 'day') return { ok: true, text: value.iso };
  const day = slashedDay(text, settings);
  if (day !== null && 'because' in day) return { ok: false, because: day.because };
  const plain = plainEra(inOtherWords(text));
  const { about, rest } = afterAbout(plain);
  const month = monthOrYears(rest, settings);
  if (month !== null && 'because' in month) return { ok: false, because: month.because };
  if (month !== null && parseDate(`${about}${month.text}`).ok) return { ok: true, text: `${about}${month.text}` };
  const span = yearSpan(rest, about, settings);
  if (span !== null && 'because' in span) return { ok: false, because: span.because };
  if (span !== null && isSettled(rest, settings) && parseDate(span.text).ok) return { ok: true, text: span.text };
  const ways = [
    ...inCalendar(text, settings),
    ...(day === null ? [] : [day.iso]),
    text,
    plain,
    ...bareYears(plain, settings),
    ...lostFigures(plain),
  ];
  const found = ways.find((way) => parseDate(way).ok);
  if (found !== undefined) return { ok: true, text: found };
  // `n.d. (c. 700)`: what stands in the brackets is the date.
  const inside = /^(?:n\.? ?d\.?|o\. ?j\.?|s\. ?[adf]\.?|sans date|undated),? ?[([](.+)[)\]]$/i.exec(plain)?.[1];
  if (inside !== undefined) {
    const read = datingOf({ text: inside, settings });
    if (read.ok) return read;
  }
  const said = parseDate(text);
  return { ok: false, because: said.ok ? '' : said.problem };
}

/** A year by the calendar that another column of its row says; an era in the cell goes first, and so does ours where the year is yet to come. */
function inCalendar(text: string, { calendar }: Settings): readonly string[] {
  const { about, rest } = afterAbout(text.trim());
  const [, years] = /^(\d{1,4}(?: ?[-–/] ?\d{1,4})?(?:,? (?:yr|year) \d{1,2})?)$/i.exec(rest) ?? [];
  if (years === undefined || calendar === undefined || calendar === 'AD' || calendar === 'BC') return [];
  return [`${about}${calendar} ${years}`];
}

/** What lists put before a year that is not certain, in the six languages of headings. */
const ABOUT = /^(?:circa|ca\.?|c\.?|um|gegen|etwa|vers|env\.?|environ|verso|hacia|omstreeks|rond) ?(?=\d)/i;

/** A text without its word for about, and that word as the core reads it. */
function afterAbout(text: string): { readonly about: '' | 'c. '; readonly rest: string } {
  const rest = text.replace(ABOUT, '');
  return { about: rest === text ? '' : 'c. ', rest };
}

/** `166-` and `16--` with the figures that are lost marked as such, `1248-50?` with its doubt on both ends. */
function lostFigures(text: string): readonly string[] {
  const [, known, lost = ''] = /^(\d{2,3})([-–_?.x]{1,2})$/i.exec(text) ?? [];
  if (known !== undefined && known.length + lost.length === 4) return [`${known}${'X'.repeat(lost.length)}`];
  const [, from = '', to] = /^(\d{4}) ?[-–/] ?(\d{1,4}) ?\(?\?\)?$/.exec(text) ?? [];
  return to === undefined || !text.includes('?') ? [] : [years(from, to).replace('/', '?/') + '?'];
}

/** What lists put beside a date that says nothing of it, or says it in a way the core leaves to ask. */
const WORDS: readonly (readonly [RegExp, string])[] = [
  [/^s\. ?f\.?(?!\p{L})/iu, 'n.d.'],
  [/^r\.? (?=\d)|^(?:reigned|ruled|regn\.|reg\.) (?=\d)/i, ''],
  [/^(\d{3,4}) ?ish$/i, 'c. $1'],
  [/^A° ?(?=\d)/i, 'Anno '],
  [/^(?:mitad|mediados) (?:del? )?(?=s)/i, 'mediados del '],
  [/^halverwege (?:de )?(?=\d)/i, 'midden '],
  [/^laat (?=\d)/i, 'eind '],
];

function inOtherWords(text: string): string {
  return WORDS.reduce((words, [pattern, instead]) => words.replace(pattern, instead), text.replace(/\s+/g, ' ').trim());
}

/** `A.D. 134-138`, `134-138 A.D.`, `98 AD-99 AD` in the one form that the core reads. */
function plainEra(text: string): string {
  const plain = text
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

/** A year below 1000 counted from the Hijra, where the keeper settled that. */
function bareYears(text: string, { years: era }: Settings): readonly string[] {
  const { about, rest } = afterAbout(text);
  const [, from, to] = /^(\d{1,3})(?: ?[-–/] ?(\d{1,3}))?$/.exec(rest) ?? [];
  if (from === undefined || era !== 'AH') return [];
  return [`${about}AH ${to === undefined ? from : `${from}-${to}`}`];
}

/** Whether a text of figures needs what the column settles: a sign, a year below 1000, a fraction of a spreadsheet, or an era of its own. */
function isSettled(text: string, { calendar }: Settings): boolean {
  return calendar === 'BC' || /[-\u2212]\d|\.0/.test(text.replace(/\d[-–]\d/g, '')) || /^\D*\d{1,3}(?!\d)/.test(text);
}

const MONTHS = 'January February March April May June July August September October November December'.split(' ');

/** `1902-10` by the convention of its column: the years 1902 to 1910, or a month; null for what is no such text. */
function monthOrYears(
  text: string,
  { hyphen }: Settings,
): { readonly text: string } | { readonly because: string } | null {
  const [, year = '', last = ''] = /^(\d{4})-(\d\d)$/.exec(text) ?? [];
  const number = Number(last);
  if (year === '' || number < 1 || number > 12) return null;
  const isRange = number > Number(year.slice(2));
  const range = `${year}/${year.slice(0, 2)}${last}`;
  const month = `${MONTHS[number - 1] ?? ''} ${year}`;
  if (hyphen === 'month') return { text: month };
  if (hyphen === 'range' && isRange) return { text: range };
  return {
    because: `"${text}" may be ${isRange ? `the years ${year} to ${year.slice(0, 2)}${last}` : 'two years'} or ${month}. Say in the mapping which, hyphen: range or hyphen: month under read:, or write it in full.`,
  };
}

type Day = { readonly iso: string } | { readonly because: string };

/** `14/05/2011` or `14/5/11` with the year first; null when it is no day, and why not when nobody said which figure is which. */
function slashedDay(text: string, { days, short }: Settings): Day | null {
  const [, first = '', second = '', written] = /^(\d{1,2})[./-](\d{1,2})[./-](\d{4}|\d{2})$/.exec(text.trim()) ?? [];
  if (written === undefined) return null;
  const [a, b] = [Number(first), Number(second)];
  if (Math.max(a, b) > 31 || Math.min(a, b) > 12 || Math.min(a, b) === 0) return null;
  const dayFirst = b > 12 ? false : a > 12 || a === b ? true : days === undefined ? null : days === 'day first';
  const year = written.length === 4 ? written : shortYear(written, short);
  if (year === null)
    return {
      because: `"${text}" has a year of two figures. Say in the mapping which years are meant, short: 1930-2029 under read:, or write the year with four.`,
    };
  const [dayThen, monthThen] = [`${year}-${two(second)}-${two(first)}`, `${year}-${two(first)}-${two(second)}`];
  if (dayFirst === null)
    return {
      because: `"${text}" may be ${dayThen} or ${monthThen}. Say in the mapping whether the day or the month comes first, or write the year first.`,
    };
  return { iso: dayFirst ? dayThen : monthThen };
}

/** A year of two figures by the hundred years the keeper says are meant. */
function shortYear(figures: string, short: Settings['short']): string | null {
  if (short === undefined) return null;
  return short === '1930-2029' && Number(figures) < 30 ? `20${figures}` : `19${figures}`;
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
