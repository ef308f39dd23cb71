import fc from 'fast-check';
import { expect, test } from 'vitest';
import { privateIn, searchFor, whereStands } from '../../src/privacy/find-values.ts';
import { tries } from '../tries.ts';

test.for([
  ['in the bank box now', 'bank box', 7],
  ['the bank boxes', 'bank box', -1],
  ['a riverbank box', 'bank box', -1],
  ['riverbank box, then bank box', 'bank box', 20],
  ['box 12', 'box 1', -1],
  ['for 77.50', '77', -1],
  ['for 77,5', '77', -1],
  ['for 77. Then', '77', 4],
  ['"bank box"', 'bank box', 1],
  ['é12', '12', -1],
  ['a££', '£', 1],
  ['#*#*', '#*#', 0],
  ['', 'bank box', -1],
] as const)('in “%s” “%s” stands at %i', ([text, value, at]) => {
  expect(whereStands(text, value)).toBe(at);
});

test('of a value that stands twice the first place is told', () => {
  const value = { value: 'bank box', from: 'ledger', column: 'notes', line: 2 };
  expect(privateIn('a bank box, a bank box', searchFor([value]))).toEqual([{ ...value, at: 2 }]);
});

test('All values at once are found where each would be found by itself', () => {
  const word = fc.constantFrom('a', 'ab', 'b', 'é', '12', '£', '.', ' ', ',5', '-', '"', '’');
  const phrase = fc.array(word, { minLength: 1, maxLength: 6 }).map((words) => words.join(''));
  fc.assert(
    fc.property(
      fc.uniqueArray(phrase, { minLength: 1, maxLength: 12 }),
      fc.array(word, { maxLength: 40 }),
      (values, words) => {
        const text = words.join('');
        const one = values.map((value) => ({ value, from: 'ledger', column: 'notes', line: 2 }));
        const found = new Map(privateIn(text, searchFor(one)).map(({ value, at }) => [value, at]));
        for (const value of values) expect(found.get(value) ?? -1).toBe(whereStands(text, value));
      },
    ),
    { numRuns: tries(2000) },
  );
});
