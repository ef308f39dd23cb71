import { dayFromJulian } from '../calendars/julian.ts';
import { isoYear } from '../calendars/reckoning.ts';
import { good, refuse, type Outcome } from '../outcome.ts';
import { readCyrillic } from './cyrillic-numeral.ts';
import type { Reading } from './dating.ts';
import { parsePart, yearsOfPart } from './parts.ts';
import type { PointReader } from './point-reader.ts';
import { readDays, readYears } from './reading.ts';
import { readRoman } from './roman-numeral.ts';
import { AFTER_CHRIST, BEFORE_CHRIST } from './words.ts';
import { anyOf } from './written-text.ts';

const BC = anyOf(BEFORE_CHRIST);
const AD = anyOf(AFTER_CHRIST);
const NUMBER = '(?<year>\\d{1,4})(?:/(?<next>\\d{1,4}))?';

const BEFORE = new RegExp(
  `^(?:${NUMBER} ?${BC}|${BC} ?${NUMBER.replace('year', 'yearAfter').replace('next', 'nextAfter')})$`,
  'i',
);
const AFTER = new RegExp(
  `^(?:${NUMBER} ?${AD}|${AD} ?${NUMBER.replace('year', 'yearAfter').replace('next', 'nextAfter')})$`,
  'i',
);
const BARE = new RegExp(`^${NUMBER}$`);

/** The year began on 25 March in England until 1752, so January to March stood in two years: 1641/2. */
const OLD_STYLE = { first: 1100, last: 1751 };

/** `1279`, `44 BC`, `AD 71`, `1641/2`. */
export const readYear: PointReader = (text) => {
  const before = BEFORE.exec(text)?.groups;
  if (before)
    return yearBeforeChrist(text, before['year'] ?? before['yearAfter'] ?? '', before['next'] ?? before['nextAfter']);
  const after = AFTER.exec(text)?.groups;
  if (after)
    return yearAfterChrist(text, after['year'] ?? after['yearAfter'] ?? '', after['next'] ?? after['nextAfter']);
  if (/^-\d{1,3}$/.test(text)) {
    const year = Number(text.slice(1));
    return refuse(`A year before Christ is written ${String(year)} BC; in EDTF that is ${isoYear(1 - year)}.`);
  }
  const bare = BARE.exec(text)?.groups;
  if (!bare) return undefined;
  const year = bare['year'] ?? '';
  if (year.length === 4) return yearAfterChrist(text, year, bare['next']);
  return refuse(askForEra(text));
};

function askForEra(text: string): string {
  const range = text.replace('/', '-');
  return `A bare ${text} could be counted from any era; write AD ${range}, ${range} BC or AH ${range}.`;
}

function yearBeforeChrist(text: string, written: string, next: string | undefined): Outcome<Reading> {
  const year = Number(written);
  if (year === 0) return refuse('There is no year 0 BC; the year before AD 1 is 1 BC.');
  if (next === undefined) return good(readYears(1 - year, 1 - year));
  const following = Number(written.slice(0, Math.max(0, written.length - next.length)) + next);
  // A Greek year runs from summer to summer, so it is printed 134/3 BC.
  if (following === year - 1 || Number(next) === year - 1) return good(readYears(1 - year, 2 - year));
  return refuse(`"${text}" does not name two years that follow; write a range with a dash, such as 134-130 BC.`);
}

function yearAfterChrist(text: string, written: string, next: string | undefined): Outcome<Reading> {
  const year = Number(written);
  if (year === 0) return refuse('There is no year AD 0; write 1 BC, or 0000 in EDTF.');
  if (next === undefined) return good(readYears(year, year));
  const following = followingYear(written, next);
  if (following === year + 1)
    return good(year < OLD_STYLE.first || year > OLD_STYLE.last ? readYears(year, following) : oldStyle(following));
  if (following > year)
    return refuse(`"${text}" is no old-style year; for a range write ${written}/${String(following)}.`);
  return refuse(
    `"${text}" does not name two years that follow; write the year as it reads, ${written}, and tell the overdate in the story.`,
  );
}

/** The second year of a pair, its leading figures taken from the first: 1641/2, 1699/700. */
export function followingYear(written: string, next: string): number {
  return Number(written.slice(0, Math.max(0, written.length - next.length)) + next);
}

/** An old-style pair is the end of the old year: 1 January to 24 March of the new, in Julian days. */
function oldStyle(year: number): Reading {
  const first = dayFromJulian({ year, month: 1, day: 1 });
  const last = dayFromJulian({ year, month: 3, day: 24 });
  return readDays(first, last, 'julian');
}

const DECADE = /^(?<part>.*?)(?<![\d-])(?<decade>\d{3})0 ?(?:'?s|er|er Jahre)$/i;
const FRENCH_DECADE = /^(?<part>.*?)(?:les )?années (?<decade>\d{3})0$/i;

/** `1280s`, `late 1280s`, `1840er Jahre`, `années 1840`. */
export const readDecade: PointReader = (text) => {
  const groups = (DECADE.exec(text) ?? FRENCH_DECADE.exec(text))?.groups;
  if (!groups) return undefined;
  const part = groups['part'] ? parsePart(groups['part']) : undefined;
  if (groups['part'] && !part) return undefined;
  const decade = groups['decade'] ?? '';
  if (decade.endsWith('0')) {
    return refuse(
      `"${text}" may be a decade or a century; write ${decade}X for the ten years or ${decade.slice(0, 2)}XX for the hundred.`,
    );
  }
  const first = Number(`${decade}0`);
  if (!part) return good({ ...readYears(first, first + 9), edtf: `${decade}X` });
  const { low, high } = yearsOfPart(first, 10, part);
  return good(readYears(low, high));
};

/** `MDCCXLVII`, `CIƆIƆCCXLVIII`, `҂АѰГІ`: years as coins and medals write them. */
export const readLetterYear: PointReader = (text) => {
  const year = readRoman(text) ?? readCyrillic(text);
  // Below a thousand letters are more likely a word or a mark than a date: no dated European coin is so old.
  return year === undefined || year < 1000 || year > 2100 ? undefined : good(readYears(year, year));
};
