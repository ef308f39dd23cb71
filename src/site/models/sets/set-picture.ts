import { listedPiece } from '../../cabinet.ts';
import type { Cabinet } from '../../cabinet.ts';
import { setsWords } from '../../words/sets.ts';
import { MOST_ON_BOARD } from '../shared/board-picture.ts';
import type { OnBoard } from '../shared/board-picture.ts';
import { setStatesOf } from './set-states-of.ts';

/** The pieces that the picture of a set shows: the first of its places that have a photographed one. */
export function setOnBoard(cabinet: Cabinet, id: string): readonly OnBoard[] {
  const places = setStatesOf(cabinet).find((state) => state.id === id)?.places ?? [];
  const shown = places.flatMap((place): readonly OnBoard[] => {
    const piece = listedPiece(cabinet, place.piece ?? '');
    const made =
      piece === undefined ? undefined : cabinet.photographs[piece.id]?.find(({ face }) => face === 'obverse');
    return piece === undefined || made === undefined ? [] : [{ piece, made }];
  });
  return shown.slice(0, MOST_ON_BOARD);
}

/** What that picture shows, in words; null where there is none. */
export function setPictureSays(pieces: readonly OnBoard[]): string | null {
  return pieces.length === 0 ? null : setsWords.pictureSays(pieces.map(({ piece }) => piece.title));
}
