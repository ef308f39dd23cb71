import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Character, Shown } from '../../../../src/core/types/key/character.ts';
import { parseShown, sharesOfStates, USUAL, usually } from '../../../../src/core/types/key/character.ts';
import { identify } from '../../../../src/core/types/key/identify.ts';
import { keyOf } from '../../../../src/core/types/key/key.ts';
import { mayAgree, sameShown } from '../../../../src/core/types/key/separations.ts';
import { shownByAll, tellingMarks } from '../../../../src/core/types/key/telling.ts';

const character = (id: string, states: readonly string[]): Character => ({
  ...USUAL, id, label: id, kind: 'states', states: states.map((state) => ({ id: state, label: state })),
}); // prettier-ignore
const CHARACTERS = [
  character('crown', ['plain', 'pearls', 'spread']),
  character('breast', ['nothing', 'rose', 'star']),
  character('letter', ['early', 'late']),
  character('face', ['broad', 'long']),
];

function read(text: string, at: number): Shown {
  const shown = parseShown(text, CHARACTERS[at] ?? expect.fail('no character'));
  return shown.ok ? shown.value : expect.fail(shown.problem);
}
const row = (...texts: readonly string[]): readonly Shown[] => texts.map(read);

/** The characters by which each type of a series is known. */
function knownBy(types: readonly (readonly Shown[])[]) {
  const all = shownByAll(types, CHARACTERS.length);
  return types.map((own, place) => tellingMarks(all, own, (leaf) => leaf === place));
}

const names = (marks: ReturnType<typeof knownBy>[number]): readonly string[] =>
  marks.map(({ at }) => CHARACTERS[at]?.id ?? '');

describe('A state that a cell calls seldom', () => {
  test('is on one specimen in ten next to one usual state, and two share no more of a type than that each', () => {
    const shares = (text: string) => {
      const shown = read(text, 1);
      return shown.shows === 'states' ? [...sharesOfStates(shown)].map(([state, share]) => [state, Number(share.toFixed(4))]) : []; // prettier-ignore
    };
    expect(shares('nothing/rose (seldom)')).toEqual([['nothing', 0.9], ['rose', 0.1]]); // prettier-ignore
    expect(shares('nothing/rose (Seldom)/star (seldom)')).toEqual([['nothing', 0.8182], ['rose', 0.0909], ['star', 0.0909]]); // prettier-ignore
    // All of them seldom is none seldom.
    expect(shares('rose (seldom)/star (seldom)')).toEqual([['rose', 0.5], ['star', 0.5]]); // prettier-ignore
    expect(usually(read('nothing/rose (seldom)', 1))).toEqual({ shows: 'states', states: ['nothing'] });
  });

  test('excludes no type that may show it, and speaks for one that usually does', () => {
    const key = keyOf(CHARACTERS.slice(1, 2), [
      { id: 'usual', shown: [read('rose', 1)] },
      { id: 'few', shown: [read('nothing/rose (seldom)', 1)] },
      { id: 'none', shown: [read('nothing', 1)] },
    ]);
    const { candidates } = identify(key, new Map([['breast', { states: ['rose'] }]]), { strict: true });
    expect(candidates.map(({ id, against }) => [id, against])).toEqual([['usual', []], ['few', []]]); // prettier-ignore
    const [usual, few] = candidates;
    // L(a|t) = (1 − ε)f + ε/S, with f of 1 and 0.1, ε 0.05 and S 3.
    expect((usual?.probability ?? 0) / (few?.probability ?? 1)).toBeCloseTo(
      (0.95 + 0.05 / 3) / (0.95 * 0.1 + 0.05 / 3),
      9,
    );
  });
});

describe('What a type is known by', () => {
  test('goes on until it separates the type from every other, though many share the mark', () => {
    // Two of one crown and one breast among many: the letter alone separates them, and half of all types share it.
    const others = Array.from({ length: 6 }, () => row('plain/spread', 'nothing', 'early/late', 'long'));
    const [one = [], two = []] = knownBy([
      row('pearls', 'nothing', 'early', 'long'),
      row('pearls', 'nothing', 'late', 'long'),
      ...others,
    ]);
    expect([names(one), names(two)].map((each) => each.includes('letter'))).toEqual([true, true]);
    expect(names(one)[0]).toBe('crown');
  });

  test('names a state that few others have, though the type may lack it; and not one that is seldom', () => {
    const others = Array.from({ length: 8 }, () => row('plain', 'nothing', 'early', 'broad'));
    const [rose = [], seldom = []] = knownBy([
      row('plain', 'rose/nothing', 'early', 'broad'),
      row('plain', 'nothing/star (seldom)', 'early', 'broad'),
      ...others,
    ]);
    expect(rose[0]).toEqual({ at: 1, rare: ['rose'] });
    expect(seldom.flatMap(({ rare }) => rare)).toEqual([]);
  });

  const cells = [
    ['plain', 'pearls', 'spread', 'plain/pearls', '?'],
    ['nothing', 'rose', 'nothing/rose (seldom)', 'star/nothing'],
    ['early', 'late', 'early/late'],
    ['broad', 'long', '-'],
  ];
  const types = fc.array(
    fc.tuple(...cells.map((each) => fc.constantFrom(...each))).map((texts) => row(...texts)),
    { minLength: 2, maxLength: 14 },
  );

  test('separates it from each that any mark always separates it from, and is not what another of other marks is known by', () => {
    fc.assert(
      fc.property(types, (all) => {
        const known = knownBy(all);
        const agree = (one: readonly Shown[], other: readonly Shown[], at: number): boolean =>
          mayAgree(...([one[at], other[at]].map((shown) => (shown === undefined ? shown : usually(shown))) as [Shown, Shown])); // prettier-ignore
        const cell = (shown: readonly Shown[], at: number): string => sameShown(shown[at] ?? { shows: 'unknown' });
        for (const [a, one] of all.entries())
          for (const [b, other] of all.entries()) {
            const separable = CHARACTERS.some((_, at) => !agree(one, other, at));
            if (separable) expect(known[a]?.some(({ at }) => !agree(one, other, at))).toBe(true);
            if (a === b || one.every((_, at) => cell(one, at) === cell(other, at))) continue;
            const says = [one, other].map((shown, side) => (known[side === 0 ? a : b] ?? []).map(({ at }) => `${String(at)} ${cell(shown, at)}`)); // prettier-ignore
            expect(says[0]).not.toEqual(says[1]);
          }
      }),
      { numRuns: 300 },
    );
  });
});
