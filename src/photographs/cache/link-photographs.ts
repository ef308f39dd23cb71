import { copyFileSync, linkSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { filesOf } from './picture-cache.ts';
import { readManifest, sharedFile } from './manifest.ts';

/** Puts every made picture of the manifest under `photographs/` of a built site: as a hard link, or a copy where that cannot be. */
export async function linkPhotographs(made: string, built: string): Promise<void> {
  // Thousands of links, each too short to be worth waiting for by itself.
  for (const [piece, faces] of Object.entries(await readManifest(made))) {
    const into = join(built, 'photographs', piece);
    mkdirSync(into, { recursive: true });
    for (const file of [...faces.flatMap(filesOf), sharedFile(faces) ?? []].flat())
      linkOrCopy(join(made, piece, file), join(into, file));
  }
}

/** A hard link, or a copy where that cannot be. */
export function linkOrCopy(from: string, to: string): void {
  try {
    linkSync(from, to);
  } catch {
    copyFileSync(from, to);
  }
}
