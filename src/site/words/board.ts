import type { PublicPiece } from '../../publish/public-piece.ts';

/** What lies under a piece on a board. */
export const boardWords = {
  undated: 'date not recorded',
  dateUnknown: 'date unknown',
  dateNone: 'undated',
  status: (status: PublicPiece['status']): string | null =>
    ({ kept: null, lent: 'lent', sold: 'sold', given: 'given away', exchanged: 'exchanged', lost: 'lost' })[status],
  empty: 'Nothing lies here yet.',
} as const;
