import type { FacePictures, PhotographManifest } from '../../../photographs/cache/manifest.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { urls } from '../../urls.ts';
import { faceWords } from '../../words/faces.ts';
import { altOf } from './alt.ts';
import { extentOf, heightClass, isRound, pictureWidth, UNMEASURED, widthClass } from './sizes.ts';

type Laid = {
  readonly face: string;
  /** Size classes (`mm-10 mm-8 mm-06`) of what is shown; a photograph has that of the plain disc under it too, and its metal. */
  readonly wide: string;
  /** The same in millimetres. */
  readonly millimetres: number;
  /** Whether the size of the piece is not recorded: it is then drawn as if it were 20 mm wide. */
  readonly unmeasured: boolean;
  readonly alt: string;
};

/** One face of a piece as it lies on the board. */
export type FaceView =
  | (Laid & {
      readonly shown: 'photograph';
      readonly src: string;
      /** A file just large enough for a board, and one for a case seen whole. */
      readonly small: string;
      readonly tiny: string;
      readonly srcset: string;
      /** Width in pixels on the page of one piece and on a board of many, as a hint for choosing a file. */
      readonly hints: { readonly piece: string; readonly board: string };
      readonly metal: Metal;
      /** How large a plain shape of its metal, seen till the picture has come, is wholly covered by it: a part of the picture. */
      readonly under: number | null;
      /** The same picture at several widths in pixels, smallest first. */
      readonly pictures: readonly { readonly src: string; readonly width: number }[];
      /** The largest, in pixels. */
      readonly width: number;
      readonly height: number;
      readonly largest: string;
      /** Whether it is the whole photograph, in which the piece was not surely found, and so at no scale. */
      readonly isWhole: boolean;
    })
  | (Laid & {
      readonly shown: 'disc' | 'blank';
      readonly tall: string;
      readonly outline: 'round' | 'oblong';
      readonly metal: Metal;
      /** Why there is no picture, in a word or three. */
      readonly says: string;
      /** Said on the disc however small it is: `lent`. */
      readonly away: string | null;
    });

export type Metal = 'gold' | 'silver' | 'billon' | 'copper' | 'bronze' | 'lead' | 'tin' | 'stuff';

// Pixels a millimetre in tokens.css, for the hint only: the width on the page is the style sheet's.
const HINT = { piece: 14, board: 5, case: 4.5 } as const;

/** The face as it can be shown: its photograph, or a plain disc of its size and metal, or a blank back. */
export function faceOf(piece: PublicPiece, face: string, manifest: PhotographManifest): FaceView {
  const pictures = (manifest[piece.id] ?? []).find((made) => made.face === face);
  if (pictures !== undefined) return photographOf(piece, pictures);
  const extent = extentOf(piece) ?? UNMEASURED;
  const isBlankBack = piece.faces === 'uniface' && face === blankFaceOf(piece, manifest);
  return {
    face,
    shown: isBlankBack ? 'blank' : 'disc',
    wide: widthClass(extent.width),
    millimetres: extent.width,
    tall: heightClass(extent.height),
    outline: isRound(piece) ? 'round' : 'oblong',
    metal: metalOf(piece.metal),
    unmeasured: extentOf(piece) === null,
    says: isBlankBack ? faceWords.blankShort : faceWords.noPhotographShort,
    away: piece.status === 'lent' && !isBlankBack ? faceWords.lentShort : null,
    alt: isBlankBack ? faceWords.blank(face, piece) : faceWords.noPhotograph(face, piece),
  };
}

/** The face that stands for a piece on a board: its obverse, or whichever face bears a design. */
export function leadingFace(piece: PublicPiece, manifest: PhotographManifest): FaceView {
  const isBackward = piece.faces === 'uniface' && blankFaceOf(piece, manifest) === 'obverse';
  return faceOf(piece, isBackward ? 'reverse' : 'obverse', manifest);
}

/**
 * A uniface piece is blank on the side of which nothing was photographed or described, or that is described as blank; on
 * its reverse when both or neither were.
 */
function blankFaceOf(piece: PublicPiece, manifest: PhotographManifest): 'obverse' | 'reverse' {
  const isPhotographed = (face: string): boolean => (manifest[piece.id] ?? []).some((made) => made.face === face);
  const tells = (side: PublicPiece['obverse']): boolean =>
    side?.legend !== undefined || (side?.design !== undefined && !/^(?:blank|plain)\b/i.test(side.design));
  if (isPhotographed('obverse') !== isPhotographed('reverse')) return isPhotographed('obverse') ? 'reverse' : 'obverse';
  return tells(piece.obverse) || !tells(piece.reverse) ? 'reverse' : 'obverse';
}

