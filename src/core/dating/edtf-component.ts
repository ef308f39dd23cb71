import { lengthOfMonth } from '../calendars/civil.ts';
import { good, refuse, type Outcome } from '../outcome.ts';

/** One date of EDTF: a year, a season, a month or a day, any digit of which may be X. */
export interface Component {
  /** First and last year it allows; null when the whole year is X. */
  readonly low: number | null;
  readonly high: number | null;
  /** First and last month and day, for telling which of two dates comes first. */
  readonly first: readonly [month: number, day: number];
  readonly last: readonly [month: number, day: number];
  /** Whether year and month are written in full, so that first and last day are known. */
  readonly daysKnown: boolean;
  readonly about: boolean;
  readonly doubtful: boolean;
}

/** *Perhaps*, *about* or both may stand before or after any part. */
const MARK = '[?~%]?';
const MONTH_AND_DAY = `-${MARK}(?<month>[\\dX]{2})${MARK}(?:-${MARK}(?<day>[\\dX]{2})${MARK})?`;
const DATE = new RegExp(`^${MARK}(?<year>-?[\\dX]{4})(?:S(?<significant>\\d))?${MARK}(?:${MONTH_AND_DAY})?$`);
const LONG_YEAR = /^[?~%]?Y(?<digits>-?\d+)(?:E(?<zeros>\d{1,2}))?(?:S(?<significant>\d{1,2}))?[?~%]?$/;
const MINUTES = '(?::?[0-5]\\d)?';
const ZONE = `\\+(?:0\\d|1[0-3])${MINUTES}|\\+14(?::?00)?|-(?:0\\d|1[01])${MINUTES}|-12(?::?00)?`;
const CLOCK = '(?:[01]\\d|2[0-3]):[0-5]\\d:[0-5]\\d(?:\\.\\d+)?|24:00:00';
const TIME = new RegExp(`T(?:${CLOCK})(?:Z|(?!-00(?::?00)?$)(?:${ZONE}))?$`);

/** The months of spring, summer, autumn and winter, EDTF's 21 to 24, for ordering only: the sky differs by hemisphere. */
const SEASONS: ReadonlyMap<number, readonly [first: number, last: number]> = new Map([
  [21, [3, 5]],
  [22, [6, 8]],
  [23, [9, 11]],
  [24, [12, 12]],
] as const);

/** Reads one date of EDTF. Undefined when the text does not have the shape of one. */
export function parseComponent(text: string): Outcome<Component> | undefined {
  const untimed = /^-?\d{4}-\d\d-\d\dT/.test(text) ? text.replace(TIME, '') : text;
  const marks = { about: /[~%S]/.test(untimed), doubtful: /[?%]/.test(untimed) };
  const long = LONG_YEAR.exec(untimed)?.groups;
  if (long) return parseLongYear(text, long, marks);
  const groups = DATE.exec(untimed)?.groups;
  if (!groups?.['year']) return undefined;
  if (groups['year'] === '-0000') return refuse('There is no year -0000; write 0000 for 1 BC.');
  const years = yearsOfDigits(groups['year'], groups['significant']);
  if (!years) return refuse(`"${text}" asks for more significant digits than a year has; write ${groups['year']}.`);
  return placeInYear(text, years, groups['month'], groups['day'], marks);
}

type Marks = Pick<Component, 'about' | 'doubtful'>;
type Years = Pick<Component, 'low' | 'high'>;

function parseLongYear(text: string, groups: Record<string, string>, marks: Marks): Outcome<Component> {
  const digits = groups['digits'] ?? '';
  const year = Number(digits) * 10 ** Number(groups['zeros'] ?? 0);
  if (groups['zeros'] === undefined && Math.abs(year) < 10_000) {
    return refuse(
      `Y is for years of five digits and more; write ${digits.replace(/\d+/, (all) => all.padStart(4, '0'))}.`,
    );
  }
  if (!Number.isSafeInteger(year))
    return refuse(`"${text}" is further away than years are counted here; write a nearer year.`);
  const years = yearsOfDigits(String(year), groups['significant']);
  if (!years) return refuse(`"${text}" asks for more significant digits than a year has; write Y${String(year)}.`);
  return placeInYear(text, years, undefined, undefined, marks);
}

