import type { Outcome } from '../outcome.ts';
import type { Reading } from './dating.ts';
import { readEdtf } from './edtf.ts';
import { readGlossed } from './gloss.ts';
import type { Surroundings } from './point-reader.ts';
import { readQualified, type WordReader } from './qualifiers.ts';
import { readBound } from './read-bound.ts';
import { pointReader } from './read-point.ts';
import { readChoice, readRange } from './read-several.ts';

/**
 * Reads a date in free words: a point in time, or several joined, or the time before or after one, with "about" and
 * "perhaps" round any of them. Undefined when any word is not understood.
 */
export function readPhrase(text: string, surroundings: Surroundings): Outcome<Reading> | undefined {
  const point = pointReader((bound) => readEdtf(bound) ?? readPhrase(bound, { reigns: [] }));
  const readPoint: WordReader = (words) => readQualified(words, (bare) => point(bare, surroundings));
  const readLimit: WordReader = (words) => readPoint(words) ?? edtfDate(words) ?? readRange(words, readPoint);
  // A sign that is a word elsewhere may be part of the date: C12, C.E. 325.
  const whole = point(text, surroundings);
  if (whole?.ok) return whole;
  return readQualified(text, (words) => {
    const plain = readGlossed(words, (date) => readPhrase(date, surroundings)) ?? point(words, surroundings);
    if (plain?.ok) return plain;
    const joined = readChoice(words, readPoint) ?? readRange(words, readPoint) ?? readBound(words, readLimit);
    return joined ?? plain ?? edtfDate(words);
  });
}

/** A date of EDTF with hyphens may stand wherever a year may, when it is no range of years. */
function edtfDate(text: string): Outcome<Reading> | undefined {
  return text.includes('/') ? undefined : readEdtf(text);
}
