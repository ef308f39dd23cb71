import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bestChoices, mostWithin } from '../../../src/core/plan/plan-purchases.ts';
import { byPlace, compareValue, NO_VALUE, withOffer } from '../../../src/core/plan/offer.ts';
import type { Offer, Value } from '../../../src/core/plan/offer.ts';
import { anyOffers } from './offers.ts';
import { tries } from '../../tries.ts';

type Bought = { readonly value: Value; readonly bought: number };

/** Every choice of at most one offer a place, tried one by one. */
function everyChoice(places: readonly (readonly Offer[])[]): readonly Bought[] {
  return places.reduce<readonly Bought[]>(
    (choices, offers) => [
      ...choices,
      ...offers.flatMap((offer) =>
        choices.map(({ value, bought }) => ({ value: withOffer(value, offer), bought: bought + 1 })),
      ),
    ],
    [{ value: NO_VALUE, bought: 0 }],
  );
}

test('for any purse, from any place onwards, no choice that could be made is worth more (every choice tried)', () => {
  fc.assert(
    fc.property(anyOffers(7, 4, 30), fc.nat(90), fc.nat(4), (offers, money, purchases) => {
      const places = [...byPlace(offers).values()];
      const onwards = bestChoices(places, money, purchases);
      expect(onwards).toHaveLength(places.length + 1);
      for (const [from, choices] of onwards.entries()) {
        const all = everyChoice(places.slice(from));
        for (const [less, fewer] of [[money, purchases], [Math.floor(money / 2), purchases], [money, Math.min(1, purchases)]] as const) {
          const affordable = all.filter(({ value, bought }) => value.cost <= less && bought <= fewer);
          const best = affordable.map(({ value }) => value).reduce((a, b) => (compareValue(b, a) > 0 ? b : a), NO_VALUE);
          expect(mostWithin(choices, less, fewer)).toEqual(best);
        }
      }
    }),
    { numRuns: tries(150) },
  );
}); // prettier-ignore
