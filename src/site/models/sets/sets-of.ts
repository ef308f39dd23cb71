import type { PlaceState, SetState } from '../../../core/sets/set-state.ts';
import type { Cabinet } from '../../cabinet.ts';
import { onceFor } from '../../once-for.ts';
import { setStatesOf } from './set-states-of.ts';

/** What a piece does for one set. */
export type SetService = {
  readonly set: { readonly id: string; readonly title: string };
  /**
   * `stands`: it fills a place, for certain or possibly, or is a filler.
   * `spare`: it fits and is not needed. `left-out`: it would fit but for one thing.
   */
  readonly does: 'stands' | 'spare' | 'left-out';
  /** The place it is in; null for a spare and for what is left out. */
  readonly place: Pick<PlaceState, 'id' | 'label' | 'state'> | null;
  /** The name of the place that a spare fits best. */
  readonly fits: string | null;
};

/** Which sets a piece serves, in the order of the sets; empty for an unlisted piece, which no set counts. */
export function setsOf(cabinet: Cabinet, piece: string): readonly SetService[] {
  return servicesOf(cabinet).get(piece) ?? [];
}

/** What every piece does for the sets, by its id. */
const servicesOf = onceFor((cabinet: Cabinet): ReadonlyMap<string, readonly SetService[]> => {
  const held = new Map<string, SetService[]>();
  for (const state of setStatesOf(cabinet))
    for (const { piece, ...service } of servicesIn(state)) {
      const known = held.get(piece);
      if (known === undefined) held.set(piece, [service]);
      else known.push(service);
    }
  return held;
});

function servicesIn(state: SetState): readonly (SetService & { readonly piece: string })[] {
  const set = { id: state.id, title: state.title };
  return [
    ...state.places.flatMap(({ piece, id, label, state: how }) =>
      piece === undefined ? [] : { piece, set, does: 'stands' as const, place: { id, label, state: how }, fits: null },
    ),
    ...state.spares.map(({ piece, label }) => ({ piece, set, does: 'spare' as const, place: null, fits: label })),
    ...state.leftOut.map(({ piece }) => ({ piece, set, does: 'left-out' as const, place: null, fits: null })),
  ];
}
