import type { Outcome } from '../outcome.ts';
import { choice, span } from './combine.ts';
import type { Reading } from './dating.ts';
import { readPair, splits } from './pair.ts';
import type { WordReader } from './qualifiers.ts';
import { AFTER_CHRIST, AND, BETWEEN, FROM, OR, TO } from './words.ts';
import { anyOf, wordBefore } from './written-text.ts';

const MOST_CHOICES = 8;
const CHOICES = [
  { kind: 'or' as const, words: anyOf(OR) },
  { kind: 'and' as const, words: anyOf(AND) },
].map(({ kind, words }) => {
  // "Of" is "or" in Dutch, but only between figures: elsewhere it is the English word.
  const between = kind === 'or' ? `(?: ${words} |(?<=\\d) of (?=\\d))` : ` ${words} `;
  return { kind, word: new RegExp(between, 'i'), joint: new RegExp(`,?${between}|, `, 'i') };
});

/** `1279 or 1280`, `1279, 1281 or 1283`, `1279 and 1280`. */
export function readChoice(text: string, readPoint: WordReader): Outcome<Reading> | undefined {
  for (const { kind, word, joint } of CHOICES) {
    const parts = text.split(joint);
    if (parts.length < 2 || parts.length > MOST_CHOICES || !word.test(text)) continue;
    const readings = readParts(parts, readPoint);
    if (readings) return choice(readings, kind);
  }
  return undefined;
}

/** Reads each of several dates; all but the last may borrow from the last, and the last from the first. */
function readParts(parts: readonly string[], readPoint: WordReader): readonly Reading[] | undefined {
  const first = parts.at(0) ?? '';
  const last = parts.at(-1) ?? '';
  const readings: Reading[] = [];
  for (const [index, part] of parts.entries()) {
    const isLast = index === parts.length - 1;
    const pair = isLast ? readPair(first, part, readPoint)?.right : readPair(part, last, readPoint)?.left;
    const outcome = readRange(part, readPoint) ?? pair ?? readPoint(part);
    if (!outcome?.ok) return undefined;
    readings.push(outcome.value);
  }
  return readings;
}

const TO_WORDS = new RegExp(` ${anyOf(TO)}(?= )`, 'gi');
/** A hyphen; or a stroke between centuries, which between years would be old style: `12./13. Jh.`, `s. XII/XIII`. */
const MARKS = /-|(?<=[^\d ])\/(?=[^\d ]|\d{1,2}(?:st|nd|rd|th|e|\.))|(?<=\d)\/(?=\d{1,2}(?:st|nd|rd|th|\.))/g;
/** `27 BC/14 AD`: the second year has an era of its own. */
const BEFORE_ERA = new RegExp(`(?<=[^\\d ])/(?=\\d{1,4} ?${anyOf(AFTER_CHRIST)}$)`, 'gi');
const AND_WORDS = new RegExp(` ${anyOf(AND)}(?= )`, 'gi');
const FROM_WORD = wordBefore(FROM);
const BETWEEN_WORD = wordBefore(BETWEEN);

/** `1279-81`, `1279 to 1281`, `between 1279 and 1281`, `27 BC - AD 14`, `12./13. Jh.` */
export function readRange(text: string, readPoint: WordReader): Outcome<Reading> | undefined {
  const isBetween = BETWEEN_WORD.test(text);
  const words = text.replace(isBetween ? BETWEEN_WORD : FROM_WORD, '');

  let problem: Outcome<Reading> | undefined;
  for (const joint of isBetween ? [AND_WORDS] : [TO_WORDS, MARKS, BEFORE_ERA]) {
    for (const { left, right } of splits(words, joint)) {
      const pair = readPair(left, right, readPoint);
      if (pair?.left.ok && pair.right.ok) return span(pair.left.value, pair.right.value, text, pair.words);
      if (pair) problem ??= pair.left.ok ? pair.right : pair.left;
    }
  }
  return problem;
}
