import fc from 'fast-check';
import { expect, test } from 'vitest';
import { placesOf } from '../../../src/core/sets/places.ts';
import type { SetPlace } from '../../../src/core/sets/places.ts';
import type { SetPiece } from '../../../src/core/sets/set-piece.ts';
import type { SetRule } from '../../../src/core/sets/set-rule.ts';
import { LISTS, penny, rule } from './pieces.ts';
import {
  MINTS,
  NOTHING,
  add,
  anyFacts,
  anyPieces as piecesUpTo,
  anyRule as ruleUpTo,
  counted,
  scoreOf,
  scoreOfState,
} from './random-sets.ts';
import type { Score } from './random-sets.ts';

const anyPieces = piecesUpTo(6);
const anyRule = ruleUpTo(4);

function beats(a: Score, b: Score): boolean {
  const at = a.findIndex((part, index) => part !== b[index]);
  return at >= 0 && (a[at] ?? 0) > (b[at] ?? 0);
}

/** The best score of all, by trying every way to set pieces in places. */
function bestByTrial(places: readonly SetPlace[], pieces: readonly SetPiece[], of: SetRule): Score {
  const [place, ...rest] = places;
  if (place === undefined) return NOTHING;
  let best = bestByTrial(rest, pieces, of);
  for (const piece of pieces) {
    const score = scoreOf(piece, place, of);
    if (score === null) continue;
    const whole = add(
      score,
      bestByTrial(
        rest,
        pieces.filter((other) => other !== piece),
        of,
      ),
    );
    if (beats(whole, best)) best = whole;
  }
  return best;
}

test('1,000 random sets: the arrangement scores as high as the best of all arrangements', () => {
  fc.assert(
    fc.property(anyRule, anyPieces, (of, pieces) => {
      const places = placesOf(of, LISTS);
      if (!places.ok) throw new Error(places.problem);
      const score = scoreOfState(counted(of, pieces), places.value, pieces, of);
      expect(score).toEqual(bestByTrial(places.value, pieces, of));
    }),
    { numRuns: 1000 },
  );
});

test('the order of the pieces changes nothing', () => {
  const shuffled = anyPieces.chain((pieces) => fc.tuple(fc.constant(pieces), fc.shuffledSubarray([...pieces], { minLength: pieces.length })));
  fc.assert(fc.property(anyRule, shuffled, (of, [one, other]) => {
    expect(counted(of, other)).toEqual(counted(of, one));
  }));
}); // prettier-ignore

test('a piece stands in one place, is a spare, is left out, or has nothing to do with the set; never two of these', () => {
  fc.assert(fc.property(anyRule, anyPieces, (of, pieces) => {
    const { places, spares, leftOut } = counted(of, pieces);
    const all = [...places.flatMap(({ piece }) => (piece === undefined ? [] : [piece])), ...[...spares, ...leftOut].map(({ piece }) => piece)];
    expect(new Set(all).size).toBe(all.length);
    const kept = pieces.filter(({ status, kind }) => status !== 'sold' && kind !== 'replica').map(({ id }) => id);
    for (const { piece, others = [] } of places) expect(kept).toEqual(expect.arrayContaining([...(piece === undefined ? [] : [piece]), ...others]));
    for (const { piece } of spares) expect(kept).toContain(piece);
  }));
}); // prettier-ignore

test('the counts are those of the places, and the history ends where the set stands', () => {
  fc.assert(fc.property(anyRule, anyPieces, (of, pieces) => {
    const { places, filled, of: all, excused, history } = counted(of, pieces);
    const inState = (state: string) => places.filter((place) => place.state === state).length;
    expect(filled.low).toBe(inState('filled'));
    expect(filled.high).toBeGreaterThanOrEqual(inState('filled') + inState('possible'));
    expect(all + excused).toBe(places.length);
    expect(history.at(-1)?.filled ?? { low: 0, high: 0 }).toEqual(filled);
    for (const [at, { filled: then }] of history.entries()) expect(then.low).toBeGreaterThanOrEqual(history[at - 1]?.filled.low ?? 0);
  }));
}); // prettier-ignore

test('one more piece never makes a set less certain', () => {
  fc.assert(fc.property(anyRule, anyPieces, anyFacts, (of, pieces, facts) => {
    expect(counted(of, [...pieces, penny('more', facts)]).filled.low).toBeGreaterThanOrEqual(counted(of, pieces).filled.low);
  }));
}); // prettier-ignore

test('a doubt makes no place certain: with every mint in doubt nothing that asks for a mint is filled', () => {
  fc.assert(fc.property(anyPieces, (pieces) => {
    const doubtful = pieces.map((piece) => ({ ...piece, sure: { mint: 'possible' as const } }));
    expect(counted(rule({ places: MINTS.map((is) => ({ is })) }), doubtful).filled.low).toBe(0);
  }));
}); // prettier-ignore
