/** Whole years, both ends included; infinite where an end is open. Years are astronomical: 44 BC is -43. */
export type Interval = { readonly low: number; readonly high: number };

export type EraPeriod = {
  readonly id: string;
  readonly name: string;
  /** First year, `open` or −Infinity for what has no beginning. */
  readonly from: number | 'open';
  /** Last year, `open` or Infinity for what goes on. */
  readonly to: number | 'open';
  /** Rulers whose pieces are all of this period, also those of years that it shares with another. */
  readonly rulers?: readonly string[];
};

/** One authority's way to cut up time. Its periods may lie inside one another, overlap, or leave years between them. */
export type EraScheme = {
  readonly id: string;
  readonly title: string;
  /** Who cuts time this way, and where it is printed. */
  readonly source: string;
  readonly region?: string;
  /** The areas and mints it applies to; left out, it applies to every piece. */
  readonly appliesTo?: readonly string[];
  /**
   * `inclusive`: every year from the first to the last belongs whole to its period.
   * `shared`: a year in which one period ends and another begins belongs half to each.
   */
  readonly ends: 'inclusive' | 'shared';
  readonly periods: readonly EraPeriod[];
};

/** First and last year of a period, infinite where open. */
export function periodYears(period: EraPeriod): Interval {
  return {
    low: period.from === 'open' ? -Infinity : period.from,
    high: period.to === 'open' ? Infinity : period.to,
  };
}
