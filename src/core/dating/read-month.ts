import { hebrewMonth } from '../calendars/hebrew.ts';
import { hijriMonth } from '../calendars/hijri.ts';
import { LAST_REPUBLICAN_YEAR, republicanMonth } from '../calendars/republican.ts';
import { good, refuse, type Outcome } from '../outcome.ts';
import type { Reading } from './dating.ts';
import { readRoman } from './numerals.ts';
import { readDays, type PointReader } from './reading.ts';
import { HEBREW_MONTHS, HIJRI_MONTHS, REPUBLICAN_MONTHS } from './words.ts';
import { foldedText } from './written-text.ts';

interface MonthCalendar {
  readonly calendar: 'hijri' | 'hebrew' | 'republican';
  /** What its years are called, as another month of the same year is written. */
  readonly sign: string;
  /** Years outside these are of another calendar: `av. 1280`, the Turkish `Nisan 1945`. */
  readonly firstYear: number;
  readonly lastYear: number;
  readonly days: (year: number, month: number) => { first: number; last: number } | undefined;
}

const HIJRI: MonthCalendar = { calendar: 'hijri', sign: 'AH', firstYear: 1, lastYear: 1500, days: hijriMonth };
const REPUBLICAN: MonthCalendar = {
  calendar: 'republican',
  sign: 'An',
  firstYear: 1,
  lastYear: LAST_REPUBLICAN_YEAR,
  days: republicanMonth,
};
const HEBREW: MonthCalendar = {
  calendar: 'hebrew',
  sign: 'AM',
  firstYear: 5000,
  lastYear: 6000,
  days: (year, month) => hebrewMonth(year, HEBREW_MONTHS[month - 1]?.[0] ?? ''),
};

const BY_NAME = new Map(
  [
    { of: HIJRI, months: HIJRI_MONTHS },
    { of: REPUBLICAN, months: REPUBLICAN_MONTHS },
    { of: HEBREW, months: HEBREW_MONTHS },
  ].flatMap(({ of, months }) =>
    months.flatMap((names, index) => names.map((name) => [foldedText(name), { of, month: index + 1 }] as const)),
  ),
);

const DAY = '(?:(?<day>\\d{1,2})(?:st|nd|rd|th|er|e|\\.)?(?: of)? )?';
const YEAR = '(?:(?:AH|AM|an|année|year) )?(?<year>\\d{1,4}|[IVX]{1,4})(?: (?:AH|AM))?';
const FORMS = [
  new RegExp(`^${DAY}(?<month>\\p{L}[^\\d,]*?),? ${YEAR}$`, 'iu'),
  new RegExp(`^(?:AH|AM) (?<year>\\d{1,4}),? ${DAY}(?<month>\\p{L}[^\\d,]*)$`, 'iu'),
];

/** `Rajab AH 1255`, `12 Rabi I 294`, `15 Vendémiaire an IV`, `14 Iyar 5708`: months of other calendars, and their days. */
export const readMonth: PointReader = (text) => {
  for (const form of FORMS) {
    const groups = form.exec(text)?.groups;
    const named = groups && BY_NAME.get(foldedText(groups['month'] ?? ''));
    if (groups && named) return dayOf(text, named, groups);
  }
  return undefined;
};

function dayOf(
  text: string,
  { of, month }: { of: MonthCalendar; month: number },
  { day, year: written = '' }: Record<string, string>,
): Outcome<Reading> | undefined {
  const year = /^\d/.test(written) ? Number(written) : readRoman(written.toUpperCase());
  if (year === undefined || year < of.firstYear || (of === HIJRI && year > of.lastYear)) return undefined;
  const days = year > of.lastYear ? undefined : of.days(year, month);
  if (!days) return refuse(`"${text}" is no month of a year ${of.sign}; write the year, such as ${of.sign} 5.`);
  const { first, last } = days;
  if (day === undefined) return good(readDays(first, last, of.calendar, 'days'));
  const wanted = first + Number(day) - 1;
  if (wanted < first || wanted > last) {
    return refuse(`"${text}" names a day its month does not have; write one from 1 to ${String(last - first + 1)}.`);
  }
  return good(readDays(wanted, wanted, of.calendar, 'days'));
}
