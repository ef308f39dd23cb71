import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dieEstimate, formatDieEstimate } from '../../../src/core/dies/estimate.ts';
import { DIE_COUNTS } from '../../published/die-counts.ts';

function estimated(n: number, d: number, d1: number) {
  const outcome = dieEstimate({ n, d, d1 });
  if (!outcome.ok) throw new Error(outcome.problem);
  return outcome.value;
}

test.for(DIE_COUNTS)(
  '$ruler: $good dies and $coverage % as printed in a hoard study',
  ({ n, d, d1, good, coverage }) => {
    // Printed to the whole die and to the tenth of a per cent.
    expect(Math.round(estimated(n, d, d1).good)).toBe(good);
    expect((estimated(n, d, d1).coverage * 100).toFixed(1)).toBe(coverage.toFixed(1));
  },
);

test.for([
  ['Augustus', 318, 69, 12, 77.94, 88.12],
  ['Vespasian', 316, 76, 15, 87.66, 100.07],
  ['Titus', 250, 50, 7, 55.04, 62.5],
  ['Nerva', 135, 19, 3, 20.97, 22.11],
  ['Trajan', 408, 91, 16, 103.04, 117.12],
  ['Hadrian', 90, 24, 12, 34.62, 32.73],
] as const)(
  '%s by Esty’s singleton formula and by the geometric one, to the hundredth the reference table gives',
  ([, n, d, d1, singleton, geometric]) => {
    expect(estimated(n, d, d1).singleton).toBeCloseTo(singleton, 1);
    expect(estimated(n, d, d1).geometric).toBeCloseTo(geometric, 1);
  },
);

describe('A count is refused', () => {
  test.for([
    [5, 3, 1, 'too few'],
    [40, 40, 40, 'no upper bound'],
    [20, 30, 10, 'cannot come from'],
    [20, 10, 12, 'cannot be known'],
    [20, 15, 5, 'at least 25'],
    [20, 12, 12, 'make 12 coins'],
    [20.5, 10, 2, 'whole numbers'],
    [-1, 0, 0, 'whole numbers'],
    [Number.NaN, 1, 1, 'whole numbers'],
  ] as const)('%s coins, %s dies, %s single: %s', ([n, d, d1, says]) => {
    const outcome = dieEstimate({ n, d, d1 });
    expect(outcome.ok ? 'estimated' : outcome.problem).toContain(says);
  });
});

test('a loose estimate says so, and every estimate says the sample must be random', () => {
  expect(estimated(30, 20, 16).cautions.join(' ')).toContain('less than half');
  expect(estimated(318, 69, 12).cautions).toHaveLength(1);
});

test('no estimate is below the dies seen, and coverage is a share', () => {
  fc.assert(
    fc.property(fc.nat(60), fc.nat(60), fc.nat(200), (single, others, more) => {
      const [d, n] = [single + others, single + 2 * others + (others === 0 ? 0 : more)];
      const outcome = dieEstimate({ n, d, d1: single });
      if (!outcome.ok) return;
      const { coverage, good, singleton, geometric } = outcome.value;
      expect(coverage).toBeGreaterThan(0);
      expect(coverage).toBeLessThanOrEqual(1);
      for (const dies of [good, singleton, geometric]) expect(dies).toBeGreaterThanOrEqual(d);
    }),
  );
});

test('the sentence for the catalogue holds all three estimates by name', () => {
  expect(formatDieEstimate({ n: 318, d: 69, d1: 12 }, estimated(318, 69, 12))).toBe(
    '318 coins from 69 dies, 12 of them known from one coin: coverage 96.2 %; originally about 72 dies (Good), 78 (singleton) or 88 (geometric).',
  );
});
