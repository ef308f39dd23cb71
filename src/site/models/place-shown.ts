import type { PlaceState, SetState } from '../../core/sets/set-state.ts';
import type { Cabinet } from '../cabinet.ts';
import { urls } from '../urls.ts';
import { setsWords } from '../words/sets.ts';
import { boardPiece } from './board.ts';
import type { BoardPiece } from './board.ts';

/** Something named that has a page. */
export type Link = { readonly to: string; readonly name: string };

/** A place of a set as it is drawn and told. */
export type PlaceShown = {
  readonly id: string;
  readonly label: string;
  readonly state: PlaceState['state'];
  readonly says: string;
  readonly piece: BoardPiece | null;
  /** The first few of the others that would fit, and how many more there are. */
  readonly others: readonly Link[];
  readonly more: number;
  readonly because: string | null;
  /** The width of the well in millimetres, one that the page has a length for. */
  readonly well: number;
};

const OTHERS_NAMED = 4;
/** A well with nothing to measure it by, in millimetres. */
const USUAL_WELL = 20;

export function placesShown(cabinet: Cabinet, state: SetState): readonly PlaceShown[] {
  const byId = new Map(cabinet.listed.map((piece) => [piece.id, piece]));
  const drawn = new Map(
    state.places.flatMap(({ piece }) => {
      const found = byId.get(piece ?? '');
      return found === undefined ? [] : [[found.id, boardPiece(found, cabinet.photographs)] as const];
    }),
  );
  const usual = middle([...drawn.values()].map(({ face }) => face.span.width)) ?? USUAL_WELL;
  return state.places.map((place) => {
    const piece = drawn.get(place.piece ?? '') ?? null;
    const others = place.others ?? [];
    return {
      id: place.id,
      label: place.label,
      state: place.state,
      says: setsWords.state[place.state],
      piece,
      others: others.slice(0, OTHERS_NAMED).map((id) => pieceLink(cabinet, id)),
      more: Math.max(0, others.length - OTHERS_NAMED),
      because: place.because ?? null,
      well: piece === null ? usual : Math.max(piece.face.span.width, piece.face.span.height),
    };
  });
}

/** A listed piece by its id. */
export function pieceLink({ listed }: Cabinet, id: string): Link {
  return { to: urls.piece(id), name: listed.find((piece) => piece.id === id)?.title ?? id };
}

function middle(values: readonly number[]): number | undefined {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];
}

const IN_ORDER = ['filled', 'possible', 'filler', 'wanted', 'excused'] as const;

/** `20 filled, 1 held by a filler, 13 wanted, 5 excused`; states that do not occur are left out. */
export function tallyInWords(state: SetState): string {
  return IN_ORDER.flatMap((each) => {
    const count = state.places.filter((place) => place.state === each).length;
    return count === 0 ? [] : [setsWords.tally[each](count)];
  }).join(', ');
}
