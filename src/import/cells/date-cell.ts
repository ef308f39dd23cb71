import type { DateContext, Dating } from '../../core/dating/dating.ts';
import { formatDate } from '../../core/dating/format-date.ts';
import { parseDate } from '../../core/dating/parse-date.ts';
import { AFTER_CHRIST, BEFORE_CHRIST } from '../../core/dating/words.ts';
import { anyOf } from '../../core/dating/written-text.ts';
import type { Settings } from '../columns/mapping.ts';
import { fact, unread } from './cell-result.ts';
import type { Cell, Said } from './cell-result.ts';

/** The date as the form reads it, or why it cannot be read; what stands beside a year is kept in a field that takes it, or told of. */
export function readDate(cell: Cell, field: string): readonly Said[] {
  const read = datingOf(cell);
  if (read.ok) return fact(field, read.text);
  const beside = besideYear(cell.text);
  const year = beside === null ? null : datingOf({ ...cell, text: beside.year });
  if (beside === null || year?.ok !== true) return unread(field, read.because);
  if (beside.kind === 'letter') return [...fact(field, year.text), ...fact('dated', beside.asStands)];
  if (beside.kind === 'posthumous')
    return [...fact(field, year.text), { kind: 'more', field: 'peculiarities', values: ['posthumous'] }];
  if (beside.kind === 'restrike') {
    // The year on it is not the year it was made in.
    const later = `after ${year.text}`;
    const again: Said = { kind: 'more', field: 'peculiarities', values: ['restrike'] };
    return [...(parseDate(later).ok ? fact(field, later) : []), ...fact('dated', beside.year), again];
  }
  const because = `The year is read; "${beside.text}" beside it has no field of its own. Write it in a column of what it is about, such as peculiarities or notes.`;
  return [...fact(field, year.text), { kind: 'unread', field, because, text: beside.text }];
}

export type Read = { readonly ok: true; readonly text: string } | { readonly ok: false; readonly because: string };

/**
 * The cell as the core reads it in what is known of its column and its row, in words that need neither. A day of the calendar is
 * written year first.
 */
export function datingOf({ text, value, settings, ruled }: Cell, dateOf?: 'event'): Read {
  if (value?.kind === 'day') return { ok: true, text: value.iso };
  const day = slashedDay(text, settings);
  if (day !== null) return 'because' in day ? { ok: false, because: day.because } : { ok: true, text: day.iso };
  const words = inOtherWords(text);
  const twoWays = TO_NO_MINUS.exec(words)?.groups;
  if (twoWays !== undefined && settings.minus !== undefined)
    return {
      ok: false,
      because: `"${text}" may end before or after Christ. Write ${twoWays['from'] ?? ''} to -${twoWays['to'] ?? ''}, or ${twoWays['from'] ?? ''} to ${twoWays['to'] ?? ''}.`,
    };
  const far = dateOf === 'event' || settings.stroke === 'range' ? undefined : farApart(words);
  if (far !== undefined) return { ok: false, because: far };
  const context = { ...contextOf(settings), ...ruled, ...(dateOf === undefined ? {} : { dateOf }) };
  const outcomes = inRowEra(words, settings).map((way) => parseDate(way, context));
  const read = outcomes.find(({ ok }) => ok) ?? outcomes[0] ?? parseDate(words, context);
  if (!read.ok) return { ok: false, because: read.problem };
  if (dateOf !== 'event' && isSeveralYears(read.value)) return { ok: false, because: severalYears(words, read.value) };
  const open = eraNotSaid(words, read.value, settings);
  return open === null ? { ok: true, text: withoutContext(words, read.value) } : { ok: false, because: open };
}

/** `1622 und 1624`: each of several years, and nothing of what is between. */
function isSeveralYears({ edtf }: Dating): boolean {
  return edtf.startsWith('{') && edtf.includes(',');
}

function severalYears(words: string, { edtf }: Dating): string {
  const years = edtf.slice(1, -1).split(',');
  return `"${words}" names ${years.length} years, and one piece is seldom made in several. Write ${years[0] ?? ''} - ${years.at(-1) ?? ''} for all between, ${years.join(' or ')} for one of them, or give each piece a row of its own.`;
}

/** `-57-38`, where years before Christ carry a minus: the second may carry none, or have lost it to the hyphen. */
const TO_NO_MINUS = /^(?<from>[-\u2212]\d{1,4})[-–—](?<to>\d{1,4})$/;

/** Coins bear years of Christ from about here on; a piece dated in one and struck in another is younger still. */
const FIRST_RESTRUCK = 1500;
/** Years of making further apart than this are seldom joined by a stroke. */
const FAR = 25;

