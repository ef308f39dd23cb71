import type { Reign } from './dating.ts';
import { readEdtf } from './edtf.ts';
import { readGlossed } from './gloss.ts';
import { readQualified, type WordReader } from './qualifiers.ts';
import { readBothBounds, readBound } from './read-bound.ts';
import { pointReader } from './read-point.ts';
import { readChoice, readRange } from './read-several.ts';
import { STRUCK } from './words.ts';
import { wordBefore } from './written-text.ts';

const STRUCK_WORD = wordBefore(STRUCK);

/**
 * Reads a date in free words: a point in time, or several joined, or the time before or after one, with "about" and
 * "perhaps" round any of them. Undefined when any word is not understood.
 */
export function phraseReader(reigns: readonly Reign[]): WordReader {
  const point = remembering(pointReader(reigns, readBoundOfReign));
  const readPoint: WordReader = (words) => readQualified(words, point);
  const readLimit: WordReader = (words) => readPoint(words) ?? edtfDate(words) ?? readRange(words, readPoint);
  return function readPhrase(said) {
    const text = said.replace(STRUCK_WORD, '');
    // A sign that is a word elsewhere may be part of the date: C12, C.E. 325.
    const whole = point(text);
    if (whole?.ok) return whole;
    return readQualified(text, (words) => {
      const plain = readGlossed(words, readPhrase) ?? point(words);
      if (plain?.ok) return plain;
      const joined =
        readChoice(words, readPoint) ??
        readRange(words, readPoint) ??
        readBothBounds(words, readLimit) ??
        readBound(words, readLimit);
      return joined ?? plain ?? edtfDate(words);
    });
  };
}

/** A reign's file states its bounds by themselves, not by another reign. */
const readBoundOfReign: WordReader = (text) => readEdtf(text) ?? phraseReader([])(text);

/** A date of EDTF with hyphens may stand wherever a year may, when it is no range of years. */
function edtfDate(text: string): ReturnType<WordReader> {
  return text.includes('/') ? undefined : readEdtf(text);
}

/** The same words turn up in many cuttings of one phrase, and are read once. */
function remembering(read: WordReader): WordReader {
  const known = new Map<string, ReturnType<WordReader>>();
  return (words) => {
    if (!known.has(words)) known.set(words, read(words));
    return known.get(words);
  };
}
