import { assign } from './assign.ts';
import type { Standing } from './assign.ts';
import { candidatesOf, fitOf, openPlace } from './fits.ts';
import type { SetPiece } from './set-piece.ts';
import type { SetPlace } from './places.ts';
import type { Lists, SetRule } from './set-rule.ts';
import type { SetState } from './set-state.ts';

/** The places of a set, what fits each, and what stands in each. */
export type Arrangement = {
  readonly places: readonly SetPlace[];
  /** Everything that fits, one list a place, by id. */
  readonly fitting: readonly (readonly Standing[])[];
  readonly holders: readonly (Standing | null)[];
  readonly leftOut: SetState['leftOut'];
};

export function arrange(
  rule: SetRule,
  places: readonly SetPlace[],
  pieces: readonly SetPiece[],
  lists: Lists,
): Arrangement {
  const inOrder = pieces.toSorted((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
  const candidates = candidatesOf(inOrder, rule, lists).filter(({ toSet }) => toSet.verdict !== 'no');
  const barred = new Map<string, string>();
  const fitted = new Set<string>();
  const fitting = places
    .map((place) => openPlace(place, rule, lists))
    .map((open) =>
      candidates.flatMap((candidate) => {
        const fit = fitOf(candidate, open, rule);
        if (fit.level !== 'no') fitted.add(candidate.piece.id);
        else if (fit.barred && !barred.has(candidate.piece.id)) barred.set(candidate.piece.id, fit.because);
        return fit.level === 'no' ? [] : [{ piece: candidate.piece, fit }];
      }),
    );
  const leftOut = [...barred].filter(([piece]) => !fitted.has(piece)).sort(([a], [b]) => (a < b ? -1 : 1));
  return {
    places,
    fitting,
    holders: assign(places, fitting, rule),
    leftOut: leftOut.map(([piece, because]) => ({ piece, because })),
  };
}

/** Where each piece stands that stands somewhere, by its id. */
export function standsAt({ places, holders }: Arrangement): ReadonlyMap<string, SetPlace> {
  const at = new Map<string, SetPlace>();
  for (const [index, place] of places.entries()) {
    const holder = holders[index];
    if (holder) at.set(holder.piece.id, place);
  }
  return at;
}
