import { formatDate } from '../../../core/dating/format-date.ts';
import { NO_PIECE, ONLY_PIECE } from '../../../core/sets/count-set.ts';
import { known } from '../../../catalogue/schema/fields.ts';
import type { PlaceState, SetState } from '../../../core/sets/set-state.ts';
import { listedPiece } from '../../cabinet.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { setsWords } from '../../words/sets.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { extentOf, UNMEASURED, widthClass } from '../shared/sizes.ts';
import { tellingFace, toldByReverse } from '../shared/telling-face.ts';
import { inOneFile } from '../shared/face.ts';
import type { FaceView } from '../shared/face.ts';

/** Something named that has a page. */
export type Link = { readonly href: string; readonly name: string };

/** A place of a set as it is drawn and told. */
export type PlaceShown = {
  readonly id: string;
  readonly label: string;
  readonly state: PlaceState['state'];
  readonly says: string;
  /** When the type of this place was struck; null where places are not types. */
  readonly when: string | null;
  readonly piece: (Link & { readonly face: FaceView }) | null;
  /** Size classes of an empty well: as wide as the nearest pieces of the set. */
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
  const widths = state.places.map(({ piece }) => {
    const fills = held(piece);
    return fills === undefined ? null : (extentOf(fills)?.width ?? null);
  });
  return state.places.slice(from, to).map((place, at) => {
    const piece = held(place.piece);
    const others = place.others ?? [];
    return {
      id: place.id,
      label: place.label,
      state: place.state,
      says:
        place.state === 'filler' && piece?.problem != null
          ? setsWords.fillerFor(piece.problem)
          : setsWords.state[place.state],
      when: whenStruck(cabinet, state.id, place.id),
      piece: piece === undefined ? null : { href: urls.piece(piece.id), name: piece.title, face: faceIn(piece) },
      well: widthClass(nearestWidth(widths, from + at)),
      others: others.slice(0, OTHERS_NAMED).map((id) => pieceLink(cabinet, id)),
      more: Math.max(0, others.length - OTHERS_NAMED),
      because: place.because === undefined || SAID_BY_STATE.has(place.because) ? null : place.because,
    };
  });
}

/** Whether there is more to tell of a place than its board shows: a place that is simply wanted has nothing. */
export function isTold({ piece, because, others }: PlaceShown): boolean {
  return piece !== null || because !== null || others.length > 0;
}

/** The first pieces of a set, and the first of its places that are wanted. */
export function someToDraw(
  cabinet: Cabinet,
  state: SetState,
  most: { readonly pieces: number; readonly wanted: number },
): readonly PlaceShown[] {
  const all = placesShown(cabinet, state);
  return drawnSmall([
    ...all.filter(({ piece }) => piece !== null).slice(0, most.pieces),
    ...all.filter((place) => place.state === 'wanted').slice(0, most.wanted),
  ]);
}

/** Places with their pieces in small files. */
export function drawnSmall(places: readonly PlaceShown[]): readonly PlaceShown[] {
  return places.map((place) =>
    place.piece === null ? place : { ...place, piece: { ...place.piece, face: inOneFile(place.piece.face, 'tiny') } },
  );
}

/** What a reader sees already by the state of a place and the one piece in it. */
const SAID_BY_STATE: ReadonlySet<string> = new Set([ONLY_PIECE, NO_PIECE]);

/** The width of the pieces nearest to a place in its set, in millimetres: what is wanted is mostly of their size. */
export function nearestWidth(widths: readonly (number | null)[], at: number): number {
  for (let far = 0; far < widths.length; far++) {
    const near = [widths[at - far], widths[at + far]].filter((width) => width != null);
    if (near.length > 0) return near.reduce((sum, width) => sum + width, 0) / near.length;
  }
  return UNMEASURED.width;
}

function whenStruck({ lists }: Cabinet, set: string, type: string): string | null {
  const fields = lists.sets.find(({ id }) => id === set)?.fields;
  if (fields?.['one-per'] !== 'type') return null;
  const series = lists.types.series.find(({ id, facts }) => (fields.series ?? id) === id && facts.has(type));
  const date = known(series?.facts.get(type)?.date);
  return date === null ? null : formatDate(date);
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

/** `20 have their piece, 1 filler, 13 wanted, 5 cannot be filled`; states that do not occur are left out. */
export function tallyInWords({ places }: SetState): string {
  return tallyOf(places.map(({ state }) => state));
}

/** The same of any places. */
export function tallyOf(states: readonly PlaceState['state'][]): string {
  return IN_ORDER.flatMap((each) => {
    const count = states.filter((state) => state === each).length;
    return count === 0 ? [] : [setsWords.tally[each](count)];
  }).join(', ');
}
