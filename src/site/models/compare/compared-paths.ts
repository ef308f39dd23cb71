import type { PublicPiece } from '../../../publish/public-piece.ts';
import { loadCabinet } from '../../cabinet.ts';

/** A path for every piece that has a page, and for every old id of one that stands in the lists. */
export async function comparedPaths(): Promise<{ params: { id: string }; props: { piece: PublicPiece } }[]> {
  const { pieces } = await loadCabinet();
  return pieces.flatMap((piece) =>
    [piece.id, ...(piece.listed ? piece.formerly : [])].map((id) => ({ params: { id }, props: { piece } })),
  );
}
