import { dayFromGregorian } from './civil.ts';

/** 1 Vendémiaire of the years I to XIV, the days in September as the calendar was kept (concordance of the years, law of 4 frimaire II). */
const FIRST_DAYS = [22, 22, 22, 23, 22, 22, 22, 23, 23, 23, 23, 24, 23, 23];

/** The calendar was in use from the year I (kept from the end of 1793) to 10 nivôse XIV, 31 December 1805. */
export const LAST_REPUBLICAN_YEAR = FIRST_DAYS.length;
const LAST_DAY = dayFromGregorian({ year: 1805, month: 12, day: 31 });

function newYear(year: number): number {
  return dayFromGregorian({ year: 1791 + year, month: 9, day: FIRST_DAYS[year - 1] ?? 23 });
}

/** First and last day of a year of the French Republic, 1 to 14, as fixed numbers. */
export function republicanYear(year: number): { first: number; last: number } {
  return { first: newYear(year), last: year === LAST_REPUBLICAN_YEAR ? LAST_DAY : newYear(year + 1) - 1 };
}

/** First and last day of a month of thirty days, 1 (Vendémiaire) to 12 (Fructidor), or of the days after them, 13. */
export function republicanMonth(year: number, month: number): { first: number; last: number } {
  const first = newYear(year) + 30 * (month - 1);
  return { first, last: Math.min(first + 29, republicanYear(year).last) };
}
