import type { PublicPiece } from '../../../publish/public-piece.ts';
import { loadCabinet } from '../../cabinet.ts';
import type { Cabinet } from '../../cabinet.ts';
import type { ComparedFile } from '../../compare/record.ts';
import { comparedOf } from '../compare/record-of.ts';
import { linkedData } from './linked.ts';

type PiecePath = { params: { id: string }; props: { piece: PublicPiece } };

/** A path for every piece that has a page, and for every old id of one that is in the lists. */
export async function pieceFilePaths(): Promise<PiecePath[]> {
  const { pieces } = await loadCabinet();
  return pieces.flatMap((piece) =>
    [piece.id, ...(piece.listed ? piece.formerly : [])].map((id) => ({ params: { id }, props: { piece } })),
  );
}

/**
 * The one file of a piece, `data/pieces/<id>.json`: linked data for whoever gathers catalogues (an unlisted piece is gathered by
 * nobody), and with it what the page of comparing lays. Its context says that this is no statement of the linked data.
 */
export function pieceFile(piece: PublicPiece, cabinet: Cabinet): ComparedFile {
  return { ...(piece.listed ? linkedData(cabinet, piece) : {}), compared: comparedOf(piece, cabinet) };
}
