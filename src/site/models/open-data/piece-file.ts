import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import type { ComparedFile } from '../../compare/record.ts';
import { keyedBy } from '../../keyed.ts';
import { onceFor } from '../../once-for.ts';
import { comparedOf } from '../compare/record-of.ts';
import { alone, ownOf, pieceNamed } from '../piece/around-piece.ts';
import { linkedData } from './linked.ts';

/** A path for every piece that has a page, and for every old id of one that is in the lists. */
export const pieceFilePaths = keyedBy(
  (cabinet) => [...namesOfPieces(cabinet).keys()].map((id) => ({ id })),
  (cabinet, { id }) => {
    const piece = namesOfPieces(cabinet).get(id) ?? pieceNamed(cabinet, id);
    return { piece, own: ownOf(cabinet, piece) };
  },
  ({ piece, own }) => pieceFile(piece, alone(piece, own)),
);

const namesOfPieces = onceFor(
  ({ pieces }: Cabinet) =>
    new Map(
      pieces.flatMap((piece) => [piece.id, ...(piece.listed ? piece.formerly : [])].map((id) => [id, piece] as const)),
    ),
);

/**
 * The one file of a piece, `data/pieces/<id>.json`: linked data for whoever gathers catalogues (an unlisted piece is gathered by
 * nobody), and with it what the page of comparing lays. Its context says that this is no statement of the linked data.
 */
export function pieceFile(piece: PublicPiece, cabinet: Cabinet): ComparedFile {
  return { ...(piece.listed ? linkedData(cabinet, piece) : {}), compared: comparedOf(piece, cabinet) };
}
