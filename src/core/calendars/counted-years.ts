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

/**
 * Vikrama years begin in spring in the north of India and in autumn in Gujarat: VS 1943 is spring 1886 to spring 1887, or
 * autumn to autumn, and so touches the same two years of ours (Reingold and Dershowitz, *Calendrical Calculations*).
 */
export function vikramaYear(year: number): YearSpan {
  return { low: year - 57, high: year - 56 };
}

/** Solar Hijri years of Iran begin at the equinox of March: SH 1354 is 21 March 1975 to 20 March 1976. */
export function persianYear(year: number): YearSpan {
  return { low: year + 621, high: year + 622 };
}

/** Years of the Chinese Republic: 1 is 1912, from 1 January. */
export function minguoYear(year: number): YearSpan {
  return { low: year + 1911, high: year + 1911 };
}