/** The years that digits with X, or with a number of significant digits, allow. Undefined when there are too few digits. */
function yearsOfDigits(written: string, significant: string | undefined): Years | undefined {
  const negative = written.startsWith('-');
  const digits = negative ? written.slice(1) : written;
  if (/^X+$/.test(digits)) return { low: null, high: null };
  let near = Number(digits.replaceAll('X', '0'));
  let far = Number(digits.replaceAll('X', '9'));
  if (significant !== undefined) {
    const free = digits.length - Number(significant);
    if (free < 0 || Number(significant) === 0) return undefined;
    near -= near % 10 ** free;
    far = near + 10 ** free - 1;
  }
  return negative ? { low: -far, high: near === 0 ? 0 : -near } : { low: near, high: far };
}

function placeInYear(
  text: string,
  years: Years,
  month: string | undefined,
  day: string | undefined,
  marks: Marks,
): Outcome<Component> {
  if (month === undefined) return good({ ...years, first: [1, 1], last: [12, 31], daysKnown: false, ...marks });
  const season = SEASONS.get(Number(month));
  if (season && day === undefined) {
    return good({ ...years, first: [season[0], 1], last: [season[1], 31], daysKnown: false, ...marks });
  }
  const leapYearAllowed = years.low === null || years.low !== years.high;
  const longest = (candidate: number): number =>
    candidate === 2 && leapYearAllowed ? 29 : lengthOfMonth(years.low ?? 0, candidate);
  const months = numbersLike(month, 12);
  const days = day === undefined ? [] : numbersLike(day, 31);
  const fitting = day === undefined ? months : months.filter((candidate) => days.some((d) => d <= longest(candidate)));
  const firstMonth = fitting[0];
  const lastMonth = fitting.at(-1);
  if (firstMonth === undefined || lastMonth === undefined) return refuse(noSuchDay(text, months.length > 0));
  if (isLeftOut(years, month, day)) return refuse(leftOut(text));
  const lastDays = days.filter((d) => d <= longest(lastMonth));
  return good({
    ...years,
    first: [firstMonth, days[0] ?? 1],
    last: [lastMonth, lastDays.at(-1) ?? longest(lastMonth)],
    daysKnown: years.low !== null && years.low === years.high && firstMonth === lastMonth,
    ...marks,
  });
}

/** The numbers from 1 to a limit that two digits, either of which may be X, can stand for. */
function numbersLike(digits: string, limit: number): readonly number[] {
  const pattern = new RegExp(`^${digits.replaceAll('X', '\\d')}$`);
  const all = Array.from({ length: limit }, (_, index) => index + 1);
  return all.filter((number) => pattern.test(String(number).padStart(2, '0')));
}

/** The days from 5 to 14 October 1582 are in neither calendar: the days before are Julian here, those after Gregorian. */
function isLeftOut({ low, high }: Years, month: string, day = ''): boolean {
  return low === 1582 && high === 1582 && month === '10' && /^(?:0[5-9]|1[0-4])$/.test(day);
}

function leftOut(text: string): string {
  const day = String(Number(text.replace(/[?~%]/g, '').slice(-2)));
  return `"${text}" was left out: 4 October 1582 was followed by 15 October; write ${day} October 1582 OS for a day of the old calendar, NS for one of the new.`;
}

function noSuchDay(text: string, monthExists: boolean): string {
  return monthExists
    ? `"${text}" names a day its month does not have; write a day that exists, or the month alone.`
    : `"${text}" has no such month; months are 01 to 12, and a range of years is written 1279/1281.`;
}
