import { solidityOf } from './fade.ts';
import { smoothed } from './smoothed.ts';
import { BOARD, partOf } from './open-photograph.ts';
import type { Outline } from './outline.ts';
import { drawnOutline, outlineBox, outlineOf } from './outline.ts';
import type { Box, Extent, Pixels } from './pixels.ts';
import type { Placed } from './place-piece.ts';
import { widened, within } from './place-piece.ts';

/** Board left round the piece, as a part of its longer side. */
const MARGIN = 0.07;
/** Board taken along at first, so that there is enough when the rim has been traced. */
const AT_FIRST = 0.2;

/** A face ready to be written at its largest: red, green, blue and solidity, or without the last when it keeps its board. */
export type CutOut = Extent & {
  readonly bytes: Uint8Array;
  readonly channels: 3 | 4;
  /** How much of the width and height the piece fills, 0 to 1. */
  readonly span: Extent;
  /** The piece in the pixels of its photograph. */
  readonly box: Box;
};

/** Cuts a placed piece out of its photograph, in the middle of its own picture, no longer than so many pixels. */
export async function cutOut(photograph: Pixels, placed: Placed, longest: number): Promise<CutOut> {
  const framed = placed.rim.kind !== 'none';
  const small = Math.min(1, longest / (Math.max(placed.box.width, placed.box.height) * (framed ? 1 + 2 * MARGIN : 1)));
  const part = within(framed ? widened(placed.box, AT_FIRST) : placed.box, photograph);
  const scaled = (length: number): number => Math.max(1, Math.round(length * small));
  const size = { width: scaled(part.width), height: scaled(part.height) };
  const pixels = small === 1 && isAll(part, photograph) ? photograph : await partOf(photograph, part, size);
  // Rounded to whole pixels, the two ways may differ by a hair.
  const across = size.width / part.width;
  const down = size.height / part.height;
  const inPart = (box: Box): Box => ({
    left: (box.left - part.left) * across,
    top: (box.top - part.top) * down,
    width: box.width * across,
    height: box.height * down,
  });
  const { rim } = placed;
  if (rim.kind === 'none')
    return { ...size, bytes: pixels.rgb, channels: 3, span: { width: 1, height: 1 }, box: placed.box };
  if (rim.kind === 'drawn') return framedAs(pixels, drawnOutline(inPart(placed.box), rim.shape), placed.box);

  const { found, left, top, times } = rim.silhouette;
  const corner = { left: (part.left - left) / times, top: (part.top - top) / times, times: times * across };
  const outline = outlineOf(pixels, found, corner);
  const back = ({ left: x, top: y, width, height }: Box): Box => ({
    left: part.left + x / across,
    top: part.top + y / down,
    width: width / across,
    height: height / down,
  });
  if (outline !== null) return framedAs(pixels, outline, back(outlineBox(outline)));
  const box = inPart(placed.box);
  return framedIn(pixels, box, await smoothed(found, corner, pixels), placed.box);
}

function framedAs(pixels: Pixels, outline: Outline, box: Box): CutOut {
  return framedIn(pixels, outlineBox(outline), solidityOf(outline, pixels), box);
}

/** The pixels and their solidity with an even margin round the piece; where the photograph ends, there is board. */
function framedIn(pixels: Pixels, piece: Box, solid: Uint8Array, box: Box): CutOut {
  const wide = widened(piece, MARGIN);
  const [left, top] = [Math.round(wide.left), Math.round(wide.top)];
  const [width, height] = [Math.round(wide.width), Math.round(wide.height)];
  const bytes = new Uint8Array(width * height * 4);
  const words = new Uint32Array(bytes.buffer);
  const word = (red: number, green: number, blue: number, share: number): number =>
    LITTLE ? (share << 24) | (blue << 16) | (green << 8) | red : (red << 24) | (green << 16) | (blue << 8) | share;
  words.fill(word(BOARD.r, BOARD.g, BOARD.b, 0));
  const { rgb } = pixels;
  const from = Math.max(0, -left);
  const to = Math.min(width, pixels.width - left);
  for (let y = Math.max(0, -top); y < Math.min(height, pixels.height - top); y += 1) {
    const row = (y + top) * pixels.width + left;
    let at = (row + from) * 3;
    for (let x = from; x < to; x += 1, at += 3) {
      const share = solid[row + x] ?? 0;
      if (share !== 0) words[y * width + x] = word(rgb[at] ?? 0, rgb[at + 1] ?? 0, rgb[at + 2] ?? 0, share);
    }
  }
  return {
    width,
    height,
    bytes,
    channels: 4,
    span: { width: piece.width / width, height: piece.height / height },
    box,
  };
}

/** Whether this machine writes the lowest byte of a word first. */
const LITTLE = new Uint8Array(new Uint32Array([1]).buffer)[0] === 1;

function isAll({ left, top, width, height }: Box, size: Extent): boolean {
  return left === 0 && top === 0 && width === size.width && height === size.height;
}
