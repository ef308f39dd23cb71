import { lengthOfMonth } from '../calendars/reckoning.ts';
import type { Dating } from './dating.ts';
import { formatYear } from './format-year.ts';
import { MONTHS } from './words.ts';

/** Days for a visitor: "14 October 1066", "April 1985", "20 November 1278 – 19 November 1279". Undefined if none are known. */
export function formatDays({ from, to, earliest, latest, reckoning, calendar, text }: Dating): string | undefined {
  // A pair of years in the old style is shown as it was written: it is its own explanation.
  const pair = /(?<!\d)\d{4}\/\d{1,4}$/.exec(text)?.[0];
  if (calendar === 'julian' && pair !== undefined && from !== undefined && to !== undefined && !/[a-z]{3}/i.test(text))
    return pair;
  const first = from === undefined ? undefined : formatDay(from);
  const last = to === undefined ? undefined : formatDay(to);
  if (from !== undefined && to !== undefined) {
    if (from === to) return first;
    return isWholeMonth(from, to) ? first?.replace(/^\d+ /, '') : `${first ?? ''} – ${last ?? ''}`;
  }
  if (first !== undefined && latest === 'open') return `${first} onwards`;
  if (first !== undefined && latest === null) return `not before ${first}`;
  if (last !== undefined && earliest === 'open') return `until ${last}`;
  if (to !== undefined && reckoning && earliest === null) return `not after ${formatDay(to)}`;
  return undefined;
}

function parts(iso: string): { year: number; month: number; day: number } {
  const [, year, month, day] = /^(Y?-?\d+)-(\d\d)-(\d\d)$/.exec(iso) ?? [];
  return { year: Number(year?.replace('Y', '')), month: Number(month), day: Number(day) };
}

function formatDay(iso: string): string {
  const { year, month, day } = parts(iso);
  return `${String(day)} ${MONTHS[month - 1]?.[0] ?? ''} ${formatYear(year)}`;
}

function isWholeMonth(from: string, to: string): boolean {
  const first = parts(from);
  const last = parts(to);
  return (
    first.day === 1 &&
    first.year === last.year &&
    first.month === last.month &&
    last.day === lengthOfMonth(last.year, last.month)
  );
}
