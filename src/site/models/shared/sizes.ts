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

/** The class that makes a thing so many millimetres wide: 18.6 is `mm-186`. Every page carries the rules of all of them. */
export function widthClass(millimetres: number): string {
  return `mm-${Math.round(millimetres * 10)}`;
}

/** The same for its height: 11 is `tall-110`. */
export function heightClass(millimetres: number): string {
  return `tall-${Math.round(millimetres * 10)}`;
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

/** The rules of every size this cabinet uses, and its widest, smallest first: the same text on every page. */
export function sizeRules(pieces: readonly PublicPiece[], manifest: PhotographManifest): string {
  const widths = new Set<number>();
  const heights = new Set<number>();
  const withMargin = (width: number): number => width * (1 + 2 * DISC_MARGIN);
  let widest = withMargin(UNMEASURED.width);
  for (const piece of pieces) {
    const { width, height } = extentOf(piece) ?? UNMEASURED;
    widths.add(Math.round(width * 10));
    heights.add(Math.round(height * 10));
    widest = Math.max(widest, withMargin(width));
    for (const picture of manifest[piece.id] ?? []) {
      const across = pictureWidth(piece, picture);
      widths.add(Math.round(across * 10));
      widest = Math.max(widest, across);
    }
  }
  const inOrder = (tenths: ReadonlySet<number>): number[] => [...tenths].sort((a, b) => a - b);
  return [
    `:root{--widest:${Math.ceil(widest)}}`,
    ...inOrder(widths).map((tenths) => `.mm-${tenths}{--mm:${tenths / 10}}`),
    ...inOrder(heights).map((tenths) => `.tall-${tenths}{--tall:${tenths / 10}}`),
  ].join('');
}
