import type { Character, Shown } from './character.ts';

export type Span = { readonly low: number; readonly high: number };

/** Below this share of the issue a worn piece is taken not to lie. */
const RARELY = 0.01;

/**
 * Coins were struck so many to the pound, and single ones lie on both sides of the standard: a weight at the upper end of what is
 * published, or a little over it, excludes nothing. A twentieth either way, where a series does not say; common practice.
 */
const SCATTER = 0.05;

/** Where single pieces of a type lie, unworn. */
export function singlesOf<T extends Shown>(shown: T, { kind, scatter }: Pick<Character, 'kind' | 'scatter'>): T {
  if (shown.shows !== 'measure') return shown;
  const either = scatter ?? (kind === 'weight' ? SCATTER * shown.high : 0);
  return { ...shown, low: Math.max(0, shown.low - either), high: shown.high + either };
}

/** Where measures of these types can lie: from the lowest, well worn, to the highest. */
export function spanOf(shown: readonly Shown[], wear: number): Span {
  const measured = shown.filter((one) => one.shows === 'measure');
  const low = Math.min(...measured.map((one) => one.low)) - wear * Math.log(1 / RARELY);
  const high = Math.max(...measured.map((one) => one.high));
  if (!(high > low)) return { low: Number.isFinite(low) ? low - 0.5 : 0, high: Number.isFinite(high) ? high + 0.5 : 1 };
  return { low: Math.max(0, low), high };
}

/**
 * How densely measures lie at `value` for a type that was made evenly between `low` and `high` and has lost to wear a
 * part that is exponential with mean `wear`. One-sided: nothing is above the top but for the precision of the scale.
 */
export function densityOf(value: number, { low, high }: Span, wear: number, precision: number): number {
  const width = Math.max(high - low, 2 * precision, (high + low) * 1e-6);
  const top = (high + low) / 2 + width / 2;
  const bottom = top - width;
  if (value > top + precision) return 0;
  const lost = Math.min(top, Math.max(value, bottom));
  if (wear <= 0) return value < bottom - precision ? 0 : 1 / width;
  const worn = (by: number): number => 1 - Math.exp(-Math.max(0, by) / wear);
  const share = worn(top - value + precision) - worn(lost - value);
  return share / width;
}

/** The greatest density that measures of a type have anywhere. */
export function peakOf(span: Span, wear: number, precision: number): number {
  return densityOf(span.low, span, wear, precision);
}

/** Whether a measure can be that of a type: not above its top, nor so far below that wear would seldom explain it. */
export function canMeasure(value: number, { low, high }: Span, wear: number, precision: number): boolean {
  if (value > high + precision) return false;
  return value >= low - precision - wear * Math.log(1 / RARELY);
}
