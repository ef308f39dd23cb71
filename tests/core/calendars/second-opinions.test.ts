import { expect, test } from 'vitest';
import { yearsOfEra } from '../../../src/core/calendars/counted-years.ts';
import { gregorianFromDay, dayFromJulian, dayFromGregorian } from '../../../src/core/calendars/civil.ts';
import { hebrewYear } from '../../../src/core/calendars/hebrew.ts';
import { hijriYear } from '../../../src/core/calendars/hijri.ts';
import { JAPANESE_ERAS } from '../../../src/core/calendars/reign-titles.ts';
import { BRANCHES, cyclePlaceOfYear, STEMS } from '../../../src/core/dating/read-cycle.ts';

/*
 * Second opinions come from ICU, the Unicode library behind Intl, and from the engine's own Date for the Gregorian
 * calendar, which ECMAScript defines as proleptic. They are asked about every year, not about samples.
 */
const UNIX_EPOCH = 719_163;
const MILLISECONDS_IN_DAY = 86_400_000;

function dateOf(fixed: number): Date {
  return new Date((fixed - UNIX_EPOCH) * MILLISECONDS_IN_DAY);
}

function icu(calendar: string, options: Intl.DateTimeFormatOptions = {}) {
  const format = new Intl.DateTimeFormat(`en-u-ca-${calendar}-nu-latn`, {
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    timeZone: 'UTC',
    ...options,
  });
  return (fixed: number): Record<string, string> =>
    Object.fromEntries(format.formatToParts(dateOf(fixed)).map(({ type, value }) => [type, value]));
}

test('every Gregorian year from 801 BC to 2100 begins on the day the engine says, and has its February', () => {
  for (let year = -800; year <= 2100; year += 1) {
    const first = dateOf(dayFromGregorian({ year, month: 1, day: 1 }));
    expect([first.getUTCFullYear(), first.getUTCMonth(), first.getUTCDate()]).toEqual([year, 0, 1]);
    const march = dateOf(dayFromGregorian({ year, month: 3, day: 1 }) - 1);
    const february = gregorianFromDay(dayFromGregorian({ year, month: 3, day: 1 }) - 1);
    expect([march.getUTCMonth() + 1, march.getUTCDate()]).toEqual([february.month, february.day]);
  }
});

test('every Hijri year from AH 1 to 1500 begins and ends where ICU begins and ends it (islamic-civil)', () => {
  const read = icu('islamic-civil');
  for (let year = 1; year <= 1500; year += 1) {
    const { first, last } = hijriYear(year);
    expect(read(first)).toMatchObject({ year: String(year), month: '1', day: '1' });
    expect(read(last)).toMatchObject({ year: String(year), month: '12' });
    expect(read(last + 1)).toMatchObject({ year: String(year + 1), month: '1', day: '1' });
  }
});

test('every Hebrew year from AM 3000 to 5900 begins where ICU begins it', () => {
  const read = icu('hebrew');
  for (let year = 3000; year <= 5900; year += 1) {
    const { first, last } = hebrewYear(year);
    expect(read(first)).toMatchObject({ year: String(year), day: '1' });
    expect(read(last)).toMatchObject({ year: String(year), day: '29' });
    expect(read(last + 1)).toMatchObject({ year: String(year + 1), day: '1' });
  }
});

/*
 * ICU has no Julian calendar by name, but the Coptic year is the Julian year begun on 29 August (on 30 August before
 * a Julian leap year): year 1 of the martyrs began on 29 August 284.
 */
test('every Julian year from 285 to 2100 agrees with ICU through the Coptic calendar', () => {
  const read = icu('coptic');
  for (let year = 285; year <= 2100; year += 1) {
    const day = (year + 1) % 4 === 0 ? 30 : 29;
    const newYear = dayFromJulian({ year, month: 8, day });
    expect(read(newYear)).toMatchObject({ year: String(year - 283), month: '1', day: '1' });
    expect(read(newYear - 1)).toMatchObject({ year: String(year - 284), month: '13' });
  }
});

/** The same arithmetic in the years before, by the other rule of the calendar: 1461 days in any four years. */
test('every Julian year from 801 BC to 2100 follows the last after 365 days, or 366 every fourth', () => {
  expect(dayFromJulian({ year: 284, month: 8, day: 29 })).toBe(103_605);
  for (let year = -800; year <= 2100; year += 1) {
    const length = dayFromJulian({ year: year + 1, month: 1, day: 1 }) - dayFromJulian({ year, month: 1, day: 1 });
    expect(length).toBe(((year % 4) + 4) % 4 === 0 ? 366 : 365);
  }
});

test('every Saka year from 1 to 2000 spans the two years in which ICU begins and ends it (indian)', () => {
  const read = icu('indian');
  for (let year = 1; year <= 2000; year += 1) {
    const { low, high } = yearsOfEra('saka', year);
    expect(read(dayFromGregorian({ year: low, month: 7, day: 1 }))).toMatchObject({ year: String(year) });
    expect(read(dayFromGregorian({ year: high, month: 2, day: 1 }))).toMatchObject({ year: String(year) });
  }
});

test('every Chinese year from 1650 to 2100 is in the cycle where ICU puts it', () => {
  const format = new Intl.DateTimeFormat('en-u-ca-chinese', { year: 'numeric', timeZone: 'UTC' });
  for (let year = 1650; year <= 2100; year += 1) {
    const place = cyclePlaceOfYear(year);
    const parts = format.formatToParts(dateOf(dayFromGregorian({ year, month: 7, day: 1 })));
    const name = Object.fromEntries(parts.map(({ type, value }) => [type, value]))['yearName'];
    expect(name).toBe(`${STEMS[place % 10] ?? ''}-${BRANCHES[place % 12] ?? ''}`);
  }
});

test('every Japanese era has the characters and the first year that ICU gives it (japanese)', () => {
  const format = new Intl.DateTimeFormat('ja-u-ca-japanese-nu-latn', { era: 'long', year: 'numeric', timeZone: 'UTC' });
  const read = (year: number) => {
    const parts = format.formatToParts(dateOf(dayFromGregorian({ year, month: 12, day: 31 })));
    return Object.fromEntries(parts.map(({ type, value }) => [type, value]));
  };
  for (const { characters, first } of JAPANESE_ERAS) {
    expect(read(first)).toMatchObject({ era: characters, year: '元' });
    expect(read(first - 1)['era']).not.toBe(characters);
  }
});
