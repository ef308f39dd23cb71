import fc from 'fast-check';
import { countSet } from '../../../src/core/sets/count-set.ts';
import { fits } from '../../../src/core/sets/fits.ts';
import type { SetPiece } from '../../../src/core/sets/set-piece.ts';
import type { SetPlace } from '../../../src/core/sets/places.ts';
import type { SetRule } from '../../../src/core/sets/set-rule.ts';
import type { SetState } from '../../../src/core/sets/set-state.ts';
import { LISTS, penny, rule } from './pieces.ts';

export const MINTS = ['london', 'york', 'bristol'];
const anyYears = fc
  .tuple(fc.integer({ min: 1278, max: 1284 }), fc.nat(3))
  .map(([low, more]) => ({ low, high: low + more }));
// Few grades, so that pieces often share an end of theirs.
const anyGrade = fc.option(
  fc.tuple(fc.constantFrom(12, 20, 40), fc.constantFrom(0, 5, 15)).map(([low, more]) => ({ low, high: low + more })),
);
export const anyFacts = fc.record({
  mint: fc.constantFrom(...MINTS),
  interval: anyYears,
  status: fc.constantFrom('kept', 'kept', 'kept', 'lent', 'sold'),
  kind: fc.constantFrom('coin', 'coin', 'coin', 'replica'),
  details: fc.constantFrom(false, false, true),
  grade: anyGrade,
  sure: fc.constantFrom({}, {}, { mint: 'probable' as const }),
  acquired: fc.option(fc.integer({ min: 2000, max: 2004 })),
});
export function anyPieces(most: number, least = 0): fc.Arbitrary<readonly SetPiece[]> {
  return fc
    .array(anyFacts, { minLength: least, maxLength: most, size: 'max' })
    .map((all) => all.map((facts, at) => penny(`p${String(at)}`, facts)));
}

/** A rule of its own for each place: a mint or several, and a span of years. */
export function anyRule(most: number, least = 1): fc.Arbitrary<SetRule> {
  const place = fc.record({
    mint: fc.option(fc.subarray(MINTS, { minLength: 1 }), { nil: undefined }),
    date: anyYears,
  });
  return fc
    .record({
      places: fc
        .array(place, { minLength: least, maxLength: most, size: 'max' })
        .map((all) => all.map((where, at) => ({ is: `place-${String(at)}`, where }))),
      details: fc.constantFrom('filler' as const, 'yes' as const),
      uncertain: fc.constantFrom('count-as-possible' as const, 'no' as const),
    })
    .map(({ places, ...accept }) => rule({ 'one-per': 'listed', places, accept }));
}

export function counted(of: SetRule, pieces: readonly SetPiece[]): SetState {
  const state = countSet(of, pieces, LISTS);
  if (!state.ok) throw new Error(state.problem);
  return state.value;
}

export type Score = readonly number[];

/** What one piece brings to one place: certain, possible, filler, filler for certain, sound, lowest and highest grade. */
export function scoreOf(piece: SetPiece, place: SetPlace, of: SetRule): Score | null {
  const { level, sure } = fits(piece, place, of, LISTS);
  if (level === 'no') return null;
  const one = (is: boolean): number => (is ? 1 : 0);
  const filler = level === 'filler';
  return [
    one(level === 'certain'),
    one(level === 'possible'),
    one(filler),
    one(filler && sure),
    one(!piece.details),
    piece.grade?.low ?? 0,
    piece.grade?.high ?? 0,
  ];
}

export const add = (a: Score, b: Score): Score => a.map((part, at) => part + (b[at] ?? 0));
export const NOTHING: Score = [0, 0, 0, 0, 0, 0, 0];

/** What a whole arrangement scores. */
export function scoreOfState(
  state: SetState,
  places: readonly SetPlace[],
  pieces: readonly SetPiece[],
  of: SetRule,
): Score {
  return state.places.reduce((sum, { piece: id }, at) => {
    const piece = pieces.find((each) => each.id === id);
    const place = places[at];
    return piece && place ? add(sum, scoreOf(piece, place, of) ?? [-Infinity]) : sum;
  }, NOTHING);
}
