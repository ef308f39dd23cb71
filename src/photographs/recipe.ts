import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import sharp from 'sharp';

/** The files that decide what a made picture looks like. */
const DECIDING = ['make-face.ts', 'fade.ts', 'outline.ts', 'find-piece.ts', 'edges.ts', 'regions.ts', 'hull.ts'];

/** A name for the recipe: the digest of the code that makes pictures and of the version of sharp. Another recipe makes them anew. */
export async function recipeName(): Promise<string> {
  const hash = createHash('sha256').update(JSON.stringify(sharp.versions));
  for (const file of DECIDING) hash.update(await readFile(new URL(file, import.meta.url)));
  return hash.digest('hex').slice(0, 12);
}
