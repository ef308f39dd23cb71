/** Something that could be bought for a place: a grade at its guide price. All money is whole minor units of one currency. */
export type Offer = {
  readonly place: string;
  readonly label: string;
  /** The grade as the guide writes it. */
  readonly grade: string;
  /** Whether it would fill a place that is not filled for certain; otherwise it betters one that is. */
  readonly fills: boolean;
  /** Steps of the numeric scale gained for certain; a whole number, not below 0. */
  readonly improvement: number;
  readonly price: { readonly low: number; readonly high: number };
  /** Where the price comes from, with its date. */
  readonly source: string;
};

/** What there is to spend. What is left of a year's budget does not pass to the next. */
export type Purse = {
  /** Minor units a year. */
  readonly budget: number;
  /** Purchases a year at most. */
  readonly purchases: number;
  readonly years: number;
};

/** What a choice of purchases is worth: places filled, then improvement, then as little spent as may be. */
export type Value = { readonly filled: number; readonly improvement: number; readonly cost: number };

export const NO_VALUE: Value = { filled: 0, improvement: 0, cost: 0 };

export function withOffer(value: Value, { fills, improvement, price }: Offer): Value {
  return {
    filled: value.filled + (fills ? 1 : 0),
    improvement: value.improvement + improvement,
    // The dear end of the price: a plan must hold when the seller is lucky.
    cost: value.cost + price.high,
  };
}

export function sumOf(a: Value, b: Value): Value {
  return { filled: a.filled + b.filled, improvement: a.improvement + b.improvement, cost: a.cost + b.cost };
}

/** Positive when the first is worth more. */
export function compareValue(a: Value, b: Value): number {
  return a.filled - b.filled || a.improvement - b.improvement || b.cost - a.cost;
}

/** The offers of each place, in the order in which places first come. */
export function byPlace(offers: readonly Offer[]): ReadonlyMap<string, readonly Offer[]> {
  return new Map(offers.map(({ place }) => [place, offers.filter((offer) => offer.place === place)]));
}
