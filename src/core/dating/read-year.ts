import { dayFromJulian, isoYear } from '../calendars/civil.ts';
import { good, refuse, type Outcome } from '../outcome.ts';
import { isOttomanPair } from './ask-which.ts';
import type { DateContext, Reading } from './dating.ts';
import { isRealmOf, KEEPS_ACCESSION } from './eras.ts';
import { readCyrillic, readRoman } from './numerals.ts';
import { parsePart } from './parts.ts';
import { readDays, readYears, type PointReader } from './reading.ts';
import { followingYear, secondYearBefore } from './shortened.ts';
import { AFTER_CHRIST, BEFORE_CHRIST, SEASONS } from './words.ts';
import { anyOf } from './written-text.ts';

/** The era before the number or after it; the number of so many figures at most, a second year after a stroke. */
function withEra(era: string, figures: number): readonly RegExp[] {
  const year = `(?<year>\\d{1,${String(figures)}})(?:/(?<next>\\d{1,${String(figures)}}))?`;
  return [new RegExp(`^${year} ?${era}$`, 'i'), new RegExp(`^${era} ?${year}$`, 'i')];
}

const FORMS = [
  { forms: withEra(anyOf(BEFORE_CHRIST), 7), read: yearBeforeChrist },
  { forms: withEra(anyOf(AFTER_CHRIST), 4), read: yearAfterChrist },
  { forms: [/^(?<year>\d{4})(?:\/(?<next>\d{1,4}))?$/], read: yearAfterChrist },
  { forms: [/^(?<year>\d{4})\/(?<next>\d{1,4}),? \(?(?:o\. ?s\.|OS|old style)\)?$/i], read: oldStyle },
];

/** `1279`, `44 BC`, `AD 71`, `1641/2`, `1921/24`, `398/97 BC`. */
export const readYear: PointReader = (text, context) => {
  for (const { forms, read } of FORMS) {
    for (const form of forms) {
      const groups = form.exec(text)?.groups;
      if (groups) return read(text, groups['year'] ?? '', groups['next'], context);
    }
  }
  return undefined;
};

function yearBeforeChrist(_: string, written: string, next: string | undefined): Outcome<Reading> {
  const year = Number(written);
  if (year === 0) return refuse('There is no year 0 BC; write 1 BC for the year before AD 1.');
  if (next === undefined) return good(readYears(1 - year, 1 - year));
  const second = secondYearBefore(written, next, 'stroke');
  return second.ok ? good(readYears(1 - year, 1 - second.value)) : second;
}

/** A year completed into the next century is offered when it is this near: 1899/00, 1898/1913. */
const NEAR = 50;

function yearAfterChrist(
  text: string,
  written: string,
  next: string | undefined,
  { dateOf, hyphen, realm }: DateContext,
): Outcome<Reading> | undefined {
  const year = Number(written);
  if (year === 0) return refuse('There is no year AD 0; write 1 BC, or 0000 in EDTF.');
  if (next === undefined) return good(readYears(year, year));
  const following = followingYear(written, next);
  // Where coins keep the year of accession, `1327/9` is the ninth year from AH 1327.
  if (dateOf !== 'event' && next.length < 3 && written === text.slice(0, 4) && isOttomanPair(year, Number(next))) {
    if (isRealmOf(KEEPS_ACCESSION, realm)) return undefined;
    if (realm === undefined) return refuse(askForReign(text, written, next, following));
  }
  const mayBeMonth =
    dateOf === 'event' && hyphen === undefined && written.length === 4 && /^(?:0\d|1[0-2])$/.test(next);
  if (mayBeMonth) {
    return refuse(
      `"${text}" may be a month or two years; write ${written}-${next} for the month, or ${written} - ${String(following)}.`,
    );
  }
  // 1699/700 leaves the thousands out; 1000/900 is rather before Christ than nine hundred years long.
  if (next.length === 3 && written.length === 4 && following - year > NEAR) {
    const ways = `${written} BC - ${next} BC, or ${written} - ${String(following)}`;
    return refuse(`"${text}" would be a long time after Christ; write ${ways} if that is meant.`);
  }
  if (following > year) return good(readYears(year, following));
  const later = following + 100;
  const overdate = `write the year as it reads, ${written}, and tell an overdate in the story`;
  const way =
    next.length === 2 && later - year <= NEAR
      ? `write ${written}/${String(later)} for two years, or ${overdate}`
      : overdate;
  return refuse(`"${text}" does not name two years that follow; ${way}.`);
}

