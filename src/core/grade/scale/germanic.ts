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
      upTo: 'fast st',
      means: 'vorzüglich bis Stempelglanz',
      names: ['vzst', 'vorzüglichbisstempelglanz'],
      mappings: [
        ['french', 55, 70],
        ['german', 50, 58],
      ],
    },
    {
      word: 'unz',
      upTo: 'st',
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

/** Dutch words. */
export const NL: Scale = {
  title: 'Dutch',
  qualifiers: [
    { leaning: 'near', print: 'bijna', words: ['bijna'], letters: ['-'] },
    { leaning: 'good', print: 'ruim', words: ['ruim', 'goed'], letters: [] },
  ],
  words: [
    { word: 'G', means: 'goed', names: ['g', 'goed'], mappings: [['memory', 4, 6]] },
    { word: 'ZG', means: 'zeer goed', names: ['zg', 'zeergoed'], mappings: [['memory', 8, 10]] },
    { word: 'Fr', means: 'fraai', names: ['fr', 'f', 'fraai'], mappings: [['memory', 12, 20]] },
    { word: 'ZF', means: 'zeer fraai', names: ['zf', 'zfr', 'zeerfraai'], mappings: [['memory', 20, 54]] },
    { word: 'Pr', means: 'prachtig', names: ['pr', 'prachtig'], mappings: [['memory', 40, 62]] },
    { word: 'FDC', means: 'fleur de coin', names: ['fdc', 'fleurdecoin', 'unc'], mappings: [['memory', 60, 70]] },
  ],
};

/** Sweden and Finland write figures; a Finnish list gives the English word beside each. */
export const NORDIC: Scale = {
  title: 'Nordic',
  qualifiers: [
    { leaning: 'near', print: 'nästan', words: ['nästan'], letters: [] },
    { leaning: 'good', print: 'god', words: ['god'], letters: [] },
  ],
  words: [
    { word: '1?', means: 'ej fullgott', names: ['1?'], mappings: [['finnish', 8, 10]] },
    { word: '1', means: 'fullgott', names: ['1', 'fullgott'], mappings: [['finnish', 12, 15]] },
    { word: '1+', means: 'vackert', names: ['1+', 'vackert'], mappings: [['finnish', 20, 35]] },
    { word: '01', means: 'mycket vackert', names: ['01', 'mycketvackert'], mappings: [['finnish', 40, 45]] },
    { word: '0', means: 'ocirkulerat', names: ['0', 'ocirkulerat'], mappings: [['finnish', 60, 70]] },
  ],
};
