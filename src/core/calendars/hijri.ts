import { dayFromJulian } from './civil.ts';

/** 1 Muharram AH 1, Friday 16 July 622 of the Julian calendar: the civil epoch. */
const HIJRI_EPOCH = dayFromJulian({ year: 622, month: 7, day: 16 });

/**
 * The tabular civil Hijri calendar: odd months have 30 days, even ones 29, and in a cycle of thirty years the years
 * 2, 5, 7, 10, 13, 16, 18, 21, 24, 26 and 29 have one day more. Months were begun by sight of the moon, so a
 * real coin's year may differ from this by a day or two at either end.
 */
export function dayFromHijri(year: number, month: number, day: number): number {
  const before = year - 1;
  const monthDays = 29 * (month - 1) + Math.floor(month / 2);
  return HIJRI_EPOCH - 1 + 354 * before + Math.floor((11 * year + 3) / 30) + monthDays + day;
}

/** The Hijri year, month and day of a fixed number. */
export function hijriFromDay(fixed: number): { year: number; month: number; day: number } {
  const year = Math.floor((30 * (fixed - HIJRI_EPOCH) + 10_646) / 10_631);
  const dayOfYear = fixed - dayFromHijri(year, 1, 1);
  const month = Math.floor((11 * dayOfYear + 330) / 325);
  return { year, month, day: fixed - dayFromHijri(year, month, 1) + 1 };
}

/** First and last day of a Hijri year, as fixed numbers. */
export function hijriYear(year: number): { first: number; last: number } {
  return { first: dayFromHijri(year, 1, 1), last: dayFromHijri(year + 1, 1, 1) - 1 };
}

/** First and last day of a Hijri month, 1 to 12, as fixed numbers. */
export function hijriMonth(year: number, month: number): { first: number; last: number } {
  const last = month === 12 ? hijriYear(year).last : dayFromHijri(year, month + 1, 1) - 1;
  return { first: dayFromHijri(year, month, 1), last };
}
