import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import type { ComparedFile } from '../../compare/record.ts';
import { keyedBy } from '../../keyed.ts';
import { comparedOf } from '../compare/record-of.ts';
import { alone, withOwn } from '../piece/around-piece.ts';
import { linkedData } from './linked.ts';

/** A path for every piece that has a page. */
export const pieceFilePaths = keyedBy(
  (cabinet) => cabinet.pieces.map(({ id }) => ({ id })),
  (cabinet, { id }) => withOwn(cabinet, id),
  ({ piece, own }) => pieceFile(piece, alone(piece, own)),
);

/**
 * The one file of a piece, `data/pieces/<id>.json`: linked data for whoever gathers catalogues (an unlisted piece is gathered by
 * nobody), and with it what the page of comparing lays. Its context says that this is no statement of the linked data.
 */
export function pieceFile(piece: PublicPiece, cabinet: Cabinet): ComparedFile {
  return { ...(piece.listed ? linkedData(cabinet, piece) : {}), compared: comparedOf(piece, cabinet) };
}
