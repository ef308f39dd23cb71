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
