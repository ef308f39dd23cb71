import type { Scale } from '../sources.ts';

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
