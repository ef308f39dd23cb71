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

/** Spanish words; the French table puts them a whole word higher than Spain does. */
export const ES: Scale = {
  title: 'Spanish',
  qualifiers: [
    { leaning: 'near', print: 'casi', words: ['casi'], letters: ['-'] },
    { leaning: 'good', print: 'buen', words: ['buen', 'más que', 'mas que'], letters: [] },
  ],
  words: [
    {
      word: 'MC',
      means: 'mala conservación',
      names: ['mc', 'malaconservación', 'malaconservacion'],
      mappings: [['spanish', 1, 1]],
    },
    {
      word: 'RC',
      means: 'regular conservación',
      names: ['rc', 'regularconservación', 'regularconservacion'],
      mappings: [['spanish', 4, 10]],
    },
    {
      word: 'BC',
      means: 'buena conservación',
      names: ['bc', 'buenaconservación', 'buenaconservacion', 'bienconservada'],
      mappings: [
        ['french', 6, 14],
        ['spanish', 12, 15],
      ],
    },
    {
      word: 'BC+',
      means: 'buena conservación, o mejor',
      names: ['bc+'],
      mappings: [
        ['french', 15, 39],
        ['spanish', 15, 15],
      ],
    },
    {
      word: 'MBC',
      means: 'muy buena conservación',
      names: ['mbc', 'muybuenaconservación', 'muybuenaconservacion', 'muybienconservada'],
      mappings: [
        ['french', 40, 54],
        ['spanish', 20, 35],
      ],
    },
    {
      word: 'EBC',
      means: 'excelente buena conservación',
      names: ['ebc', 'excelentebuenaconservación', 'extraordinariamentebienconservada'],
      mappings: [
        ['french', 55, 64],
        ['spanish', 40, 45],
      ],
    },
    {
      word: 'SC-',
      means: 'casi sin circular',
      names: ['sc-', 'casisc', 'casisincircular'],
      mappings: [['spanish', 50, 58]],
    },
    {
      word: 'SC',
      means: 'sin circular',
      names: ['sc', 's/c', 'sincircular'],
      mappings: [
        ['french', 65, 70],
        ['spanish', 60, 70],
      ],
    },
    { word: 'FDC', means: 'flor de cuño', names: ['fdc', 'flordecuño', 'flordecuno'], mappings: [['memory', 65, 70]] },
    {
      word: 'Prueba',
      means: 'prueba, fondo espejo',
      names: ['prueba', 'fondoespejo'],
      mappings: [['memory', 60, 70]],
      proof: true,
    },
  ],
};
