import type { Count } from '../../core/sets/set-state.ts';

/** Counts as a visitor reads them. */
export const countWords = {
  pieces: (count: number) => (count === 1 ? '1 piece' : `${count} pieces`),
  /** In a list of those of which there may be none. */
  piecesIfAny: (count: number) => (count === 0 ? 'none in this cabinet' : countWords.pieces(count)),
  /** `20 of 34`, `27 to 30 of 42`: never a share of a hundred. */
  filled: ({ low, high }: Count, of: number) => (low === high ? `${low} of ${of}` : `${low} to ${high} of ${of}`),
} as const;
