import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fittingScale } from '../../../../src/site/islands/compare/fitting-scale.ts';

test('a row never takes more than its room, unless it would become too small to see', () => {
  const widths = fc.array(fc.double({ min: 5, max: 120, noNaN: true }), { minLength: 1, maxLength: 12 });
  fc.assert(
    fc.property(widths, fc.integer({ min: 280, max: 1600 }), (millimetres, room) => {
      const scale = fittingScale(millimetres, room, 130, 28);
      const takes = millimetres.reduce((sum, wide) => sum + Math.max(130, wide * scale), 28 * (millimetres.length - 1));
      expect(scale === 4 || takes <= room).toBe(true);
      expect(scale).toBeGreaterThanOrEqual(4);
    }),
  );
});

test('two pennies fill a telephone and stop growing on a desk', () => {
  expect(fittingScale([21, 21], 354, 130, 28)).toBe(7.75);
  expect(fittingScale([21, 21], 1180, 130, 28)).toBe(16);
});
