import { open as openFile } from 'node:fs/promises';
import sharp from 'sharp';
import type { Sharp } from 'sharp';
import type { Box, Extent, Pixels } from '../locate/pixels.ts';

/** The largest photograph that is opened, in pixels: a guard against pictures made to exhaust the memory. */
export const MOST_PIXELS = 120_000_000;

/** The longest side kept of a photograph, in pixels: as a telephone takes it, so that two in work stay within bounds. */
const MOST_SIDE = 4096;

/** The neutral board of the pages in daylight, `--board` in tokens.css. */
export const BOARD = { r: 215, g: 219, b: 220 } as const;

/** A photograph held as pixels, upright, in sRGB and without anything else it carries; `full` is its own size. */
export type Photograph = Pixels & { readonly full: Extent };

/** Opens a photograph of one of the five kinds, and nothing else that sharp could read, an SVG above all. Throws otherwise. */
export async function openPhotograph(file: string): Promise<Sharp> {
  if (!isPhotograph(await headOf(file))) throw new Error('This is not a photograph of a kind that is opened.');
  return sharp(file, { limitInputPixels: MOST_PIXELS, failOn: 'error' });
}

/** The size of a photograph as it stands upright, by its head alone. Throws when it has none. */
export async function uprightSize(file: string): Promise<Extent> {
  if (!isPhotograph(await headOf(file))) throw new Error('This is not a photograph of a kind that is opened.');
  return (await sharp(file, { limitInputPixels: false }).metadata()).autoOrient;
}

/** Decodes a photograph. Throws when it cannot be read to its end. */
export async function decodePhotograph(file: string): Promise<Photograph> {
  const opened = await openPhotograph(file);
  const { autoOrient: full } = await opened.metadata();
  const { data, info } = await opened
    .autoOrient()
    .resize(MOST_SIDE, MOST_SIDE, { fit: 'inside', withoutEnlargement: true })
    .flatten({ background: BOARD })
    .toColourspace('srgb')
    .raw({ depth: 'uchar' })
    .toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, rgb: data, full };
}

async function headOf(file: string): Promise<string> {
  const handle = await openFile(file);
  try {
    const { bytesRead, buffer } = await handle.read(new Uint8Array(16), 0, 16, 0);
    return String.fromCharCode(...buffer.subarray(0, bytesRead));
  } finally {
    await handle.close();
  }
}

/** By the first bytes: JPEG, PNG, TIFF in either order of bytes, WebP, AVIF. */
function isPhotograph(head: string): boolean {
  return (
    /^(?:\xff\xd8\xff|\x89PNG\r\n|II[*+]\0|MM\0[*+])/.test(head) ||
    /^RIFF[^]{4}WEBP/.test(head) ||
    /^[^]{4}ftyp(?:avif|avis|mif1)/.test(head)
  );
}

/** A picture held as plain pixels, for sharp to go on with. */
export function heldPixels({ rgb, width, height }: Pixels): Sharp {
  return sharp(rgb, { raw: { width, height, channels: 3 }, limitInputPixels: MOST_PIXELS });
}

/** A part of a picture, made smaller, in four channels, of which the last is 255. */
export async function partOf(pixels: Pixels, box: Box, size: Extent): Promise<Pixels> {
  const { data, info } = await heldPixels(pixels)
    .extract({ left: box.left, top: box.top, width: box.width, height: box.height })
    .resize(size.width, size.height, { fit: 'fill' })
    .ensureAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, rgb: data };
}

/** Rows that a glance takes for one of its own. */
const ROWS_SEEN = 4;

/** A part of a picture made much smaller, to be looked at and not to be shown: most of its rows are passed over. */
export async function glanceAt({ rgb, width, height }: Pixels, box: Box, size: Extent): Promise<Pixels> {
  const step = Math.max(1, Math.floor(box.height / size.height / ROWS_SEEN));
  // Several rows taken for one long one: of each, only the first lies in what is cut out.
  const long = { width: width * step, height: Math.floor((height - (box.top % step)) / step) };
  const first = (box.top % step) * width * 3;
  const { data, info } = await sharp(rgb.subarray(first, first + long.width * long.height * 3), {
    raw: { ...long, channels: 3 },
    limitInputPixels: MOST_PIXELS,
  })
    .extract({
      left: box.left,
      top: Math.floor(box.top / step),
      width: box.width,
      height: Math.max(1, Math.floor(box.height / step)),
    })
    .resize(size.width, size.height, { fit: 'fill' })
    .raw()
    .toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, rgb: data };
}
