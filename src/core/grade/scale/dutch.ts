import type { Scale } from '../sources.ts';

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
