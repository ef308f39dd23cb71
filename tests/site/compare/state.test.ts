import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { FACES, formatCompare, isId, LAYINGS, parseCompare } from '../../../src/site/compare/state.ts';

const state = fc.record({
  pieces: fc.uniqueArray(fc.stringMatching(/^[a-z0-9]+(-[a-z0-9]+)*$/), { maxLength: 6 }),
  faces: fc.constantFrom(...FACES),
  laid: fc.constantFrom(...LAYINGS),
  turned: fc.boolean(),
});

describe('what lies side by side, in an address', () => {
  test('reads back as it was written', () => {
    fc.assert(
      fc.property(state, (one) => {
        expect(parseCompare(formatCompare(one))).toEqual(one);
      }),
    );
  });

  test('is short: commas as they are, and nothing of what goes without saying', () => {
    const usual = { faces: 'both', laid: 'beside', turned: false } as const;
    expect(formatCompare({ ...usual, pieces: ['york-penny-3b', 'york-penny-9b'] })).toBe(
      '?pieces=york-penny-3b,york-penny-9b',
    );
    expect(formatCompare({ ...usual, pieces: [] })).toBe('');
  });

  test.for([
    ['?pieces=a,b,a', ['a', 'b']],
    ['?pieces=a&pieces=b', ['a', 'b']],
    ['?pieces=%20a%20,,b', ['a', 'b']],
    ['', []],
  ] as const)('%s names %j', ([query, pieces]) => {
    expect(parseCompare(query)).toEqual({ pieces, faces: 'both', laid: 'beside', turned: false });
  });

  test.for(['../secret', 'A', 'a--b', 'a.json', '', 'a/b', '"'])('%j is no id, and is never asked for', (text) => {
    expect(isId(text)).toBe(false);
  });
});
