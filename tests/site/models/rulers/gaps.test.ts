import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gapsIn } from '../../../../src/site/models/rulers/ruler-page.ts';

const span = fc
  .tuple(fc.integer({ min: 1000, max: 1100 }), fc.integer({ min: 0, max: 30 }))
  .map(([low, length]) => ({ low, high: low + length }));

describe('the gaps of a reign', () => {
  test('Edward I with pennies of 1280–1281 alone has a gap on either side', () => {
    expect(gapsIn({ low: 1272, high: 1307 }, [{ low: 1280, high: 1281 }])).toEqual([
      { low: 1272, high: 1279 },
      { low: 1282, high: 1307 },
    ]);
  });

  test('a piece that may be of any year leaves no gap', () => {
    expect(gapsIn({ low: 1272, high: 1307 }, [{ low: -Infinity, high: Infinity }])).toEqual([]);
  });

  test('a year is in a gap exactly when no piece touches it', () => {
    fc.assert(
      fc.property(span, fc.array(span, { maxLength: 8 }), (reign, pieces) => {
        const gaps = gapsIn(reign, pieces);
        const holds = (spans: readonly { low: number; high: number }[], year: number) =>
          spans.some(({ low, high }) => low <= year && year <= high);
        for (let year = reign.low; year <= reign.high; year += 1) {
          expect(holds(gaps, year)).toBe(!holds(pieces, year));
        }
        expect(gaps.every(({ low, high }) => reign.low <= low && low <= high && high <= reign.high)).toBe(true);
      }),
    );
  });
});
