import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { pieceWords } from '../../words/piece.ts';
import { setsOf } from '../sets/sets-of.ts';

/** What a piece does for a set, in words. */
export type SetRow = {
  readonly set: string;
  readonly to: string;
  readonly does: string;
  readonly notes: readonly string[];
};

export function setRows(cabinet: Cabinet, piece: string): readonly SetRow[] {
  return setsOf(cabinet, piece).map(({ set, does, place, because, displaced }) => ({
    set: set.title,
    to: urls.set(set.id),
    does:
      place === null
        ? does === 'spare'
          ? pieceWords.spare
          : pieceWords.leftOut
        : `${pieceWords.stands[place.state]} “${place.label}”`,
    notes: [because, ...displaced.map(({ title }) => pieceWords.displaced(title))].filter((note) => note !== ''),
  }));
}
