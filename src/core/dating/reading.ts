import { dayFromIso, isoDays, isoYear, type CivilCalendar, type DayCalendar } from '../calendars/civil.ts';
import { good, refuse, type Outcome } from '../outcome.ts';
import type { Bound, CalendarName, DateContext, Reading } from './dating.ts';

/** A reader of words within a phrase. Undefined when it does not understand them. */
export type WordReader = (words: string) => Outcome<Reading> | undefined;

/** What a reader of one point in time may ask beside its text. */
export interface PointContext extends DateContext {
  /** Reads the bounds of reigns as their files state them: any date at all. */
  readonly readDate: WordReader;
}

/**
 * Reads one point in time from the whole of a text: a year, a century, a day. Undefined when the text is not of the
 * reader's kind; a refusal when it is and something about it is wrong. No reader leaves a word unread.
 */
export type PointReader = (text: string, context: PointContext) => Outcome<Reading> | undefined;

/** An end of an EDTF interval. */
export function edtfBound(bound: Bound): string {
  if (bound === null) return '';
  return bound === 'open' ? '..' : isoYear(bound);
}

/** Years alone as EDTF: one year, or an interval. */
function edtfYears(earliest: Bound, latest: Bound): string {
  if (typeof earliest === 'number' && earliest === latest) return isoYear(earliest);
  return `${edtfBound(earliest)}/${edtfBound(latest)}`;
}

/** A reading of whole years. */
export function readYears(earliest: Bound, latest: Bound, calendar: CalendarName = 'gregorian'): Reading {
  return { earliest, latest, edtf: edtfYears(earliest, latest), calendar, about: false, doubtful: false };
}

/** A reading of whole days, given as fixed numbers. The EDTF says years only, unless `edtf: 'days'` asks for more. */
export function readDays(
  first: number,
  last: number,
  calendar: CalendarName,
  edtf: 'years' | 'days' = 'years',
): Reading {
  const { from, to, dayCalendar } = isoDays(first, last);
  const reading = { ...readYears(yearOfIso(from), yearOfIso(to), calendar), from, to, dayCalendar };
  if (edtf === 'years') return reading;
  return { ...reading, edtf: from === to ? from : `${from}/${to}` };
}

/** The calendar that a span of days is said to be in: the one it ends in. */
export function calendarOfDays(days: DayCalendar): CivilCalendar {
  return days === 'julian' ? 'julian' : 'gregorian';
}

/** The astronomical year of an ISO day made here. */
export function yearOfIso(iso: string): number {
  return Number(/^-?\d+/.exec(iso.replace('Y', ''))?.[0]);
}

const LEADING_MARK = /[?~%](?=[YX\d-])/g;
/** One date of EDTF with the mark behind it. */
const MARKED = /(Y?-?[\dX][\dXES-]*)([?~%]?)/g;

/** Adds *about* and *perhaps* to a reading, in its flags and on every date of its EDTF: `1279~/1281~`. */
export function qualify(reading: Reading, about: boolean, doubtful: boolean): Reading {
  if (!about && !doubtful) return reading;
  // A mark in front of a date, or within it, is put behind, on every date of the text.
  const isLed = reading.edtf.search(LEADING_MARK) >= 0;
  const edtf = reading.edtf.replace(LEADING_MARK, '').replace(MARKED, (_, date: string, mark: string) => {
    const isAbout = about || /[~%]/.test(mark) || (isLed && reading.about);
    const isDoubtful = doubtful || /[?%]/.test(mark) || (isLed && reading.doubtful);
    return `${date}${isAbout && isDoubtful ? '%' : isAbout ? '~' : '?'}`;
  });
  return { ...reading, about: reading.about || about, doubtful: reading.doubtful || doubtful, edtf };
}

/** From one date to another. Refused when it runs backwards. */
export function span(
  left: Reading,
  right: Reading,
  text: string,
  words: { left: string; right: string },
): Outcome<Reading> {
  if (left.years || right.years) {
    return refuse(`"${text}" is a range between several dates; write the years it runs from and to.`);
  }
  if (runsBackwards(left, right)) {
    return refuse(
      `"${text}" runs backwards: ${words.left} is later than ${words.right}. Write ${words.right} - ${words.left}.`,
    );
  }
  const days = daysOfSpan(left, right);
  return good({
    earliest: left.earliest,
    latest: right.latest,
    edtf: edtfOfSpan(left, right),
    calendar: left.calendar === right.calendar ? left.calendar : 'gregorian',
    about: left.about || right.about,
    doubtful: left.doubtful || right.doubtful,
    ...days,
  });
}

function runsBackwards(left: Reading, right: Reading): boolean {
  if (later(left.earliest, right.latest)) return true;
  if (left.from !== undefined && right.to !== undefined && left.dayCalendar && right.dayCalendar) {
    return dayFromIso(left.from, left.dayCalendar) > dayFromIso(right.to, right.dayCalendar);
  }
  return later(left.earliest, right.earliest) && later(left.latest, right.latest);
}

function later(one: Reading['earliest'], other: Reading['earliest']): boolean {
  return typeof one === 'number' && typeof other === 'number' && one > other;
}

function daysOfSpan(left: Reading, right: Reading): Partial<Pick<Reading, 'from' | 'to' | 'dayCalendar'>> {
  if (left.from === undefined || right.to === undefined || !left.dayCalendar || !right.dayCalendar) return {};
  return isoDays(dayFromIso(left.from, left.dayCalendar), dayFromIso(right.to, right.dayCalendar));
}

function edtfOfSpan(left: Reading, right: Reading): string {
  const start = left.edtf.split('/')[0] ?? edtfBound(left.earliest);
  const end = right.edtf.split('/').at(-1) ?? edtfBound(right.latest);
  return start === end ? start : `${start}/${end}`;
}

/** One of several dates (`or`), or all of them (`and`). */
export function choice(readings: readonly Reading[], kind: 'or' | 'and'): Outcome<Reading> {
  const years: (readonly [number, number])[] = [];
  for (const { earliest, latest, years: within } of readings) {
    if (within) years.push(...within);
    else if (typeof earliest === 'number' && typeof latest === 'number') years.push([earliest, latest]);
    else
      return refuse('Each of several dates needs a beginning and an end; write them as years, such as 1279 or 1280.');
  }
  const members = readings.map(({ edtf }) => edtf.replace(/^[[{]|[\]}]$/g, '').replace('/', '..'));
  const [first] = readings;
  return good({
    earliest: Math.min(...years.map(([low]) => low)),
    latest: Math.max(...years.map(([, high]) => high)),
    edtf: kind === 'or' ? `[${members.join(',')}]` : `{${members.join(',')}}`,
    calendar: first && readings.every(({ calendar }) => calendar === first.calendar) ? first.calendar : 'gregorian',
    about: readings.some(({ about }) => about),
    doubtful: readings.some(({ doubtful }) => doubtful),
    years,
  });
}
