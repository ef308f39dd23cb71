import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import sharp from 'sharp';

/** What is made of a photograph: the table of what each choice costs is in DEVELOPERS.md. */
export const PICTURE_SETTINGS = {
  /** The longest sides of the WebP pictures in pixels, smallest first. */
  sides: [100, 160, 320, 640, 1280],
  webp: { quality: 82, alphaQuality: 80, effort: 4 },
  jpeg: { quality: 84, progressive: true, optimiseCoding: true },
  /** The longest side of the JPEG for sharing, in pixels. */
  share: 1000,
} as const;

/** Where the making of pictures begins: everything it imports from this project decides what a picture looks like. */
const BEGINNINGS = ['../render/make-face.ts', '../render/share-board.ts'].map((file) => new URL(file, import.meta.url));

/** The files that decide what a made picture looks like: the beginnings, and all they import from this project, in order. */
export async function decidingFiles(): Promise<readonly URL[]> {
  const found = new Map(BEGINNINGS.map((file) => [file.href, file]));
  for (const file of found.values())
    for (const [, path = ''] of (await readFile(file, 'utf8')).matchAll(
      /^(?:import (?!type )|export |\} ).*from '(\.[^']+)';$/gm,
    )) {
      const next = new URL(path, file);
      found.set(next.href, next);
    }
  return [...found.values()].sort((a, b) => (a.href < b.href ? -1 : 1));
}

/** A name for the settings: the digest of the code that makes pictures and of the version of sharp. Another makes them anew. */
export async function settingsName(): Promise<string> {
  const hash = createHash('sha256').update(JSON.stringify(sharp.versions));
  for (const file of await decidingFiles()) hash.update(await readFile(file));
  return hash.digest('hex').slice(0, 12);
}
