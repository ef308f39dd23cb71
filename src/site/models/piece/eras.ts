import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { pieceWords } from '../../words/piece.ts';

/** Where a piece falls under one scheme, in words. */
export type EraRow = { readonly scheme: string; readonly to: string; readonly says: string };

export function eraRows(piece: PublicPiece, cabinet: Cabinet): readonly EraRow[] {
  return cabinet.lists.eras.map(({ id, fields }) => {
    const placing = piece.eras[id];
    const periods = (placing?.periods ?? []).map(({ name, share }) =>
      placing?.state === 'straddles' && share !== null ? `${name} (${Math.round(share * 100)} %)` : name,
    );
    const says = periods.length > 0 ? periods.join(', ') : pieceWords.eraState[placing?.state ?? 'unknown'];
    return { scheme: fields.title, to: urls.era(id), says };
  });
}
