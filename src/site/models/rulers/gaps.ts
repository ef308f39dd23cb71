import type { Interval } from '../../../core/eras/era-scheme.ts';

/** The years of a stretch that none of the others touches; whole years, both ends included. */
export function gapsIn({ low, high }: Interval, taken: readonly Interval[]): readonly Interval[] {
  const gaps: Interval[] = [];
  let from = low;
  for (const span of taken.toSorted((a, b) => (a.low < b.low ? -1 : a.low > b.low ? 1 : 0))) {
    if (span.low > high) break;
    if (span.low > from) gaps.push({ low: from, high: span.low - 1 });
    from = Math.max(from, span.high + 1);
  }
  if (from <= high) gaps.push({ low: from, high });
  return gaps;
}
