import { dayFromJulian, modulo } from './civil.ts';

/** 1 Tishri AM 1, Monday 7 October 3761 BC of the Julian calendar. */
const HEBREW_EPOCH = dayFromJulian({ year: -3760, month: 10, day: 7 });

/** An hour is cut into 1080 parts; a mean month is 29 days, 12 hours and 793 parts. */
const PARTS_IN_DAY = 25_920;
const PARTS_OVER_29_DAYS = 13_753;

/** Days from the epoch to the mean new moon of Tishri, put off so that the year begins on no Sunday, Wednesday or Friday. */
function elapsedDays(year: number): number {
  const months = Math.floor((235 * year - 234) / 19);
  const parts = 12_084 + PARTS_OVER_29_DAYS * months;
  const days = 29 * months + Math.floor(parts / PARTS_IN_DAY);
  return modulo(3 * (days + 1), 7) < 3 ? days + 1 : days;
}

/** One or two days more, where the rule above would make a year of 356 days or leave one of 382. */
function lengthCorrection(year: number): number {
  const before = elapsedDays(year - 1);
  const here = elapsedDays(year);
  const after = elapsedDays(year + 1);
  if (after - here === 356) return 2;
  return here - before === 382 ? 1 : 0;
}

/** The fixed number of 1 Tishri, by the arithmetic of Hillel II as Reingold and Dershowitz state it. */
function hebrewNewYear(year: number): number {
  return HEBREW_EPOCH + elapsedDays(year) + lengthCorrection(year);
}

/** First and last day of a Hebrew year, 1 Tishri to 29 Elul, as fixed numbers. */
export function hebrewYear(year: number): { first: number; last: number } {
  return { first: hebrewNewYear(year), last: hebrewNewYear(year + 1) - 1 };
}

/** Months from the New Year on, with their days; Heshvan and Kislev vary, and Adar I is in leap years only. */
const MONTHS: readonly (readonly [name: string, days: number])[] = [
  ['tishri', 30],
  ['heshvan', 29],
  ['kislev', 30],
  ['tevet', 29],
  ['shevat', 30],
  ['adar i', 30],
  ['adar', 29],
  ['nisan', 30],
  ['iyar', 29],
  ['sivan', 30],
  ['tammuz', 29],
  ['av', 30],
  ['elul', 29],
];

/** Seven years in nineteen have thirteen months. */
function isHebrewLeap(year: number): boolean {
  return modulo(7 * year + 1, 19) < 7;
}

/**
 * First and last day of a Hebrew month as fixed numbers, by the lengths that Reingold and Dershowitz give. Undefined
 * for a month the year does not have. *Adar II* of a leap year is its `adar`.
 */
export function hebrewMonth(year: number, name: string): { first: number; last: number } | undefined {
  const newYear = hebrewNewYear(year);
  const length = hebrewNewYear(year + 1) - newYear;
  const wanted = name === 'adar ii' && isHebrewLeap(year) ? 'adar' : name;
  let first = newYear;
  for (const [month, usual] of MONTHS) {
    if (month === 'adar i' && !isHebrewLeap(year)) continue;
    const longer = month === 'heshvan' && length % 10 === 5 ? 1 : 0;
    const shorter = month === 'kislev' && length % 10 === 3 ? 1 : 0;
    const days = usual + longer - shorter;
    if (month === wanted) return { first, last: first + days - 1 };
    first += days;
  }
  return undefined;
}
