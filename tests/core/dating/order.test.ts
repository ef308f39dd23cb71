import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isoYear } from '../../../src/core/calendars/civil.ts';
import { formatRoman } from '../../../src/core/dating/numerals.ts';
import { yearsOf } from '../../../src/core/dating/interval.ts';
import { UNDER_EDWARD_I, readAs } from './read-as.ts';
import { tries } from '../../tries.ts';

const plain = (year: number) => (year <= 0 ? `${String(1 - year)} BC` : `AD ${String(year)}`);
const ordinal = (number: number) => `${String(number)}${['th', 'st', 'nd', 'rd'][number % 20] ?? 'th'}`;
const day = (count: number) => `${String(1 + (count % 28))} March ${String(1100 + Math.floor(count / 28))}`;

/** Every way of writing a date that holds one number, with the numbers it may hold. */
const WAYS: readonly (readonly [what: string, least: number, most: number, write: (number: number) => string])[] = [
  ['EDTF', -799, 2100, (year) => `edtf:${isoYear(year)}`],
  ['years of Christ', -799, 2100, plain],
  ['about', -799, 2100, (year) => `c. ${plain(year)}`],
  ['before', -799, 2100, (year) => `before ${plain(year)}`],
  ['after', -799, 2100, (year) => `after ${plain(year)}`],
  ['from a year to the next', -799, 2099, (year) => `${plain(year)} - ${plain(year + 1)}`],
  ['old style', 1100, 1749, (year) => `${String(year)}/${String(year + 1).slice(-3)}`],
  ['Roman capitals', 1200, 2100, formatRoman],
  ['decades', 101, 199, (decade) => (decade % 10 === 0 ? `${String(decade)}0-${String(decade)}9` : `${String(decade)}0s`)],
  ['centuries', 1, 21, (century) => `${ordinal(century)} century`],
  ['late centuries', 1, 21, (century) => `late ${ordinal(century)} century`],
  ['days', 0, 28 * 900, day],
  ['months', 0, 1000, (month) => `${['January', 'May', 'August', 'December'][month % 4] ?? ''} ${String(1100 + Math.floor(month / 4))}`],
  ['Hijri', 1, 1500, (year) => `AH ${String(year)}`],
  ['Hijri with a year of reign', 1, 60, (reign) => `AH 1255, year ${String(reign)}`],
  ['Seleucid', 1, 500, (year) => `Seleucid ${String(year)}`],
  ['Seleucid of Babylon', 1, 500, (year) => `SEB ${String(year)}`],
  ['Hebrew', 3761, 5860, (year) => `AM ${String(year)}`],
  ['Saka', 1, 2000, (year) => `Saka ${String(year)}`],
  ['Minguo', 1, 180, (year) => `Minguo ${String(year)}`],
  ['Meiji', 1, 45, (year) => `Meiji ${String(year)}`],
  ['regnal', 1, 35, (year) => `Edward I, year ${String(year)}`],
]; // prettier-ignore

test.for(WAYS)('%s, from %d to %d: an earlier text never gives a later date', ([, least, most, write]) => {
  const number = fc.integer({ min: least, max: most });
  fc.assert(
    fc.property(number, number, (one, other) => {
      const earlier = yearsOf(readAs(write(Math.min(one, other)), UNDER_EDWARD_I));
      const later = yearsOf(readAs(write(Math.max(one, other)), UNDER_EDWARD_I));
      expect(earlier.low).toBeLessThanOrEqual(later.low);
      expect(earlier.high).toBeLessThanOrEqual(later.high);
    }),
    { numRuns: tries(300) },
  );
});

test('nor an earlier day a later one, within one year as well', () => {
  const count = fc.integer({ min: 0, max: 28 * 900 });
  fc.assert(
    fc.property(count, count, (one, other) => {
      const [earlier, later] = [Math.min(one, other), Math.max(one, other)].map((n) => readAs(day(n)));
      expect((earlier?.from ?? '') <= (later?.from ?? '')).toBe(true);
    }),
  );
});
