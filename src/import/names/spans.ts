/** Years from the first to the last, astronomical. */
export type Span = { readonly low: number; readonly high: number };

export function overlaps(a: Span, b: Span): boolean {
  return a.low <= b.high && b.low <= a.high;
}

/** The years between two spans; 0 where they meet. */
export function yearsBetween(a: Span, b: Span): number {
  return Math.max(0, a.low - b.high, b.low - a.high);
}

/** From the first year to the last of all; null for none. */
export function hullOf(spans: readonly Span[]): Span | null {
  if (spans.length === 0) return null;
  return { low: Math.min(...spans.map(({ low }) => low)), high: Math.max(...spans.map(({ high }) => high)) };
}

/** Spans in groups that lie more than `gap` years apart, each group from its first year to its last. */
export function clustered(spans: readonly Span[], gap: number): readonly Span[] {
  const groups: { low: number; high: number }[] = [];
  for (const { low, high } of spans.toSorted((a, b) => a.low - b.low)) {
    const last = groups.at(-1);
    if (last === undefined || low - last.high > gap) groups.push({ low, high });
    else last.high = Math.max(last.high, high);
  }
  return groups;
}

/** `1424-1437`, `359 BC-336 BC`. */
export function formatYears({ low, high }: Span): string {
  const year = (one: number): string => (one > 0 ? String(one) : `${1 - one} BC`);
  return low === high ? year(low) : `${year(low)}-${year(high)}`;
}

/** The years that `formatYears` wrote; null for any other text. */
export function parseYears(text: string): Span | null {
  const [, from, bc, to, toBc] = /^(\d{1,4})( BC)?(?:-(\d{1,4})( BC)?)?$/.exec(text) ?? [];
  if (from === undefined) return null;
  const year = (digits: string, era: string | undefined): number =>
    era === undefined ? Number(digits) : 1 - Number(digits);
  const low = year(from, bc);
  const span = { low, high: to === undefined ? low : year(to, toBc) };
  return span.low <= span.high ? span : null;
}
