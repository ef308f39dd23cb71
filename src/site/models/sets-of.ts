import type { PlaceState, SetState } from '../../core/sets/set-state.ts';
import type { Cabinet } from '../cabinet.ts';
import { setStatesOf } from './set-states-of.ts';

/** A piece and its title, for a link. */
export type PieceName = { readonly id: string; readonly title: string };

/** What a piece does for one set. */
export type SetService = {
  readonly set: { readonly id: string; readonly title: string };
  /**
   * `stands`: it fills a place, for certain or possibly, or stands in as a filler.
   * `spare`: it fits and is not needed. `left-out`: it would fit but for one thing.
   */
  readonly does: 'stands' | 'spare' | 'left-out';
  /** The place it stands in; null for a spare and for what is left out. */
  readonly place: Pick<PlaceState, 'id' | 'label' | 'state'> | null;
  /** Sentences. */
  readonly because: string;
  /** The lesser pieces it has displaced in that place. */
  readonly displaced: readonly (PieceName & { readonly certain: boolean; readonly because: string })[];
};

/** Which sets a piece serves, in the order of the sets; empty for an unlisted piece, which no set counts. */
export function setsOf(cabinet: Cabinet, piece: string): readonly SetService[] {
  const titles = new Map(cabinet.listed.map(({ id, title }) => [id, title]));
  return setStatesOf(cabinet).flatMap((state) => [...placesHeld(state, piece, titles), ...unplaced(state, piece)]);
}

function placesHeld(state: SetState, piece: string, titles: ReadonlyMap<string, string>): readonly SetService[] {
  return state.places
    .filter((place) => place.piece === piece)
    .map(({ id, label, state: how, because = '' }) => ({
      set: { id: state.id, title: state.title },
      does: 'stands',
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
    }));
}

function unplaced(state: SetState, piece: string): readonly SetService[] {
  const set = { id: state.id, title: state.title };
  const as = (does: 'spare' | 'left-out', found: { readonly because: string } | undefined): readonly SetService[] =>
    found === undefined ? [] : [{ set, does, place: null, because: found.because, displaced: [] }];
  return [
    ...as(
      'spare',
      state.spares.find((one) => one.piece === piece),
    ),
    ...as(
      'left-out',
      state.leftOut.find((one) => one.piece === piece),
    ),
  ];
}
