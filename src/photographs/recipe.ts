import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import sharp from 'sharp';

/** What is made of a photograph: the table of what each choice costs is in DEVELOPERS.md. */
export const RECIPE = {
  /** The longest sides of the WebP pictures in pixels, smallest first. */
  sides: [160, 320, 640, 1280],
  webp: { quality: 82, alphaQuality: 80, effort: 4 },
  jpeg: { quality: 84, progressive: true, optimiseCoding: true },
  /** The longest side of the JPEG for sharing, in pixels. */
  share: 1000,
} as const;

/** The files that decide what a made picture looks like. */
export const DECIDING = [
  'make-face.ts', 'open-photograph.ts', 'place-piece.ts', 'wish.ts', 'cut-out.ts', 'fade.ts', 'smoothed.ts', 'outline.ts',
  'rays.ts', 'circle.ts', 'find-piece.ts', 'edges.ts', 'regions.ts', 'hull.ts', 'pixels.ts', 'recipe.ts',
] as const; // prettier-ignore

/** A name for the recipe: the digest of the code that makes pictures and of the version of sharp. Another recipe makes them anew. */
export async function recipeName(): Promise<string> {
  const hash = createHash('sha256').update(JSON.stringify(sharp.versions));
  for (const file of DECIDING) hash.update(await readFile(new URL(file, import.meta.url)));
  return hash.digest('hex').slice(0, 12);
}
