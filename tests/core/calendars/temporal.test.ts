import { Temporal } from 'temporal-polyfill/full';
import { describe, expect, test } from 'vitest';
import { yearsOfEra } from '../../../src/core/calendars/counted-years.ts';
import { dayFromGregorian, gregorianFromDay } from '../../../src/core/calendars/civil.ts';
import { hebrewYear } from '../../../src/core/calendars/hebrew.ts';
import { hijriYear } from '../../../src/core/calendars/hijri.ts';
import { JAPANESE_ERAS } from '../../../src/core/calendars/reign-titles.ts';
import { dayFromJulian, julianFromDay } from '../../../src/core/calendars/civil.ts';
import { readAs } from '../dating/read-as.ts';

/*
 * A second opinion beside ICU's: the Temporal polyfill of the package `temporal-polyfill`, whose calendars are its own
 * arithmetic over Julian day numbers. It is asked about every year: 801 BC to AD 2100, and AH 1 to 1500.
 */
const FIRST = -800;
const LAST = 2100;

/** The first day of day counting here: 1 January AD 1, Gregorian. */
const DAY_ONE = Temporal.PlainDate.from('0001-01-01');
const dayOf = (date: Temporal.PlainDate) => DAY_ONE.until(date.withCalendar('iso8601')).days + 1;
const newYear = (calendar: string, year: number) => Temporal.PlainDate.from({ calendar, year, month: 1, day: 1 });

/** Every year from one to another, so that a failure says which. */
function everyYear(first: number, last: number, look: (year: number) => readonly [ours: unknown, theirs: unknown]) {
  for (let year = first; year <= last; year += 1) {
    const [ours, theirs] = look(year);
    expect(ours, `year ${String(year)}`).toEqual(theirs);
  }
}

describe('every year, by the Temporal polyfill', () => {
  test('Gregorian: first day, and last of February', () => {
    everyYear(FIRST, LAST, (year) => {
      const february = newYear('gregory', year).add({ months: 2 }).subtract({ days: 1 });
      const { day } = gregorianFromDay(dayFromGregorian({ year, month: 3, day: 1 }) - 1);
      return [
        [dayFromGregorian({ year, month: 1, day: 1 }), day],
        [dayOf(newYear('gregory', year)), february.day],
      ];
    });
  });

  /*
   * Temporal has no Julian calendar. The Ethiopian year is the Julian one begun on 29 August, or on 30 August before a
   * Julian leap year, and the era of Adam (ethioaa), 5493 years ahead, is positive in all the years asked about.
   */
  test('Julian: the last days of August, by the Ethiopian calendar', () => {
    everyYear(FIRST, LAST, (year) => {
      const day = (((year + 1) % 4) + 4) % 4 === 0 ? 30 : 29;
      const fixed = dayOf(newYear('ethioaa', year + 5493));
      return [
        [dayFromJulian({ year, month: 8, day }), julianFromDay(fixed)],
        [fixed, { year, month: 8, day }],
      ];
    });
  });

  test('Hijri (islamic-civil): first and last day', () => {
    everyYear(1, 1500, (year) => {
      const first = dayOf(newYear('islamic-civil', year));
      return [hijriYear(year), { first, last: dayOf(newYear('islamic-civil', year + 1)) - 1 }];
    });
  });

  test('Hijri: the days in which a keeper’s "AH" is read, named Julian before the reform', () => {
    everyYear(1, 1500, (year) => {
      const { from, dayCalendar } = readAs(`AH ${String(year)}`);
      const fixed = dayOf(newYear('islamic-civil', year));
      const { year: y, month, day } = dayCalendar === 'gregorian' ? gregorianFromDay(fixed) : julianFromDay(fixed);
      return [from, [String(y).padStart(4, '0'), ...[month, day].map((n) => String(n).padStart(2, '0'))].join('-')];
    });
  });

  test('Hebrew: first and last day, AM 2961 to 5861, which are the years of ours asked about', () => {
    everyYear(FIRST + 3761, LAST + 3761, (year) => {
      const first = dayOf(newYear('hebrew', year));
      return [hebrewYear(year), { first, last: dayOf(newYear('hebrew', year + 1)) - 1 }];
    });
  });

  test('Saka (indian): the two years of ours that each touches', () => {
    everyYear(FIRST - 78, LAST - 79, (year) => {
      const first = newYear('indian', year).withCalendar('iso8601');
      const last = newYear('indian', year + 1)
        .subtract({ days: 1 })
        .withCalendar('iso8601');
      return [yearsOfEra('saka', year), { low: first.year, high: last.year }];
    });
  });

  test('Minguo (roc): the year of ours, also before the Republic', () => {
    everyYear(FIRST - 1911, LAST - 1911, (year) => {
      const ours = newYear('roc', year).withCalendar('iso8601').year;
      return [yearsOfEra('minguo', year), { low: ours, high: ours }];
    });
  });

  test('Japanese: era and year on 31 December, from the first year by the Western calendar', () => {
    everyYear(1873, LAST, (year) => {
      const { era = '', eraYear } = Temporal.PlainDate.from({ year, month: 12, day: 31 }).withCalendar('japanese');
      const known = JAPANESE_ERAS.find(({ names }) => names[0]?.toLowerCase() === era);
      return [readAs(`${known?.names[0] ?? era} ${String(eraYear)}`).earliest, year];
    });
  });
});
