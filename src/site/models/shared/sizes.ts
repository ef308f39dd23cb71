import { known } from '../../../catalogue/schema/fields.ts';
import { sizeSpan } from '../../../core/measures/parse-size.ts';
import type { FacePictures, PhotographManifest } from '../../../photographs/cache/manifest.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';

/** Width and height on the board, in millimetres. */
export type Extent = { readonly width: number; readonly height: number };

/** The size at which a piece is drawn whose own is not recorded. */
export const UNMEASURED: Extent = { width: 20, height: 20 };

/** How much board a piece takes; null when its size is not recorded. */
export function extentOf(piece: PublicPiece): Extent | null {
  const size = known(piece.size);
  return size === null ? null : sizeSpan(size);
}

export function isRound(piece: PublicPiece): boolean {
  return (known(piece.size)?.shape ?? 'round') === 'round';
}

/**
 * The classes that make a thing so many millimetres wide, a digit each: 118.6 is `mm-100 mm-10 mm-8 mm-06`. So one style sheet,
 * `sizes.css`, has the rules of every size there may be, and no page changes when another piece is of a new size.
 */
export function widthClass(millimetres: number): string {
  return digitClasses('mm', millimetres);
}

/** The same for its height. */
export function heightClass(millimetres: number): string {
  return digitClasses('tall', millimetres);
}

/** Tenths of a millimetre up to a metre. */
const MOST_TENTHS = 9999;

function digitClasses(name: string, millimetres: number): string {
  const tenths = String(Math.min(MOST_TENTHS, Math.round(millimetres * 10))).padStart(2, '0');
  return Array.from(tenths)
    .map((digit, at) => {
      const zeros = tenths.length - 2 - at;
      return digit === '0' ? '' : zeros < 0 ? `${name}-0${digit}` : `${name}-${digit}${'0'.repeat(zeros)}`;
    })
    .filter((one) => one !== '')
    .join(' ');
}

/**
 * How wide a picture must be for the piece in it to have its true size: pictures keep a margin round the piece,
 * and a piece that is not quite round takes its greatest diameter.
 */
export function pictureWidth(piece: PublicPiece, picture: FacePictures): number {
  const extent = extentOf(piece) ?? UNMEASURED;
  const { width, height } = picture.webp.at(-1) ?? picture.jpeg;
  const across = width * picture.span.width;
  const down = height * picture.span.height;
  const perPixel = isRound(piece) ? extent.width / Math.max(across, down) : extent.width / across;
  return Math.round(width * perPixel * 10) / 10;
}

/** How much board a disc keeps on either side, as a part of its width: as a cut-out has it. The margin of `Face.astro`. */
const DISC_MARGIN = 0.07;

/** The one rule of sizes that a cabinet decides: how wide its widest thing is, from which follows the scale on a narrow screen. */
export function widestRule(pieces: readonly PublicPiece[], manifest: PhotographManifest): string {
  const withMargin = (width: number): number => width * (1 + 2 * DISC_MARGIN);
  let widest = withMargin(UNMEASURED.width);
  for (const piece of pieces) {
    widest = Math.max(widest, withMargin((extentOf(piece) ?? UNMEASURED).width));
    for (const picture of manifest[piece.id] ?? []) widest = Math.max(widest, pictureWidth(piece, picture));
  }
  return `:root{--widest:${Math.ceil(widest)}}`;
}
