import { ENGLISH_QUALIFIERS } from '../sources.ts';
import type { Scale } from '../sources.ts';

/** Ancient coins: wear alone; strike and surface are told beside it. */
export const ANCIENT: Scale = {
  title: 'Ancient',
  qualifiers: ENGLISH_QUALIFIERS,
  words: [
    { word: 'Poor', means: 'Poor', names: ['poor', 'p'], mappings: [['memory', 1, 2]] },
    {
      word: 'Fair',
      means: 'Fair',
      names: ['fair', 'fr'],
      mappings: [
        ['essay', 4, 6],
        ['memory', 2, 4],
      ],
    },
    {
      word: 'G',
      means: 'Good',
      names: ['g', 'good'],
      mappings: [
        ['essay', 10, 10],
        ['memory', 4, 8],
      ],
    },
    { word: 'VG', means: 'Very Good', names: ['vg', 'verygood'], mappings: [['memory', 8, 12]] },
    {
      word: 'F',
      means: 'Fine',
      names: ['f', 'fine'],
      mappings: [
        ['essay', 15, 15],
        ['memory', 12, 20],
      ],
    },
    { word: 'VF', means: 'Very Fine', names: ['vf', 'veryfine'], mappings: [['memory', 20, 40]] },
    { word: 'EF', means: 'Extremely Fine', names: ['ef', 'xf', 'extremelyfine'], mappings: [['memory', 40, 58]] },
    {
      word: 'superb',
      means: 'Superb Extremely Fine',
      names: ['superb', 'superbef', 'superbextremelyfine'],
      mappings: [['memory', 50, 64]],
    },
    {
      word: 'MS',
      means: 'Mint State, as struck',
      names: ['ms', 'mintstate', 'asstruck', 'unc', 'uncirculated'],
      mappings: [['memory', 60, 70]],
    },
    { word: 'FDC', means: 'Fleur de coin', names: ['fdc', 'fleurdecoin'], mappings: [['memory', 65, 70]] },
  ],
};
