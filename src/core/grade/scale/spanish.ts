import type { Scale } from '../sources.ts';

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
