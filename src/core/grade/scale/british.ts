import { ENGLISH_QUALIFIERS } from '../sources.ts';
import type { Scale } from '../sources.ts';

/** British words. What Britain calls EF, America calls AU, or better. */
export const UK: Scale = {
  title: 'British',
  qualifiers: ENGLISH_QUALIFIERS,
  words: [
    {
      word: 'Poor',
      means: 'Poor',
      names: ['poor', 'p'],
      mappings: [
        ['british', 3, 10],
        ['memory', 1, 3],
      ],
    },
    { word: 'Fair', means: 'Fair', names: ['fair', 'fr'], mappings: [['memory', 2, 6]] },
    { word: 'G', means: 'Good', names: ['g', 'good'], mappings: [['memory', 4, 10]] },
    {
      word: 'VG',
      means: 'Very Good',
      names: ['vg', 'verygood'],
      mappings: [
        ['british', 12, 15],
        ['french', 6, 14],
      ],
    },
    {
      word: 'F',
      means: 'Fine',
      names: ['f', 'fine'],
      mappings: [
        ['british', 15, 20],
        ['french', 15, 39],
      ],
    },
    {
      word: 'VF',
      means: 'Very Fine',
      names: ['vf', 'veryfine'],
      mappings: [
        ['british', 35, 40],
        ['french', 40, 54],
      ],
    },
    {
      word: 'EF',
      means: 'Extremely Fine',
      names: ['ef', 'xf', 'extremelyfine'],
      mappings: [
        ['british', 50, 58],
        ['french', 55, 62],
      ],
    },
    {
      word: 'Unc',
      means: 'Uncirculated',
      names: ['unc', 'uncirculated'],
      mappings: [
        ['british', 62, 63],
        ['french', 65, 70],
        ['memory', 60, 70],
      ],
    },
    {
      word: 'BU',
      means: 'Brilliant Uncirculated',
      names: ['bu', 'brilliantuncirculated', 'bunc'],
      mappings: [['memory', 63, 70]],
    },
    {
      word: 'choice Unc',
      means: 'Choice Uncirculated',
      names: ['choiceunc', 'choiceuncirculated', 'chunc'],
      mappings: [['british', 64, 65]],
    },
    {
      word: 'gem Unc',
      means: 'Gem Uncirculated',
      names: ['gemunc', 'gemuncirculated', 'gem'],
      mappings: [['british', 66, 67]],
    },
    {
      word: 'FDC',
      means: 'Fleur de coin',
      names: ['fdc', 'fleurdecoin', 'mintstate'],
      mappings: [
        ['british', 70, 70],
        ['memory', 65, 70],
      ],
    },
    {
      word: 'proof',
      means: 'Proof, not further graded',
      names: ['proof', 'prf'],
      mappings: [['memory', 60, 70]],
      proof: true,
    },
  ],
};
