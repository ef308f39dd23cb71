import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { dayFromGregorian, gregorianFromDay } from '../../../src/core/calendars/civil.ts';
import { dayFromHijri, hijriFromDay, hijriYear } from '../../../src/core/calendars/hijri.ts';
import { dayFromJulian, julianFromDay } from '../../../src/core/calendars/civil.ts';
import { isoDay } from '../../../src/core/calendars/civil.ts';
import { SAME_DAYS } from '../../published/calendar-facts.ts';

type Triple = readonly [year: number, month: number, day: number];

interface SampleDate {
  readonly rd: number;
  readonly islamic_civil: Triple;
  readonly gregorian_astronomical: Triple;
  readonly julian_astronomical: Triple;
}

interface HijriYearRow {
  readonly ah: number;
  readonly julian: readonly [string, string];
  readonly gregorian: readonly [string, string];
  readonly days: number;
}

function rowsOf(name: string): unknown {
  const path = new URL(`../../published/${name}`, import.meta.url);
  return (JSON.parse(readFileSync(path, 'utf8')) as { rows: unknown }).rows;
}

const sampleDates = rowsOf('calendar-sample-dates.json') as readonly SampleDate[];
const hijriYears = rowsOf('hijri-years.json') as readonly HijriYearRow[];
const civil = ([year, month, day]: Triple) => ({ year, month, day });

describe('sample dates of Reingold and Dershowitz, Calendrical Calculations', () => {
  test.for(sampleDates)('day $rd is named alike in three calendars', (row) => {
    expect(gregorianFromDay(row.rd)).toEqual(civil(row.gregorian_astronomical));
    expect(julianFromDay(row.rd)).toEqual(civil(row.julian_astronomical));
    expect(hijriFromDay(row.rd)).toEqual(civil(row.islamic_civil));
    expect(dayFromGregorian(civil(row.gregorian_astronomical))).toBe(row.rd);
    expect(dayFromJulian(civil(row.julian_astronomical))).toBe(row.rd);
    expect(dayFromHijri(...row.islamic_civil)).toBe(row.rd);
  });
});

describe('first and last days of Hijri years', () => {
  test.for(hijriYears)('AH $ah', ({ ah, julian, gregorian, days }) => {
    const { first, last } = hijriYear(ah);
    expect([first, last].map((day) => isoDay(julianFromDay(day)))).toEqual(julian);
    expect([first, last].map((day) => isoDay(gregorianFromDay(day)))).toEqual(gregorian);
    expect(last - first + 1).toBe(days);
  });
});

describe('days that two calendars name differently', () => {
  test.for(SAME_DAYS)('$what ($source)', ({ julian, gregorian }) => {
    expect(dayFromJulian(civil(julian))).toBe(dayFromGregorian(civil(gregorian)));
  });
});

test('the long count of days does not miss or repeat a day in any calendar, 1500 BC to AD 2500', () => {
  for (let day = -548_000; day < 913_000; day += 1) {
    const hijri = hijriFromDay(day);
    if (dayFromGregorian(gregorianFromDay(day)) !== day) expect.fail(`Gregorian ${String(day)}`);
    if (dayFromJulian(julianFromDay(day)) !== day) expect.fail(`Julian ${String(day)}`);
    if (dayFromHijri(hijri.year, hijri.month, hijri.day) !== day) expect.fail(`Hijri ${String(day)}`);
  }
});
