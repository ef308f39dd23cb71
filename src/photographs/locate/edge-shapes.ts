import { edgesOf } from './edges.ts';
import type { Outline } from './outline.ts';
import { COARSE_RAYS, turns } from './outline.ts';
import type { Box, Extent, Pixels } from './pixels.ts';
import type { Region } from './regions.ts';
import { boxOf, close, count, filled, grow, hullOf, open, regionsOf, shrink } from './regions.ts';

/** A thing on the board, of whatever shape: its silhouette, one byte a pixel, 1 where it is, and the box of that. */
export type EdgeShape = {
  readonly mask: Uint8Array;
  readonly box: Box;
  /** Whether its outline is unbroken. */
  readonly isWhole: boolean;
  /** How much it looks like the thing meant: large in both directions, and not cut by the frame of the picture. */
  readonly worth: number;
};

/** How wide a break in the outline may be, as a part of the picture's shorter side: first narrow, so that neighbours stay apart. */
const BREAKS = [0.01, 0.03] as const;
/** The least part of the picture a piece may cover. */
const LEAST = 0.005;
/** A silhouette that fills less of its hull than this has lost a part of its outline, or has something joined to it. */
const WHOLE = 0.93;
/** What is joined to a piece, as a ruler may be, is cut off where it is thinner than this part of what both take up. */
const THIN = 0.17;
/** How much less a thing is worth that the frame of the picture cuts. */
const CUT = 0.1;
/** A second thing is at least so large beside the first: less is a label or a scale. */
const ALIKE = 0.6;
/** How many things in a picture are looked at more closely. */
const CLOSELY = 5;
/** The most, as a part of the silhouette, that may differ when it is seen from its middle; more is no shape for an outline. */
const MOST_ODD = 0.04;

/**
 * The largest compact things on a board, by their edges: a board is smooth, and so is a shadow; a piece has a rim and
 * relief, also where its colour is that of the board. None when nothing stands out, or when what does reaches from one side
 * of the picture to the other.
 */
export function edgeShapes(look: Pixels, wanted: number): readonly EdgeShape[] {
  const edges = edgesOf(look);
  let best: readonly EdgeShape[] = [];
  for (const part of BREAKS) {
    best = shapesOf(edges, look, part).slice(0, wanted);
    if (best.length === wanted && best.every(({ isWhole }) => isWhole)) break;
  }
  const most = best[0]?.worth ?? 0;
  return best.filter(({ worth }) => worth >= most * ALIKE ** 3).flatMap((one) => drawnIn(one, look));
}

/** The things on the board, best first. */
function shapesOf(edges: Uint8Array, size: Extent, part: number): readonly EdgeShape[] {
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
function shapesIn(region: Region, size: Extent): readonly EdgeShape[] {
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

function shape(mask: Uint8Array, size: Extent, isWhole: boolean): readonly EdgeShape[] {
  const box = boxOf(mask, size);
  return box === null ? [] : [{ mask, box, isWhole, worth: worthOf(box, size) }];
}

function worthOf({ left, top, width, height }: Box, size: Extent): number {
  const isCut = left <= 1 || top <= 1 || left + width >= size.width - 1 || top + height >= size.height - 1;
  return Math.min(width, height) ** 3 * (isCut ? CUT : 1);
}

function spans({ left, top, width, height }: Box, size: Extent): boolean {
  const reaches = (from: number, length: number, all: number): boolean => from <= 1 && from + length >= all - 1;
  return reaches(left, width, size.width) || reaches(top, height, size.height);
}

/** The edges of a thing lie on both sides of its rim: its silhouette is drawn in by one pixel. */
function drawnIn({ mask, ...more }: EdgeShape, size: Extent): readonly EdgeShape[] {
  const inner = shrink(mask, { width: size.width, height: size.height }, 1);
  const box = boxOf(inner, size);
  return box === null ? [] : [{ ...more, mask: inner, box }];
}

/** The rim of a silhouette as its middle sees it; null when not all of it can be seen from there. */
export function maskOutline({ mask, box }: Pick<EdgeShape, 'mask' | 'box'>, size: Extent): Outline | null {
  const middle = middleOf(mask, size);
  const radii = Float64Array.from({ length: COARSE_RAYS }, (_, ray) => reachOf(mask, box, size, middle, ray));
  let seen = 0;
  for (const radius of radii) seen += (Math.PI / COARSE_RAYS) * (radius + 0.25) ** 2;
  const all = count(mask);
  return Math.abs(seen - all) > MOST_ODD * all ? null : { x: middle.x + 0.5, y: middle.y + 0.5, radii };
}

function middleOf(mask: Uint8Array, { width, height }: Extent): { x: number; y: number } {
  let [sumX, sumY, sum] = [0, 0, 0];
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      if (mask[y * width + x] !== 1) continue;
      sumX += x;
      sumY += y;
      sum += 1;
    }
  }
  return { x: sumX / sum, y: sumY / sum };
}

/** How far a silhouette reaches on a ray, in its own pixels. */
function reachOf(mask: Uint8Array, box: Box, size: Extent, from: { x: number; y: number }, ray: number): number {
  const { cos, sin } = turns(COARSE_RAYS);
  const [along, down] = [cos[ray] ?? 0, sin[ray] ?? 0];
  const most = {
    x: Math.max(from.x - box.left, box.left + box.width - from.x),
    y: Math.max(from.y - box.top, box.top + box.height - from.y),
  };
  const farthest = Math.ceil(Math.min(most.x / Math.abs(along), most.y / Math.abs(down))) + 1;
  for (let reach = farthest; reach > 0; reach -= 0.5) {
    const x = Math.round(from.x + reach * along);
    const y = Math.round(from.y + reach * down);
    if (x >= 0 && y >= 0 && x < size.width && y < size.height && mask[y * size.width + x] === 1) return reach;
  }
  return 0;
}

/** How much of the smallest upright or slanting box about a silhouette it fills: a rectangle all of it, an ellipse π/4. */
export function boxFill({ radii }: Outline): number {
  const { cos, sin } = turns(radii.length);
  let area = 0;
  for (const radius of radii) area += (Math.PI / radii.length) * radius ** 2;
  let least = Infinity;
  for (let turn = 0; turn < radii.length / 4; turn += 1) {
    let [left, right, top, bottom] = [0, 0, 0, 0];
    for (let ray = 0; ray < radii.length; ray += 1) {
      const seen = (ray + turn) % radii.length;
      const across = (radii[ray] ?? 0) * (cos[seen] ?? 0);
      const down = (radii[ray] ?? 0) * (sin[seen] ?? 0);
      [left, right, top, bottom] = [Math.min(left, across), Math.max(right, across), Math.min(top, down), Math.max(bottom, down)]; // prettier-ignore
    }
    least = Math.min(least, (right - left) * (bottom - top));
  }
  return area / least;
}
