import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync } from 'node:fs';
import { mkdir, rename, rm } from 'node:fs/promises';
import { join } from 'node:path';
import process from 'node:process';
import sharp from 'sharp';
import { linkOrCopy } from '../cache/link-photographs.ts';
import { readManifest } from '../cache/manifest.ts';
import type { FacePictures, MadePicture } from '../cache/manifest.ts';
import { BOARD } from './open-photograph.ts';

/** Of the largest public picture, which is 1,280 pixels at most: so a picture has nine tiles, and fourteen files in all. */
const TILES = { side: 512, jpeg: { quality: 84 } } as const;
const SETTINGS = createHash('sha256').update(JSON.stringify(TILES)).digest('hex').slice(0, 4);

/** What a viewer must know of a picture in tiles: the folder they lie in under the piece, and sizes in pixels. */
export type Tiled = MadePicture & {
  readonly side: number;
  /** How many pixels of the picture one of a tile stands for, along a side. */
  readonly scales: readonly number[];
};

/** The tiles of a face; the folder's name changes with the picture and with how tiles are made. */
export function tilesOf({ webp, jpeg }: Pick<FacePictures, 'webp' | 'jpeg'>): Tiled {
  const { file, width, height } = webp.at(-1) ?? jpeg;
  const levels = Math.max(0, Math.ceil(Math.log2(Math.max(width, height) / TILES.side)));
  const scales = Array.from({ length: levels + 1 }, (_, level) => 2 ** level);
  return { file: `${file.replace(/\.\w+$/, '')}-${SETTINGS}`, width, height, side: TILES.side, scales };
}

/**
 * Puts tiles of the made pictures of these pieces into a built site, each in a folder that answers as level 0 of the IIIF Image API asks. They are
 * kept in `store` till their picture changes. Made of the public pictures alone, so they show nothing that those do not.
 * Source: IIIF Image API 3.0 (iiif.io/api/image/3.0), §4 and its compliance document, level 0; the tiles are cut by libvips.
 */
export async function linkTiles(
  pieces: readonly string[],
  { made, store, built }: { readonly made: string; readonly store: string; readonly built: string },
): Promise<void> {
  const kept = new Set<string>();
  const manifest = await readManifest(made);
  for (const piece of pieces)
    for (const face of manifest[piece] ?? []) {
      const { file } = tilesOf(face);
      const at = join(store, piece, file);
      if (!existsSync(at)) await cutTiles(join(made, piece, (face.webp.at(-1) ?? face.jpeg).file), at);
      linkFolder(at, join(built, 'photographs', piece, file));
      kept.add(join(piece, file));
    }
  for (const piece of existsSync(store) ? readdirSync(store) : [])
    for (const file of readdirSync(join(store, piece)))
      if (!kept.has(join(piece, file))) await rm(join(store, piece, file), { recursive: true, force: true });
}

/** Cuts a picture into a folder, which is there whole or not at all. */
async function cutTiles(picture: string, at: string): Promise<void> {
  const unfinished = `${at}.${process.pid}`;
  await rm(unfinished, { recursive: true, force: true });
  const whole = sharp(picture).flatten({ background: BOARD });
  await mkdir(join(at, '..'), { recursive: true });
  // The other half of the name is the ending that tells libvips what to write; it makes the folder without it.
  await whole.clone().jpeg(TILES.jpeg).tile({ size: TILES.side, layout: 'iiif3' }).toFile(`${unfinished}.dz`);
  // What libvips says of itself is another's address.
  await rm(join(unfinished, 'info.json'), { force: true });
  const largest = join(unfinished, 'full/max/0');
  await mkdir(largest, { recursive: true });
  await whole.jpeg(TILES.jpeg).toFile(join(largest, 'default.jpg'));
  await rename(unfinished, at);
}

function linkFolder(from: string, to: string): void {
  mkdirSync(to, { recursive: true });
  for (const entry of readdirSync(from, { withFileTypes: true }))
    (entry.isDirectory() ? linkFolder : linkOrCopy)(join(from, entry.name), join(to, entry.name));
}
