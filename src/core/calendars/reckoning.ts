import { daysInMonth, type CivilDay } from './civil-day.ts';
import { dayFromGregorian, gregorianFromDay, isGregorianLeap } from './gregorian.ts';
import { dayFromJulian, isJulianLeap, julianFromDay } from './julian.ts';

/** Which of the two European calendars a day is named in. */
export type Reckoning = 'julian' | 'gregorian';

/** Friday 15 October 1582, the first day of the Gregorian calendar (*Inter gravissimas*). */
const REFORM_DAY = dayFromGregorian({ year: 1582, month: 10, day: 15 });

/** The house rule: days before 15 October 1582 are Julian, from then on Gregorian, unless a text says old style. */
export function reckoningOf({ year, month, day }: CivilDay): Reckoning {
  return year * 10_000 + month * 100 + day < 15_821_015 ? 'julian' : 'gregorian';
}

/** The fixed number of a day named in a reckoning, or by the house rule when none is named. */
export function dayFromCivil(civil: CivilDay, reckoning: Reckoning = reckoningOf(civil)): number {
  return reckoning === 'julian' ? dayFromJulian(civil) : dayFromGregorian(civil);
}

export function civilFromDay(fixed: number, reckoning: Reckoning): CivilDay {
  return reckoning === 'julian' ? julianFromDay(fixed) : gregorianFromDay(fixed);
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

/** The fixed number of a day written by `isoDay`. */
export function dayFromIso(iso: string, reckoning: Reckoning): number {
  const [, year, month, day] = /^(Y?-?\d+)-(\d\d)-(\d\d)$/.exec(iso) ?? [];
  return dayFromCivil({ year: Number(year?.replace('Y', '')), month: Number(month), day: Number(day) }, reckoning);
}

/** A first and a last day in one reckoning: Julian when both lie before the reform, else Gregorian for both. */
export function isoDays(first: number, last: number): { from: string; to: string; reckoning: Reckoning } {
  const reckoning = last < REFORM_DAY ? 'julian' : 'gregorian';
  return { from: isoDay(civilFromDay(first, reckoning)), to: isoDay(civilFromDay(last, reckoning)), reckoning };
}
