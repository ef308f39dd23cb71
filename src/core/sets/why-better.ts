import { worth } from './assign.ts';
import type { Standing } from './assign.ts';
import { compare } from './heaviest-matching.ts';
import type { SetPiece } from './set-piece.ts';

export function nameOf(piece: SetPiece): string {
  return piece.title ?? piece.id;
}

/** Positive when the first stands better in a place than the second; never 0 for two pieces. */
export function compareStanding(one: Standing, other: Standing): number {
  const difference = compare(worth(one.piece, one.fit), worth(other.piece, other.fit));
  if (difference !== 0) return difference;
  return one.piece.id < other.piece.id ? 1 : one.piece.id > other.piece.id ? -1 : 0;
}

/** Why the first, which stands better, does: a clause. */
export function whyBetter(one: Standing, other: Standing): string {
  const theirs = worth(other.piece, other.fit);
  const first = worth(one.piece, one.fit).findIndex((part, at) => part !== theirs[at]);
  const reason = REASONS[first];
  if (reason === undefined) return 'nothing tells them apart, so the first by id';
  return typeof reason === 'string' ? reason : reason(one.piece, other.piece);
}

/** One for each part of a worth, in the same order. */
const REASONS: readonly (string | ((one: SetPiece, other: SetPiece) => string))[] = [
  'it fits for certain',
  'it fills the place if it is what it may be',
  'it can at least stand in',
  'it stands in for certain',
  'it has no problem',
  byLowerEnd,
  'its grade may reach higher',
  'the keeper prefers it',
];

function byLowerEnd(one: SetPiece, other: SetPiece): string {
  if (other.grade === null) return 'it is graded, and the other is not';
  const clear = one.grade !== null && one.grade.low > other.grade.high;
  return clear ? 'its grade is the higher' : 'its grade is the higher at the lower end';
}
