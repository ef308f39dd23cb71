import { dayFromIso, isoDays } from '../calendars/reckoning.ts';
import { refuse, good, type Outcome } from '../outcome.ts';
import type { Reading } from './dating.ts';
import { edtfBound } from './reading.ts';

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
  if (left.from !== undefined && right.to !== undefined && left.reckoning && right.reckoning) {
    return dayFromIso(left.from, left.reckoning) > dayFromIso(right.to, right.reckoning);
  }
  return later(left.earliest, right.earliest) && later(left.latest, right.latest);
}

function later(one: Reading['earliest'], other: Reading['earliest']): boolean {
  return typeof one === 'number' && typeof other === 'number' && one > other;
}

function daysOfSpan(left: Reading, right: Reading): Partial<Pick<Reading, 'from' | 'to' | 'reckoning'>> {
  if (left.from === undefined || right.to === undefined || !left.reckoning || !right.reckoning) return {};
  return isoDays(dayFromIso(left.from, left.reckoning), dayFromIso(right.to, right.reckoning));
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
