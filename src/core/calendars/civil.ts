/**
 * A day as the calendars of Europe name it. The year is astronomical: 1 is AD 1, 0 is 1 BC, -43 is 44 BC.
 *
 * Between calendars a day travels as its *fixed number*: whole days counted so that Monday 1 January AD 1 of the
 * (proleptic) Gregorian calendar is 1. The count is the R.D. of Reingold and Dershowitz, *Calendrical Calculations*.
 */
export interface CivilDay {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

const LONG_MONTHS = new Set([1, 3, 5, 7, 8, 10, 12]);

/** Days in a month of the Julian or Gregorian year; the two differ only in which years are leap. */
export function daysInMonth(month: number, leap: boolean): number {
  if (month === 2) return leap ? 29 : 28;
  return LONG_MONTHS.has(month) ? 31 : 30;
}

/** Days of the year that go before the first of a month, in a year that is leap or not. */
export function daysBeforeMonth(month: number, leap: boolean): number {
  let days = 0;
  for (let earlier = 1; earlier < month; earlier += 1) days += daysInMonth(earlier, leap);
  return days;
}

/** The month and day that stand at a place in the year, counted from 0 on 1 January. */
export function monthAndDay(dayOfYear: number, leap: boolean): { month: number; day: number } {
  let month = 1;
  let left = dayOfYear;
  while (left >= daysInMonth(month, leap)) {
    left -= daysInMonth(month, leap);
    month += 1;
  }
  return { month, day: left + 1 };
}

/** The remainder that is never negative, which is what calendars mean by one. */
export function modulo(dividend: number, divisor: number): number {
  return dividend - divisor * Math.floor(dividend / divisor);
}

const DAYS_IN_400_YEARS = 146_097;

/** Leap by the bull *Inter gravissimas* (1582): every fourth year, save the hundreds that 400 does not divide. */
export function isGregorianLeap(year: number): boolean {
  return modulo(year, 4) === 0 && (modulo(year, 100) !== 0 || modulo(year, 400) === 0);
}

/** The fixed number of a Gregorian day; before 1582 the calendar is carried back by arithmetic. */
export function dayFromGregorian({ year, month, day }: CivilDay): number {
  const before = year - 1;
  const leapDays = Math.floor(before / 4) - Math.floor(before / 100) + Math.floor(before / 400);
  return 365 * before + leapDays + daysBeforeMonth(month, isGregorianLeap(year)) + day;
}

/** The Gregorian day of a fixed number. */
export function gregorianFromDay(fixed: number): CivilDay {
  let year = Math.floor(((fixed - 1) * 400) / DAYS_IN_400_YEARS) + 1;
  // The average year puts the guess at most one year out, either way.
  while (dayFromGregorian({ year, month: 1, day: 1 }) > fixed) year -= 1;
  while (dayFromGregorian({ year: year + 1, month: 1, day: 1 }) <= fixed) year += 1;
  const dayOfYear = fixed - dayFromGregorian({ year, month: 1, day: 1 });
  return { year, ...monthAndDay(dayOfYear, isGregorianLeap(year)) };
}

/** Saturday 1 January AD 1 of the Julian calendar is 30 December of the year before, Gregorian. */
const JULIAN_EPOCH = -1;

/** Every fourth year is leap, carried back before AD 8 by arithmetic although Rome's priests then miscounted. */
export function isJulianLeap(year: number): boolean {
  return modulo(year, 4) === 0;
}

/** The fixed number of a Julian day. */
export function dayFromJulian({ year, month, day }: CivilDay): number {
  const before = year - 1;
  return JULIAN_EPOCH - 1 + 365 * before + Math.floor(before / 4) + daysBeforeMonth(month, isJulianLeap(year)) + day;
}

/** The Julian day of a fixed number. */
export function julianFromDay(fixed: number): CivilDay {
  const year = Math.floor((4 * (fixed - JULIAN_EPOCH) + 1464) / 1461);
  const dayOfYear = fixed - dayFromJulian({ year, month: 1, day: 1 });
  return { year, ...monthAndDay(dayOfYear, isJulianLeap(year)) };
}

/** Which of the two European calendars a day is named in. */
export type CivilCalendar = 'julian' | 'gregorian';

/** The calendar of a first and a last day; those of a span that crosses the reform are each named by their own. */
export type DayCalendar = CivilCalendar | 'julian to gregorian';

/** Friday 15 October 1582, the first day of the Gregorian calendar (*Inter gravissimas*). */
const REFORM_DAY = dayFromGregorian({ year: 1582, month: 10, day: 15 });

/** The house rule: days before 15 October 1582 are Julian, from then on Gregorian, unless a text says old style. */
export function calendarOf({ year, month, day }: CivilDay): CivilCalendar {
  return year * 10_000 + month * 100 + day < 15_821_015 ? 'julian' : 'gregorian';
}

/** The fixed number of a day named in a calendar, or by the house rule when none is named. */
export function dayFromCivil(civil: CivilDay, calendar: CivilCalendar = calendarOf(civil)): number {
  return calendar === 'julian' ? dayFromJulian(civil) : dayFromGregorian(civil);
}

export function civilFromDay(fixed: number, calendar: DayCalendar): CivilDay {
  const named = calendar === 'julian to gregorian' ? calendarOfDay(fixed) : calendar;
  return named === 'julian' ? julianFromDay(fixed) : gregorianFromDay(fixed);
}

function calendarOfDay(fixed: number): CivilCalendar {
  return fixed < REFORM_DAY ? 'julian' : 'gregorian';
}

/** Days in a month by the house rule, so that 29 February 1500 is a day and 29 February 1900 is not. */
export function lengthOfMonth(year: number, month: number): number {
  return daysInMonth(month, year < 1583 ? isJulianLeap(year) : isGregorianLeap(year));
}

/** A year in four digits as ISO 8601 writes it: `0079`, `-0043`; longer ones as EDTF does, `Y12000`. */
export function isoYear(year: number): string {
  const digits = String(Math.abs(year)).padStart(4, '0');
  const sign = year < 0 ? '-' : '';
  return digits.length > 4 ? `Y${sign}${digits}` : `${sign}${digits}`;
}

export function isoDay({ year, month, day }: CivilDay): string {
  return `${isoYear(year)}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
}

/** The day written by `isoDay`. */
export function civilFromIso(iso: string): CivilDay {
  const [, year, month, day] = /^(Y?-?\d+)-(\d\d)-(\d\d)$/.exec(iso) ?? [];
  return { year: Number(year?.replace('Y', '')), month: Number(month), day: Number(day) };
}

/** The fixed number of a day written by `isoDay`. */
export function dayFromIso(iso: string, calendar: DayCalendar): number {
  return dayFromCivil(civilFromIso(iso), calendar === 'julian to gregorian' ? undefined : calendar);
}

/** A first and a last day, each before the reform in Julian days and from then on in Gregorian ones. */
export function isoDays(first: number, last: number): { from: string; to: string; dayCalendar: DayCalendar } {
  const [one, other] = [calendarOfDay(first), calendarOfDay(last)];
  const dayCalendar = one === other ? one : 'julian to gregorian';
  return { from: isoDay(civilFromDay(first, one)), to: isoDay(civilFromDay(last, other)), dayCalendar };
}
