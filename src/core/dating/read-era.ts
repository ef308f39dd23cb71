import { dayFromCivil, dayFromIso } from '../calendars/civil.ts';
import { hijriFromDay } from '../calendars/hijri.ts';
import { good, refuse, type Outcome } from '../outcome.ts';
import { isOttomanPair } from './ask-which.ts';
import { meaningsOfFarYear, meaningsOfYear, settledEra } from './ambiguous-eras.ts';
import type { DateContext, Reading } from './dating.ts';
import { BYZANTINE, eraNamed, HEBREW, HIJRI, isRealmOf, KEEPS_ACCESSION, REPUBLICAN, type Era } from './eras.ts';
import { readCyrillic, readHanNumber, readHebrewNumber, readRoman } from './numerals.ts';
import type { PointContext, PointReader } from './reading.ts';
import { followingYear } from './shortened.ts';

const HAN = '[元〇一二三四五六七八九十廿卅百]+';
const NUMBER = `(?:year )?(?<number>\\d{1,4}X{0,3}|${HAN})`;
const ERA_FIRST = new RegExp(`^(?<era>\\D*?[^\\d\\s]),? ?${NUMBER}(?:年|nen)?$`, 'i');
const ERA_LAST = new RegExp(`^${NUMBER}(?:年|nen)?,? ?(?<era>[^\\dX]\\D*)$`, 'i');
/** `an XII`, `an 12 de la République`, `year XII of the French Republic` */
const REPUBLIC = '(?<republic> de la république(?: française)?| of the french republic| \\(french republic\\))';
const OF_FRANCE = new RegExp(`^(?:l')?(?<an>an|année|year) (?<number>\\d{1,2}|[IVX]{1,4})${REPUBLIC}?$`, 'i');

/** `AH 294`, `294 AH`, `AH 29X`, `Seleucid 182`, `AM 5708`, `Saka 1894`, `An XIII`, `Minguo 3`, `民國三年`, `תש״ח`. */
export const readCountedEra: PointReader = (text, context) => {
  const settled = settledEra(text, context);
  if (settled) return settled.ok ? readNamed(settled.value, context) : settled;
  return readNamed(text, context) ?? readLetters(text, context);
};

function readNamed(text: string, context: DateContext): Outcome<Reading> | undefined {
  const { an, number: france, republic } = OF_FRANCE.exec(text)?.groups ?? {};
  if (france !== undefined && (an?.toLowerCase() === 'an' || republic !== undefined)) {
    return yearOfEra(REPUBLICAN, france, context);
  }
  for (const form of [ERA_FIRST, ERA_LAST]) {
    const { era: word = '', number = '' } = form.exec(text)?.groups ?? {};
    const era = word === '' ? undefined : eraNamed(word);
    if (era) return yearOfEra(era, number, context);
  }
  return undefined;
}

/** Years of the world in the letters of Hebrew or Cyrillic: `תש״ח`, `҂ЗСИ`. */
function readLetters(text: string, context: DateContext): Outcome<Reading> | undefined {
  const hebrew = readHebrewNumber(text);
  if (hebrew !== undefined) return yearOfEra(HEBREW, String(hebrew), context);
  const cyrillic = readCyrillic(text);
  if (cyrillic === undefined || cyrillic < FIRST_IN_CYRILLIC || cyrillic > LAST_BYZANTINE) return undefined;
  return yearOfEra(BYZANTINE, String(cyrillic), context);
}

/** The years of the world that are in letters on coins of Russia: to Peter's change of era on 1 January 1700. */
const FIRST_IN_CYRILLIC = 6500;
const LAST_BYZANTINE = 7208;
/** AM 3761 contains the first days of AD 1. */
const FIRST_HEBREW_YEAR_OF_OURS = 3761;
/** Years of other eras that would begin later than this are slips of the pen. */
const LAST_YEAR = 2100;
const HAITI = ['haiti', 'hayti'];

function yearOfEra(era: Era, written: string, context: DateContext): Outcome<Reading> | undefined {
  const number = figuresOf(written);
  if (number === undefined) return undefined;
  const first = Math.max(1, Number(number.replaceAll('X', '0')));
  const last = Number(number.replaceAll('X', '9'));
  const { sign } = era;
  if (last < 1) return refuse(`Years ${sign} begin at 1; write ${sign} 1 or the year that was meant.`);
  if (era === REPUBLICAN && (last > (era.ended ?? last) || isRealmOf(HAITI, context.realm)))
    return ofHaiti(number, context);
  // Coins leave out the thousands of the Hebrew year; the number alone would be a year before any coin.
  if (era === HEBREW && last < FIRST_HEBREW_YEAR_OF_OURS) return refuse(withoutThousands(number, first));
  const reading = era.read(first, last, context);
  if (typeof reading.earliest === 'number' && reading.earliest > LAST_YEAR) {
    const began = `${sign} ${number} would begin in AD ${String(reading.earliest)}`;
    return refuse(`${began}; write the number as it stands on the piece.`);
  }
  return good(reading);
}

