import { rename, writeFile, mkdir } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import process from 'node:process';
import sharp from 'sharp';
import type { Sharp } from 'sharp';
import { solidityOf } from './fade.ts';
import { findPiece } from './find-piece.ts';
import type { FoundPiece } from './find-piece.ts';
import type { FacePictures, MadePicture } from './manifest.ts';
import { boxOf } from './regions.ts';

/** What is made of a photograph, and how. */
export const RECIPE: Recipe = {
  widths: [160, 320, 640, 1280],
  webp: 82,
  jpeg: 84,
  share: 1000,
  margin: 0.07,
  lookAt: 320,
  traceAt: 1000,
};

type Recipe = {
  /** Widths of the WebP pictures in pixels, smallest first. */
  readonly widths: readonly number[];
  readonly webp: number;
  readonly jpeg: number;
  /** The longest side of the JPEG for sharing, in pixels. */
  readonly share: number;
  /** Board left round the piece, as a part of its longer side. */
  readonly margin: number;
  /** The longest side, in pixels, of the small copy in which the piece is sought. */
  readonly lookAt: number;
  /** The same of the copy in which its rim is traced. */
  readonly traceAt: number;
};

/** The largest photograph that is opened, in pixels: a guard against pictures made to exhaust the memory. */
export const MOST_PIXELS = 120_000_000;

/** Opens a photograph upright, in sRGB and without anything else it carries. */
export function openPhotograph(file: string): Sharp {
  return sharp(file, { limitInputPixels: MOST_PIXELS, failOn: 'error' })
    .autoOrient()
    .toColourspace('srgb')
    .removeAlpha();
}

/**
 * Makes everything a page needs of one photograph: WebP at several widths with the board faded out round the piece,
 * and one JPEG on its board. Nothing the photograph carried besides its pixels is kept.
 */
export async function makeFace(photograph: string, face: string, folder: string, stamp: string): Promise<FacePictures> {
  const upright = await openPhotograph(photograph).raw().toBuffer({ resolveWithObject: true });
  const raw = { width: upright.info.width, height: upright.info.height, channels: 3 as const };
  const whole = (): Sharp => sharp(upright.data, { raw, limitInputPixels: MOST_PIXELS });

  const small = await whole()
    .resize(RECIPE.lookAt, RECIPE.lookAt, { fit: 'inside' })
    .raw()
    .toBuffer({ resolveWithObject: true });
  const look = { width: small.info.width, height: small.info.height };
  const found = findPiece({ ...look, rgb: new Uint8Array(small.data) });
  const times = raw.width / look.width;
  const crop = cropAround(found, times, raw);

  const alpha = found === null ? null : await fade(found, look, whole, raw, crop);
  const cropped = await whole().extract(crop).raw().toBuffer();
  const cutRaw = { width: crop.width, height: crop.height, channels: 3 as const };
  // The alpha goes in before the resizing: sharp resizes first and would join it to pixels of another size.
  const cut =
    alpha === null
      ? { pixels: cropped, raw: cutRaw }
      : { pixels: withAlpha(cropped, alpha), raw: { ...cutRaw, channels: 4 as const } };
  const widths = RECIPE.widths.filter((width) => width < crop.width);
  if (widths.length < RECIPE.widths.length) widths.push(Math.min(crop.width, RECIPE.widths.at(-1) ?? crop.width));
  const webp: MadePicture[] = [];
  for (const width of widths) {
    webp.push(
      await write(
        sharp(cut.pixels, { raw: cut.raw }).resize(width).webp({ quality: RECIPE.webp, alphaQuality: 70, effort: 4 }),
        folder,
        `${face}-${width}.${stamp}.webp`,
      ),
    );
  }
  const share = sharp(cropped, { raw: cutRaw }).resize(RECIPE.share, RECIPE.share, {
    fit: 'inside',
    withoutEnlargement: true,
  });
  const jpeg = await write(share.jpeg({ quality: RECIPE.jpeg, mozjpeg: true }), folder, `${face}-share.${stamp}.jpg`);
  return { face, webp, jpeg, span: alpha === null ? { width: 1, height: 1 } : spanOf(alpha, crop) };
}

/** How much of the crop's width and height is more solid than not. */
function spanOf(alpha: Uint8Array, { width, height }: Size): FacePictures['span'] {
  const solid = boxOf(
    Uint8Array.from(alpha, (one) => (one > 127 ? 1 : 0)),
    { width, height },
  );
  return solid === null ? { width: 1, height: 1 } : { width: solid.width / width, height: solid.height / height };
}

/** Three bytes a pixel and one byte of solidity, side by side. */
function withAlpha(rgb: Uint8Array, alpha: Uint8Array): Buffer {
  const pixels = Buffer.alloc(alpha.length * 4);
  for (let at = 0; at < alpha.length; at += 1) {
    pixels[at * 4] = rgb[at * 3] ?? 0;
    pixels[at * 4 + 1] = rgb[at * 3 + 1] ?? 0;
    pixels[at * 4 + 2] = rgb[at * 3 + 2] ?? 0;
    pixels[at * 4 + 3] = alpha[at] ?? 0;
  }
  return pixels;
}

type Size = { readonly width: number; readonly height: number };
type Box = { left: number; top: number; width: number; height: number };

/** The piece with a margin, as a box inside the photograph; the whole photograph when no piece was found. */
function cropAround(found: FoundPiece | null, times: number, raw: Size): Box {
  if (found === null) return { left: 0, top: 0, width: raw.width, height: raw.height };
  const margin = RECIPE.margin * Math.max(found.box.width, found.box.height) * times;
  const left = Math.max(0, Math.floor(found.box.left * times - margin));
  const top = Math.max(0, Math.floor(found.box.top * times - margin));
  const right = Math.min(raw.width, Math.ceil((found.box.left + found.box.width) * times + margin));
  const bottom = Math.min(raw.height, Math.ceil((found.box.top + found.box.height) * times + margin));
  return { left, top, width: right - left, height: bottom - top };
}

/** How solid each pixel of the crop is. */
async function fade(found: FoundPiece, look: Size, whole: () => Sharp, raw: Size, crop: Box): Promise<Buffer> {
  const finer = await whole()
    .resize(RECIPE.traceAt, RECIPE.traceAt, { fit: 'inside', withoutEnlargement: true })
    .raw()
    .toBuffer({ resolveWithObject: true });
  const { width, height } = finer.info;
  const full = { width: raw.width, height: raw.height };
  const solid = await solidityOf(found, look, { width, height, rgb: new Uint8Array(finer.data) }, full);
  return sharp(solid, { raw: { ...full, channels: 1 }, limitInputPixels: MOST_PIXELS })
    .extract(crop)
    .toColourspace('b-w')
    .raw()
    .toBuffer();
}

/** Writes a picture so that no half-written file ever carries its name. */
async function write(picture: Sharp, folder: string, name: string): Promise<MadePicture> {
  const { data, info } = await picture.toBuffer({ resolveWithObject: true });
  const file = join(folder, name);
  await mkdir(dirname(file), { recursive: true });
  const unfinished = `${file}.${process.pid}.unfinished`;
  await writeFile(unfinished, data);
  await rename(unfinished, file);
  return { file: name, width: info.width, height: info.height };
}
