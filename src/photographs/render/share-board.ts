import sharp from 'sharp';
import type { Extent } from '../locate/pixels.ts';
import { PICTURE_SETTINGS } from '../cache/picture-settings.ts';

/** A made picture as it lies on a board: its file, and how wide and high the whole picture is in millimetres. */
export type LaidPicture = { readonly file: string; readonly wide: number; readonly high: number };

/** The size in pixels that those who show links ask for: 1.91 to 1. Common practice. */
export const SHARED = { width: 1200, height: 630 } as const;

// The board and its marks by day: the jobs `--board`, `--tick` and `--piece-shadow` of tokens.css, in sRGB.
const BOARD = [0xd6, 0xda, 0xdc] as const;
const TICK = [0x55, 0x5d, 0x64] as const;
const SHADOW = 0.45;

const MARGIN = 56;
const GAP = 44;
/** The rule along the lower edge: a tick a millimetre, longer at five and ten. */
const TICKS = { every: 9, five: 14, ten: 22 } as const;
/** Pixels a millimetre, at most: a few small pieces do not fill the board like cannon balls. */
const LARGEST = 16;

/**
 * One picture of several pieces, on a board at one scale with a rule of its millimetres below; a JPEG that carries
 * nothing besides its pixels. At least one picture. `largest` is the most pixels a millimetre; without a rule, lengths may be
 * in any unit.
 */
export async function shareBoard(
  pictures: readonly LaidPicture[],
  { largest, hasRule }: { readonly largest: number; readonly hasRule: boolean } = { largest: LARGEST, hasRule: true },
): Promise<Buffer> {
  const room = { width: SHARED.width - 2 * MARGIN, height: SHARED.height - 2 * MARGIN - TICKS.ten };
  const { rows, scale } = balancedRows(pictures, room, GAP, largest);
  const heights = rows.map((row) => Math.max(...row.map(({ high }) => high)) * scale);
  const free = (room.height - heights.reduce((sum, height) => sum + height, 0)) / (rows.length + 1);
  const board = Buffer.alloc(SHARED.width * SHARED.height * 3, Uint8Array.from(BOARD));
  let top = MARGIN + free;
  for (const [index, row] of rows.entries()) {
    const height = heights[index] ?? 0;
    const widths = row.map(({ wide }) => wide * scale);
    const gap = (room.width - widths.reduce((sum, width) => sum + width, 0)) / (row.length + 1);
    let left = MARGIN + gap;
    for (const picture of row) {
      await layOn(board, picture, scale, { left, top: top + (height - picture.high * scale) / 2 });
      left += picture.wide * scale + gap;
    }
    top += height + free;
  }
  if (hasRule) drawRule(board, scale);
  return sharp(board, { raw: { ...SHARED, channels: 3 } })
    .jpeg(PICTURE_SETTINGS.jpeg)
    .toBuffer();
}

type Corner = { readonly left: number; readonly top: number };

/** Lays a picture on the board and, under it, its own shadow. By hand: to lay pictures over each other, libvips takes four times as long. */
async function layOn(board: Buffer, { file, wide, high }: LaidPicture, scale: number, at: Corner): Promise<void> {
  const { data, info } = await sharp(file)
    .resize(Math.round(wide * scale), Math.round(high * scale), { fit: 'fill' })
    .ensureAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  const size = { width: info.width, height: info.height };
  const [left, top] = [Math.round(at.left), Math.round(at.top)];
  const solid = Buffer.alloc(size.width * size.height);
  for (let pixel = 0; pixel < solid.length; pixel += 1) solid[pixel] = data[4 * pixel + 3] ?? 0;
  const shadow = await sharp(solid, { raw: { ...size, channels: 1 } })
    .blur(Math.max(0.5, Math.min(5, 0.3 * scale)))
    .toColourspace('b-w')
    .raw()
    .toBuffer();
  shade(board, shadow, size, { left, top: top + Math.round(Math.min(3, 0.15 * scale)) });
  cover(board, data, size, { left, top });
}

/** Makes the board darker where there is shadow, one byte a pixel. */
function shade(board: Buffer, shadow: Buffer, { width, height }: Extent, { left, top }: Corner): void {
  for (let y = Math.max(0, -top); y < Math.min(height, SHARED.height - top); y += 1) {
    const row = ((y + top) * SHARED.width + left) * 3;
    for (let x = Math.max(0, -left); x < Math.min(width, SHARED.width - left); x += 1) {
      const dark = shadow[y * width + x] ?? 0;
      if (dark === 0) continue;
      const light = 1 - (SHADOW * dark) / 255;
      for (let colour = row + 3 * x; colour < row + 3 * x + 3; colour += 1)
        board[colour] = Math.round((board[colour] ?? 0) * light);
    }
  }
}

