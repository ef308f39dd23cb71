import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { NO_VALUE, byPlace, compareValue, withOffer } from '../../../src/core/plan/offer.ts';
import type { Offer, Purse, Value } from '../../../src/core/plan/offer.ts';
import { planPurchases } from '../../../src/core/plan/plan-purchases.ts';
import { anyOffers, offer, planned } from './offers.ts';
import { tries } from '../../tries.ts';

/** The best value of all, by trying every offer of every place in every year. */
function bestByTrial(offers: readonly Offer[], purse: Purse): Value {
  const places = [...byPlace(offers).values()];
  const left = Array.from({ length: purse.years }, () => ({ money: purse.budget, free: purse.purchases }));
  const from = (at: number, value: Value): Value => {
    let best = value;
    const here = places[at];
    if (here === undefined) return best;
    const keep = (way: Value): void => {
      if (compareValue(way, best) > 0) best = way;
    };
    keep(from(at + 1, value));
    for (const one of here) {
      for (const year of left) {
        if (year.free === 0 || year.money < one.price.high) continue;
        year.free -= 1;
        year.money -= one.price.high;
        keep(from(at + 1, withOffer(value, one)));
        year.free += 1;
        year.money += one.price.high;
      }
    }
    return best;
  };
  return from(0, NO_VALUE);
}

const anyPurse = fc.record({ budget: fc.nat(200), purchases: fc.nat(3), years: fc.nat(3) });
const smallOffers = anyOffers(9, 6, 120);

test('1,000 small cases: the plan is worth what the best of all plans is worth', () => {
  fc.assert(fc.property(smallOffers, anyPurse, (offers, purse) => {
    const { filled, improvement, cost, proven } = planned(offers, purse);
    expect(proven).toBe(true);
    expect({ filled, improvement, cost: cost.high }).toEqual(bestByTrial(offers, purse));
  }), { numRuns: tries(1000) });
}); // prettier-ignore

test('1,000 cases of few prices, in which years and choices are often alike: again the best of all plans', () => {
  const fewPrices = anyOffers(8, 5, 5);
  const tight = fc.record({ budget: fc.integer({ min: 3, max: 9 }), purchases: fc.integer({ min: 1, max: 3 }), years: fc.integer({ min: 2, max: 3 }) });
  fc.assert(fc.property(fewPrices, tight, (offers, purse) => {
    const { filled, improvement, cost } = planned(offers, purse);
    expect({ filled, improvement, cost: cost.high }).toEqual(bestByTrial(offers, purse));
  }), { numRuns: tries(1000) });
}); // prettier-ignore

/** Every year's budget cut into `purchases` prices of at least 1: bought so, they take every penny of every year. */
const anyCut = fc
  .record({ budget: fc.integer({ min: 20, max: 90 }), purchases: fc.integer({ min: 2, max: 4 }), years: fc.integer({ min: 2, max: 4 }) })
  .chain((purse) => {
    const cuts = fc.uniqueArray(fc.integer({ min: 1, max: purse.budget - 1 }), { minLength: purse.purchases - 1, maxLength: purse.purchases - 1 });
    return fc.array(cuts, { minLength: purse.years, maxLength: purse.years }).map((years) => ({ purse, prices: years.flatMap((year) => differences(year, purse.budget)) }));
  }); // prettier-ignore

function differences(cuts: readonly number[], whole: number): readonly number[] {
  const ends = [...cuts, whole].toSorted((a, b) => a - b);
  return ends.map((end, at) => end - (ends[at - 1] ?? 0));
}

test('500 purses that can be spent to the last penny, and on the last purchase, are: the best plan is known beforehand', () => {
  fc.assert(
    fc.property(anyCut, ({ purse, prices }) => {
      const offers = prices.map((price, at) => offer(`place-${String(at)}`, price));
      const { filled, cost, years, leftOut } = planned(offers, purse);
      expect({ filled, cost: cost.high, leftOut }).toEqual({
        filled: prices.length,
        cost: purse.budget * purse.years,
        leftOut: [],
      });
      expect(years.map(({ left }) => left)).toEqual(years.map(() => 0));
    }),
    { numRuns: tries(500) },
  );
});

