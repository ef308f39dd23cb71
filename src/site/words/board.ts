import type { PublicPiece } from '../../publish/public-piece.ts';

/** The line under a piece on a board. */
export const boardWords = {
  undated: 'date not recorded',
  dateUnknown: 'date unknown',
  dateNone: 'undated',
  status: (status: PublicPiece['status']): string | null =>
    ({ kept: null, lent: 'lent', sold: 'sold', given: 'given away', exchanged: 'exchanged', lost: 'lost' })[status],
  /** What became of it, and that what lies there is no picture of it. */
  note: (status: PublicPiece['status'], isDisc: boolean): string | null =>
    [boardWords.status(status), isDisc ? 'no photograph' : null].filter((part) => part !== null).join('; ') || null,
  empty: 'There are no pieces yet.',
} as const;
