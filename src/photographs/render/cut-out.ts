import { smoothed, solidityOf } from './fade.ts';
import { BOARD, partOf } from './open-photograph.ts';
import type { Outline } from '../locate/outline.ts';
import { drawnOutline, inFiner, meanRadius, outlineBox } from '../locate/outline.ts';
import type { Box, Extent, Pixels } from '../locate/pixels.ts';
import { release } from '../locate/pixels.ts';
import type { Placed } from '../locate/place-piece.ts';
import { widened, within } from '../locate/place-piece.ts';
import { refineRim } from '../locate/best-path.ts';

/** Board left round the piece, as a part of its longer side. */
const MARGIN = 0.07;
/** Board taken along so that there is enough when the rim has been traced; and when the rim lay further out than that. */
const AT_FIRST = 0.1;
const AT_MOST = 0.3;
/** How far a rim is drawn in: as a lens softens it, in parts of its radius, and as pixels do. */
const INWARD = { part: 0.005, pixels: 0.5 };

/** A face ready to be written at its largest: red, green, blue and solidity. */
export type CutOut = Extent & {
  readonly bytes: Uint8Array;
  /** How much of the width and height the piece fills, 0 to 1. */
  readonly span: Extent;
  /** The piece in the pixels of its photograph. */
  readonly box: Box;
};

/** Cuts a placed piece out of its photograph, in the middle of its own picture, no longer than so many pixels. */
export async function cutOut(photograph: Pixels, placed: Placed, longest: number, around = AT_FIRST): Promise<CutOut> {
  const framed = placed.rim.kind !== 'none';
  const small = Math.min(1, longest / (Math.max(placed.box.width, placed.box.height) * (framed ? 1 + 2 * MARGIN : 1)));
  const part = within(framed ? widened(placed.box, around) : placed.box, photograph);
  const scaled = (length: number): number => Math.max(1, Math.round(length * small));
  const size = { width: scaled(part.width), height: scaled(part.height) };
  const pixels = await partOf(photograph, part, size);
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
  if (rim.kind === 'none') return { ...size, bytes: pixels.rgb, span: { width: 1, height: 1 }, box: placed.box };
  if (rim.kind === 'drawn') return framedAs(pixels, drawnOutline(inPart(placed.box), rim.shape), placed.box);

  const { piece, left, top, times } = rim.copy;
  const finer = { left: (part.left - left) / times, top: (part.top - top) / times, times: times * across };
  const outline =
    piece.rim.kind === 'outline'
      ? refineRim(pixels, inFiner(piece.rim.outline, finer.left, finer.top, finer.times), piece.rim.slack)
      : null;
  const back = ({ left: x, top: y, width, height }: Box): Box => ({
    left: part.left + x / across,
    top: part.top + y / down,
    width: width / across,
    height: height / down,
  });
  const seen = outline === null ? placed.box : back(outlineBox(outline));
  if (around < AT_MOST && !isInside(within(widened(seen, MARGIN), photograph), part)) {
    release(pixels.rgb);
    return cutOut(photograph, placed, longest, AT_MOST);
  }
  const cut =
    piece.rim.kind === 'silhouette'
      ? framedIn(
          pixels,
          inPart(placed.box),
          await smoothed({ ...piece.rim, box: piece.box }, finer, pixels),
          placed.box,
        )
      : framedAs(pixels, outline ?? drawnOutline(inPart(placed.box), 'ellipse'), seen);
  release(pixels.rgb);
  return cut;
}

function isInside(box: Box, part: Box): boolean {
  return (
    box.left >= part.left &&
    box.top >= part.top &&
    box.left + box.width <= part.left + part.width &&
    box.top + box.height <= part.top + part.height
  );
}

/** The rim is drawn in a little, so that no hair of the board comes along; the size of the piece is told without that. */
function framedAs(pixels: Pixels, outline: Outline, box: Box): CutOut {
  const inward = Math.max(INWARD.pixels, INWARD.part * meanRadius(outline));
  const drawnIn = { ...outline, radii: outline.radii.map((radius) => Math.max(0, radius - inward)) };
  return framedIn(pixels, outlineBox(outline), solidityOf(drawnIn, pixels), box);
}

/** The pixels and their solidity with an even margin round the piece; where the photograph ends, there is board. */
function framedIn(pixels: Pixels, piece: Box, solid: Uint8Array, box: Box): CutOut {
  const wide = widened(piece, MARGIN);
  const [left, top] = [Math.round(wide.left), Math.round(wide.top)];
  const [width, height] = [Math.round(wide.width), Math.round(wide.height)];
  const bytes = new Uint8Array(width * height * 4);
  const words = new Uint32Array(bytes.buffer);
  const board = new Uint32Array(Uint8Array.of(BOARD.r, BOARD.g, BOARD.b, 0).buffer)[0] ?? 0;
  words.fill(board);
  const seen = wordsOf(pixels.rgb);
  const from = Math.max(0, -left);
  const to = Math.min(width, pixels.width - left);
  for (let y = Math.max(0, -top); y < Math.min(height, pixels.height - top); y += 1) {
    const row = (y + top) * pixels.width + left;
    layRow(seen, solid, row + from, row + to, words, y * width + from);
  }
  return {
    width,
    height,
    bytes,
    span: { width: piece.width / width, height: piece.height / height },
    box,
  };
}

/** Lays the pixels of a row, as far as they are solid, into a picture from this place on. */
function layRow(
  seen: Uint32Array,
  solid: Uint8Array,
  from: number,
  to: number,
  into: Uint32Array,
  start: number,
): void {
  for (let at = from, place = start; at < to; at += 1, place += 1) {
    const share = solid[at] ?? 0;
    if (share === 255) into[place] = seen[at] ?? 0;
    else if (share !== 0) into[place] = ((seen[at] ?? 0) & COLOUR) | (share << SOLIDITY_AT);
  }
}

/** The bits of colour in a pixel read as one word, and where those of its solidity begin, as this machine orders bytes. */
const COLOUR = new Uint32Array(Uint8Array.of(255, 255, 255, 0).buffer)[0] ?? 0;
const SOLIDITY_AT = COLOUR === 0xff_ff_ff ? 24 : 0;

/** Pixels of four channels, each as one word. */
function wordsOf(bytes: Uint8Array): Uint32Array {
  const apart = bytes.byteOffset % 4 === 0 ? bytes : Uint8Array.from(bytes);
  return new Uint32Array(apart.buffer, apart.byteOffset, apart.byteLength / 4);
}
