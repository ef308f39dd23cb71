import type { PlaceState, SetState } from '../../../core/sets/set-state.ts';
import type { Cabinet } from '../../cabinet.ts';
import { onceFor } from '../../once-for.ts';
import { setStatesOf } from './set-states-of.ts';

/** A piece and its title, for a link. */
export type PieceName = { readonly id: string; readonly title: string };

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
  /** Sentences. */
  readonly because: string;
  /** The lesser pieces it has displaced in that place. */
  readonly displaced: readonly (PieceName & { readonly certain: boolean; readonly because: string })[];
};

/** Which sets a piece serves, in the order of the sets; empty for an unlisted piece, which no set counts. */
export function setsOf(cabinet: Cabinet, piece: string): readonly SetService[] {
  return servicesOf(cabinet).get(piece) ?? [];
}

/** What every piece does for the sets, by its id. */
const servicesOf = onceFor((cabinet: Cabinet): ReadonlyMap<string, readonly SetService[]> => {
  const titles = new Map(cabinet.listed.map(({ id, title }) => [id, title]));
  const held = new Map<string, SetService[]>();
  for (const state of setStatesOf(cabinet))
    for (const { piece, ...service } of servicesIn(state, titles)) {
      const known = held.get(piece);
      if (known === undefined) held.set(piece, [service]);
      else known.push(service);
    }
  return held;
});

function servicesIn(
  state: SetState,
  titles: ReadonlyMap<string, string>,
): readonly (SetService & { readonly piece: string })[] {
  const set = { id: state.id, title: state.title };
  const unplaced = (does: 'spare' | 'left-out', found: { readonly piece: string; readonly because: string }) =>
    ({ piece: found.piece, set, does, place: null, because: found.because, displaced: [] }) as const;
  return [
    ...state.places.flatMap(({ piece, id, label, state: how, because = '' }) =>
      piece === undefined
        ? []
        : {
            piece,
            set,
            does: 'stands' as const,
            place: { id, label, state: how },
            because,
            displaced: state.upgrades
              .filter(({ place, to, made }) => made && place === id && to === piece)
              .map(({ from, certain, because: why }) => ({
                id: from,
                title: titles.get(from) ?? from,
                certain,
                because: why,
              })),
          },
    ),
    ...state.spares.map((one) => unplaced('spare', one)),
    ...state.leftOut.map((one) => unplaced('left-out', one)),
  ];
}
