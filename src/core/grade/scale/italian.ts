import type { Scale } from '../sources.ts';

/** Italian words; the French table gives splendido the room of two of its own. */
export const IT: Scale = {
  title: 'Italian',
  qualifiers: [
    { leaning: 'near', print: 'q', words: ['quasi', 'q'], letters: ['q'] },
    { leaning: 'near', print: '-', words: [], letters: ['-'] },
    { leaning: 'good', print: 'più di', words: ['più di', 'piu di', 'migliore di', 'buon'], letters: ['m'] },
  ],
  words: [
    { word: 'M', means: 'mediocre', names: ['m', 'mediocre'], mappings: [['memory', 1, 3]] },
    { word: 'D', means: 'discreto', names: ['d', 'discreto'], mappings: [['italian', 4, 6]] },
    {
      word: 'B',
      means: 'bello',
      names: ['b', 'bello'],
      mappings: [
        ['french', 6, 14],
        ['italian', 8, 10],
      ],
    },
    {
      word: 'MB',
      means: 'molto bello',
      names: ['mb', 'moltobello'],
      mappings: [
        ['french', 15, 39],
        ['italian', 12, 15],
      ],
    },
    {
      word: 'BB',
      means: 'bellissimo',
      names: ['bb', 'bellissimo', 'bellissima'],
      mappings: [
        ['french', 40, 54],
        ['italian', 20, 35],
      ],
    },
    {
      word: 'SPL',
      means: 'splendido',
      names: ['spl', 'splendido', 'splendida'],
      mappings: [
        ['french', 55, 64],
        ['italian', 40, 45],
      ],
    },
    {
      word: 'FDC',
      means: 'fior di conio',
      names: ['fdc', 'fiordiconio'],
      mappings: [
        ['french', 65, 70],
        ['italian', 60, 70],
      ],
    },
    {
      word: 'FS',
      means: 'fondo specchio',
      names: ['fs', 'fondospecchio'],
      mappings: [['memory', 60, 70]],
      proof: true,
    },
  ],
};