function askForReign(text: string, written: string, next: string, following: number): string {
  const years = following > Number(written) ? `, or ${written} - ${String(following)} for years of ours` : '';
  return `"${text}" may be a year of the Hijra and of a reign; write AH ${written}, year ${String(Number(next))}${years}.`;
}

/** Until 1752 the year began on 25 March in England: `1641/2 OS` is January to March of 1642, in Julian days. */
function oldStyle(text: string, written: string, next = ''): Outcome<Reading> {
  const year = followingYear(written, next);
  if (year !== Number(written) + 1)
    return refuse(`"${text}" does not name two years that follow; write both as 1641/2.`);
  const first = dayFromJulian({ year, month: 1, day: 1 });
  return good(readDays(first, dayFromJulian({ year, month: 3, day: 24 }), 'julian'));
}

const PART_OF_YEAR = /^(?<part>\p{L}[^\d]*?)[ -](?<year>(?:AD |BC )?\d{1,4}(?: \D+)?)$/u;

/** `early 1588`, `late AD 69`, `Anfang 1588`: the year, whose part is shown as it is written. */
export const readPartOfYear: PointReader = (text, context) => {
  const { part = '', year = '' } = PART_OF_YEAR.exec(text)?.groups ?? {};
  if (part === '' || /^in$/i.test(part) || parsePart(part) === undefined) return undefined;
  return readYear(year, context);
};

const GIVE_OR_TAKE = /^(?<date>.*\d.*?) ?(?:±|\+\/-|\+-) ?(?<years>\d{1,3})(?: years?| yrs?\.?| Jahre| ans)?$/i;

/** `1588 ± 5`: the years from 1583 to 1593. */
export const readGiveOrTake: PointReader = (text, context) => {
  const { date = '', years = '' } = GIVE_OR_TAKE.exec(text)?.groups ?? {};
  const reading =
    date === '' ? undefined : (readYear(date, context) ?? readYear(date.replace(/^\D+(?=\d+ BC$)/, ''), context));
  if (!reading?.ok) return reading;
  const { earliest, latest } = reading.value;
  if (typeof earliest !== 'number' || typeof latest !== 'number') return undefined;
  return good(readYears(earliest - Number(years), latest + Number(years)));
};

const SEASON = new RegExp(`^(?<season>${anyOf(SEASONS.flat())}),? (?:of |de )?(?<year>\\d{4})$`, 'i');

/** `spring 1985`, EDTF's 1985-21. A season does not settle the days, which differ by hemisphere. */
export const readSeason: PointReader = (text) => {
  const groups = SEASON.exec(text)?.groups;
  const year = Number(groups?.['year']);
  if (!groups || year === 0) return undefined;
  const season = SEASONS.findIndex((words) => words.includes((groups['season'] ?? '').toLowerCase()));
  return good({ ...readYears(year, year), edtf: `${isoYear(year)}-${String(21 + season)}` });
};

/** The first coins dated by the year of Christ are of 1234, at Roskilde (common practice); letters that mean less are a word. */
const FIRST_DATED = 1200;
const LAST_DATED = 2100;

/** A title page may print the year in small letters; fewer than five may be a word. */
const SMALL = /^m[mdclxvij]{4,}$/;
const YEAR_OF_THE_LORD = /^(?:AD|anno domini|anno|A°|Ao\.?) (?=\p{L})/iu;

/** `MDCCXLVII`, `AD MDLXXXVIII`, `mdccxlvii`, `CIƆIƆCCXLVIII`, `҂АѰГІ`: years as coins and medals write them. */
export const readLetterYear: PointReader = (text) => {
  const letters = text.replace(YEAR_OF_THE_LORD, '');
  const year = readRoman(SMALL.test(letters) ? letters.toUpperCase() : letters) ?? readCyrillic(letters);
  return year === undefined || year < FIRST_DATED || year > LAST_DATED ? undefined : good(readYears(year, year));
};
