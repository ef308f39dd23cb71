import fc from 'fast-check';
import { expect, test } from 'vitest';
import { placesOf } from '../../../src/core/sets/places.ts';
import { bestInTurn } from '../../reference/highs.ts';
import type { Row } from '../../reference/highs.ts';
import { LISTS } from './pieces.ts';
import { anyPieces, anyRule, counted, scoreOf, scoreOfState } from './random-sets.ts';
import type { Score } from './random-sets.ts';
import { tries } from '../../tries.ts';

type Edge = { readonly piece: number; readonly place: number; readonly score: Score };
const MOST_PLACES = 9;

/**
 * The seven parts of a score in two numbers, in the same order of importance: with nine places no count reaches ten, and no sum
 * of grades, of which the highest is 55, reaches a thousand.
 */
function inTwo(score: Score): readonly [counts: number, grades: number] {
  const [certain = 0, possible = 0, filler = 0, sure = 0, sound = 0, low = 0, high = 0] = score;
  return [[certain, possible, filler, sure, sound].reduce((sum, part) => sum * 10 + part, 0), low * 1000 + high];
}

/** The best score by the reference: a column for each way to set a piece in a place, a row for each piece and each place. */
function bestByReference(edges: readonly Edge[], pieces: number, places: number): readonly number[] {
  const oneOf = (is: (edge: Edge) => boolean): Row => ({ of: edges.map((edge) => (is(edge) ? 1 : 0)), most: 1 });
  const rows = [
    ...Array.from({ length: pieces }, (_, at) => oneOf(({ piece }) => piece === at)),
    ...Array.from({ length: places }, (_, at) => oneOf(({ place }) => place === at)),
  ];
  return bestInTurn(
    [0, 1].map((half) => edges.map(({ score }) => inTwo(score)[half] ?? 0)),
    rows,
  );
}

test('random sets, 5 to 14 pieces by 3 to 9 places: as good as the optimum of a general solver (HiGHS), part by part', () => {
  let contested = 0;
  fc.assert(
    fc.property(anyRule(MOST_PLACES, 3), anyPieces(14, 5), (of, pieces) => {
      const places = placesOf(of, LISTS);
      if (!places.ok) throw new Error(places.problem);
      const edges = places.value.flatMap((place, at) =>
        pieces.flatMap((piece, which): Edge[] => {
          const score = scoreOf(piece, place, of);
          return score === null ? [] : [{ piece: which, place: at, score }];
        }),
      );
      if (edges.length > places.value.length) contested += 1;
      expect(inTwo(scoreOfState(counted(of, pieces), places.value, pieces, of))).toEqual(
        bestByReference(edges, pieces.length, places.value.length),
      );
    }),
    { numRuns: tries(1000) },
  );
  // Sets in which nothing is to be chosen would prove nothing; of a hundred drawn at random about 43 have a choice, give or take 5.
  expect(contested).toBeGreaterThan(0.2 * tries(1000));
}, 120_000); // prettier-ignore
