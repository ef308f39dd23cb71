import type { PublicPiece } from '../../publish/public-piece.ts';
import type { Count } from '../../core/sets/set-state.ts';

const STATUSES = [
  ['kept', 'kept'], ['lent', 'lent'], ['sold', 'sold'], ['given', 'given away'], ['exchanged', 'exchanged'], ['lost', 'lost'],
] as const; // prettier-ignore

/** Counts as a visitor reads them. */
export const countWords = {
  pieces: (count: number) => (count === 1 ? '1 piece' : `${count} pieces`),
  /** `73 kept, 1 lent, 1 sold`; null where all are kept. */
  byStatus: (pieces: readonly { readonly status: PublicPiece['status'] }[]): string | null => {
    const counts = STATUSES.map(([status, says]) => ({
      says,
      count: pieces.filter((one) => one.status === status).length,
    }));
    if (counts.every(({ says, count }) => says === 'kept' || count === 0)) return null;
    return counts.flatMap(({ says, count }) => (count === 0 ? [] : [`${count} ${says}`])).join(', ');
  },
  /** In a list of those of which there may be none. */
  piecesIfAny: (count: number) => (count === 0 ? 'none in this cabinet' : countWords.pieces(count)),
  /** `20 of 34`, `27 to 30 of 42`: never a share of a hundred. */
  filled: ({ low, high }: Count, of: number) => (low === high ? `${low} of ${of}` : `${low} to ${high} of ${of}`),
} as const;
