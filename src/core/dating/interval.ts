import type { Dating } from './dating.ts';
import { formatPart } from './format-years.ts';

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

/** A year of another era, or of a reign, lies in two of ours. */
const LONGEST_YEAR = 2;

/**
 * Whether a date lies, or runs on, after a day (`2026-11-30`). A year, a decade or a century that has begun has come, and so
 * has what says that it goes on.
 */
export function isToCome(dating: Pick<Dating, 'earliest' | 'latest' | 'from' | 'calendar'>, day: string): boolean {
  const year = Number(day.slice(0, 4));
  const { earliest, latest, from } = dating;
  if (from !== undefined && from.startsWith(`${String(year)}-`)) return from > day;
  if (typeof earliest === 'number' && earliest > year) return true;
  if (typeof latest !== 'number' || latest <= year) return false;
  if (typeof earliest !== 'number') return true;
  const length = latest - earliest + 1;
  const isOfChrist = dating.calendar === 'gregorian' || dating.calendar === 'julian';
  const isOneStretch = (!isOfChrist && length <= LONGEST_YEAR) || (length === 10 && earliest % 10 === 0);
  return !isOneStretch && formatPart(earliest, latest) === undefined;
}
