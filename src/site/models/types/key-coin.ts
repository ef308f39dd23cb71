import type { TypeSeries } from '../../../catalogue/types/series.ts';
import type { PlaceOnFace } from '../../../catalogue/schema/series.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { faceOf } from '../shared/face.ts';
import type { FaceView } from '../shared/face.ts';
import type { Link } from '../sets/place-shown.ts';
import { piecesOfSeries } from './types-page.ts';

type Photograph = Extract<FaceView, { shown: 'photograph' }>;
/** A piece of a series, both faces photographed whole. */
export type KeyCoin = Link & { readonly faces: readonly Photograph[] };

/** The piece on which a key shows where to look: one of a certain type, before any other. */
export function keyCoin(cabinet: Cabinet, series: TypeSeries): KeyCoin | null {
  if (series.fields.characters.every(({ at }) => at === undefined)) return null;
  const isSure = ({ types }: (typeof cabinet.listed)[number]): boolean =>
    types.some((type) => type.series === series.id && type.sure === 'certain');
  const pieces = piecesOfSeries(cabinet, series.id).toSorted(
    (one, other) => Number(isSure(other)) - Number(isSure(one)),
  );
  for (const piece of pieces) {
    const faces = (['obverse', 'reverse'] as const).flatMap((side) =>
      wholePhotograph(faceOf(piece, side, cabinet.photographs)),
    );
    if (faces.length === 2) return { href: urls.piece(piece.id), name: piece.title, faces };
  }
  return null;
}

/** A photograph in which the whole round piece was surely found, so that a place on it is a place on the piece. */
export function wholePhotograph(face: FaceView): readonly Photograph[] {
  return face.shown === 'photograph' && face.under !== null ? [face] : [];
}

/** A place on a face as one sees it through the glass: the part of a picture, in its pixels. */
export type Glass = { readonly src: string; readonly width: number; readonly height: number; readonly box: string };

/** A photograph keeps a margin of 7 per cent round the piece. */
const MARGIN = 7;
/** How much round a place is seen with it, and how many pixels across it wants. */
const AROUND = 1.2;
const SHARP = 280;

/** Each place of a series on a piece of it, by character; of a piece that is surely of the series, and photographed whole. */
export function glassesOn(cabinet: Cabinet, series: TypeSeries, piece: PublicPiece): Readonly<Record<string, Glass>> {
  if (!piece.types.some((type) => type.series === series.id && type.sure === 'certain')) return {};
  return Object.fromEntries(
    series.fields.characters.flatMap(({ id, at, on }) => {
      const [face] = on === undefined ? [] : wholePhotograph(faceOf(piece, on, cabinet.photographs));
      return face === undefined || at === undefined ? [] : [[id, glassOn(face, at)]];
    }),
  );
}

function glassOn({ pictures, width, height, src }: Photograph, { across, down, wide }: PlaceOnFace): Glass {
  const part = (hundredths: number): number => hundredths / (100 + 2 * MARGIN);
  const side = part(wide * AROUND) * width;
  const file = pictures.find((made) => made.width * part(wide * AROUND) >= SHARP) ?? pictures.at(-1);
  const box = [part(across + MARGIN) * width - side / 2, part(down + MARGIN) * height - side / 2, side, side];
  return { src: file?.src ?? src, width, height, box: box.map((each) => each.toFixed(1)).join(' ') };
}
