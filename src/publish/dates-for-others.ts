import type { Dating } from '../core/dating/dating.ts';

/** What other people's formats may say of a date; each left out where its format cannot say it truly. */
export type DatesForOthers = {
  /** schema.org `dateCreated`, an ISO 8601 date: a plain year of our era, nothing about it doubtful. */
  readonly dateCreated?: string;
  /** schema.org `temporalCoverage`, an ISO 8601 interval of years; `..` where an end is open, as its definition allows. */
  readonly temporalCoverage?: string;
  /** `dcterms:date` typed as EDTF: everything that was read, with what is about and what is doubtful. */
  readonly edtf?: string;
};

/** A year from 1 to 9999, or a month or day of it; no season, nothing about, doubtful or unspecified. */
const PLAIN = /^(?!0000)\d{4}(?:-(?:0[1-9]|1[0-2])(?:-\d{2})?)?$/;
/** The month and day behind a year. */
const DAYS = /(?<=\d{4})(?:-\d{2}){1,2}/g;

/**
 * A date of making in the formats of others. Years are astronomical and have four figures (`-0043` is 44 BC); a year beyond four
 * figures, and an end that is unknown rather than open, have no place in an ISO interval and are left to EDTF. Both formats count
 * days by the Gregorian calendar alone: of a day before the reform they are told the year.
 * Sources: schema.org dateCreated, temporalCoverage; ISO 8601-1:2019 §5.2.2; EDTF (Library of Congress, 2019) as a datatype,
 * id.loc.gov/datatypes/edtf.
 */
export function datesForOthers(date: Dating): DatesForOthers {
  const { earliest, latest, edtf } = date;
  const ends = [endOf(earliest), endOf(latest)];
  const [from, to] = ends;
  const isJulian = date.dayCalendar !== undefined && date.dayCalendar !== 'gregorian';
  const isWhole = from !== null && to !== null && !(from === '..' && to === '..');
  return {
    ...(PLAIN.test(edtf) ? { dateCreated: edtf.slice(0, 4) } : {}),
    ...(isWhole ? { temporalCoverage: from === to ? from : `${String(from)}/${String(to)}` } : {}),
    ...(edtf === '' ? {} : { edtf: isJulian ? edtf.replaceAll(DAYS, '') : edtf }),
  };
}

function endOf(year: Dating['earliest']): string | null {
  if (year === 'open') return '..';
  if (year === null || Math.abs(year) > 9999) return null;
  return `${year < 0 ? '-' : ''}${String(Math.abs(year)).padStart(4, '0')}`;
}
