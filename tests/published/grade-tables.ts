import type { ScaleId } from '../../src/core/grade/grade.ts';

const FRENCH = 'a French glossary table of terms in six countries';
const NOTE = 'a published note of 2003 on British and American grading';
const PRACTICE = 'common practice';

/** A word, its scale, and the numbers one published table gives it. All the tables that have a word must be kept. */
export const gradeMappings: readonly (readonly [
  write: string,
  scale: ScaleId,
  low: number,
  high: number,
  source: string,
])[] = [
  ['B', 'fr', 6, 14, FRENCH],
  ['TB', 'fr', 15, 39, FRENCH],
  ['TTB', 'fr', 40, 54, FRENCH],
  ['SUP', 'fr', 55, 62, FRENCH],
  ['SPL', 'fr', 63, 64, FRENCH],
  ['FDC', 'fr', 65, 70, FRENCH],
  ['VG', 'uk', 6, 14, FRENCH],
  ['F', 'uk', 15, 39, FRENCH],
  ['VF', 'uk', 40, 54, FRENCH],
  ['EF', 'uk', 55, 62, FRENCH],
  ['SGE', 'de', 6, 14, FRENCH],
  ['S', 'de', 15, 39, FRENCH],
  ['SS', 'de', 40, 54, FRENCH],
  ['VZ', 'de', 55, 62, FRENCH],
  ['fST', 'de', 63, 64, FRENCH],
  ['ST', 'de', 65, 70, FRENCH],
  ['B', 'it', 6, 14, FRENCH],
  ['MB', 'it', 15, 39, FRENCH],
  ['BB', 'it', 40, 54, FRENCH],
  ['FDC', 'it', 65, 70, FRENCH],
  ['BC', 'es', 6, 14, FRENCH],
  ['BC+', 'es', 15, 39, FRENCH],
  ['MBC', 'es', 40, 54, FRENCH],
  ['SC', 'es', 65, 70, FRENCH],
  ['VG', 'uk', 12, 15, NOTE],
  ['EF', 'uk', 50, 58, NOTE],
  ['Unc', 'uk', 62, 63, NOTE],
  ['choice Unc', 'uk', 64, 65, NOTE],
  ['gem Unc', 'uk', 66, 67, NOTE],
  ['ss', 'de', 20, 35, 'a German list of terms beside numbers'],
  ['vz', 'de', 40, 45, 'a German list of terms beside numbers'],
  ['vz-st', 'de', 50, 58, 'a German list of terms beside numbers'],
  ['st', 'de', 60, 70, 'a German list of terms beside numbers'],
  ['PO', 'us', 1, 1, PRACTICE],
  ['FR', 'us', 2, 2, PRACTICE],
  ['AG', 'us', 3, 3, PRACTICE],
  ['G', 'us', 4, 6, PRACTICE],
  ['VG', 'us', 8, 10, PRACTICE],
  ['F', 'us', 12, 15, PRACTICE],
  ['VF', 'us', 20, 35, PRACTICE],
  ['XF', 'us', 40, 45, PRACTICE],
  ['AU', 'us', 50, 58, PRACTICE],
  ['MS', 'us', 60, 70, PRACTICE],
];

/** Words that two printed lists of terms put on one line; whatever the numbers, the two must be able to be the same grade. */
export const sameLine: readonly { line: readonly (readonly [string, ScaleId])[]; source: string }[] = [
  {
    line: [
      ['st', 'de'],
      ['Unc', 'uk'],
      ['FDC', 'fr'],
      ['FDC', 'it'],
    ],
    source: 'a list of coin grades in several languages',
  },
  {
    line: [
      ['vz', 'de'],
      ['EF', 'uk'],
      ['SUP', 'fr'],
      ['SPL', 'it'],
    ],
    source: 'a list of coin grades in several languages',
  },
  {
    line: [
      ['ss', 'de'],
      ['VF', 'uk'],
      ['TTB', 'fr'],
      ['BB', 'it'],
    ],
    source: 'a list of coin grades in several languages',
  },
  {
    line: [
      ['s', 'de'],
      ['F', 'uk'],
      ['TB', 'fr'],
      ['MB', 'it'],
    ],
    source: 'a list of coin grades in several languages',
  },
  {
    line: [
      ['FDC', 'it'],
      ['FDC', 'fr'],
      ['Unc', 'uk'],
      ['stgl', 'de'],
      ['SC', 'es'],
    ],
    source: 'an Italian table in five languages',
  },
  {
    line: [
      ['SPL', 'it'],
      ['SUP', 'fr'],
      ['EF', 'uk'],
      ['vorz', 'de'],
      ['EBC', 'es'],
    ],
    source: 'an Italian table in five languages',
  },
  {
    line: [
      ['BB', 'it'],
      ['TTB', 'fr'],
      ['VF', 'uk'],
      ['ss', 'de'],
      ['MBC', 'es'],
    ],
    source: 'an Italian table in five languages',
  },
];

/** The thirty steps. Common practice. */
export const thirtySteps: readonly number[] = [
  1, 2, 3, 4, 6, 8, 10, 12, 15, 20, 25, 30, 35, 40, 45, 50, 53, 55, 58, 60, 61, 62, 63, 64, 65, 66, 67, 68, 69, 70,
];

/** What a British guide says of the letters before a grade: the order in which they rise from VF to EF and from F to VF. */
export const risingInBritain: readonly { rising: readonly string[]; source: string }[] = [
  { rising: ['VF', 'GVF', 'NEF', 'EF'], source: 'a British guide to grading, 2013' },
  { rising: ['F', 'GF', 'NVF', 'VF'], source: 'a British guide to grading, 2013' },
];
