import sharp from 'sharp';
import type { OverlayOptions } from 'sharp';
import { PICTURE_SETTINGS } from '../cache/picture-settings.ts';

/** A made picture as it lies on a board: its file, and how wide and high the whole picture is in millimetres. */
export type LaidPicture = { readonly file: string; readonly wide: number; readonly high: number };

/** The size in pixels that those who show links ask for: 1.91 to 1. Common practice. */
export const SHARED = { width: 1200, height: 630 } as const;

// The board and its marks by day: the jobs `--board`, `--tick` and `--piece-shadow` of tokens.css, in sRGB.
const BOARD = '#d6dadc';
const TICK = '#555d64';
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
  const laid: OverlayOptions[] = [];
  let top = MARGIN + free;
  for (const [index, row] of rows.entries()) {
    const height = heights[index] ?? 0;
    const widths = row.map(({ wide }) => wide * scale);
    const gap = (room.width - widths.reduce((sum, width) => sum + width, 0)) / (row.length + 1);
    let left = MARGIN + gap;
    for (const picture of row) {
      laid.push(...(await onBoard(picture, scale, left, top + (height - picture.high * scale) / 2)));
      left += picture.wide * scale + gap;
    }
    top += height + free;
  }
  return sharp({ create: { ...SHARED, channels: 3, background: BOARD } })
    .composite(hasRule ? [...laid, { input: Buffer.from(rule(scale)), left: 0, top: 0 }] : laid)
    .jpeg(PICTURE_SETTINGS.jpeg)
    .toBuffer();
}

/** A picture and, under it, its own shadow. */
async function onBoard(
  { file, wide, high }: LaidPicture,
  scale: number,
  left: number,
  top: number,
): Promise<readonly OverlayOptions[]> {
  const width = Math.round(wide * scale);
  const height = Math.round(high * scale);
  const { data, info } = await sharp(file)
    .resize(width, height, { fit: 'fill' })
    .ensureAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  const raw = { width: info.width, height: info.height, channels: 4 as const };
  const dark = Buffer.from(data);
  for (let at = 0; at < dark.length; at += 4) dark.fill(0, at, at + 3);
  for (let at = 3; at < dark.length; at += 4) dark[at] = (dark[at] ?? 0) * SHADOW;
  const shadow = await sharp(dark, { raw })
    .blur(Math.max(0.5, Math.min(5, 0.3 * scale)))
    .raw()
    .toBuffer();
  const at = { left: Math.round(left), top: Math.round(top) };
  return [
    { input: shadow, raw, left: at.left, top: at.top + Math.round(Math.min(3, 0.15 * scale)) },
    { input: data, raw, ...at },
  ];
}

/** The front edge of the shelf: a rule in millimetres at the scale of the pieces. It has no figures, for they would want a face. */
function rule(scale: number): string {
  const { width, height } = SHARED;
  const edge = height - MARGIN / 2 - TICKS.ten;
  const ticks: string[] = [];
  for (let millimetre = 0; millimetre * scale <= width; millimetre += 1) {
    const long = millimetre % 10 === 0 ? TICKS.ten : millimetre % 5 === 0 ? TICKS.five : TICKS.every;
    ticks.push(`M${(millimetre * scale).toFixed(1)} ${edge}v${long}`);
  }
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}"><path d="M0 ${edge}h${width}${ticks.join('')}" stroke="${TICK}" stroke-width="2" fill="none"/></svg>`;
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
