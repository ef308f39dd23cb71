import type { Count } from './set-state.ts';

/** Kinds that only imitate what they show. */
export const COPIES: readonly string[] = ['counterfeit', 'replica'];
/** What a keeper no longer has. */
export const GONE: readonly string[] = ['sold', 'given', 'exchanged', 'lost'];

/** A piece that is counted under a name; `isSure`: whether it is certainly of that name. */
export type Counted = { readonly kind: string; readonly status: string; readonly isSure: boolean };

/** What pieces come to under one name. No piece is counted twice: what is gone is no copy, and what imitates is nobody’s own. */
export type Tally = {
  /** Those that are here: how many are so for certain, and how many may be. */
  readonly here: Count;
  readonly replicas: number;
  readonly counterfeits: number;
  readonly gone: number;
};

export function tally(pieces: readonly Counted[]): Tally {
  const gone = pieces.filter(({ status }) => GONE.includes(status));
  const held = pieces.filter(({ status }) => !GONE.includes(status));
  const own = held.filter(({ kind }) => !COPIES.includes(kind));
  const ofKind = (asked: string): number => held.filter(({ kind }) => kind === asked).length;
  return {
    here: { low: own.filter(({ isSure }) => isSure).length, high: own.length },
    replicas: ofKind('replica'),
    counterfeits: ofKind('counterfeit'),
    gone: gone.length,
  };
}