function figuresOf(written: string): string | undefined {
  if (/^[\dX]{1,4}$/i.test(written) && /\d/.test(written)) return written.toUpperCase();
  return (readRoman(written) ?? readHanNumber(written))?.toString();
}

function withoutThousands(number: string, first: number): string {
  const offer =
    first < 1000 ? `; if the thousands were left out, write AM ${String(5000 + first)}` : '; write the year AD';
  return `AM ${number} lies before any coin${offer}.`;
}

/** `AN 27` on coins of Haiti is the 27th year of independence, 1830; the years of the French Republic ended at 14. */
function ofHaiti(number: string, context: DateContext): Outcome<Reading> {
  const haitian = eraNamed('Year of Haiti');
  if (haitian && isRealmOf(HAITI, context.realm)) return good(haitian.read(Number(number), Number(number), context));
  const way = Number(number) < 100 ? `; for one of independence on a coin of Haiti write Year of Haiti ${number}` : '';
  return refuse(`The years of the French Republic run from 1 to 14, and "An ${number}" is none${way}.`);
}

const YEAR_WORD = '(?:accession year|year|yr\\.?|Jahr|année|an|sene)';
const REGNAL_WORD = '(?:regnal year|r\\. ?y\\.?|ry)';
const SEPARATOR = `(?:(?:,| ?//?)? ?(?<word>${YEAR_WORD}) ?|(?:,| ?//?)? ?(?<regnal>${REGNAL_WORD}) ?|(?<stroke> ?//? ?))`;
const ACCESSION = new RegExp(`^(?:accession )?(?<date>.*?\\d\\D*?)${SEPARATOR}(?<year>\\d{1,2})$`, 'i');

/** A Hijri year with a year of reign after it. */
interface HijriPair {
  readonly hijri: number;
  readonly year: number;
  /** The word *year* says that the first number is the accession; a stroke or RY may say that both name one year. */
  readonly joint: 'word' | 'regnal' | 'stroke' | 'strokes';
}

function hijriPair(text: string): HijriPair | undefined {
  const groups = ACCESSION.exec(text)?.groups;
  const date = groups?.['date']?.trim() ?? '';
  const stroke = groups?.['stroke']?.trim();
  // Two strokes before a number of two figures are a year of reign, whether or not the era is named; one behind the accession of a sultan.
  // `1223/Jahr 28` says as much.
  const isSaid = stroke === undefined && text.includes('/');
  const isPair =
    stroke === '//' || ((stroke === '/' || isSaid) && isOttomanPair(Number(date), Number(groups?.['year'])));
  const bare = isPair ? /^1[0-3]\d\d$/.exec(date)?.[0] : undefined;
  const named = [ERA_FIRST, ERA_LAST].map((form) => form.exec(date)?.groups).find((found) => found);
  const number = bare ?? (named && eraNamed(named['era'] ?? '') === HIJRI ? named['number'] : undefined);
  if (number === undefined || !/^\d+$/.test(number)) return undefined;
  const joint =
    groups?.['word'] !== undefined
      ? 'word'
      : groups?.['regnal'] !== undefined
        ? 'regnal'
        : stroke === '//'
          ? 'strokes'
          : 'stroke';
  return { hijri: Number(number), year: Number(groups?.['year']), joint };
}

/** The two forms that a Hijri year with a year of reign may stand for; undefined for other words. */
export function meaningsOfHijriPair(text: string): readonly string[] | undefined {
  const pair = hijriPair(text);
  return pair && [`AH ${String(pair.hijri)}, year ${String(pair.year)}`, `AH ${String(pair.hijri)}`];
}

/** Where both numbers name one year. */
const NAMES_ONE_YEAR = [
  ...'mughal, mogul, moghul, india, bengal, awadh, oudh, bombay, madras, hyderabad, arcot, rohilkhand, maratha'.split(
    ', ',
  ),
  ...'jaipur, gwalior, indore, baroda, kutch, surat, bhopal, durrani, afghan, east india, bihar, punjab'.split(', '),
];

/**
 * `AH 1255, year 15`: coins that keep the year of a ruler's accession and add the year of his reign, as the Ottoman
 * ones do. The first year of the reign is the year of accession, so this is AH 1269. `AH 1202//30`, `AH 1221 RY 46`
 * go by the realm, or by when the ruler came to the throne, because in India both numbers name the same year.
 */
