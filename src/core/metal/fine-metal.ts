import { weightSpan } from '../measures/parse-weight.ts';
import { TROY_OUNCE } from '../measures/units.ts';
import type { Interval } from '../measures/units.ts';

/** The precious metal in a piece. */
export type FineMetal = {
  readonly grams: Interval;
  readonly troyOunces: Interval;
  /** What was taken for granted, a sentence each, to be printed with the figure. */
  readonly assumed: readonly string[];
};

/** Whose weight it is: this piece's, or that which the law gave its kind. */
export type WeightBasis = 'measured' | 'statutory';

/** Fine weight = weight × fineness, carried through from end to end. */
export function fineMetal(
  weight: { readonly grams: number; readonly plusMinus: number | null },
  fineness: Interval,
  basis: WeightBasis = 'measured',
): FineMetal {
  const span = weightSpan(weight);
  const grams = { low: span.low * fineness.low, high: span.high * fineness.high };
  const assumed = [
    basis === 'statutory' ? 'The weight is the one the law gave its kind, not that of this piece.' : null,
    weight.plusMinus === null ? 'No precision is stated for the weight, so it is taken as written.' : null,
    fineness.low === fineness.high ? 'The fineness is taken as written; it was not assayed here.' : null,
  ].filter((sentence) => sentence !== null);
  return { grams, troyOunces: { low: grams.low / TROY_OUNCE, high: grams.high / TROY_OUNCE }, assumed };
}