test('no year is over its budget by a penny, none has a purchase too many, and no place is bought twice', () => {
  fc.assert(fc.property(smallOffers, anyPurse, (offers, purse) => {
    const { years, leftOut, cost } = planned(offers, purse);
    const bought = years.flatMap(({ purchases }) => purchases);
    for (const { purchases, spent, left } of years) {
      expect(purchases.reduce((sum, { price }) => sum + price.high, 0)).toBe(spent);
      expect(spent + left).toBe(purse.budget);
      expect(left).toBeGreaterThanOrEqual(0);
      expect(purchases.length).toBeLessThanOrEqual(purse.purchases);
    }
    expect(cost.high).toBe(years.reduce((sum, { spent }) => sum + spent, 0));
    const places = [...bought.map(({ place }) => place), ...leftOut.map(({ place }) => place)].toSorted();
    expect(places).toEqual([...new Set(offers.map(({ place }) => place))].toSorted());
  }));
}); // prettier-ignore

describe('cases worked by hand', () => {
  test('two cheap places come before one dear one, however fine it is', () => {
    const offers = [
      offer('dear', 100, { improvement: 60 }),
      offer('one', 50, { improvement: 1 }),
      offer('two', 50, { improvement: 1 }),
    ];
    expect(planned(offers, { budget: 100, purchases: 5, years: 1 })).toMatchObject({
      filled: 2,
      improvement: 2,
      leftOut: [{ place: 'dear', because: 'The money and the purchases do more elsewhere.' }],
    });
  });
  test('60, 50, 40 and 30 make 110 and 70, but two years of 90 take them all: 60 with 30, 50 with 40', () => {
    const offers = [offer('a', 60), offer('b', 50), offer('c', 40), offer('d', 30)];
    const { years, filled } = planned(offers, { budget: 90, purchases: 2, years: 2 });
    expect(filled).toBe(4);
    expect(years.map(({ purchases }) => purchases.map(({ place }) => place).join())).toEqual(
      expect.arrayContaining(['a,d', 'b,c']),
    );
  });
  test('with places filled alike, the finer grade; with grades alike, the lower price', () => {
    const finer = [offer('a', 40, { grade: 'F', improvement: 12 }), offer('a', 90, { grade: 'VF', improvement: 20 })];
    expect(planned(finer, { budget: 90, purchases: 1, years: 1 }).years[0]?.purchases[0]?.grade).toBe('VF');
    const cheaper = [offer('a', 40, { source: 'dear' }), offer('a', 30, { source: 'cheap' })];
    expect(planned(cheaper, { budget: 90, purchases: 1, years: 1 }).years[0]?.purchases[0]?.source).toBe('cheap');
  });
  test('what costs more than a year allows is left out, and says so', () => {
    expect(planned([offer('a', 91)], { budget: 90, purchases: 1, years: 9 }).leftOut).toEqual([
      { place: 'a', because: 'Even its cheapest grade may cost more than a year’s budget.' },
    ]);
  });
});

test('a budget that is no whole number, and a price that runs backwards, are refused in a sentence', () => {
  expect(planPurchases([], { budget: 10.5, purchases: 1, years: 1 })).toMatchObject({ ok: false });
  const backwards = offer('a', 10, { price: { low: 20, high: 10 } });
  const plan = planPurchases([backwards], { budget: 90, purchases: 1, years: 1 });
  expect(plan.ok ? 'planned' : plan.problem).toMatch(/runs backwards/);
});

test('thirty places in three grades over five years are planned to the end, in pence', () => {
  const offers = Array.from({ length: 30 }, (_, at) => {
    const base = 2000 + ((at * 37) % 29) * 1013;
    const place = `place-${String(at).padStart(2, '0')}`;
    return [12, 20, 40].map((improvement, step) => offer(place, base * (step + 1), { improvement, fills: at % 3 > 0 }));
  }).flat();
  const { proven, years } = planned(offers, { budget: 60_000, purchases: 6, years: 5 });
  expect(proven).toBe(true);
  expect(years.every(({ spent }) => spent <= 60_000)).toBe(true);
});
