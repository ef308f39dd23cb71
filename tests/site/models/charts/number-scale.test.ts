import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { numberScale, shareAlong, widthAlong } from '../../../../src/site/models/charts/number-scale.ts';

describe('a scale of numbers', () => {
  test('ends and steps are round', () => {
    expect(numberScale([0.61, 1.59])?.ticks.map(({ says }) => says)).toEqual(['0.6', '0.8', '1', '1.2', '1.4', '1.6']);
    expect(numberScale([3.11, 3.0], 0)?.ticks.map(({ says }) => says)).toEqual(['0', '1', '2', '3', '4']);
  });

  test('one weight alone still has a scale', () => {
    const scale = numberScale([1.38]);
    expect(scale === null ? 0 : scale.high - scale.low).toBeGreaterThan(0);
  });

  test('nothing has none', () => {
    expect(numberScale([])).toBeNull();
  });

  test('what is exact is still wide enough to be seen', () => {
    expect(widthAlong({ low: 0, high: 2 }, { low: 1.44, high: 1.44 })).toBeGreaterThan(0);
  });

  test('every value lies on its scale', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.05, max: 500, noNaN: true }), { minLength: 1, maxLength: 20 }),
        (values) => {
          const scale = numberScale(values);
          expect(scale).not.toBeNull();
          if (scale === null) return;
          for (const value of values) {
            expect(shareAlong(scale, value)).toBeGreaterThanOrEqual(-0.01);
            expect(shareAlong(scale, value)).toBeLessThanOrEqual(100.01);
          }
          expect(scale.ticks.length).toBeLessThanOrEqual(8);
        },
      ),
    );
  });
});
