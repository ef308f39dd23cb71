import { isoDays, isoYear } from '../calendars/reckoning.ts';
import type { Bound, CalendarName, Reading } from './dating.ts';

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
  const { from, to, reckoning } = isoDays(first, last);
  const reading = { ...readYears(yearOfIso(from), yearOfIso(to), calendar), from, to, reckoning };
  if (edtf === 'years') return reading;
  return { ...reading, edtf: from === to ? from : `${from}/${to}` };
}

/** The astronomical year of an ISO day made here. */
export function yearOfIso(iso: string): number {
  return Number(/^-?\d+/.exec(iso.replace('Y', ''))?.[0]);
}

const COMPONENT = /Y?-?[\dX][\dXES-]*/g;

/** Adds *about* and *perhaps* to a reading, in its flags and on every date of its EDTF: `1279~/1281~`. */
export function qualify(reading: Reading, about: boolean, doubtful: boolean): Reading {
  const both = { about: reading.about || about, doubtful: reading.doubtful || doubtful };
  if (both.about === reading.about && both.doubtful === reading.doubtful) return reading;
  const mark = both.about && both.doubtful ? '%' : both.about ? '~' : '?';
  const edtf = reading.edtf.replace(/[?~%]/g, '').replace(COMPONENT, (component) => component + mark);
  return { ...reading, ...both, edtf };
}
