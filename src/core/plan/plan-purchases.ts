import { good, refuse } from '../outcome.ts';
import type { Outcome } from '../outcome.ts';
import { NO_VALUE, byPlace, compareValue, sumOf, withOffer } from './offer.ts';
import type { Offer, Purse, Value } from './offer.ts';

export type Plan = {
  /** Each year with its purchases, the fullest year first; spent and left at the dear end of every price. */
  readonly years: readonly { readonly purchases: readonly Offer[]; readonly spent: number; readonly left: number }[];
  readonly filled: number;
  readonly improvement: number;
  readonly cost: { readonly low: number; readonly high: number };
  /** Places with an offer for which nothing is bought, and why. */
  readonly leftOut: readonly { readonly place: string; readonly because: string }[];
  /** Whether this is known to be the best; false when the search was cut short at `LONGEST_SEARCH`. */
  readonly proven: boolean;
};

/** Steps after which the search gives what it has; seconds on a slow machine. */
const LONGEST_SEARCH = 400_000;

type Branch = { readonly at: number; readonly years: readonly Year[]; readonly value: Value };
type Year = { readonly left: number; readonly free: number; readonly bought: readonly Offer[] };

/**
 * The purchases that fill most places, then improve most, then cost least, never over a year's budget or number. Branch and
 * bound over the places, the dearest first, the most promising branch first: one is left as soon as all the money still in the
 * purse, were it one year's, could not bring it above the best plan found.
 */
export function planPurchases(offers: readonly Offer[], purse: Purse): Outcome<Plan> {
  const whole = [purse.budget, purse.purchases, purse.years].every(
    (number) => Number.isSafeInteger(number) && number >= 0,
  );
  if (!whole)
    return refuse('A plan wants whole numbers: a budget in the smallest unit of money, purchases a year, and years.');
  const unpriced = offers.find(
    ({ price, improvement }) =>
      ![price.low, price.high, improvement].every(Number.isSafeInteger) || price.low > price.high,
  );
  if (unpriced)
    return refuse(
      `The price of ${unpriced.label} in ${unpriced.grade} runs backwards or is no whole number. Write the low end, then the high end.`,
    );
  const { years, proven } = search(placesWith(offers, purse.budget), purse);
  return good(planOf(years, offers, purse, proven));
}

/** The offers a year can pay, by place, the dearest place first; of equals, by the place's id. */
function placesWith(offers: readonly Offer[], budget: number): readonly (readonly Offer[])[] {
  const dearest = (of: readonly Offer[]) => Math.max(...of.map(({ price }) => price.high));
  return [...byPlace(offers.filter(({ price }) => price.high <= budget))]
    .toSorted(([a, ofA], [b, ofB]) => dearest(ofB) - dearest(ofA) || (a < b ? -1 : 1))
    .map(([, of]) => of.toSorted((a, b) => compareValue(withOffer(NO_VALUE, b), withOffer(NO_VALUE, a))));
}

function search(
  places: readonly (readonly Offer[])[],
  purse: Purse,
): { readonly years: readonly Year[]; readonly proven: boolean } {
  const onwards = bestChoices(places, purse.budget * purse.years, purse.purchases * purse.years);
  const seen = new Map<string, Value>();
  let best: readonly Year[] = Array.from({ length: purse.years }, () => ({
    left: purse.budget,
    free: purse.purchases,
    bought: [],
  }));
  let bestValue = NO_VALUE;
  let steps = 0;

  /** The most a branch can come to, were all its money one year's. */
  const promiseOf = ({ at, years, value }: Branch): Value => {
    const open = years.filter(({ free }) => free > 0);
    const [money, free] = [
      open.reduce((sum, { left }) => sum + left, 0),
      open.reduce((sum, year) => sum + year.free, 0),
    ];
    return sumOf(value, mostWithin(onwards[at] ?? [], money, free));
  };
  const visit = (branch: Branch): void => {
    const { at, years, value } = branch;
    steps += 1;
    if (compareValue(value, bestValue) > 0) [best, bestValue] = [years, value];
    const key = `${String(at)}:${years
      .map(({ left, free }) => `${String(left)}/${String(free)}`)
      .toSorted()
      .join()}`;
    const before = seen.get(key);
    if (before !== undefined && compareValue(before, value) >= 0) return;
    seen.set(key, value);
    const next = branchesOf(branch, places[at] ?? []).map((each) => ({ each, promise: promiseOf(each) }));
    for (const { each, promise } of next.toSorted((a, b) => compareValue(b.promise, a.promise))) {
      if (steps > LONGEST_SEARCH || compareValue(promise, bestValue) <= 0) return;
      visit(each);
    }
  };
  visit({ at: 0, years: best, value: NO_VALUE });
  return { years: best, proven: steps <= LONGEST_SEARCH };
}

/** Every way to go on with one place: each offer in each year that can pay it, or nothing for it; none after the last place. */
function branchesOf({ at, years, value }: Branch, offers: readonly Offer[]): readonly Branch[] {
  if (offers.length === 0) return [];
  const bought = offers.flatMap((offer) =>
    yearsFor(offer, years).map((into) => ({
      at: at + 1,
      years: buy(years, into, offer),
      value: withOffer(value, offer),
    })),
  );
  return [...bought, { at: at + 1, years, value }];
}

/** The years that can pay an offer, the tightest first; of years in the same state one only. */
function yearsFor({ price }: Offer, years: readonly Year[]): readonly number[] {
  const able = [...years.entries()].filter(([, { left, free }]) => free > 0 && left >= price.high);
  const different = able.filter(
    ([, year], at) => able.findIndex(([, other]) => other.left === year.left && other.free === year.free) === at,
  );
  return different.toSorted(([, a], [, b]) => a.left - b.left || a.free - b.free).map(([at]) => at);
}

function buy(years: readonly Year[], into: number, offer: Offer): readonly Year[] {
  return years.map((year, at) =>
    at === into ? { left: year.left - offer.price.high, free: year.free - 1, bought: [...year.bought, offer] } : year,
  );
}

function planOf(years: readonly Year[], offers: readonly Offer[], purse: Purse, proven: boolean): Plan {
  const valueOf = ({ bought }: Year) => bought.reduce(withOffer, NO_VALUE);
  const bought = years.flatMap((year) => year.bought);
  const { filled, improvement, cost } = bought.reduce(withOffer, NO_VALUE);
  const missed = [...byPlace(offers)].filter(([place]) => !bought.some((offer) => offer.place === place));
  return {
    years: years
      .toSorted((a, b) => compareValue(valueOf(b), valueOf(a)))
      .map((year) => ({ purchases: year.bought, spent: purse.budget - year.left, left: year.left })),
    filled,
    improvement,
    cost: { low: bought.reduce((sum, { price }) => sum + price.low, 0), high: cost },
    leftOut: missed
      .toSorted(([a], [b]) => (a < b ? -1 : 1))
      .map(([place, of]) => ({ place, because: whyMissed(of, purse) })),
    proven,
  };
}

function whyMissed(offers: readonly Offer[], { budget, purchases, years }: Purse): string {
  if (years === 0 || purchases === 0) return 'Nothing is to be bought in this time.';
  if (offers.every(({ price }) => price.high > budget))
    return 'Even its cheapest grade may cost more than a year’s budget.';
  return 'The money and the purchases do more elsewhere.';
}

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