export const readFrozenYear: PointReader = (text, context) => {
  const pair = hijriPair(text);
  if (!pair) return undefined;
  const { hijri, year, joint } = pair;
  if (year === 0) return refuse(`A reign begins with year 1; write AH ${String(hijri)}, year 1.`);
  const counted = hijri + year - 1;
  // One stroke may stand between two years that follow just as well as before a year of reign.
  if (joint === 'stroke' && followingYear(String(hijri), String(year)) === hijri + 1) {
    const ways = `AH ${String(hijri)}-${String(hijri + 1)} or AH ${String(hijri)}, year ${String(year)}`;
    return refuse(`"${text}" may be two years or a year of reign; write ${ways}.`);
  }
  if (year > LONGEST_REIGN)
    return refuse(`No reign was counted to year ${String(year)}; write the year alone, AH ${String(hijri)}.`);
  const settled = settledPair(pair, context);
  // With a comma it is how we ask for it, and a statement where the ruler does not say otherwise; without, lists write either so.
  const isStated = STATED.test(text) && settled !== hijri;
  const isSaid = joint === 'word' && (isStated || (settled ?? (isIndian(hijri, year) ? hijri : counted)) === counted);
  if (isSaid || counted === hijri) return yearOfEra(HIJRI, String(counted), context);
  if (settled !== undefined && settled !== 'contradicted') return yearOfEra(HIJRI, String(settled), context);
  const accession = `AH ${String(hijri)}, year ${String(year)} (= AH ${String(counted)}) if the first number is the accession, as on Ottoman coins`;
  const same = `AH ${String(hijri)} if both name one year, as on Indian coins`;
  const why =
    settled === 'contradicted'
      ? 'does not agree with the accession of the ruler, or was frozen on the dies'
      : 'can be read two ways';
  return refuse(`"${text}" ${why}; write ${accession}, or ${same}.`);
};

/** When Mughal emperors came to the throne, AH, and how many years they counted (common practice, from memory). */
const MUGHAL = [
  ...[[1014, 24], [1037, 33], [1068, 52], [1119, 7], [1124, 8], [1131, 31], [1161, 8], [1167, 7], [1173, 50], [1221, 33]],
  ...[[1253, 23]],
]; // prettier-ignore

/** No ruler's years are counted further on coins. */
const LONGEST_REIGN = 60;
const STATED = /^AH ?\d+, year \d+$/;

/** Whether a Mughal emperor counted that year in that year, or one apart: lunar years and years of reign begin at different times. */
function isIndian(hijri: number, year: number): boolean {
  return MUGHAL.some(([from = 0, years = 0]) => Math.abs(from + year - 1 - hijri) <= 1 && year <= years);
}

/** The Hijri year that a pair names in a realm, or under a ruler who came to the throne at a known time. */
function settledPair({ hijri, year }: HijriPair, context: PointContext): number | 'contradicted' | undefined {
  const { realm, accessions = [] } = context;
  const keeps = isRealmOf(KEEPS_ACCESSION, realm);
  const names = isRealmOf(NAMES_ONE_YEAR, realm);
  const spans = accessions.flatMap((accession) => hijriYearsOf(context.readDate(accession)) ?? []);
  if (spans.length === 0) return keeps === names ? undefined : keeps ? hijri + year - 1 : hijri;
  const isAccession = spans.some(([first, last]) => first <= hijri && hijri <= last);
  // Lunar years and years of reign begin at different times, so the two may be one apart.
  const isOneYear = spans.some(([first, last]) => first + year - 2 <= hijri && hijri <= last + year);
  const mayKeep = isAccession && !names;
  const mayName = isOneYear && !keeps;
  if (mayKeep === mayName) return 'contradicted';
  return mayKeep ? hijri + year - 1 : hijri;
}

function hijriYearsOf(outcome: Outcome<Reading> | undefined): readonly (readonly [number, number])[] | undefined {
  if (!outcome?.ok) return undefined;
  const { from, to, dayCalendar, earliest, latest } = outcome.value;
  if (from !== undefined && to !== undefined && dayCalendar) {
    return [[hijriFromDay(dayFromIso(from, dayCalendar)).year, hijriFromDay(dayFromIso(to, dayCalendar)).year]];
  }
  if (typeof earliest !== 'number' || typeof latest !== 'number') return undefined;
  const first = dayFromCivil({ year: earliest, month: 1, day: 1 });
  const last = dayFromCivil({ year: latest, month: 12, day: 31 });
  return [[hijriFromDay(first).year, hijriFromDay(last).year]];
}

/** Every unmistakable form that a text of another era with several readings may stand for. */
export function unmistakableForms(text: string): readonly string[] {
  return meaningsOfHijriPair(text) ?? meaningsOfYear(text)?.map(({ words }) => words) ?? meaningsOfFarYear(text);
}
