import type { Scale } from '../sources.ts';

/** French words. */
export const FR: Scale = {
  title: 'French',
  qualifiers: [
    { leaning: 'near', print: 'presque', words: ['presque', 'pr', 'quasi'], letters: [] },
    { leaning: 'near', print: '-', words: [], letters: ['-'] },
    { leaning: 'good', print: 'bon', words: ['bon', 'plus que'], letters: [] },
  ],
  words: [
    { word: 'AB', means: 'assez beau', names: ['ab', 'assezbeau'], mappings: [['memory', 2, 4]] },
    { word: 'B', means: 'beau', names: ['b', 'beau'], mappings: [['french', 6, 14]] },
    { word: 'TB', means: 'très beau', names: ['tb', 'trèsbeau', 'tresbeau'], mappings: [['french', 15, 39]] },
    {
      word: 'TTB',
      means: 'très très beau',
      names: ['ttb', 'trèstrèsbeau', 'trestresbeau'],
      mappings: [['french', 40, 54]],
    },
    { word: 'SUP', means: 'superbe', names: ['sup', 'superbe'], mappings: [['french', 55, 62]] },
    { word: 'SPL', means: 'splendide', names: ['spl', 'splendide'], mappings: [['french', 63, 64]] },
    { word: 'FDC', means: 'fleur de coin', names: ['fdc', 'fleurdecoin'], mappings: [['french', 65, 70]] },
    {
      word: 'BE',
      means: 'belle épreuve, flan bruni',
      names: ['be', 'belleépreuve', 'belleepreuve', 'fb', 'flanbruni'],
      mappings: [['memory', 60, 70]],
      proof: true,
    },
  ],
};
