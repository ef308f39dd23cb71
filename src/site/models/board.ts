import { isBlank } from '../../catalogue/schema/fields.ts';
import { formatDate } from '../../core/dating/format-date.ts';
import type { PhotographManifest } from '../../photographs/manifest.ts';
import type { PublicPiece } from '../../publish/public-piece.ts';
import { urls } from '../urls.ts';
import { siteWords } from '../words/site.ts';
import { chiefFace } from './face.ts';
import type { FaceShown } from './face.ts';

/** A piece as it lies on a board among others: one face at true size, its title and date beneath. */
export type BoardPiece = {
  readonly id: string;
  readonly to: string;
  readonly title: string;
  readonly number: string;
  /** `about 1280`; empty when undated. */
  readonly date: string;
  readonly face: FaceShown;
};

export function boardPiece(piece: PublicPiece, photographs: PhotographManifest): BoardPiece {
  return {
    id: piece.id,
    to: urls.piece(piece.id),
    title: piece.title,
    number: siteWords.number(piece.number),
    date: dateInWords(piece),
    face: chiefFace(piece, photographs),
  };
}

export function boardPieces(pieces: readonly PublicPiece[], photographs: PhotographManifest): readonly BoardPiece[] {
  return pieces.map((piece) => boardPiece(piece, photographs));
}

/** The date of a piece for a visitor; empty when it has none. */
export function dateInWords({ date }: PublicPiece): string {
  return date === null || date === undefined || isBlank(date) ? '' : formatDate(date);
}
