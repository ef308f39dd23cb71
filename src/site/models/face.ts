import { isBlank } from '../../catalogue/schema/fields.ts';
import { sizeSpan } from '../../core/measures/parse-size.ts';
import type { PhotographManifest } from '../../photographs/manifest.ts';
import type { PublicPiece } from '../../publish/public-piece.ts';
import { urls } from '../urls.ts';

/** A picture at several widths, as `img` wants it. */
export type ShownPicture = {
  readonly src: string;
  readonly srcset: string;
  readonly width: number;
  readonly height: number;
  readonly alt: string;
};

/** One face of a piece at true size, whatever there is to show of it. Lengths are millimetres. */
export type FaceShown = {
  readonly face: string;
  /** Width and height of the box on the board: the piece with the margin its picture has. */
  readonly width: number;
  readonly height: number;
  /** Width and height of the piece alone. */
  readonly span: { readonly width: number; readonly height: number };
  readonly picture: ShownPicture | null;
  /** What stands in for a picture: a plain disc or bar of the metal; `blank` is the empty back of a uniface piece. */
  readonly standIn: { readonly metal: string; readonly square: boolean; readonly blank: boolean } | null;
  /** False when the size is not recorded and a usual one was taken. */
  readonly measured: boolean;
};

/** The size taken for a piece whose own is not recorded, in millimetres. */
const USUAL_SIZE = 20;
/** Metals that have a colour of their own; anything else is drawn as `stuff`. */
const METALS = ['gold', 'silver', 'billon', 'copper', 'bronze', 'brass', 'lead', 'tin', 'pewter'];

export function faceShown(piece: PublicPiece, face: string, photographs: PhotographManifest): FaceShown {
  const sized = piece.size !== null && piece.size !== undefined && !isBlank(piece.size);
  const span = sized ? sizeSpan(piece.size) : { width: USUAL_SIZE, height: USUAL_SIZE };
  const made = (photographs[piece.id] ?? []).find((one) => one.face === face);
  const words = piece.pictures.find((one) => one.face === face);
  if (made === undefined || words === undefined) {
    const blank = face === 'reverse' && piece.faces === 'uniface';
    const square = sized && piece.size.shape === 'rectangle';
    return { face, ...span, span, picture: null, standIn: { metal: metalOf(piece.metal), square, blank }, measured: sized };
  }
  const largest = made.webp.at(-1) ?? made.jpeg;
  const scale = span.width / made.span.width;
  return {
    face,
    width: scale,
    height: (scale * largest.height) / largest.width,
    span,
    picture: {
      src: urls.photograph(piece.id, (made.webp.find(({ width }) => width >= 320) ?? largest).file),
      srcset: made.webp.map(({ file, width }) => `${urls.photograph(piece.id, file)} ${width}w`).join(', '),
      width: largest.width,
      height: largest.height,
      alt: words.alt,
    },
    standIn: null,
    measured: sized,
  };
}

/** The faces a piece has to show: two, or one and its blank back. */
export function facesShown(piece: PublicPiece, photographs: PhotographManifest): readonly FaceShown[] {
  return ['obverse', 'reverse'].map((face) => faceShown(piece, face, photographs));
}

/** The face that stands for a piece where there is room for one: the obverse, unless only the reverse has a design. */
export function chiefFace(piece: PublicPiece, photographs: PhotographManifest): FaceShown {
  const hasOnlyReverse = piece.obverse === null && piece.reverse !== null;
  return faceShown(piece, hasOnlyReverse ? 'reverse' : 'obverse', photographs);
}

function metalOf(metal: string | null): string {
  const words = (metal ?? '').toLowerCase();
  const found = METALS.find((name) => words.includes(name)) ?? (words.includes('copper') ? 'copper' : 'stuff');
  return found === 'brass' ? 'bronze' : found === 'pewter' ? 'tin' : found;
}
