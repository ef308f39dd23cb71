import { expect, test } from 'vitest';
import { metalsAgree } from '../../../src/core/metal/metals-agree.ts';

// Common practice: "copper alloy" is what museums write where bronze and brass have not been told from each other by analysis.
test.for([
  ['brass', 'copper alloy', true],
  ['AE', 'bronze', true],
  ['Copper-alloy', 'orichalcum', true],
  ['pale gold', 'gold', true],
  ['silver', 'Silver', true],
  ['brass', 'bronze', false],
  ['copper', 'bronze', false],
  ['silver', 'gold', false],
  ['billon', 'silver', false],
  ['copper, silver-plated', 'silver', false],
  ['silver-plated copper', 'silver', false],
] as const)('%s and %s: %s', ([one, other, agree]) => {
  expect(metalsAgree(one, other)).toBe(agree);
  expect(metalsAgree(other, one)).toBe(agree);
});
