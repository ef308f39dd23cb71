import { NO_VALUE, compareValue, withOffer } from './offer.ts';
import type { Offer, Value } from './offer.ts';

/** A choice of purchases: what it is worth, and how many it takes. */
export type Choice = { readonly value: Value; readonly bought: number };

/**
 * For each place onwards, every choice of at most one offer a place that no other choice beats at no more money and no more
 * purchases, the worthiest first. It asks only for the whole purse, not for what fits a single year, so that no plan can do
 * better than the first choice that the purse can pay.
 */
export function bestChoices(
  places: readonly (readonly Offer[])[],
  money: number,
  purchases: number,
): readonly (readonly Choice[])[] {
  let onwards: readonly Choice[] = [{ value: NO_VALUE, bought: 0 }];
  const all = [onwards];
  for (const offers of places.toReversed()) {
    const withOne = offers.flatMap((offer) =>
      onwards.map(({ value, bought }) => ({ value: withOffer(value, offer), bought: bought + 1 })),
    );
    onwards = unbeaten(
      [...onwards, ...withOne].filter(({ value, bought }) => value.cost <= money && bought <= purchases),
      purchases,
    );
    all.unshift(onwards);
  }
  return all;
}

function unbeaten(choices: readonly Choice[], purchases: number): readonly Choice[] {
  const cheapestFirst = choices.toSorted(
    (a, b) => a.value.cost - b.value.cost || compareValue(b.value, a.value) || a.bought - b.bought,
  );
  // The worthiest value met so far that takes at most so many purchases.
  const worthiest = Array.from({ length: purchases + 1 }, (): Value | null => null);
  const kept = cheapestFirst.filter(({ value, bought }) => {
    const rival = worthiest[bought] ?? null;
    if (rival !== null && compareValue(rival, value) >= 0) return false;
    for (let many = bought; many <= purchases; many++) {
      const before = worthiest[many] ?? null;
      if (before === null || compareValue(value, before) > 0) worthiest[many] = value;
    }
    return true;
  });
  return kept.toSorted((a, b) => compareValue(b.value, a.value));
}

/** The most that choices can be worth with this much money and this many purchases. */
export function mostWithin(choices: readonly Choice[], money: number, purchases: number): Value {
  return choices.find(({ value, bought }) => value.cost <= money && bought <= purchases)?.value ?? NO_VALUE;
}
