import type { PlaceState } from '../../core/sets/set-state.ts';
import type { PublicPiece } from '../../publish/public-piece.ts';
import { loadCabinet } from '../cabinet.ts';
import { urls } from '../urls.ts';
import { placeWords } from '../words/places.ts';
import type { FaceView } from './face.ts';
import { leadingFace } from './face.ts';

/** A place of a set as it is drawn: a well, and what lies in it. */
export type PlaceMarkView = {
  readonly id: string;
  readonly label: string;
  readonly state: PlaceState['state'];
  readonly says: string;
  readonly because: string | null;
  readonly piece: { readonly href: string; readonly title: string; readonly face: FaceView } | null;
};

/** Draws the places of a set; `pieces` are those a visitor may see. */
export async function placeMarksOf(
  places: readonly PlaceState[],
  pieces: readonly PublicPiece[],
): Promise<readonly PlaceMarkView[]> {
  const { photographs } = await loadCabinet();
  const byId = new Map(pieces.map((piece) => [piece.id, piece]));
  return places.map((place) => {
    const piece = byId.get(place.piece ?? '');
    return {
      id: place.id,
      label: place.label,
      state: place.state,
      says: placeWords[place.state],
      because: place.because ?? null,
      piece:
        piece === undefined
          ? null
          : { href: urls.piece(piece.id), title: piece.title, face: leadingFace(piece, photographs) },
    };
  });
}
