import type { Outcome } from '../outcome.ts';
import { good, refuse } from '../outcome.ts';
import type { Interval } from '../measures/units.ts';
import type { FineMetal } from './fine-metal.ts';

/** What the owner says a troy ounce of fine metal is worth, on which day, and who says so. */
export type MetalPrice = {
  /** Minor units of the currency (pence, cents) for one troy ounce, fine. */
  readonly minorPerTroyOunce: number;
  readonly currency: string;
  readonly date: string;
  readonly source: string;
};

export type Meltable = {
  /** Null when weight or fineness is not known. */
  readonly fine: FineMetal | null;
  readonly price: MetalPrice | null;
  readonly plated: boolean;
  readonly mounted: boolean;
  readonly altered: boolean;
};

export type MetalValue = Interval & {
  /** `low` and `high` are whole minor units: the low end rounded down, the high end up. */
  readonly currency: string;
  readonly date: string;
  readonly source: string;
  readonly caution: string;
};

/** What the fine metal would come to, as an interval; refused, with the reason, where it would mislead. */
export function metalValue({ fine, price, plated, mounted, altered }: Meltable): Outcome<MetalValue> {
  if (plated) return refuse('No metal value: the piece is plated, so its weight is not that of one metal.');
  if (mounted) return refuse('No metal value: the piece is mounted, and the mount was weighed with it.');
  if (altered) return refuse('No metal value: the piece has been altered, and is not what was struck.');
  if (fine === null) return refuse('No metal value: the weight or the fineness is not known. Write both.');
  if (price === null)
    return refuse(
      'No metal value: the cabinet has no price for this metal. Add one under metal-prices, with its date and source.',
    );
  const { minorPerTroyOunce, currency, date, source } = price;
  if (date.trim() === '' || source.trim() === '')
    return refuse('No metal value: the price has no date or no source. Write both.');
  if (!(minorPerTroyOunce > 0))
    return refuse('No metal value: the price is nothing. Write a price for a troy ounce, like 24.10 GBP.');
  return good({
    low: Math.floor(fine.troyOunces.low * minorPerTroyOunce),
    high: Math.ceil(fine.troyOunces.high * minorPerTroyOunce),
    currency,
    date,
    source,
    caution: `Fine metal alone, at the price of ${date} (${source}). Not an offer, not an appraisal.`,
  });
}
