import type { PublicPiece } from '../../../publish/public-piece.ts';
import { loadCabinet } from '../../cabinet.ts';
import type { Cabinet } from '../../cabinet.ts';
import { digestedOnce } from '../../digest.ts';
import { onceFor } from '../../once-for.ts';
import { urls } from '../../urls.ts';
import { boardWords } from '../../words/board.ts';
import type { FaceView } from './face.ts';
import { acrossClass, leadingFace } from './face.ts';
import { ticketLine } from './ticket.ts';

/** One piece on a board of many: a face, and the few words that lie under it. */
export type LaidPiece = {
  readonly id: string;
  readonly href: string;
  readonly title: string;
  /** What its ticket says of it in a line: `1280–81, 1.38 g`. */
  readonly line: string;
  /** Something the page has to add: a place, a reason. */
  readonly note: string | null;
  readonly face: FaceView;
};

/** Pieces laid on one board, at the one scale; `across` is as wide as the widest of them. */
export type Board = { readonly laid: readonly LaidPiece[]; readonly across: string };

/** A piece as it lies without a note, made once for each: it lies on the boards of its ruler, mint, metal, era … */
const laidIn = onceFor(({ photographs }: Cabinet) =>
  onceFor((piece: PublicPiece): LaidPiece => {
    const { id, title, status } = piece;
    return digestedOnce({
      id,
      href: urls.piece(id),
      title,
      line: ticketLine(piece),
      note: boardWords.status(status),
      face: leadingFace(piece, photographs),
    });
  }),
);

/** Lays pieces on a board in the order given; `noteOf` may add a line to any of them. */
export async function boardOf(
  pieces: readonly PublicPiece[],
  noteOf: (piece: PublicPiece) => string | null = () => null,
): Promise<Board> {
  const laidOf = laidIn(await loadCabinet());
  const laid = pieces.map((piece) => {
    const plain = laidOf(piece);
    const note = noteOf(piece);
    return note === null ? plain : { ...plain, note };
  });
  return { laid, across: acrossClass(laid.map(({ face }) => [face])) };
}