/** Puts the colours of a picture of four channels on the board, as solid as each pixel is. */
function cover(board: Buffer, picture: Buffer, { width, height }: Extent, { left, top }: Corner): void {
  for (let y = Math.max(0, -top); y < Math.min(height, SHARED.height - top); y += 1) {
    const row = ((y + top) * SHARED.width + left) * 3;
    for (let x = Math.max(0, -left); x < Math.min(width, SHARED.width - left); x += 1) {
      const from = 4 * (y * width + x);
      const share = (picture[from + 3] ?? 0) / 255;
      if (share === 0) continue;
      for (let colour = 0; colour < 3; colour += 1) {
        const at = row + 3 * x + colour;
        board[at] = Math.round((board[at] ?? 0) * (1 - share) + (picture[from + colour] ?? 0) * share);
      }
    }
  }
}

/** The front edge of the shelf: a rule in millimetres at the scale of the pieces. It has no figures, for they would want a face. */
function drawRule(board: Buffer, scale: number): void {
  const { width, height } = SHARED;
  const edge = height - MARGIN / 2 - TICKS.ten;
  for (let x = 0; x < width; x += 1) for (const y of [edge - 1, edge]) mark(board, x, y, 1);
  for (let millimetre = 0; millimetre * scale <= width; millimetre += 1) {
    const long = millimetre % 10 === 0 ? TICKS.ten : millimetre % 5 === 0 ? TICKS.five : TICKS.every;
    const middle = millimetre * scale;
    for (let x = Math.max(0, Math.floor(middle - 1)); x < Math.min(width, middle + 1); x += 1) {
      const share = Math.min(x + 1, middle + 1) - Math.max(x, middle - 1);
      for (let y = edge + 1; y < edge + long; y += 1) mark(board, x, y, share);
    }
  }
}

function mark(board: Buffer, x: number, y: number, share: number): void {
  const at = (y * SHARED.width + x) * 3;
  for (const [colour, value] of TICK.entries())
    board[at + colour] = Math.round((board[at + colour] ?? 0) * (1 - share) + value * share);
}

type Measured = { readonly wide: number; readonly high: number };

/** Pictures in their order, parted into rows, and the scale at which they fit: pixels a millimetre. */
export type Rows<T> = { readonly rows: readonly (readonly T[])[]; readonly scale: number };

/**
 * The way to lay pictures in at most three rows at which they can be largest, in their order: `room` and `gap` are pixels,
 * pictures are measured in millimetres, and no scale is above `largest`.
 */
export function balancedRows<T extends Measured>(
  pictures: readonly T[],
  room: { readonly width: number; readonly height: number },
  gap: number,
  largest: number,
): Rows<T> {
  const ways = [1, 2, 3].flatMap((count) => (count <= pictures.length ? partings(pictures, count) : []));
  const scaled = ways.map((rows) => ({ rows, scale: Math.min(largest, scaleOf(rows, room, gap)) }));
  // Of ways that allow one scale the first has the fewest rows.
  return scaled.reduce((best, way) => (way.scale > best.scale ? way : best), scaled[0] ?? { rows: [], scale: largest });
}

/** Every way to cut a row into so many, keeping its order. */
function partings<T>(all: readonly T[], count: number): readonly (readonly (readonly T[])[])[] {
  if (count === 1) return [[all]];
  return Array.from({ length: all.length - count + 1 }, (_, at) => at + 1).flatMap((cut) =>
    partings(all.slice(cut), count - 1).map((rest) => [all.slice(0, cut), ...rest]),
  );
}

function scaleOf(
  rows: readonly (readonly Measured[])[],
  room: { readonly width: number; readonly height: number },
  gap: number,
): number {
  const across = rows.map(
    (row) => (room.width - (row.length + 1) * gap) / row.reduce((sum, { wide }) => sum + wide, 0),
  );
  const down =
    (room.height - (rows.length - 1) * gap) /
    rows.reduce((sum, row) => sum + Math.max(...row.map(({ high }) => high)), 0);
  return Math.min(down, ...across);
}
