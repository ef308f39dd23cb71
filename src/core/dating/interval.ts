import type { Dating } from './dating.ts';

/**
 * The years a dating allows, for asking whether it lies within a period. An end that is open or not known is infinite.
 *
 * *About* does not widen the interval: "about 1280" is asked about as 1280 and answered with its doubt beside it,
 * because no two authorities agree how far about reaches. A keeper who knows writes the range.
 */
export function yearsOf({ earliest, latest }: Pick<Dating, 'earliest' | 'latest'>): { low: number; high: number } {
  return {
    low: typeof earliest === 'number' ? earliest : Number.NEGATIVE_INFINITY,
    high: typeof latest === 'number' ? latest : Number.POSITIVE_INFINITY,
  };
}
