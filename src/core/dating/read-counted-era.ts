import { good, refuse, type Outcome } from '../outcome.ts';
import { COUNTED_ERAS, HIJRI, type CountedEra } from './counted-eras.ts';
import type { Reading } from './dating.ts';
import { readHanNumber } from './han-numeral.ts';
import { readHebrewNumber } from './hebrew-numeral.ts';
import type { PointReader } from './point-reader.ts';
import { followingYear } from './read-year.ts';
import { anyOf } from './written-text.ts';

const NUMBER = '(?:year )?(?<number>\\d{1,4}X{0,3}|[元〇一二三四五六七八九十廿卅百]+)(?:年|nen)?';

const FORMS = COUNTED_ERAS.map((era) => {
  const words = anyOf(era.words);
  return { era, forms: [new RegExp(`^${words} ?${NUMBER}$`, 'i'), new RegExp(`^${NUMBER} ?${words}$`, 'i')] };
});

/** `AH 294`, `294 AH`, `AH 29X`, `SE 182`, `AM 5708`, `Saka 1894`, `Minguo 3`, `民國三年`, `תש״ח`. */
export const readCountedEra: PointReader = (text) => {
  for (const { era, forms } of FORMS) {
    for (const form of forms) {
      const number = form.exec(text)?.groups?.['number'];
      if (number !== undefined && number !== '') return yearsOfEra(era, number);
    }
  }
  const hebrew = readHebrewNumber(text);
  return hebrew === undefined ? undefined : yearsOfEra(hebrewEra, String(hebrew));
};

/** AM 3761 contains the first days of AD 1. */
const FIRST_HEBREW_YEAR_OF_OURS = 3761;
/** Years of other eras that would begin later than this are slips of the pen. */
const LAST_YEAR = 2100;

const hebrewEra: CountedEra = COUNTED_ERAS.find(({ calendar }) => calendar === 'hebrew') ?? HIJRI;

function yearsOfEra(era: CountedEra, written: string): Outcome<Reading> | undefined {
  const number = /^[\dX]{1,4}$/i.test(written) ? written.toUpperCase() : readHanNumber(written)?.toString();
  if (number === undefined) return undefined;
  const first = Math.max(1, Number(number.replaceAll('X', '0')));
  const last = Number(number.replaceAll('X', '9'));
  if (last < 1) return refuse(`Years ${era.sign} begin at 1; write ${era.sign} 1 or the year that was meant.`);
  // Coins leave out the thousands of the Hebrew year; the number alone would be a year before any coin.
  if (era.calendar === 'hebrew' && last < FIRST_HEBREW_YEAR_OF_OURS) {
    return refuse(
      `AM ${number} lies before any coin; if the thousands were left out, write AM ${String(5000 + first)}.`,
    );
  }
  const reading = era.read(first, last);
  if (typeof reading.earliest === 'number' && reading.earliest > LAST_YEAR) {
    return refuse(
      `${era.sign} ${number} would begin in AD ${String(reading.earliest)}; write the number as it stands on the piece.`,
    );
  }
  return good(reading);
}

const YEAR_OF_REIGN = '(?:regnal year|accession year|year|yr\\.?|r\\. ?y\\.|ry|Jahr|année|an|sene)';
const ACCESSION = new RegExp(
  `^(?:accession )?(?<accession>.*\\d\\D*?)(?:,? ?${YEAR_OF_REIGN} ?|(?<slash> ?//? ?))(?<year>\\d{1,2})$`,
  'i',
);

/**
 * `AH 1255, year 15`: coins that keep the year of a ruler's accession and add the year of his reign, as the Ottoman
 * ones do. The first year of the reign is the year of accession, so this is AH 1269.
 */
export const readFrozenYear: PointReader = (text) => {
  const groups = ACCESSION.exec(text)?.groups;
  const accession = groups?.['accession']?.trim() ?? '';
  const forms = FORMS.find(({ era }) => era === HIJRI)?.forms ?? [];
  const number = forms.map((form) => form.exec(accession)?.groups?.['number']).find((found) => found !== undefined);
  if (number === undefined || !/^\d+$/.test(number)) return undefined;
  const year = groups?.['year'] ?? '';
  if (Number(year) === 0) return refuse(`A reign begins with year 1; write AH ${number}, year 1.`);
  // One stroke may stand between two years that follow just as well as before a year of reign.
  if (groups?.['slash']?.trim() === '/' && followingYear(number, year) === Number(number) + 1) {
    return refuse(
      `"${text}" may be two years or a year of reign; write AH ${number}-${String(Number(number) + 1)} or AH ${number}, year ${year}.`,
    );
  }
  return yearsOfEra(HIJRI, String(Number(number) + Number(year) - 1));
};
