import { vi } from 'vitest';
import { readFolder } from '../../src/catalogue/files.ts';
import { linkRecords } from '../../src/catalogue/link.ts';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import type { PhotographManifest } from '../../src/photographs/cache/manifest.ts';
import { publicPieces } from '../../src/publish/public-piece.ts';
import type { Cabinet } from '../../src/site/cabinet.ts';

/** Where the tests say the site stands. */
export const ORIGIN = 'https://example.org';

/** A cabinet folder as pages see it, read without Astro; its addresses stand under `ORIGIN`. */
export async function wholeCabinet(folder: string, photographs: PhotographManifest = {}): Promise<Cabinet> {
  vi.stubEnv('SITE', ORIGIN);
  const files = await readFolder(folder);
  if (files === null) throw new Error(`${folder} is not there.`);
  const { pieces: linked, ...lists } = linkRecords(readCabinet(files).records);
  const pieces = publicPieces({ ...lists, pieces: linked });
  return { lists, pieces, listed: pieces.filter(({ listed }) => listed), photographs, changed: {} };
}