/** `1923/1983`: a stroke joins the year on a piece and the year it was struck again as well as the ends of a long time. */
function farApart(words: string): string | undefined {
  const [, first = '', last = ''] = /^(\d{4}) ?\/ ?(\d{4})$/.exec(words) ?? [];
  if (Number(first) < FIRST_RESTRUCK || Number(last) - Number(first) <= FAR) return undefined;
  return `"${words}" may be a long time, or the year on the piece and the year it was struck again. Write ${first} - ${last} for all the years between; or ${last} here, and ${first} in a column of what is dated on it. Where all such cells are years between, write stroke: range in the mapping.`;
}

/** What a column has settled, as the core takes it. */
function contextOf({ minus, years, hyphen }: Settings): DateContext {
  return {
    ...(minus === undefined ? {} : { negative: minus === 'astronomical' ? 'astronomical' : 'historical' }),
    ...(years === undefined ? {} : { era: years }),
    ...(hyphen === undefined ? {} : { hyphen }),
  };
}

const ERA_WORD = new RegExp(`(?<!\\p{L})${anyOf([...BEFORE_CHRIST, ...AFTER_CHRIST])}(?!\\p{L})`, 'iu');
const ABOUT_YEARS =
  /^((?:circa|ca\.?|c\.?|um|vers|verso|hacia) ?(?=\d))?(\d{1,4}(?: ?[-–/] ?\d{1,4})?(?:,? (?:yr|year) \d{1,2})?)$/i;

/** The ways to read a cell whose row names an era in another column: with that era, or as it stands where it names its own. */
function inRowEra(words: string, { calendar }: Settings): readonly string[] {
  if (
    calendar === undefined ||
    calendar === 'AD' ||
    ERA_WORD.test(words) ||
    /[-\u2212]\d/.test(words.replace(/\d ?[-\u2212]/g, ''))
  )
    return [words];
  if (calendar === 'BC') return [`${words} BC`, ...(/\d{4}/.test(words) ? [] : [words])];
  const [, about = '', years] = ABOUT_YEARS.exec(words) ?? [];
  // A year of an era that is yet to come is one of ours.
  return years === undefined ? [words] : [`${about}${calendar} ${years}`, words];
}

/** Why a century is asked about: bare years of its column are not counted from Christ onwards, and it names no era. */
function eraNotSaid(words: string, { calendar, earliest, latest }: Dating, settings: Settings): string | null {
  const { years } = settings;
  const isOurs = calendar === 'gregorian' || calendar === 'julian';
  const isEarly = [earliest, latest].some((year) => typeof year === 'number' && year > 0 && year < 1000);
  if (!isOurs || !isEarly || years === undefined || years === 'AD' || settings.calendar === 'BC') return null;
  if (ERA_WORD.test(words) || /^-?0\d{3}/.test(words) || /[-\u2212]\d/.test(words)) return null;
  return `"${words}" names no era, and years of this column are counted ${years}. Write ${words} AD or ${words} BC.`;
}

/** A date in words that mean the same without its column and row: the cell's own where they do, years in figures, or EDTF. */
function withoutContext(words: string, dating: Dating): string {
  const isBefore = typeof dating.earliest === 'number' && dating.earliest <= 0;
  // 300-250 can only be before Christ; a file says so in words.
  const own = isBefore && /^\d+\D\d+$/.test(words) ? [] : [words];
  const ways = [...own, ...inYears(dating), dating.edtf, formatDate(dating)];
  return (
    ways.find((way) => {
      const read = parseDate(way);
      return read.ok && read.value.edtf === dating.edtf;
    }) ?? `edtf:${dating.edtf}`
  );
}

/** `57-38 BC`, `27 BC-AD 14`, `AD 98-117`, `1902/1910`. */
function inYears({ earliest, latest, about }: Dating): readonly string[] {
  if (typeof earliest !== 'number' || typeof latest !== 'number') return [];
  const bc = (year: number): number => 1 - year;
  const isOne = earliest === latest;
  const years =
    latest <= 0
      ? `${isOne ? '' : `${bc(earliest)}-`}${bc(latest)} BC`
      : earliest <= 0
        ? `${bc(earliest)} BC-AD ${latest}`
        : earliest >= 1000
          ? `${earliest}${isOne ? '' : `/${latest}`}`
          : `AD ${earliest}${isOne ? '' : `-${latest}`}`;
  return [`${about ? 'c. ' : ''}${years}`];
}

/** What lists put beside a date that says nothing of it, and a year with an ending that only lists have. */
const WORDS: readonly (readonly [RegExp, string])[] = [
  [/^r\.? (?=\d)|^(?:reigned|ruled|regn\.|reg\.) (?=\d)/i, ''],
  [/^(\d{3,4}) ?ish$/i, 'c. $1'],
  [/(?<=\d)\.0+(?!\d)/g, ''],
];

