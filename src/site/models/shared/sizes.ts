import { known } from '../../../catalogue/schema/fields.ts';
import { sizeSpan } from '../../../core/measures/parse-size.ts';
import { trueWidth } from '../../../photographs/cache/manifest.ts';
import type { FacePictures } from '../../../photographs/cache/manifest.ts';
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

/** How many millimetres wide a picture must be for the piece in it to have its true size. */
export function pictureWidth(piece: PublicPiece, picture: FacePictures): number {
  return Math.round(trueWidth(picture, extentOf(piece) ?? UNMEASURED, isRound(piece)) * 10) / 10;
}
