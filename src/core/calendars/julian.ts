import { daysBeforeMonth, modulo, monthAndDay, type CivilDay } from './civil-day.ts';

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
