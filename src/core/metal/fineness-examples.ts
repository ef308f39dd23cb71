import type { Example } from '../measures/measure-examples.ts';

/** How a fineness is read here, by example. Each row is tested. */
export const FINENESS_EXAMPLES: readonly Example[] = [
  { write: '925/1000', means: '925/1000' },
  { write: '0.925', means: '925/1000' },
  { write: '92.5 %', means: '925/1000' },
  { write: '22 ct', means: '11/12; there are 24 carats' },
  { write: '23 ct 3½ gr', means: '191/192; there are 4 grains in a carat' },
  { write: '11 oz 2 dwt', means: '925/1000; there are 12 ounces in the pound, and 20 pennyweights in an ounce' },
  { write: '15 loth', means: '937.5/1000; there are 16 loth' },
  { write: '84 zolotniks', means: '875/1000; there are 96 zolotniks' },
  { write: '11 dineros 4 granos', means: '67/72; there are 12 dineros, of 24 granos each' },
  { write: 'sterling', means: '925/1000' },
  { write: '925 sterling', means: '925/1000; the name and the figure must agree' },
  { write: '0.90/0.92', means: '0.90–0.92; the ends of a range' },
  { write: '.500 or .800', means: '500/1000 or 800/1000; one of the two, and nothing between' },
];

export const FINENESS_REFUSALS: readonly Example[] = [
  { write: '22', means: '"22" does not say of how many. Write 22 ct, 22 zolotnik, 22 % or the like.' },
  { write: '25 ct', means: '"25 ct" is finer than fine: there are 24 carats. Write at most 24 ct.' },
  { write: '900/925', means: '"900/925" may be a range or a fraction. Write 0.9/0.925 for the range.' },
];
