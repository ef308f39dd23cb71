import type { Crop } from '../../catalogue/crop.ts';
import type { FoundPiece } from './find-piece.ts';
import { findPiece, LOOK_AT } from './find-piece.ts';
import { glanceAt } from '../render/open-photograph.ts';
import type { Photograph } from '../render/open-photograph.ts';
import type { Box, Extent, Pixels } from './pixels.ts';
import { release } from './pixels.ts';
import type { Wish } from '../render/picture-request.ts';

/**
 * How a piece was placed in its photograph: `found` by its edges; by the keeper's `crop`; in the `middle`, because it
 * could not be found; or not at all, for what is shown `whole`.
 */
export type Placing = 'found' | 'crop' | 'middle' | 'whole';

/** Where a piece lies in its photograph, in pixels, and how its rim is known. */
export type Placed = { readonly how: Placing; readonly box: Box; readonly rim: Rim };

/** A rim to be traced along a silhouette; one drawn as the keeper's crop says; or none, and the picture keeps its board. */
export type Rim =
  | { readonly kind: 'traced'; readonly silhouette: Silhouette }
  | { readonly kind: 'drawn'; readonly shape: 'ellipse' | 'rectangle' }
  | { readonly kind: 'none' };

/** A piece found in a part of a photograph: the part's corner, and how many of the photograph's pixels go on one of the copy's. */
export type Silhouette = {
  readonly found: FoundPiece;
  readonly left: number;
  readonly top: number;
  readonly times: number;
};

/** How much of the keeper's box and of what was found must be common to both, for the found rim to be the one meant. */
const SAME = 0.7;
/** Board looked at round the keeper's box, as a part of its longer side. */
const ROUND_ABOUT = 0.15;

/** Places a piece in its photograph. */
export async function placePiece(photograph: Photograph, wish: Wish): Promise<Placed> {
  if (wish.crop !== null) return placeByCrop(photograph, wish, wish.crop);
  const whole = { left: 0, top: 0, width: photograph.width, height: photograph.height };
  if (wish.shows === 'detail') return { how: 'whole', box: whole, rim: { kind: 'none' } };
  const silhouette = await seek(photograph, whole);
  if (silhouette !== null) return { how: 'found', box: boxOf(silhouette), rim: { kind: 'traced', silhouette } };
  // An edge commonly runs from one side of its picture to the other.
  if (wish.shows === 'edge') return { how: 'whole', box: whole, rim: { kind: 'none' } };
  return { how: 'middle', box: middleOf(photograph, wish.ratio), rim: { kind: 'none' } };
}

/** The keeper's word on where the piece is; its rim is taken from the picture when one is found there. */
async function placeByCrop(photograph: Photograph, wish: Wish, crop: Crop): Promise<Placed> {
  const box = within(inPixels(crop, photograph), photograph);
  if (wish.shows === 'detail') return { how: 'crop', box, rim: { kind: 'none' } };
  const silhouette = await seek(photograph, within(widened(box, ROUND_ABOUT), photograph));
  if (silhouette !== null && common(boxOf(silhouette), box) >= SAME)
    return { how: 'crop', box: boxOf(silhouette), rim: { kind: 'traced', silhouette } };
  const shape = wish.shows === 'round face' ? 'ellipse' : 'rectangle';
  return { how: 'crop', box, rim: { kind: 'drawn', shape } };
}

async function seek(photograph: Pixels, part: Box): Promise<Silhouette | null> {
  const small = Math.min(1, LOOK_AT / Math.max(part.width, part.height));
  const size = {
    width: Math.max(1, Math.round(part.width * small)),
    height: Math.max(1, Math.round(part.height * small)),
  };
  const look = await glanceAt(photograph, part, size);
  const found = findPiece(look);
  release(look.rgb);
  return found === null ? null : { found, left: part.left, top: part.top, times: part.width / size.width };
}

function boxOf({ found: { box }, left, top, times }: Silhouette): Box {
  return {
    left: left + box.left * times,
    top: top + box.top * times,
    width: box.width * times,
    height: box.height * times,
  };
}

/** The largest box of these proportions in the middle of a picture. */
export function middleOf({ width, height }: Extent, ratio: number): Box {
  const across = Math.min(width, height * ratio);
  const down = across / ratio;
  return whole({ left: (width - across) / 2, top: (height - down) / 2, width: across, height: down });
}

/** A crop in the pixels a photograph is held in. */
function inPixels({ left, top, width, height, unit }: Crop, { full, ...held }: Photograph): Box {
  const [across, down] = unit === 'px' ? [full.width, full.height] : [100, 100];
  const [x, y] = [held.width / across, held.height / down];
  return { left: left * x, top: top * y, width: width * x, height: height * y };
}

export function widened({ left, top, width, height }: Box, part: number): Box {
  const more = part * Math.max(width, height);
  return { left: left - more, top: top - more, width: width + 2 * more, height: height + 2 * more };
}

/** As much of a box as lies in a picture, in whole pixels; one pixel at least. */
export function within(box: Box, size: Extent): Box {
  const [left, right] = between(box.left, box.left + box.width, size.width);
  const [top, bottom] = between(box.top, box.top + box.height, size.height);
  return { left, top, width: right - left, height: bottom - top };
}

function between(from: number, to: number, most: number): readonly [number, number] {
  const first = Math.min(most - 1, Math.max(0, Math.round(from)));
  return [first, Math.min(most, Math.max(first + 1, Math.round(to)))];
}

function whole({ left, top, width, height }: Box): Box {
  return { left: Math.floor(left), top: Math.floor(top), width: Math.round(width), height: Math.round(height) };
}

/** What two boxes have in common, as a part of what they cover together. */
function common(one: Box, other: Box): number {
  const along = (a: number, aLength: number, b: number, bLength: number): number =>
    Math.max(0, Math.min(a + aLength, b + bLength) - Math.max(a, b));
  const both =
    along(one.left, one.width, other.left, other.width) * along(one.top, one.height, other.top, other.height);
  return both / (one.width * one.height + other.width * other.height - both);
}
