import type { PlaceState, SetState } from '../../../core/sets/set-state.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { setsWords } from '../../words/sets.ts';
import { leadingFace } from '../shared/face.ts';
import type { FaceView } from '../shared/face.ts';

/** Something named that has a page. */
export type Link = { readonly href: string; readonly name: string };

/** A place of a set as it is drawn and told. */
export type PlaceShown = {
  readonly id: string;
  readonly label: string;
  readonly state: PlaceState['state'];
  readonly says: string;
  readonly piece: (Link & { readonly face: FaceView }) | null;
  /** The first few of the others that would fit, and how many more there are. */
  readonly others: readonly Link[];
  readonly more: number;
  readonly because: string | null;
};

const OTHERS_NAMED = 4;

export function placesShown(cabinet: Cabinet, state: SetState): readonly PlaceShown[] {
  const byId = new Map(cabinet.listed.map((piece) => [piece.id, piece]));
  return state.places.map((place) => {
    const piece = byId.get(place.piece ?? '');
    const others = place.others ?? [];
    return {
      id: place.id,
      label: place.label,
      state: place.state,
      says: setsWords.state[place.state],
      piece:
        piece === undefined
          ? null
          : { href: urls.piece(piece.id), name: piece.title, face: leadingFace(piece, cabinet.photographs) },
      others: others.slice(0, OTHERS_NAMED).map((id) => pieceLink(cabinet, id)),
      more: Math.max(0, others.length - OTHERS_NAMED),
      because: place.because ?? null,
    };
  });
}

/** A listed piece by its id. */
export function pieceLink({ listed }: Cabinet, id: string): Link {
  return { href: urls.piece(id), name: listed.find((piece) => piece.id === id)?.title ?? id };
}

const IN_ORDER = ['filled', 'possible', 'filler', 'wanted', 'excused'] as const;

/** `20 filled, 1 held by a filler, 13 wanted, 5 excused`; states that do not occur are left out. */
export function tallyInWords(state: SetState): string {
  return IN_ORDER.flatMap((each) => {
    const count = state.places.filter((place) => place.state === each).length;
    return count === 0 ? [] : [setsWords.tally[each](count)];
  }).join(', ');
}
