import fc from 'fast-check';
import type { Offer, Purse } from '../../../src/core/plan/offer.ts';
import { planPurchases } from '../../../src/core/plan/plan-purchases.ts';
import type { Plan } from '../../../src/core/plan/plan-purchases.ts';

export function offer(place: string, high: number, facts: Partial<Offer> = {}): Offer {
  return {
    place,
    label: place,
    grade: 'VF',
    fills: true,
    improvement: 0,
    price: { low: Math.floor(high / 2), high },
    source: 'invented',
    ...facts,
  };
}

export function planned(offers: readonly Offer[], purse: Purse): Plan {
  const plan = planPurchases(offers, purse);
  if (!plan.ok) throw new Error(plan.problem);
  return plan.value;
}

/** Offers for the places a, b, c …, several for some of them; few prices when `prices` is small, so that equal years are many. */
export function anyOffers(most: number, places: number, prices: number): fc.Arbitrary<readonly Offer[]> {
  const one = fc.record({
    place: fc.integer({ min: 0, max: places - 1 }).map((at) => String.fromCodePoint(97 + at)),
    high: fc.integer({ min: 1, max: prices }),
    fills: fc.boolean(),
    improvement: fc.nat(40),
  });
  return fc
    .array(one, { maxLength: most, size: 'max' })
    .map((all) => all.map(({ place, high, ...facts }) => offer(place, high, facts)));
}
