import { copyFile, link, mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { filesOf } from './kept.ts';
import { readManifest } from './manifest.ts';

/** Puts every made picture of the manifest under `photographs/` of a built site: as a hard link, or a copy where that cannot be. */
export async function linkPhotographs(made: string, built: string): Promise<void> {
  const manifest = await readManifest(made);
  for (const [piece, faces] of Object.entries(manifest)) {
    const into = join(built, 'photographs', piece);
    await mkdir(into, { recursive: true });
    await Promise.all(
      faces.flatMap(filesOf).map(async (file) => {
        const from = join(made, piece, file);
        await link(from, join(into, file)).catch(async () => copyFile(from, join(into, file)));
      }),
    );
  }
}
