import type { Crop } from '../../catalogue/crop.ts';
import { glanceAt } from '../render/open-photograph.ts';
import type { Photograph } from '../render/open-photograph.ts';
import type { PictureRequest } from '../render/picture-request.ts';
import type { Doubt, Finding, FoundPiece, Recorded } from './find-piece.ts';
import { findNear, findPiece, inCommon, LOOK_AT } from './find-piece.ts';
import type { Box, Extent, Pixels } from './pixels.ts';
import { release } from './pixels.ts';

/**
 * How a piece was placed in its photograph: `found`, and cut out along its rim; by the keeper's `crop`; or not at all, and
 * the photograph is shown `whole`.
 */
export type Placing = 'found' | 'crop' | 'whole';

/** Where a piece lies in its photograph, in pixels, how its rim is known, and how sure that is. */
export type Placed = {
  readonly how: Placing;
  readonly box: Box;
  readonly rim: Rim;
  /** 0 to 1; 1 for the keeper's own word, 0 where nothing was sought or found. */
  readonly sure: number;
  /** Why it is shown whole though a piece was sought in it. */
  readonly doubt: Doubt | null;
  /** Where the piece seems to be, when that is too unsure to cut it out: what the keeper is offered to confirm. */
  readonly seems: Box | null;
};

/** A rim found in a smaller copy; one drawn as the keeper's crop says; or none, and the picture keeps its board. */
export type Rim =
  | { readonly kind: 'found'; readonly copy: FoundInCopy }
  | { readonly kind: 'drawn'; readonly shape: 'ellipse' | 'rectangle' }
  | { readonly kind: 'none' };

/** A piece found in a copy of a part of a photograph: the part's corner, and how many of the photograph's pixels go on one of the copy's. */
export type FoundInCopy = {
  readonly piece: FoundPiece;
  readonly left: number;
  readonly top: number;
  readonly times: number;
};

/** How much of the keeper's box and of what was found must be common to both, for the found rim to be the one meant. */
const SAME = 0.7;
/** Board looked at round the keeper's box, as a part of its longer side. */
const ROUND_ABOUT = 0.3;
/** A piece smaller than this, as a part of the longer side, is looked at again with so much round about, in its own sides. */
const SMALL = 0.16;
const CLOSER = 1.5;

/** What is recorded of the outline of what a photograph shows; an edge is a bar. */
const RECORDED: Partial<Record<PictureRequest['shows'], Recorded>> = {
  'round face': 'round',
  'oblong face': 'not round',
  edge: 'not round',
};

const NONE = { rim: { kind: 'none' }, sure: 0, doubt: null, seems: null } as const;

/** Places a piece in its photograph. Nothing is cut out of one in which it is not surely found. */
export async function placePiece(photograph: Photograph, request: PictureRequest): Promise<Placed> {
  if (request.crop !== null) return placeByCrop(photograph, request, request.crop);
  const whole = { left: 0, top: 0, width: photograph.width, height: photograph.height };
  if (request.shows === 'detail') return { ...NONE, how: 'whole', box: whole };
  const placed = await placeInPart(photograph, whole, RECORDED[request.shows] ?? 'nothing');
  // An edge commonly runs from one side of its picture to the other.
  return request.shows === 'edge' && placed.how === 'whole' ? { ...NONE, how: 'whole', box: whole } : placed;
}

/** Seeks the piece in a part of a photograph, and once more from near where it is small there: from afar a speck looks round. */
async function placeInPart(photograph: Photograph, part: Box, recorded: Recorded): Promise<Placed> {
  const { look, times } = await copyOf(photograph, part);
  const finding = findPiece(look, recorded);
  release(look.rgb);
  const placed = placedBy(finding, { ...part, times }, photograph);
  const isSmall = Math.max(placed.box.width, placed.box.height) < SMALL * Math.max(part.width, part.height);
  if (placed.how === 'whole' || !isSmall) return placed;
  const again = await placeInPart(photograph, within(widened(placed.box, CLOSER), photograph), recorded);
  if (again.how === 'whole' ? again.seems !== null : inCommon(again.box, placed.box) >= SAME) return again;
  return placedBy({ ...finding, doubt: 'unsure' }, { ...part, times }, photograph);
}

/** Where a piece lies by what was found in a copy of a part: its corner, and how many pixels go on one of the copy's. */
export function placedBy(
  { piece, doubt }: Finding,
  { left, top, times }: Omit<FoundInCopy, 'piece'>,
  photograph: Extent,
): Placed {
  const whole = { left: 0, top: 0, width: photograph.width, height: photograph.height };
  if (piece === null) return { ...NONE, how: 'whole', box: whole, doubt };
  const copy = { piece, left, top, times };
  const box = boxOf(copy);
  return doubt === null
    ? { how: 'found', box, rim: { kind: 'found', copy }, sure: piece.sure, doubt, seems: null }
    : { ...NONE, how: 'whole', box: whole, sure: piece.sure, doubt, seems: within(box, photograph) };
}

/** The keeper's word on where the piece is; its rim is taken from the picture when one is found there. */
async function placeByCrop(photograph: Photograph, { shows }: PictureRequest, crop: Crop): Promise<Placed> {
  const box = within(inPixels(crop, photograph), photograph);
  if (shows === 'detail') return { ...NONE, how: 'crop', box, sure: 1 };
  const part = within(widened(box, ROUND_ABOUT), photograph);
  const copy = await copyOf(photograph, part);
  const at = (length: number): number => length / copy.times;
  const near = {
    left: at(box.left - part.left),
    top: at(box.top - part.top),
    width: at(box.width),
    height: at(box.height),
  };
  const piece = findNear(copy.look, near, SAME, shows === 'oblong face');
  release(copy.look.rgb);
  if (piece === null) {
    const shape = shows === 'face' || shows === 'round face' ? 'ellipse' : 'rectangle';
    return { ...NONE, how: 'crop', box, rim: { kind: 'drawn', shape }, sure: 1 };
  }
  const found = { piece, left: part.left, top: part.top, times: copy.times };
  return { ...NONE, how: 'crop', box: boxOf(found), rim: { kind: 'found', copy: found }, sure: 1 };
}

/** A small copy of a part of a photograph, to be looked at, and how many of its pixels go on one of the copy's. */
export async function copyOf(
  photograph: Pixels,
  part: Box,
): Promise<{ readonly look: Pixels; readonly times: number }> {
  const small = Math.min(1, LOOK_AT / Math.max(part.width, part.height));
  const size = {
    width: Math.max(1, Math.round(part.width * small)),
    height: Math.max(1, Math.round(part.height * small)),
  };
  return { look: await glanceAt(photograph, part, size), times: part.width / size.width };
}

function boxOf({ piece: { box }, left, top, times }: FoundInCopy): Box {
  return {
    left: left + box.left * times,
    top: top + box.top * times,
    width: box.width * times,
    height: box.height * times,
  };
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
