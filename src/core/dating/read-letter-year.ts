import { good } from '../outcome.ts';
import { readCyrillic } from './cyrillic-numeral.ts';
import type { PointReader } from './point-reader.ts';
import { readYears } from './reading.ts';
import { readRoman } from './roman-numeral.ts';

/** The first coins dated by the year of Christ are of 1234, at Roskilde (common practice); letters that mean less are a word. */
const FIRST_DATED = 1200;
const LAST_DATED = 2100;

/** A title page may print the year in small letters; fewer than five may be a word. */
const SMALL = /^m[mdclxvij]{4,}$/;

/** `MDCCXLVII`, `mdccxlvii`, `CIƆIƆCCXLVIII`, `҂АѰГІ`: years as coins and medals write them. */
export const readLetterYear: PointReader = (text) => {
  const year = readRoman(SMALL.test(text) ? text.toUpperCase() : text) ?? readCyrillic(text);
  return year === undefined || year < FIRST_DATED || year > LAST_DATED ? undefined : good(readYears(year, year));
};
