import { describe, expect, test } from 'vitest';
import { checkLabel, checkTitle, countWords, sentencesOf } from '../../../src/core/cases/label-checks.ts';

const word = (count: number): string => Array.from({ length: count }, () => 'word').join(' ');

/** Limits as printed: Smithsonian Institution, Guidelines for Accessible Exhibition Design; B. Serrell, Exhibit Labels, 2nd ed. */
const PUBLISHED = [
  { text: `${word(25)}.`, width: 90, points: 18, says: [] },
  { text: `${word(26)}.`, width: 90, points: 18, says: [/26 words; at most 25/] },
  { text: Array.from({ length: 10 }, () => `Word ${word(9)}.`).join(' '), width: 90, points: 18, says: [] },
  {
    text: Array.from({ length: 10 }, () => `Word ${word(10)}.`).join(' '),
    width: 90,
    points: 18,
    says: [/110 words; at most 100/],
  },
  { text: 'A short label.', width: 300, points: 18, says: [/letters; at most 55/] },
  { text: 'A short label.', width: 60, points: 12, says: [/12 pt is hard to read/] },
  { text: 'A short label.', width: 40, points: 7, says: [/7 pt cannot be read/] },
] as const;

describe('a label', () => {
  test.for(PUBLISHED)(
    'of $points pt on $width mm is remarked on as printed guides have it',
    ({ text, width, points, says }) => {
      const remarks = checkLabel(text, width, points);
      expect(remarks).toHaveLength(says.length);
      says.forEach((pattern, index) => expect(remarks[index]?.says).toMatch(pattern));
    },
  );

  test('400 words are remarked on once for the label', () => {
    const text = Array.from({ length: 40 }, () => `Word ${word(9)}.`).join(' ');
    expect(checkLabel(text, 90, 18).map(({ says }) => says)).toEqual([
      'This label has 400 words; at most 100 are read.',
    ]);
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
