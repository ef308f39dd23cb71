import { describe, expect, test } from 'vitest';
import { checkTitle, checkType, checkWords, countWords, sentencesOf } from '../../../src/core/cases/label-checks.ts';

const sentences = (many: number, words: number): string =>
  Array.from({ length: many }, () => `Word ${word(words - 1)}.`).join(' ');
const word = (count: number): string => Array.from({ length: count }, () => 'word').join(' ');

/** Limits as printed: Smithsonian Institution, Guidelines for Accessible Exhibition Design; B. Serrell, Exhibit Labels, 2nd ed. */
const PUBLISHED = [
  { what: 'label', text: `${word(25)}.`, says: [] },
  { what: 'label', text: `${word(26)}.`, says: [/26 words; at most 25/] },
  { what: 'label', text: sentences(10, 10), says: [] },
  { what: 'label', text: sentences(10, 11), says: [/110 words; at most 100/] },
  { what: 'label', text: sentences(40, 10), says: [/^This label has 400 words; at most 100 are read\.$/] },
  { what: 'text', text: sentences(15, 10), says: [] },
  { what: 'text', text: sentences(16, 10), says: [/160 words; at most 150/] },
  { what: 'statement', text: sentences(30, 10), says: [] },
  { what: 'statement', text: sentences(31, 10), says: [/310 words; at most 300/] },
] as const;

describe('the words of a text', () => {
  test.for(PUBLISHED)('of a $what are remarked on as printed guides have it: $says', ({ what, text, says }) => {
    const remarks = checkWords(text, what);
    expect(remarks).toHaveLength(says.length);
    says.forEach((pattern, index) => expect(remarks[index]?.says).toMatch(pattern));
  });

  test('a point after c. or an initial ends no sentence', () => {
    expect(sentencesOf('Struck c. 1280 for E. Fane of St. Mary. Found later.')).toEqual([
      'Struck c. 1280 for E. Fane of St. Mary.',
      'Found later.',
    ]);
  });

  test('a dash alone is no word', () => expect(countWords('One – two')).toBe(2));

  test('a title has at most seven words (Serrell)', () => {
    expect(checkTitle('Struck in York through a thousand years')).toEqual([]);
    expect(checkTitle('Struck in York through more than a thousand years')).toHaveLength(1);
  });
});

describe('the type of labels', () => {
  // 55 letters of 18 pt at 0.42 of their size take 55 × 18 × 25.4 / 72 × 0.42 = 146.7 mm; the limit is the Smithsonian's.
  test('a line holds at most 55 letters', () => {
    expect(checkType(146, 18)).toEqual([]);
    expect(checkType(150, 18).map(({ says }) => says)).toEqual([
      'A line of these labels holds 56 letters; at most 55 are followed.',
    ]);
  });

  test('under 18 pt is hard to read at 40 to 50 cm (our own judgement)', () => {
    expect(checkType(60, 18)).toEqual([]);
    expect(checkType(60, 12)).toMatchObject([{ says: 'Type of 12 pt is hard to read in a case; 18 pt is easy.' }]);
  });
});