/**
 * What part of its picture a plain disc under it takes: `Face.astro` has it too. Pictures keep a margin of 7 per cent round the piece, and an
 * irregular edge goes in about as far again; a hole within the edge is not cut out, so the disc is not seen through it.
 */
const UNDER = 0.8;
/** How much longer than broad the picture of a round piece may be. */
const NEARLY_ROUND = 1.1;

/** Whether a round piece was surely found in its photograph, and is about as broad as long. */
function isWholeDisc(piece: PublicPiece, { doubt, span, webp, jpeg }: FacePictures): boolean {
  const { width, height } = webp.at(-1) ?? jpeg;
  return (
    doubt === null &&
    span.width < 1 &&
    isRound(piece) &&
    Math.max(width, height) <= NEARLY_ROUND * Math.min(width, height)
  );
}

function photographOf(piece: PublicPiece, pictures: FacePictures): FaceView {
  const across = pictureWidth(piece, pictures);
  const largest = pictures.webp.at(-1) ?? pictures.jpeg;
  const under = isWholeDisc(piece, pictures) ? UNDER : null;
  const metal = metalOf(piece.metal);
  const atLeast = (width: number): FacePictures['jpeg'] => pictures.webp.find((made) => made.width >= width) ?? largest;
  const address = ({ file }: { file: string }): string => urls.photograph(piece.id, file);
  return {
    face: pictures.face,
    shown: 'photograph',
    wide: widthClass(across) + (under === null ? '' : ` under ${metal}`),
    metal,
    under,
    millimetres: across,
    unmeasured: extentOf(piece) === null,
    alt: altOf(piece, pictures.face),
    src: address(atLeast(across * HINT.piece)),
    small: address(atLeast(1.5 * across * HINT.board)),
    tiny: address(atLeast(across * HINT.case)),
    srcset: pictures.webp.map((made) => `${address(made)} ${made.width}w`).join(', '),
    hints: {
      piece: `(max-width: 640px) 45vw, ${Math.round(across * HINT.piece)}px`,
      board: `${Math.round(across * HINT.board)}px`,
    },
    pictures: pictures.webp.map((made) => ({ src: address(made), width: made.width })),
    width: largest.width,
    height: largest.height,
    largest: address(largest),
    isWhole: pictures.doubt !== null,
  };
}

/**
 * How many pixels a millimetre of these faces may have on the page of one piece: as many as their pictures hold, so that none is
 * enlarged until it is soft.
 */
export function pixelsOf(faces: readonly FaceView[]): number {
  const held = faces.map((face) => (face.shown === 'photograph' ? face.width / face.millimetres : Infinity));
  return Math.max(1, Math.floor(Math.min(HINT.piece, ...held)));
}

/** A face with one file to fetch: one of a board's size, or one for where it is drawn at half of that or less. */
export function inOneFile(face: FaceView, size: 'small' | 'tiny'): FaceView {
  return face.shown === 'photograph' ? { ...face, src: face[size], srcset: '' } : face;
}

/** How much board a disc keeps on both sides, and the mount of a whole photograph, as a part of the width: `Face.astro` has them. */
const AROUND = { disc: 0.14, mount: 0.08 } as const;

/** The size classes of the widest of these rows of faces: a board takes its scale from it where a screen is too narrow. */
export function acrossClass(rows: readonly (readonly FaceView[])[]): string {
  const wide = (face: FaceView): number =>
    face.millimetres * (face.shown !== 'photograph' ? 1 + AROUND.disc : face.isWhole ? 1 + AROUND.mount : 1);
  return widthClass(Math.max(UNMEASURED.width, ...rows.map((row) => row.reduce((sum, face) => sum + wide(face), 0))));
}

/** How a disc looks, as the classes of `Face.astro`. */
export function lookOf({ shown, outline, metal, unmeasured }: Extract<FaceView, { tall: string }>): string {
  return [shown, outline, metal, unmeasured ? 'unmeasured' : ''].join(' ').trim();
}

const METALS: readonly (readonly [RegExp, Metal])[] = [
  [/gold|electrum/i, 'gold'],
  [/billon/i, 'billon'],
  [/silver/i, 'silver'],
  [/bronze|brass|orichalcum|copper[- ]alloy/i, 'bronze'],
  [/copper/i, 'copper'],
  [/lead/i, 'lead'],
  [/tin|pewter|white metal|nickel|zinc|iron|steel|platinum|aluminium/i, 'tin'],
];

/** Which metal's colour a plain disc takes. */
export function metalOf(metal: string | null): Metal {
  return METALS.find(([names]) => names.test(metal ?? ''))?.[1] ?? 'stuff';
}
