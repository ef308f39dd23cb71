import { good, refuse, type Outcome } from '../outcome.ts';

/** The second year of a pair after Christ, its leading figures taken from the first: 1641/2, 1699/700. */
export function followingYear(written: string, next: string): number {
  return Number(written.slice(0, Math.max(0, written.length - next.length)) + next);
}

/** More years than this between two before Christ are offered and never taken for a shortened year. */
const LONGEST_AS_WRITTEN = 100;

/**
 * The second year of a pair before Christ. A shortened one, as in `211-08`, may be completed from the first or meant as
 * it is written; both must lie below the first, and a nought in front is written only by who leaves figures out.
 * A stroke and one year down is one Greek year, `398/97`; what is left with two readings is asked.
 */
export function secondYearBefore(first: string, second: string, joint: 'stroke' | 'hyphen' | 'word'): Outcome<number> {
  const from = Number(first);
  const asWritten = Number(second);
  const pair = `${first}${joint === 'stroke' ? '/' : '-'}${second} BC`;
  const isShort = second.length < first.length;
  const completed = isShort ? followingYear(first, second) : asWritten;
  const below = [...new Set(second.startsWith('0') ? [completed] : [completed, asWritten])].filter(
    (year) => year < from && year > 0,
  );
  const follows = below.find((year) => year === from - 1);
  if (joint === 'stroke' && follows !== undefined) return good(follows);
  const [only, ...others] = below;
  if (only === undefined) {
    if (!isShort) return refuse(`"${pair}" runs backwards; write ${second} BC - ${first} BC.`);
    return refuse(`"${pair}" names no year after the first; write both years in full, such as 134-130 BC.`);
  }
  // Words join whole years: from 43 to 2 BC.
  if (joint === 'word') return good(below.includes(asWritten) ? asWritten : only);
  if (others.length === 0 && (only === completed || from - only <= LONGEST_AS_WRITTEN)) return good(only);
  const ways = below.map((year) =>
    year === completed ? `${first}-${String(year)} BC` : `${first} BC - ${String(year)} BC`,
  );
  if (others.length === 0) return refuse(`"${pair}" would be a long time; if it is meant, write ${ways.join('')}.`);
  return refuse(
    `The second year of "${pair}" may be ${below.map((year) => `${String(year)} BC`).join(' or ')}; write ${ways.join(' or ')}.`,
  );
}
