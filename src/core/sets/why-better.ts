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
  return REASONS[first] ?? 'nothing tells them apart, so the first by id';
}

/** One for each part of a worth, in the same order. */
const REASONS = [
  'it fits for certain',
  'it fills the place if it is what it may be',
  'it can at least stand in',
  'it stands in for certain',
  'it has no problem',
  'its grade is the higher, or the other has none',
  'its grade may reach higher',
  'the keeper prefers it',
];
