import { good, refuse } from '../outcome.ts';
import type { Outcome } from '../outcome.ts';
import type { DateContext, Reading } from './dating.ts';
import { readEdtf } from './edtf.ts';
import { qualify, readYears } from './reading.ts';
import { MONTHS, SEASONS } from './words.ts';

/** The second year of a pair after Christ, its leading figures taken from the first: 1641/2, 1699/700. */
export function followingYear(written: string, next: string): number {
  return Number(written.slice(0, Math.max(0, written.length - next.length)) + next);
}

/** More years than this between two before Christ are offered and never taken for a shortened year. */
const LONGEST_AS_WRITTEN = 100;

/**
 * The second year of a pair before Christ. A shortened one, as in `211-08`, may be completed from the first or meant as
 * it is written; both must lie below the first, and a nought in front is written only by who leaves figures out.
 * A stroke and one year down is one Greek year, `398/97`; what is left with two readings is asked. `shown` is the first
 * as the text has it, and what stands behind the second, where the ends are themselves pairs: `162/1-50/49 BC`.
 */
export function secondYearBefore(
  first: string,
  second: string,
  joint: 'stroke' | 'hyphen' | 'word',
  shown = { first, after: '' },
): Outcome<number> {
  const from = Number(first);
  const asWritten = Number(second);
  const { after } = shown;
  // Two Greek years that follow share one of ours: 112/11-111/0 BC.
  const meets = after !== '' && shown.first !== first;
  const pair = `${shown.first}${joint === 'stroke' ? '/' : '-'}${second}${after} BC`;
  const isShort = second.length < first.length;
  const completed = isShort ? followingYear(first, second) : asWritten;
  const below = [...new Set(second.startsWith('0') ? [completed] : [completed, asWritten])].filter(
    (year) => (year < from || (year === from && meets)) && year > 0,
  );
  const follows = below.find((year) => year === from - 1);
  if (joint === 'stroke' && follows !== undefined) return good(follows);
  const [only, ...others] = below;
  if (only === undefined) {
    if (!isShort) return refuse(`"${pair}" runs backwards; write ${second}${after} BC - ${shown.first} BC.`);
    return refuse(`"${pair}" names no year after the first; write both years in full, such as 134-130 BC.`);
  }
  // Words join whole years: from 43 to 2 BC.
  if (joint === 'word') return good(below.includes(asWritten) ? asWritten : only);
  if (others.length === 0 && (only === completed || from - only <= LONGEST_AS_WRITTEN)) return good(only);
  const ways = below.map((year) =>
    year === completed ? `${shown.first}-${String(year)}${after} BC` : `${shown.first} BC - ${String(year)}${after} BC`,
  );
  if (others.length === 0) return refuse(`"${pair}" would be a long time; if it is meant, write ${ways.join('')}.`);
  return refuse(
    `The second year of "${pair}" may be ${below.map((year) => `${String(year)}${after} BC`).join(' or ')}; write ${ways.join(' or ')}.`,
  );
}

const HYPHENED = /^(?<year>\d{4})-(?<next>\d\d)(?<mark>[?~%]?)$/;
/** A second year that lies in the next century is offered when it is this near: 1985-04, 1898-13. */
const NEAR = 25;

/**
 * `1413-22`, `1902-10`: four figures, a hyphen and two are a range of years to a collector and a month or a season to
 * EDTF. A second number from 13 upwards and above the year's last two figures is a range. From 01 to 12 it is a month
 * in a date of an event, what the column says in a column, and a question in a date of making; so is all that is not
 * above. Months with a mark, 2004-06~, stay EDTF.
 */
export function readHyphened(text: string, { dateOf, hyphen }: DateContext): Outcome<Reading> | undefined {
  const { year = '', next = '', mark = '' } = HYPHENED.exec(text)?.groups ?? {};
  if (year === '') return undefined;
  const number = Number(next);
  const isMonth = number >= 1 && number <= 12;
  const saysMonth = hyphen === 'month' || (hyphen === undefined && (dateOf === 'event' || mark !== ''));
  if (isMonth && saysMonth) return readEdtf(text);
  const last = Number(year.slice(0, 2) + next);
  if (last > Number(year) && (number >= 13 || hyphen === 'range')) {
    return good(qualify(readYears(Number(year), last), /[~%]/.test(mark), /[?%]/.test(mark)));
  }
  return refuse(askForYearsOrMonth(text, year, next, last));
}

function askForYearsOrMonth(text: string, year: string, next: string, last: number): string {
  const from = Number(year);
  const to = last > from ? last : last + 100;
  const month = MONTHS[Number(next) - 1]?.[0];
  const season = SEASONS[Number(next) - 21]?.[0];
  const ways = [
    ...(to - from <= NEAR || last > from ? [`${year}/${String(to).padStart(4, '0')}`] : []),
    ...(month === undefined ? [] : [`${month} ${year}`]),
    ...(season === undefined ? [] : [`${season} ${year}`]),
  ];
  if (ways.length > 1) return `"${text}" may be two years or part of one; write ${ways.join(' or ')}.`;
  const [way] = ways;
  if (way !== undefined) return `"${text}" does not run forwards as it stands; write ${way} if that is meant.`;
  if (last === from) return `"${text}" names one year twice; write ${year}.`;
  return `"${text}" runs backwards; write ${String(last)} - ${year}.`;
}
