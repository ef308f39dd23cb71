import { copyFile, link, mkdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { PhotographManifest } from './manifest.ts';

/** Puts every made picture of the manifest under `photographs/` of a built site: as a hard link, or a copy where that cannot be. */
export async function linkPhotographs(made: string, built: string): Promise<void> {
  const manifest = JSON.parse(await readFile(join(made, 'manifest.json'), 'utf8')) as PhotographManifest;
  for (const [piece, faces] of Object.entries(manifest)) {
    const into = join(built, 'photographs', piece);
    await mkdir(into, { recursive: true });
    for (const { file } of faces.flatMap(({ webp, jpeg }) => [...webp, jpeg])) {
      const from = join(made, piece, file);
      await link(from, join(into, file)).catch(() => copyFile(from, join(into, file)));
    }
  }
}
