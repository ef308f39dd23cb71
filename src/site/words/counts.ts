import type { PublicPiece } from '../../publish/public-piece.ts';
import type { Count } from '../../core/sets/set-state.ts';
import type { Tally } from '../../core/sets/tally.ts';

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
  /** `2`, `1 to 2`; `0 to 1` where nothing is certain. */
  range: ({ low, high }: Count): string => (low === high ? String(low) : `${low} to ${high}`),
  /** `3 pieces`; `1 to 2 pieces` where one is doubtful; `perhaps 1 piece` where all are. */
  between: ({ low, high }: Count): string =>
    low === high
      ? countWords.pieces(low)
      : low === 0
        ? `${high === 1 ? 'perhaps' : 'perhaps up to'} ${countWords.pieces(high)}`
        : `${low} to ${countWords.pieces(high)}`,
  /** What is under a name, with what only imitates it and what is gone apart: `1 to 2 pieces, 1 modern copy, 1 no longer here`. */
  tally: ({ here, replicas, counterfeits, gone }: Tally): string => {
    const apart = [
      ...several(replicas, 'modern copy', 'modern copies'),
      ...several(counterfeits, 'counterfeit', 'counterfeits'),
      ...(gone === 0 ? [] : [`${gone} no longer here`]),
    ];
    if (here.high > 0) return [countWords.between(here), ...apart].join(', ');
    return apart.length === 0 ? 'none in this cabinet' : `no piece, ${apart.join(', ')}`;
  },
  /** `20 of 34`, `27 to 30 of 42`: never a share of a hundred. */
  filled: ({ low, high }: Count, of: number) => `${countWords.range({ low, high })} of ${of}`,
} as const;

function several(count: number, one: string, many: string): readonly string[] {
  return count === 0 ? [] : [count === 1 ? `1 ${one}` : `${count} ${many}`];
}
