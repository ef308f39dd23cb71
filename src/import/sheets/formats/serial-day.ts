import { modulo } from '../../../core/calendars/civil.ts';
import { dayFromGregorian, gregorianFromDay } from '../../../core/calendars/civil.ts';
import { julianFromDay } from '../../../core/calendars/civil.ts';

/** A point in time as a sheet shows it. `month` 0 and `day` 0 or 30 February cannot be; 29 February 1900 and 0 January 1900 can. */
export type SheetMoment = {
  readonly year: number;
  readonly month: number;
  readonly day: number;
  /** 0 Sunday to 6 Saturday, as the sheet has it. */
  readonly weekday: number;
  /** Seconds since midnight, with fractions. */
  readonly seconds: number;
  /** Whether the day was in the calendar: not so 29 February 1900, which the 1900 system counts, nor 0 January. */
  readonly isReal: boolean;
};

const DAY = 86_400_000;
const BEFORE_1900 = dayFromGregorian({ year: 1899, month: 12, day: 31 });
const FIRST_OF_1904 = dayFromGregorian({ year: 1904, month: 1, day: 1 });
const GREGORIAN = dayFromGregorian({ year: 1582, month: 10, day: 15 });

/**
 * The moment of a serial number (ECMA-376 part 1, 18.17.4.1). The 1900 system counts 1 January 1900 as 1 and a 29 February
 * 1900 that never was as 60; the 1904 system counts 1 January 1904 as 0. Days below nought come from programs that count
 * on backwards from 30 December 1899 and show what lies before October 1582 as Julian; what they show is told, and no day.
 * Null for what no program shows as a date.
 */
export function momentOf(serial: number, is1904: boolean): SheetMoment | null {
  // The fraction of a day is not exact in binary; a part of a millisecond short of midnight is midnight.
  const all = Math.round(serial * DAY);
  const whole = Math.floor(all / DAY);
  const seconds = (all - whole * DAY) / 1000;
  if (whole > 2_958_465 || whole < -693_595) return null;
  if (is1904) return civil(FIRST_OF_1904 + whole, seconds);
  if (whole < 0) return { ...civil(BEFORE_1900 - 1 + whole, seconds), isReal: false };
  // The year 1900 of the sheet has one day too many, and its weekdays before March are one too early.
  const weekday = modulo(whole + 6, 7);
  if (whole === 0) return { year: 1900, month: 1, day: 0, weekday, seconds, isReal: false };
  if (whole === 60) return { year: 1900, month: 2, day: 29, weekday, seconds, isReal: false };
  return { ...civil(BEFORE_1900 + (whole < 60 ? whole : whole - 1), seconds), weekday };
}

function civil(day: number, seconds: number): SheetMoment {
  const { year, month, day: ofMonth } = day < GREGORIAN ? julianFromDay(day) : gregorianFromDay(day);
  return { year, month, day: ofMonth, weekday: modulo(day, 7), seconds, isReal: day >= GREGORIAN };
}

export function formatIso({ year, month, day }: Pick<SheetMoment, 'year' | 'month' | 'day'>): string {
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
}

/** An ISO date and time as strict workbooks and OpenDocument write them; null for what is none. */
export function parseIsoMoment(text: string): SheetMoment | null {
  const parts = /^(-?\d{4,6})-(\d\d)-(\d\d)(?:T(\d\d):(\d\d)(?::(\d\d(?:[.,]\d+)?))?Z?)?$/.exec(text);
  if (parts === null) return null;
  const [year, month, day, hours, minutes, seconds] = parts
    .slice(1)
    .map((part) => Number((part || '0').replace(',', '.')));
  if (year === undefined || month === undefined || day === undefined) return null;
  const fixed = dayFromGregorian({ year, month, day });
  const there = gregorianFromDay(fixed);
  // A day before October 1582 is of one calendar to the sheet and of another to its reader; what is shown must do.
  const isReal = there.month === month && there.day === day && fixed >= GREGORIAN;
  const time = (hours ?? 0) * 3600 + (minutes ?? 0) * 60 + (seconds ?? 0);
  return { year, month, day, weekday: modulo(fixed, 7), seconds: time, isReal };
}
