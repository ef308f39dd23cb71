import type { PlaceState, SetState } from '../../../core/sets/set-state.ts';
import { listedPiece } from '../../cabinet.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { setsWords } from '../../words/sets.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { extentOf, UNMEASURED, widthClass } from '../shared/sizes.ts';
import { tellingFace, toldByReverse } from '../shared/telling-face.ts';
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
  /** Size classes of an empty well: as wide as the pieces of this set mostly are. */
  readonly well: string;
  /** The first few of the others that would fit, and how many more there are. */
  readonly others: readonly Link[];
  readonly more: number;
  readonly because: string | null;
};

/** A well on a board, with a slip under it; `to` is where it leads, if not to its piece. */
export type TrayPlace = Pick<PlaceShown, 'id' | 'label' | 'state' | 'says' | 'piece' | 'well'> & {
  readonly to?: string;
};

const OTHERS_NAMED = 4;

/** All places of a set, or those from one on to before another. */
export function placesShown(cabinet: Cabinet, state: SetState, from = 0, to = Infinity): readonly PlaceShown[] {
  const held = (id: string | undefined): PublicPiece | undefined => listedPiece(cabinet, id ?? '');
  const onePer = cabinet.lists.sets.find(({ id }) => id === state.id)?.fields['one-per'];
  const all = state.places.flatMap(({ piece }) => held(piece) ?? []);
  // A mint is named on the reverse; types of one king are mostly told by the obverse.
  const byReverse = onePer === 'mint' ? new Set(all) : onePer === 'type' ? new Set<PublicPiece>() : toldByReverse(all);
  const faceIn = (piece: PublicPiece): FaceView => tellingFace(piece, byReverse, cabinet.photographs);
  const well = widthClass(usualWidth(all));
  return state.places.slice(from, to).map((place) => {
    const piece = held(place.piece);
    const others = place.others ?? [];
    return {
      id: place.id,
      label: place.label,
      state: place.state,
      says: setsWords.state[place.state],
      piece: piece === undefined ? null : { href: urls.piece(piece.id), name: piece.title, face: faceIn(piece) },
      well,
      others: others.slice(0, OTHERS_NAMED).map((id) => pieceLink(cabinet, id)),
      more: Math.max(0, others.length - OTHERS_NAMED),
      because: place.because ?? null,
    };
  });
}

/** The first places that count, and how many more of them there are: what is drawn and what is told come to the number of the set. */
export function firstPlaces(
  cabinet: Cabinet,
  state: SetState,
  most: number,
): { readonly places: readonly PlaceShown[]; readonly more: number } {
  const places = state.places.filter((place) => place.state !== 'excused');
  return { places: placesShown(cabinet, { ...state, places }, 0, most), more: Math.max(0, places.length - most) };
}

/** The middle one of the widths of these pieces, in millimetres. */
export function usualWidth(pieces: readonly PublicPiece[]): number {
  const widths = pieces.flatMap((piece) => extentOf(piece)?.width ?? []).sort((a, b) => a - b);
  return widths[Math.floor(widths.length / 2)] ?? UNMEASURED.width;
}

/** A listed piece by its id. */
export function pieceLink(cabinet: Cabinet, id: string): Link {
  return { href: urls.piece(id), name: listedPiece(cabinet, id)?.title ?? id };
}

const IN_ORDER = ['filled', 'possible', 'filler', 'wanted', 'excused'] as const;

/** `20 filled, 1 held by a filler, 13 wanted, 5 excused`; states that do not occur are left out. */
export function tallyInWords(state: SetState): string {
  return IN_ORDER.flatMap((each) => {
    const count = state.places.filter((place) => place.state === each).length;
    return count === 0 ? [] : [setsWords.tally[each](count)];
  }).join(', ');
}
