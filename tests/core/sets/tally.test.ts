import { expect, test } from 'vitest';
import { tally } from '../../../src/core/sets/tally.ts';
import { countWords } from '../../../src/site/words/counts.ts';

const piece = (kind = 'coin', status = 'kept', isSure = true) => ({ kind, status, isSure });

// Common practice: what only imitates a coin is no coin of the ruler it names, and what is sold is no longer in a cabinet.
test.for([
  [[], 'none in this cabinet'],
  [[piece(), piece('medal')], '2 pieces'],
  [[piece(), piece('coin', 'lent')], '2 pieces'],
  [[piece(), piece('coin', 'kept', false)], '1 to 2 pieces'],
  [[piece('coin', 'kept', false)], 'perhaps 1 piece'],
  [[piece('coin', 'kept', false), piece('token', 'kept', false)], 'perhaps up to 2 pieces'],
  [[piece('replica')], 'no piece, 1 modern copy'],
  [[piece(), piece('replica'), piece('replica'), piece('counterfeit')], '1 piece, 2 modern copies, 1 counterfeit'],
  [[piece('coin', 'sold')], 'no piece, 1 no longer here'],
  [[piece('replica', 'given'), piece()], '1 piece, 1 no longer here'],
] as const)('%j comes to %s', ([pieces, says]) => {
  expect(countWords.tally(tally(pieces))).toBe(says);
});

test.for([
  [{ low: 0, high: 0 }, '0'],
  [{ low: 1, high: 3 }, '1 to 3'],
] as const)('%j in a table is %s', ([count, says]) => {
  expect(countWords.range(count)).toBe(says);
});
