import type { Count } from '../../core/sets/set-state.ts';

/** Counts as a visitor reads them. */
export const countWords = {
  pieces: (count: number) => (count === 1 ? '1 piece' : `${count} pieces`),
  /** `27 to 30 of 42`. */
  filled: ({ low, high }: Count, of: number) => (low === high ? `${low} of ${of}` : `${low} to ${high} of ${of}`),
} as const;
