import type { PublicPiece } from '../../../publish/public-piece.ts';
import { loadCabinet } from '../../cabinet.ts';
import type { Cabinet } from '../../cabinet.ts';
import { digestedOnce } from '../../digest.ts';
import { onceFor } from '../../once-for.ts';
import { urls } from '../../urls.ts';
import { boardWords } from '../../words/board.ts';
import type { FaceView } from './face.ts';
import { acrossClass } from './face.ts';
import { piecesInRow, ROOM } from './rows.ts';
import { tellingFace, toldByReverse } from './telling-face.ts';
import { ticketLine } from './ticket.ts';

/** One piece on a board of many: a face, and the few words that lie under it. */
export type LaidPiece = {
  readonly id: string;
  /** Its inventory number. */
  readonly number: string;
  readonly href: string;
  readonly title: string;
  /** What its ticket says of it in a line: `1280–81, 1.38 g`. */
  readonly line: string;
  /** Something the page has to add: a place, a reason. */
  readonly note: string | null;
  /** Whether it is what the page itself is about. */
  readonly isHere?: true;
  readonly face: FaceView;
};

/** Pieces laid on one board, at the one scale; `across` is as wide as the widest of them. */
export type Board = {
  readonly laid: readonly LaidPiece[];
  readonly across: string;
  /** How many are in a row of a wide screen, where there are few; null for a long list, each row of which is as it comes. */
  readonly inRow: number | null;
};

/** So many pieces are a board that is seen at once. */
const FEW = 14;
const IN_ROW = 7;

/** A piece as it lies without a note, made once for each face: it lies on the boards of its ruler, mint, metal, era … */
const laidIn = onceFor((cabinet: Cabinet) => ({ usual: laidBy(cabinet, false), byReverse: laidBy(cabinet, true) }));

function laidBy({ photographs }: Cabinet, byReverse: boolean): (piece: PublicPiece) => LaidPiece {
  return onceFor((piece: PublicPiece): LaidPiece => {
    const { id, number, title, status } = piece;
    const face = tellingFace(piece, new Set(byReverse ? [piece] : []), photographs);
    return digestedOnce({
      id,
      number,
      href: urls.piece(id),
      title,
      line: ticketLine(piece),
      note: boardWords.note(status, face.shown === 'disc'),
      face,
    });
  });
}

/** Which pieces show their reverse in lists that hold these. */
const byReverseIn = onceFor(toldByReverse);

/** Lays pieces on a board in the order given; `noteOf` may add a line to any of them; `among` is the list they are of. */
export async function boardOf(
  pieces: readonly PublicPiece[],
  noteOf: (piece: PublicPiece) => string | null = () => null,
  among: readonly PublicPiece[] = pieces,
): Promise<Board> {
  const { usual, byReverse } = laidIn(await loadCabinet());
  const told = byReverseIn(among);
  const laid = pieces.map((piece) => {
    const plain = told.has(piece) ? byReverse(piece) : usual(piece);
    const note = noteOf(piece);
    return note === null ? plain : { ...plain, note };
  });
  const faces = laid.map(({ face }) => [face]);
  return {
    laid,
    across: acrossClass(faces),
    inRow: laid.length > FEW || laid.length === 0 ? null : piecesInRow(faces, IN_ROW, ROOM.board),
  };
}
