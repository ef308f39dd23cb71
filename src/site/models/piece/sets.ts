import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { pieceWords } from '../../words/piece.ts';
import { setsOf } from '../sets/sets-of.ts';

/** What a piece does for a set, in words; why it does is told on the page of the set. */
export type SetRow = { readonly set: string; readonly to: string; readonly does: string };

export function setRows(cabinet: Cabinet, piece: string): readonly SetRow[] {
  return setsOf(cabinet, piece).map(({ set, does, place, fits }) => ({
    set: set.title,
    to: urls.set(set.id),
    does:
      place !== null
        ? pieceWords.stands(place.state, place.label)
        : does === 'spare'
          ? pieceWords.spareFor(fits ?? '')
          : pieceWords.leftOut,
  }));
}
