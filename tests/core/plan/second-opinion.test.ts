import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Offer, Purse } from '../../../src/core/plan/offer.ts';
import { bestInTurn } from '../../reference/highs.ts';
import type { Row } from '../../reference/highs.ts';
import { anyOffers, planned } from './offers.ts';
import { tries } from '../../tries.ts';

/** Places filled, improvement and cost of the best plan by the reference: a column for each offer in each year. */
function bestByReference(offers: readonly Offer[], { budget, purchases, years }: Purse): readonly number[] {
  const columns = Array.from({ length: years }, (_, year) => offers.map((offer) => ({ offer, year }))).flat();
  const rows = [
    ...[...new Set(offers.map(({ place }) => place))].map((place): Row => ({
      of: columns.map(({ offer }) => (offer.place === place ? 1 : 0)),
      most: 1,
    })),
    ...Array.from({ length: years }, (_, at): readonly Row[] => [
      { of: columns.map(({ offer, year }) => (year === at ? offer.price.high : 0)), most: budget },
      { of: columns.map(({ year }) => (year === at ? 1 : 0)), most: purchases },
    ]).flat(),
  ];
  const [filled = 0, improvement = 0, cost = 0] = bestInTurn(
    [
      columns.map(({ offer }) => (offer.fills ? 1 : 0)),
      columns.map(({ offer }) => offer.improvement),
      columns.map(({ offer }) => -offer.price.high),
    ],
    rows,
  );
  return [filled, improvement, 0 - cost];
}

const anyPurse = fc.record({
  budget: fc.integer({ min: 20, max: 300 }),
  purchases: fc.integer({ min: 1, max: 4 }),
  years: fc.integer({ min: 1, max: 4 }),
});

test('up to 24 offers for 12 places in four years: as good as the optimum of a general solver (HiGHS)', () => {
  fc.assert(
    fc.property(anyOffers(24, 12, 120), anyPurse, (offers, purse) => {
      const { filled, improvement, cost, proven } = planned(offers, purse);
      expect(proven).toBe(true);
      expect([filled, improvement, cost.high]).toEqual(bestByReference(offers, purse));
    }),
    { numRuns: tries(300) },
  );
}, 120_000);
