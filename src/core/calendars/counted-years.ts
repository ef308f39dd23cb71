/**
 * Eras whose years are counted on from one beginning, and where each year falls in the years of Christ.
 * A year that does not begin on 1 January touches two of ours: `low` and `high` are astronomical years.
 */
export interface YearSpan {
  readonly low: number;
  readonly high: number;
}

/** What is added to a year of the era for the year of ours in which it begins, and whether it ends in the next. */
interface Count {
  readonly offset: number;
  readonly endsInNext: boolean;
}

function count(offset: number, ends: 'ends in the next' | 'ends with ours'): Count {
  return { offset, endsInNext: ends === 'ends in the next' };
}

const COUNTS = {
  /** Autumn 312 BC at court and on the coins of Syria: E. J. Bickerman, *Chronology of the Ancient World* (1968), p. 71. */
  seleucid: count(-312, 'ends in the next'),
  /** Spring 311 BC in Babylon: Bickerman, as above. */
  babylonian: count(-311, 'ends in the next'),
  /** Autumn 297 BC, on the coins of the kings of Bosporus: Bickerman, p. 72. */
  bosporan: count(-297, 'ends in the next'),
  /** Spring AD 79, the years being counted when complete: national calendar of India, 1957. */
  saka: count(78, 'ends in the next'),
  /** Spring in the north of India and Nepal, autumn in Gujarat: the same two years of ours (*Calendrical Calculations*). */
  vikrama: count(-57, 'ends in the next'),
  /** Autumn 879, on the coins of the Malla kings of Nepal; common practice. */
  nepal: count(879, 'ends in the next'),
  /** Autumn 825, Malabar and Travancore (*Calendrical Calculations*, Hindu eras). */
  kollam: count(824, 'ends in the next'),
  /** The Mauludi years of Tipu Sultan, 1215 to 1227, beginning in spring; common practice. */
  mauludi: count(571, 'ends in the next'),
  /** Solar Hijri of Iran, from the equinox of March: SH 1354 is 21 March 1975 to 20 March 1976. */
  persian: count(621, 'ends in the next'),
  /** The imperial years of Iran, 2535 to 2537, from March 1976; common practice. */
  shahanshahi: count(-559, 'ends in the next'),
  /** September; Ethiopia (*Calendrical Calculations*). */
  ethiopian: count(7, 'ends in the next'),
  /** Chula Sakarat of Burma and Siam, from March or April 638; common practice. */
  chula: count(638, 'ends in the next'),
  /** Rattanakosin of Siam, from April as the law of 1889 has it: RS 108 is 1889/90. */
  rattanakosin: count(1781, 'ends in the next'),
  /** Spanish era of 38 BC, from 1 January. */
  spanish: count(-38, 'ends with ours'),
  /** Years of the Chinese Republic: 1 is 1912, from 1 January. */
  minguo: count(1911, 'ends with ours'),
  /** Years of Tangun on coins of South Korea: 4292 is 1959; common practice. */
  dangun: count(-2333, 'ends with ours'),
  /** Years of independence on coins of Haiti: 1 is 1804; common practice. */
  haitian: count(1803, 'ends with ours'),
} satisfies Record<string, Count>;

export type CountedCalendar = keyof typeof COUNTS;

/** The years of ours that a year of an era touches. */
export function yearsOfEra(calendar: CountedCalendar, year: number): YearSpan {
  const { offset, endsInNext } = COUNTS[calendar];
  return { low: year + offset, high: year + offset + (endsInNext ? 1 : 0) };
}

/** In Siam the year ran from April to March until 2482, had nine months in 2483 (1940), and is ours since 2484. */
const SIAMESE_REFORM = 2483;

/** The years of ours of a Buddhist year: as Siam counts it, or from May as Ceylon, Burma and Cambodia do, one year ahead. */
export function buddhistYear(year: number, counted: 'siamese' | 'from May'): YearSpan {
  const low = year - (counted === 'siamese' ? 543 : 544);
  return { low, high: counted === 'siamese' && year >= SIAMESE_REFORM ? low : low + 1 };
}

/** The years of the world of Byzantium and Russia began on 1 September 5509 BC: 7208 is 1699/1700. Julian. */
export function byzantineYear(year: number): YearSpan {
  return { low: year - 5509, high: year - 5508 };
}
