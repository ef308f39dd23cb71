import { ENGLISH_QUALIFIERS } from '../sources.ts';
import type { Scale } from '../sources.ts';

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
      means: 'Uncirculated, Mint State',
      names: ['unc', 'uncirculated', 'ms', 'mintstate', 'bu', 'brilliantuncirculated'],
      mappings: [['numeric', 60, 70]],
    },
    {
      word: 'choice Unc',
      means: 'Choice Uncirculated',
      names: ['choiceunc', 'choiceuncirculated', 'choicebu'],
      mappings: [['memory', 63, 64]],
    },
    {
      word: 'gem Unc',
      means: 'Gem Uncirculated',
      names: ['gemunc', 'gemuncirculated', 'gembu', 'gem'],
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
