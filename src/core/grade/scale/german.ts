import type { Scale } from '../sources.ts';

/** German words, as Germany, Austria and Switzerland write them. */
export const DE: Scale = {
  title: 'German',
  qualifiers: [
    { leaning: 'near', print: 'fast', words: ['fast', 'knapp', 'beinahe', 'f'], letters: ['f'] },
    { leaning: 'near', print: '-', words: [], letters: ['-'] },
    { leaning: 'good', print: 'gutes', words: ['gutes', 'gut', 'besser als'], letters: [] },
  ],
  words: [
    {
      word: 'ge',
      means: 'gering erhalten',
      names: ['ge', 'gering', 'geringerhalten', 'gute', 'guterhalten'],
      mappings: [['italian', 4, 6]],
    },
    {
      word: 'sge',
      means: 'sehr gut erhalten',
      names: ['sge', 'sehrguterhalten'],
      mappings: [
        ['french', 6, 14],
        ['italian', 8, 10],
      ],
    },
    {
      word: 's',
      means: 'schön',
      names: ['s', 'schön', 'schoen', 'sch'],
      mappings: [
        ['french', 15, 39],
        ['italian', 12, 15],
      ],
    },
    {
      word: 'ss',
      means: 'sehr schön',
      names: ['ss', 'sehrschön', 'sehrschoen', 'ssch'],
      mappings: [
        ['french', 40, 54],
        ['german', 20, 35],
      ],
    },
    {
      word: 'vz',
      means: 'vorzüglich',
      names: ['vz', 'vzgl', 'vorz', 'vorzüglich', 'vorzueglich'],
      mappings: [
        ['french', 55, 62],
        ['german', 40, 45],
      ],
    },
    {
      word: 'vz-st',
      means: 'vorzüglich bis Stempelglanz',
      names: ['vzst', 'vorzüglichbisstempelglanz'],
      mappings: [
        ['french', 55, 70],
        ['german', 50, 58],
      ],
    },
    {
      word: 'unz',
      means: 'unzirkuliert, bankfrisch',
      names: ['unz', 'unzirkuliert', 'bfr', 'bankfrisch', 'prfr', 'prägefrisch'],
      mappings: [['memory', 60, 66]],
    },
    {
      word: 'fast st',
      means: 'fast Stempelglanz',
      names: ['fst', 'faststempelglanz', 'fastst'],
      mappings: [
        ['french', 63, 64],
        ['memory', 58, 64],
      ],
    },
    {
      word: 'st',
      means: 'Stempelglanz',
      names: ['st', 'stgl', 'stempelglanz', 'stempelfrisch'],
      mappings: [
        ['french', 65, 70],
        ['german', 60, 70],
      ],
    },
    {
      word: 'PP',
      means: 'polierte Platte, Spiegelglanz',
      names: ['pp', 'polierteplatte', 'spiegelglanz'],
      mappings: [['memory', 60, 70]],
      proof: true,
    },
  ],
};