function inOtherWords(text: string): string {
  return WORDS.reduce((words, [pattern, instead]) => words.replace(pattern, instead), text.replace(/\s+/g, ' ').trim());
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
      because: `"${text}" has a year of two figures. Write short: 1930-2029 (or 1900-1999) under read: in the mapping, or the year with four figures.`,
    };
  const [dayThen, monthThen] = [`${year}-${two(second)}-${two(first)}`, `${year}-${two(first)}-${two(second)}`];
  if (dayFirst === null)
    return {
      because: `"${text}" may be ${dayThen} or ${monthThen}. Write days: day first (or month first) under read: in the mapping, or the year first.`,
    };
  return { iso: dayFirst ? dayThen : monthThen };
}

/** A year of two figures by the hundred years the keeper says are meant. */
export function shortYear(figures: string, short: Settings['short']): string | null {
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

/** What stands beside a year in one cell: `1931 D`, `1780 (restrike)`, `1872 (die 33)`. */
type BesideYear =
  /** A mint's letter, or the letters of its master, as they stand on the piece beside the year. */
  | { readonly kind: 'letter'; readonly year: string; readonly asStands: string }
  /** Struck again in later years with the old date on it. */
  | { readonly kind: 'restrike'; readonly year: string; readonly word: string }
  /** Struck in the name of one who was dead. */
  | { readonly kind: 'posthumous'; readonly year: string }
  | { readonly kind: 'more'; readonly year: string; readonly text: string };

const YEAR = '(\\d{4}(?:[-–/]\\d{1,4})?)';
/** Of a reign or an era, as it is on the piece: `1940 XVIII`, `1869 A. XXIV`. */
const REGNAL = '(?:(?:A|AN|ANNO)\\.? ?)?[IVXL]{1,8}';
const LETTERS = `${REGNAL}|` + '\\p{Lu}{1,3}\\*?|\\p{Lu}\\.(?:\\p{Lu}\\.){0,3}|\\p{Lu}-\\p{Lu}';
const WITH_LETTER = new RegExp(`^${YEAR}(?: ?[-–] ?| ?)(?:\\(?(${LETTERS})\\)?)$`, 'u');
const IN_BRACKETS = /^(\d{4}(?:[-–/]\d{1,4})?),? ?[([]([^)\]]*\p{L}[^)\]]*)[)\]]$/u;
const AFTER_COMMA = /^(\d{4}(?:[-–/]\d{1,4})?)[,;] ?(\p{L}{3}.*)$/u;
const RESTRIKES = `(?:(?:modern|later|official|mint) )?re-?strikes?, neupr[äa]gung, nachpr[äa]gung, np\\.?, refrappe, riconio,
  reacuñaci[oó]n, naslag`;
const RESTRIKE = new RegExp(`^(?:${RESTRIKES.split(/,\s*/).join('|')})$`, 'i');

const POSTHUMOUS = /^(?<date>.*\d.*?),? ?[([]?(?:posthum(?:ous(?:ly)?|e)?|postumo|póstumo|postuum)\.?[)\]]?$/i;

/** Letters that name an era or a calendar, and no mint. */
const ERAS = new Set('AD BC CE BCE AH AM SE VS CS BE RS ME EE NS OS SH JE FE KE BS AS SS'.split(' '));

/** The parts of such a cell; null for any other. A bracket with a year in it is no word beside one. */
function besideYear(text: string): BesideYear | null {
  const plain = text.replace(/\s+/g, ' ').trim();
  const posthumous = POSTHUMOUS.exec(plain)?.groups?.['date'];
  if (posthumous !== undefined) return { kind: 'posthumous', year: posthumous };
  const [, bracketed, inside] = IN_BRACKETS.exec(plain) ?? AFTER_COMMA.exec(plain) ?? [];
  if (bracketed !== undefined && inside !== undefined && RESTRIKE.test(inside))
    return { kind: 'restrike', year: bracketed, word: inside };
  const [, year, letters] = WITH_LETTER.exec(plain) ?? [];
  // In German lists NP is a Neuprägung: struck again.
  if (year !== undefined && letters === 'NP') return { kind: 'restrike', year, word: letters };
  if (year !== undefined && letters !== undefined && !ERAS.has(letters))
    return { kind: 'letter', year, asStands: plain };
  if (bracketed === undefined || inside === undefined || /\d{3}/.test(inside) || ERAS.has(inside)) return null;
  return { kind: 'more', year: bracketed, text: inside };
}
