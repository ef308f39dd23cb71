import { edgesOf } from './edges.ts';
import { hullOf } from './hull.ts';
import { boxOf, close, filled, largestRegion } from './regions.ts';

/** A colour picture as plain numbers: rows of red, green, blue. */
export type Pixels = { readonly width: number; readonly height: number; readonly rgb: Uint8Array };

/** The piece in a picture: its box in pixels, and one byte a pixel, 1 where the piece is. */
export type FoundPiece = {
  readonly box: { readonly left: number; readonly top: number; readonly width: number; readonly height: number };
  readonly mask: Uint8Array;
};

/** How wide a break in the outline may be, as a part of the picture's shorter side. */
const BREAK = 0.03;
/** The least part of the picture a piece may cover. */
const LEAST = 0.005;
/** A silhouette that fills less of its hull than this has lost a part of its outline; then the hull is taken. */
const WHOLE = 0.93;

/**
 * Finds the largest thing on the board by its edges: a board is smooth, and so is a shadow; a piece has a rim and
 * relief, also where its colour is that of the board. Null when nothing stands out, or when what does reaches from one
 * side of the picture to the other.
 */
export function findPiece(pixels: Pixels): FoundPiece | null {
  const { width, height } = pixels;
  const size = { width, height };
  const reach = Math.max(2, Math.round(Math.min(width, height) * BREAK));
  const region = largestRegion(close(edgesOf(pixels), size, reach), size);
  const silhouette = filled(region, size);
  const hull = hullOf(silhouette, size);
  const mask = count(silhouette) >= WHOLE * count(hull) ? silhouette : hull;
  const box = boxOf(mask, size);
  if (box === null || count(mask) < width * height * LEAST) return null;
  const spans = (from: number, length: number, all: number): boolean => from <= 1 && from + length >= all - 1;
  if (spans(box.left, box.width, width) || spans(box.top, box.height, height)) return null;
  return { box, mask };
}

function count(mask: Uint8Array): number {
  return mask.reduce((sum, on) => sum + on, 0);
}
