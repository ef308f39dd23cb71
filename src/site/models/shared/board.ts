import type { PublicPiece } from '../../../publish/public-piece.ts';
import { loadCabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { boardWords } from '../../words/board.ts';
import type { FaceView } from './face.ts';
import { leadingFace } from './face.ts';
import { extentOf, UNMEASURED } from './sizes.ts';
import { dateInWords } from './ticket.ts';

/** One piece on a board of many: a face, and the few words that lie under it. */
export type LaidPiece = {
  readonly id: string;
  readonly href: string;
  readonly title: string;
  /** Its number and date: `0142 · 1280–81`. */
  readonly line: string;
  /** Something the page has to add: a place, a reason. */
  readonly note: string | null;
  readonly face: FaceView;
  /** How much of a row it wants: a usual place, two, or the whole. */
  readonly room: 'usual' | 'double' | 'row';
};

/** Pieces laid on one board, at the one scale. */
export type Board = { readonly laid: readonly LaidPiece[] };

/** Lays pieces on a board in the order given; `noteOf` may add a line to any of them. */
export async function boardOf(
  pieces: readonly PublicPiece[],
  noteOf: (piece: PublicPiece) => string | null = () => null,
): Promise<Board> {
  const { photographs } = await loadCabinet();
  return {
    laid: pieces.map((piece) => ({
      id: piece.id,
      href: urls.piece(piece.id),
      title: piece.title,
      line: [piece.number, dateInWords(piece)].join(' · '),
      note: noteOf(piece) ?? boardWords.status(piece.status),
      face: leadingFace(piece, photographs),
      room: roomOf(piece),
    })),
  };
}

// A usual place is `--label-width` across: 33 mm at the scale of a board, margins included.
function roomOf(piece: PublicPiece): LaidPiece['room'] {
  const { width } = extentOf(piece) ?? UNMEASURED;
  return width > 62 ? 'row' : width > 28.5 ? 'double' : 'usual';
}
