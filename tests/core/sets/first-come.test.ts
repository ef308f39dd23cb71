import { expect, test } from 'vitest';
import { countSet } from '../../../src/core/sets/count-set.ts';
import type { SetPiece } from '../../../src/core/sets/set-piece.ts';
import type { SetRule } from '../../../src/core/sets/set-rule.ts';
import { graded, LISTS, penny, rule } from './pieces.ts';

function standing(of: SetRule, pieces: readonly SetPiece[]): Record<string, string | undefined> {
  const state = countSet(of, pieces, LISTS);
  if (!state.ok) throw new Error(state.problem);
  return Object.fromEntries(state.value.places.map(({ id, piece }) => [id, piece]));
}

const year = (low: number, high = low) => ({ date: { low, high } });
const durham = { mint: ['durham'] };
const bishop = { ...durham, issuer: ['Bishop of Durham'] };

/*
 * Three cases worked by hand, each of which a keeper who fills places from the top, with the best piece to hand, gets wrong.
 */

test('first: the bishop’s penny would take the plain place for Durham and leave the bishop’s empty', () => {
  const durhams = rule({
    places: [
      { is: 'durham', where: durham },
      { is: 'durham-bishop', where: bishop },
    ],
  });
  const pieces = [
    penny('bishops-fine', { mint: 'durham', issuer: 'Bishop of Durham', ...graded(45) }),
    penny('kings-worn', { mint: 'durham', issuer: 'the king', ...graded(12) }),
  ];
  // The fine one in the first place makes one of two; the worn one there makes two of two.
  expect(standing(durhams, pieces)).toEqual({ durham: 'kings-worn', 'durham-bishop': 'bishops-fine' });
});

test('second: the certain piece would take the first place, and the doubtful one could stand nowhere', () => {
  const two = rule({ 'one-per': 'listed', places: [
    { is: 'early', where: year(1280, 1285) }, { is: 'of-york', where: { mint: ['york'] } },
  ] }); // prettier-ignore
  const pieces = [
    penny('york-1283', { mint: 'york', interval: { low: 1283, high: 1283 }, ...graded(40) }),
    penny('london-about-1285', { mint: 'london', interval: { low: 1284, high: 1290 }, ...graded(40) }),
  ];
  // From the top: York's in the early place, 1 of 2. By hand: York's in its own, the other possibly early, 1 to 2 of 2.
  expect(standing(two, pieces)).toEqual({ early: 'london-about-1285', 'of-york': 'york-1283' });
});

test('third: a chain of three, where the finest piece must go where it is least needed', () => {
  const years = rule({ 'one-per': 'listed', places: [
    { is: 'one', where: year(1279, 1300) }, { is: 'two', where: year(1280, 1290) }, { is: 'three', where: year(1285, 1286) },
  ] }); // prettier-ignore
  const pieces = [
    penny('a', { interval: { low: 1285, high: 1285 }, ...graded(60) }),
    penny('b', { interval: { low: 1281, high: 1281 }, ...graded(50) }),
    penny('c', { interval: { low: 1299, high: 1299 }, ...graded(4) }),
  ];
  // From the top: a in one, b in two, nothing in three. By hand: c fits only one, b then two, a three.
  expect(standing(years, pieces)).toEqual({ one: 'c', two: 'b', three: 'a' });
});

test('grade decides only when no place is lost by it', () => {
  const places = rule({ places: ['london', 'york'].map((is) => ({ is })) });
  const pieces = [
    penny('worn', { mint: 'london', ...graded(8) }),
    penny('fine', { mint: 'london', ...graded(30) }),
    penny('yorker', { mint: 'york', ...graded(4) }),
  ];
  expect(standing(places, pieces)).toEqual({ london: 'fine', york: 'yorker' });
});
