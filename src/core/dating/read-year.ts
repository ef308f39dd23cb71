import { dayFromJulian } from '../calendars/julian.ts';
import { isoYear } from '../calendars/reckoning.ts';
import { good, refuse, type Outcome } from '../outcome.ts';
import type { Reading } from './dating.ts';
import type { PointReader } from './point-reader.ts';
import { readDays, readYears } from './reading.ts';
import { AFTER_CHRIST, BEFORE_CHRIST } from './words.ts';
import { anyOf } from './written-text.ts';

/** The era before the number or after it; the number of so many figures at most, a second year after a stroke. */
function besideYear(era: string, figures: number): readonly RegExp[] {
  const year = `(?<year>\\d{1,${String(figures)}})(?:/(?<next>\\d{1,${String(figures)}}))?`;
  return [new RegExp(`^${year} ?${era}$`, 'i'), new RegExp(`^${era} ?${year}$`, 'i')];
}

const FORMS = [
  { forms: besideYear(anyOf(BEFORE_CHRIST), 7), read: yearBeforeChrist },
  { forms: besideYear(anyOf(AFTER_CHRIST), 4), read: yearAfterChrist },
  { forms: [/^(?<year>\d{4})(?:\/(?<next>\d{1,4}))?$/], read: yearAfterChrist },
];

/** The year began on 25 March in England until 1752, so January to March stood in two years: 1641/2. */
const OLD_STYLE = { first: 1100, last: 1750 };

/** `1279`, `44 BC`, `AD 71`, `1641/2`. */
export const readYear: PointReader = (text) => {
  for (const { forms, read } of FORMS) {
    for (const form of forms) {
      const groups = form.exec(text)?.groups;
      if (groups) return read(text, groups['year'] ?? '', groups['next']);
    }
  }
  if (/^\d{1,3}(?:\/\d{1,3})?$/.test(text)) return refuse(askForEra(text.replace('/', '-')));
  const [negative] = /(?<=^-)\d{1,3}$/.exec(text) ?? [];
  if (negative === undefined) return undefined;
  return refuse(
    `A year before Christ is not written with a minus; write ${negative} BC, or in EDTF ${isoYear(1 - Number(negative))}.`,
  );
};

function askForEra(year: string): string {
  return `A bare ${year} could be counted from any era; write AD ${year}, ${year} BC or AH ${year}.`;
}

function yearBeforeChrist(text: string, written: string, next: string | undefined): Outcome<Reading> {
  const year = Number(written);
  if (year === 0) return refuse('There is no year 0 BC; write 1 BC for the year before AD 1.');
  if (next === undefined) return good(readYears(1 - year, 1 - year));
  // A Greek year runs from summer to summer and is printed 134/3 BC; two whole numbers are a range, 300/275 BC.
  const following = Number(next) === year - 1 ? year - 1 : followingYear(written, next);
  const isRange = following === year - 1 || (next.length === written.length && following < year && following > 0);
  if (isRange) return good(readYears(1 - year, 1 - following));
  return refuse(`"${text}" does not name two years that follow; write a range with a dash, such as 134-130 BC.`);
}

function yearAfterChrist(text: string, written: string, next: string | undefined): Outcome<Reading> {
  const year = Number(written);
  if (year === 0) return refuse('There is no year AD 0; write 1 BC, or 0000 in EDTF.');
  if (next === undefined) return good(readYears(year, year));
  const following = followingYear(written, next);
  if (following === year + 1) return good(isOldStyle(year) ? oldStyle(following) : readYears(year, following));
  // Two whole numbers that say AD are a range; bare ones of four figures have been read as EDTF already.
  if (following > year && next.length === written.length) return good(readYears(year, following));
  if (following > year)
    return refuse(`"${text}" is no old-style year; for a range write ${range(written, following)}.`);
  return refuse(
    `"${text}" does not name two years that follow; write the year as it reads, ${written}, and tell the overdate in the story.`,
  );
}

function range(written: string, following: number): string {
  return written.length === 4 ? `${written}/${String(following)}` : `AD ${written}-${String(following)}`;
}

/** The second year of a pair, its leading figures taken from the first: 1641/2, 1699/700. */
export function followingYear(written: string, next: string): number {
  return Number(written.slice(0, Math.max(0, written.length - next.length)) + next);
}

function isOldStyle(year: number): boolean {
  return year >= OLD_STYLE.first && year <= OLD_STYLE.last;
}

/** An old-style pair is the end of the old year: 1 January to 24 March of the new, in Julian days. */
function oldStyle(year: number): Reading {
  const first = dayFromJulian({ year, month: 1, day: 1 });
  const last = dayFromJulian({ year, month: 3, day: 24 });
  return readDays(first, last, 'julian');
}
