import { edgesOf } from './edges.ts';
import { hullOf } from './hull.ts';
import { outlineBox, outlineOf } from './outline.ts';
import type { Box, Extent, Pixels } from './pixels.ts';
import { reduced } from './pixels.ts';
import type { Region } from './regions.ts';
import { boxOf, close, count, filled, grow, open, regionsOf, shrink } from './regions.ts';

/** The piece in a picture: its box in the picture's pixels, and a silhouette of `size`, one byte a pixel, 1 where the piece is. */
export type FoundPiece = { readonly box: Box; readonly mask: Uint8Array; readonly size: Extent };

/** The longest side, in pixels, of the copy in which a piece is sought. */
export const LOOK_AT = 320;

/** How wide a break in the outline may be, as a part of the picture's shorter side: first narrow, so that neighbours stay apart. */
const BREAKS = [0.01, 0.03] as const;
/** The least part of the picture a piece may cover. */
const LEAST = 0.005;
/** A silhouette that fills less of its hull than this has lost a part of its outline, or has something joined to it. */
const WHOLE = 0.93;
/** What is joined to a piece, as a ruler may be, is cut off where it is thinner than this part of what both take up. */
const THIN = 0.17;
/** How much less a thing is worth that the rim of the picture cuts. */
const CUT = 0.1;
/** A second piece is at least so large beside the first: less is a label or a scale. */
const ALIKE = 0.6;
/** How many things in a picture are looked at more closely. */
const CLOSELY = 5;

/** Finds the piece in a picture; null when nothing on the board can be one. */
export function findPiece(pixels: Pixels): FoundPiece | null {
  return findPieces(pixels, 1)[0] ?? null;
}

/**
 * Finds up to so many pieces in one picture, by their edges: a board is smooth, and so is a shadow; a piece has a rim and
 * relief, also where its colour is that of the board. The largest compact things are taken, from left to right. None
 * when nothing stands out, or when what does reaches from one side of the picture to the other.
 */
export function findPieces(pixels: Pixels, wanted: number): readonly FoundPiece[] {
  const look = reduced(pixels, LOOK_AT);
  const edges = edgesOf(look);
  let best: readonly Shape[] = [];
  for (const part of BREAKS) {
    best = shapesOf(edges, look, part).slice(0, wanted);
    if (best.length === wanted && best.every(({ isWhole }) => isWhole)) break;
  }
  const most = best[0]?.worth ?? 0;
  return best
    .filter(({ worth }) => worth >= most * ALIKE ** 3)
    .map(({ mask }) => inPixels(drawnIn(mask, look), pixels))
    .sort((one, other) => one.box.left + one.box.width / 2 - other.box.left - other.box.width / 2);
}

type Shape = { readonly mask: Uint8Array; readonly box: Box; readonly isWhole: boolean; readonly worth: number };

/** The things on the board, best first. */
function shapesOf(edges: Uint8Array, size: Extent, part: number): readonly Shape[] {
  const reach = Math.max(2, Math.round(Math.min(size.width, size.height) * part));
  const least = size.width * size.height * LEAST;
  return regionsOf(close(edges, size, reach), size, 2 * Math.sqrt(least))
    .toSorted((one, other) => worthOf(other.box, size) - worthOf(one.box, size))
    .slice(0, CLOSELY)
    .flatMap((region) => shapesIn(region, size))
    .filter(({ mask, box }) => count(mask) >= least && !spans(box, size))
    .sort((one, other) => other.worth - one.worth);
}

/** What a region shows: itself, the parts it falls into without what is thin, or its hull when its outline is broken. */
function shapesIn(region: Region, size: Extent): readonly Shape[] {
  const silhouette = filled(region, size);
  const hull = hullOf(silhouette, size);
  const all = count(silhouette);
  if (all >= WHOLE * count(hull)) return shape(silhouette, size, true);
  const reach = Math.round(THIN * Math.min(region.box.width, region.box.height));
  const thick = open(silhouette, size, reach);
  const parts = regionsOf(thick, size, all * 0.1).flatMap((part) => {
    // Opened with a square, a round thing loses its bow: it is grown back as far as the silhouette goes.
    const grown = grow(filled(part, size), size, Math.max(2, Math.round(reach / 2)));
    for (let at = 0; at < grown.length; at += 1) grown[at] = (grown[at] ?? 0) & (silhouette[at] ?? 0);
    return count(grown) >= WHOLE * 0.97 * count(hullOf(grown, size)) ? shape(grown, size, true) : [];
  });
  return parts.length > 0 ? parts : shape(hull, size, false);
}

function shape(mask: Uint8Array, size: Extent, isWhole: boolean): readonly Shape[] {
  const box = boxOf(mask, size);
  return box === null ? [] : [{ mask, box, isWhole, worth: worthOf(box, size) }];
}

/** How much a thing looks like the one meant: large in both directions, and not cut by the rim of the picture. */
function worthOf({ left, top, width, height }: Box, size: Extent): number {
  const isCut = left <= 1 || top <= 1 || left + width >= size.width - 1 || top + height >= size.height - 1;
  return Math.min(width, height) ** 3 * (isCut ? CUT : 1);
}

function spans({ left, top, width, height }: Box, size: Extent): boolean {
  const reaches = (from: number, length: number, all: number): boolean => from <= 1 && from + length >= all - 1;
  return reaches(left, width, size.width) || reaches(top, height, size.height);
}

/** The edges of a thing lie on both sides of its rim: its silhouette is drawn in by one pixel. */
function drawnIn(mask: Uint8Array, { width, height }: Extent): FoundPiece {
  const size = { width, height };
  const inner = shrink(mask, size, 1);
  return { mask: inner, box: boxOf(inner, size) ?? { left: 0, top: 0, width, height }, size };
}

/** The box in the pixels of the picture itself: by its rim where that can be traced. */
function inPixels(found: FoundPiece, pixels: Pixels): FoundPiece {
  const times = pixels.width / found.size.width;
  const box = {
    left: found.box.left * times,
    top: found.box.top * times,
    width: found.box.width * times,
    height: found.box.height * times,
  };
  if (times === 1) return { ...found, box };
  const outline = outlineOf(pixels, found, { left: 0, top: 0, times });
  return { ...found, box: outline === null ? box : outlineBox(outline) };
}
