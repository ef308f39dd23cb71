import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Dating } from '../../../src/core/dating/dating.ts';
import { formatDate } from '../../../src/core/dating/format-date.ts';
import { yearsOf } from '../../../src/core/dating/interval.ts';
import { formatRoman, readRoman } from '../../../src/core/dating/numerals.ts';
import { isoYear } from '../../../src/core/calendars/civil.ts';
import { readAs, readStrictly } from './read-as.ts';
import { tries } from '../../tries.ts';

const year = fc.integer({ min: -799, max: 2100 });
const ordered = fc.tuple(year, year).map(([one, other]) => [Math.min(one, other), Math.max(one, other)] as const);
const mark = fc.constantFrom('', '~', '?', '%');
const era = fc.integer({ min: 1, max: 1500 });

const plain = (value: number) => (value <= 0 ? `${String(1 - value)} BC` : `AD ${String(value)}`);

/** Every shape of date that the grammar knows, filled in at random. */
const anyDate: fc.Arbitrary<string> = fc.oneof(
  fc.tuple(year, mark).map(([value, sign]) => `edtf:${isoYear(value)}${sign}`),
  fc.tuple(ordered, mark, mark).map(([[low, high], one, other]) => `${isoYear(low)}${one}/${isoYear(high)}${other}`),
  ordered.map(([low, high]) => `${plain(low)} - ${plain(high)}`),
  ordered.map(([low, high]) => `between ${plain(low)} and ${plain(high)}`),
  fc.tuple(fc.constantFrom('c. ', 'perhaps ', 'probably c. ', 'um '), year).map(([word, value]) => word + plain(value)),
  fc
    .tuple(fc.constantFrom('before', 'after', 'not before', 'by', 'until', 'from'), year)
    .map(([word, value]) => `${word} ${plain(value)}`),
  fc.uniqueArray(year, { minLength: 2, maxLength: 4 }).map((years) => years.map(plain).join(' or ')),
  fc
    .tuple(
      fc.constantFrom('', 'early ', 'mid ', 'late ', 'first half of the ', 'last quarter of the '),
      fc.integer({ min: 1, max: 8 }),
      fc.constantFrom('', ' BC'),
    )
    .map(([part, century, bc]) => `${part}${String(century)}${['th', 'st', 'nd', 'rd'][century] ?? 'th'} century${bc}`),
  fc
    .integer({ min: 101, max: 209 })
    .filter((decade) => decade % 10 !== 0)
    .map((decade) => `${String(decade)}0s`),
  era.map((value) => `AH ${String(value)}`),
  fc
    .tuple(fc.integer({ min: 1, max: 1400 }), fc.integer({ min: 1, max: 40 }))
    .map(([value, reign]) => `AH ${String(value)}, year ${String(reign)}`),
  era.map((value) => `Seleucid ${String(value)}`),
  era.map((value) => `Saka ${String(value)}`),
  fc.integer({ min: 3761, max: 5800 }).map((value) => `AM ${String(value)}`),
  fc
    .date({ min: new Date(0), max: new Date(4_000_000_000_000), noInvalidDate: true })
    .map((date) => date.toISOString().slice(0, 10)),
  fc
    .tuple(fc.integer({ min: 1, max: 28 }), fc.constantFrom('January', 'März', 'avril', 'Dec.'), year)
    .map(([day, month, value]) => `${String(day)} ${month} ${plain(value)}`),
);

const sense = ({ earliest, latest, about, doubtful }: Dating) => ({ earliest, latest, about, doubtful });

describe('there and back', () => {
  test('what a visitor sees reads back to the same years and the same doubt', () => {
    fc.assert(
      fc.property(anyDate, (text) => {
        const dating = readAs(text);
        expect(sense(readAs(formatDate(dating)))).toEqual(sense(dating));
      }),
      // A thousand years that may be one: AH 1000 is 1591.
      { numRuns: tries(3000), examples: [['AD 1000 - AD 1591']] },
    );
  });

  test('the EDTF of a date reads back to the same years and the same doubt, and to itself', () => {
    fc.assert(
      fc.property(anyDate, (text) => {
        const dating = readAs(text);
        const again = readStrictly(dating.edtf);
        expect(sense(again)).toEqual(sense(dating));
        expect(again.edtf).toBe(dating.edtf);
      }),
      { numRuns: tries(3000) },
    );
  });

  test('the text is kept as it was written', () => {
    fc.assert(fc.property(anyDate, (text) => readAs(text).text === text));
  });

  test('a year in Roman capitals', () => {
    for (let number = 1; number < 5000; number += 1) expect(readRoman(formatRoman(number))).toBe(number);
  });
});

describe('intervals', () => {
  test('the first year is never later than the last, nor the first day than the last', () => {
    fc.assert(
      fc.property(anyDate, (text) => {
        const dating = readAs(text);
        const { low, high } = yearsOf(dating);
        expect(low).toBeLessThanOrEqual(high);
        for (const [first, last] of dating.years ?? []) {
          expect(low).toBeLessThanOrEqual(first);
          expect(first).toBeLessThanOrEqual(last);
          expect(last).toBeLessThanOrEqual(high);
        }
      }),
      { numRuns: tries(3000) },
    );
  });

  test('about does not widen, and an end that is open or unknown has no limit', () => {
    expect(yearsOf(readAs('c. 1280'))).toEqual({ low: 1280, high: 1280 });
    expect(yearsOf(readAs('before 1351'))).toEqual({ low: -Infinity, high: 1350 });
    expect(yearsOf(readAs('1279/..'))).toEqual({ low: 1279, high: Infinity });
    expect(yearsOf(readAs('n.d.'))).toEqual({ low: -Infinity, high: Infinity });
  });
});
