/**
 * Eras whose years are counted on from one beginning, and where each year falls in the years of Christ.
 * A year that does not begin on 1 January touches two of ours: `low` and `high` are astronomical years.
 */
export interface YearSpan {
  readonly low: number;
  readonly high: number;
}

/**
 * Seleucid year 1 began in autumn 312 BC at court and on the coins of Syria (Macedonian style), in spring 311 BC in
 * Babylon: E. J. Bickerman, *Chronology of the Ancient World* (1968), p. 71.
 */
export function seleucidYear(year: number, style: 'macedonian' | 'babylonian'): YearSpan {
  const low = style === 'macedonian' ? year - 312 : year - 311;
  return { low, high: low + 1 };
}

/** Saka year 1 began in spring AD 79, the years being counted when complete: national calendar of India, 1957. */
export function sakaYear(year: number): YearSpan {
  return { low: year + 78, high: year + 79 };
}

/** Years of the Chinese Republic: 1 is 1912, from 1 January. */
export function minguoYear(year: number): YearSpan {
  return { low: year + 1911, high: year + 1911 };
}
