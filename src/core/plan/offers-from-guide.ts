import { compareGrades, mayBeBelow } from '../grade/compare-grades.ts';
import type { Graded } from '../grade/compare-grades.ts';
import { good, refuse } from '../outcome.ts';
import type { Outcome } from '../outcome.ts';
import type { SetState } from '../sets/set-state.ts';
import type { Offer } from './offer.ts';

/** One row of the keeper's guide. Prices are whole minor units. */
export type GuidePrice = {
  readonly place: string;
  /** As the keeper wrote it. */
  readonly grade: string;
  /** The same, as it is compared. */
  readonly graded: Graded;
  readonly price: { readonly low: number; readonly high: number };
  readonly currency: string;
  readonly source: string;
  /** The year of the price. */
  readonly year: number;
};

export type Shopping = {
  readonly offers: readonly Offer[];
  /** What every price is in; null when there is none. */
  readonly currency: string | null;
  /** Places that want a piece and have no price to plan with. */
  readonly unpriced: readonly { readonly place: string; readonly because: string }[];
  /** Prices that are used and are old, one sentence each. */
  readonly old: readonly string[];
};

/**
 * What the guide offers for the wanted places of a set. A wanted place that is not filled for certain is filled by an offer, and
 * the improvement is the lowest step of its grade; one below the aim is bettered by a grade that is certainly better, by the steps
 * from the highest its piece may have to the lowest of the offer, and by one where the order of the labels alone tells. `notBelow`
 * (fewer and better) leaves out every grade that may lie under it.
 */
export function offersFromGuide(
  state: SetState,
  grades: ReadonlyMap<string, Graded | null>,
  guide: readonly GuidePrice[],
  { notBelow, thisYear, oldAfter = 5 }: { notBelow: Graded | null; thisYear: number; oldAfter?: number },
): Outcome<Shopping> {
  const wanted = new Map(state.wanted.map((want) => [want.place, want]));
  const rows = guide.filter(({ place }) => wanted.has(place));
  const currencies = [...new Set(rows.map(({ currency }) => currency))].toSorted();
  if (currencies.length > 1) {
    return refuse(
      `The guide prices “${state.title}” in ${currencies.join(' and ')}, and no rate between them is given. Write every price in one currency.`,
    );
  }
  const offers = rows.flatMap((row): Offer[] => {
    const want = wanted.get(row.place);
    const held = state.places.find(({ id }) => id === row.place)?.piece;
    const present = held === undefined ? null : (grades.get(held) ?? null);
    const fills = want?.why !== 'below the aim';
    const mayBeUnder = notBelow !== null && mayBeBelow(row.graded, notBelow);
    const improvement = fills ? Math.floor(row.graded.low ?? 0) : betterBy(row.graded, present);
    if (!want || mayBeUnder || improvement < (fills ? 0 : 1)) return [];
    const source = `${row.source}, ${String(row.year)}`;
    return [{ place: row.place, label: want.label, grade: row.grade, fills, improvement, price: row.price, source }];
  });
  const offered = new Set(offers.map(({ place }) => place));
  const priced = new Set(rows.map(({ place }) => place));
  return good({
    offers,
    currency: currencies[0] ?? null,
    unpriced: state.wanted
      .filter(({ place }) => !offered.has(place))
      .map(({ place }) => ({
        place,
        because: priced.has(place)
          ? 'The guide has no price for a grade good enough.'
          : 'The guide has no price for it.',
      })),
    old: rows
      .filter(({ place, year }) => offered.has(place) && thisYear - year > oldAfter)
      .map(
        ({ place, grade, year }) =>
          `The price of ${wanted.get(place)?.label ?? place} in ${grade} is of ${String(year)}.`,
      ),
  });
}

/** By how many steps a grade is certainly better, at least one where it is; 0 where it is not. */
function betterBy(offered: Graded, present: Graded | null): number {
  if (present === null || compareGrades(offered, present).verdict !== 'certainly better') return 0;
  return Math.max(1, Math.floor(offered.low ?? 0) - Math.ceil(present.high ?? 0));
}
