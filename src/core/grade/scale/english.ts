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
      upTo: 'gem Unc',
      means: 'Uncirculated, as struck',
      names: ['unc', 'uncirculated', 'asstruck', 'asmade'],
      mappings: [
        ['british', 62, 63],
        ['french', 65, 70],
        ['memory', 60, 70],
      ],
    },
    {
      word: 'BU',
      upTo: 'gem Unc',
      means: 'Brilliant Uncirculated',
      names: ['bu', 'brilliantuncirculated', 'bunc'],
      mappings: [['memory', 63, 70]],
    },
    {
      word: 'choice Unc',
      upTo: 'FDC',
      means: 'Choice Uncirculated',
      names: ['choiceunc', 'choiceuncirculated', 'chunc'],
      mappings: [['british', 64, 65]],
    },
    {
      word: 'gem Unc',
      upTo: 'FDC',
      means: 'Gem Uncirculated',
      names: ['gemunc', 'gemuncirculated', 'gem'],
      mappings: [['british', 66, 67]],
    },
    {
      word: 'FDC',
      means: 'Fleur de coin',
      names: ['fdc', 'fleurdecoin'],
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

/** American words, each with its numbers. */
export const US: Scale = {
  title: 'American',
  qualifiers: ENGLISH_QUALIFIERS,
  words: [
    { word: 'PO', means: 'Poor', names: ['po', 'poor', 'p'], mappings: [['numeric', 1, 1]] },
    { word: 'FR', means: 'Fair', names: ['fr', 'fair'], mappings: [['numeric', 2, 2]] },
    { word: 'AG', means: 'About Good', names: ['ag', 'aboutgood'], mappings: [['numeric', 3, 3]] },
    { word: 'G', means: 'Good', names: ['g', 'good'], mappings: [['numeric', 4, 6]] },
    { word: 'VG', means: 'Very Good', names: ['vg', 'verygood'], mappings: [['numeric', 8, 10]] },
    { word: 'F', means: 'Fine', names: ['f', 'fine'], mappings: [['numeric', 12, 15]] },
    { word: 'VF', means: 'Very Fine', names: ['vf', 'veryfine'], mappings: [['numeric', 20, 35]] },
    {
      word: 'EF',
      means: 'Extremely Fine',
      names: ['ef', 'xf', 'extremelyfine', 'extrafine'],
      mappings: [['numeric', 40, 45]],
    },
    {
      word: 'AU',
      means: 'About Uncirculated',
      names: ['au', 'aunc', 'aboutuncirculated', 'almostuncirculated'],
      mappings: [['numeric', 50, 58]],
    },
    {
      word: 'Unc',
      upTo: 'gem Unc',
      means: 'Uncirculated, Mint State',
      names: ['unc', 'uncirculated', 'ms', 'mintstate', 'bu', 'brilliantuncirculated'],
      mappings: [['numeric', 60, 70]],
    },
    {
      word: 'choice Unc',
      means: 'Choice Uncirculated',
      names: ['choiceunc', 'choiceuncirculated', 'choicebu', 'choicems', 'choicemintstate', 'chunc', 'chms', 'chbu'],
      mappings: [['memory', 63, 64]],
    },
    {
      word: 'gem Unc',
      means: 'Gem Uncirculated',
      names: ['gemunc', 'gemuncirculated', 'gembu', 'gem', 'gemms', 'gemmintstate'],
      mappings: [['memory', 65, 66]],
    },
    {
      word: 'proof',
      means: 'Proof, not further graded',
      names: ['proof', 'prf', 'pf', 'pr'],
      mappings: [['memory', 60, 70]],
      proof: true,
    },
  ],
};

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
      upTo: 'FDC',
      means: 'Mint State, as struck',
      names: ['ms', 'mintstate', 'asstruck', 'unc', 'uncirculated'],
      mappings: [['memory', 60, 70]],
    },
    { word: 'FDC', means: 'Fleur de coin', names: ['fdc', 'fleurdecoin'], mappings: [['memory', 65, 70]] },
  ],
};
