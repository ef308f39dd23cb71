import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { FACETS } from '../../../src/site/find/record.ts';
import { asksAnything, formatState, parseState, SORTS } from '../../../src/site/find/state.ts';
import type { FindState } from '../../../src/site/find/state.ts';

const word = fc.string({ unit: 'grapheme', maxLength: 20 }).map((text) => text.trim());
const values = fc.uniqueArray(fc.stringMatching(/^[a-z0-9-]{1,12}$/), { maxLength: 3 });
const states: fc.Arbitrary<FindState> = fc
  .tuple(
    word,
    word,
    fc.constantFrom(null, ...SORTS),
    fc.array(values, { minLength: FACETS.length, maxLength: FACETS.length }),
  )
  .map(([words, legend, sort, held]) => ({
    words,
    legend,
    sort,
    chosen: { ...parseState('').chosen, ...Object.fromEntries(FACETS.map((facet, at) => [facet, held[at] ?? []])) },
  }));

describe('what is asked is in the address', () => {
  test('and every state reads back as it was written', () => {
    fc.assert(
      fc.property(states, (state) => {
        expect(parseState(formatState(state))).toEqual(state);
      }),
    );
  });

  test('nothing asked leaves the address bare', () => {
    expect(formatState(parseState(''))).toBe('');
    expect(asksAnything(parseState(''))).toBe(false);
  });

  test('several values of one facet stand beside one another, as a form sends them', () => {
    expect(formatState(parseState('?mint=york&mint=london&words=+crux+'))).toBe('?words=crux&mint=york&mint=london');
  });

  test('an order that is not known is left out, not guessed', () => {
    expect(parseState('?sort=price').sort).toBeNull();
  });
});
