import { daysBeforeMonth, modulo, monthAndDay, type CivilDay } from './civil-day.ts';

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
