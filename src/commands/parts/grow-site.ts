import { existsSync } from 'node:fs';
import { mkdir, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { CabinetFolder } from '../../catalogue/files.ts';
import { handOver, takeBack } from '../../catalogue/handed-over.ts';
import type { HandedOver } from '../../catalogue/handed-over.ts';
import type { Problem } from '../../catalogue/problem.ts';
import { linkPhotographs } from '../../photographs/cache/link-photographs.ts';
import { linkTiles } from '../../photographs/render/make-tiles.ts';
import { inspectAgain } from '../../privacy/inspect-built.ts';
import type { Clean } from '../../privacy/inspect-built.ts';
import type { Hosted } from '../../publish/host-files.ts';
import { cleanIn, isAsRemembered, takenFrom } from './last-site.ts';
import type { Kept, LastSite } from './last-site.ts';
import { leaveOldAddresses } from './old-addresses.ts';
import { makePages, PARTS } from './pages-program.ts';

/** What a site is made of, where it grows, and the folder `into` that has the last one. */
export type Growing = {
  readonly handed: HandedOver;
  readonly folder: CabinetFolder;
  /** The folder of the bundled pages. */
  readonly bundled: string;
  readonly grows: string;
  readonly into: string;
  /** Of which pieces tiles are made, and where they are kept between builds; null where the keeper wants none. */
  readonly tiles: { readonly pieces: readonly string[]; readonly store: string } | null;
  readonly hosted: Hosted;
  readonly texts: readonly { readonly file: string; readonly text: string }[];
};

/** A site with what was kept of the last one, and what the inspection says of it. */
export type Grown = { readonly kept: Kept; readonly problems: readonly Problem[]; readonly clean: Clean };

/**
 * Makes a site with the pages of the last one that have not changed; without them where that was not what it was remembered to
 * be. Somebody may have written in its folder, and what is not by a build goes into none.
 */
export async function growFrom(last: LastSite | null, growing: Growing): Promise<Grown> {
  const grown = await grow(last, growing);
  return last === null || isAsRemembered(last, grown.clean, grown.kept) ? grown : grow(null, growing);
}

async function grow(last: LastSite | null, growing: Growing): Promise<Grown> {
  const { handed, folder, bundled, grows } = growing;
  const kept = await grownOrGone(last, growing);
  takeBack();
  const before = last === null ? null : cleanIn(last);
  return { kept, ...inspectAgain(grows, handed.records, folder, before, join(bundled, PARTS.files)) };
}

/** Makes the pages and then the files next to them; a full disk gets its room back. */
async function grownOrGone(last: LastSite | null, growing: Growing): Promise<Kept> {
  const { handed, bundled, grows, into, tiles, hosted, texts } = growing;
  const kept: Kept = { taken: new Set(), keys: new Map() };
  await rm(grows, { recursive: true, force: true });
  try {
    // A copy: what is worked out of it lasts as long as it does.
    handOver({ ...handed });
    await makePages(bundled, grows, takenFrom(last, into, grows, kept));
    await linkPhotographs(handed.photographs, grows);
    if (tiles !== null) await linkTiles(tiles.pieces, { made: handed.photographs, store: tiles.store, built: grows });
    leaveOldAddresses(grows, hosted);
    for (const { file, text } of texts) if (!existsSync(join(grows, file))) await putText(join(grows, file), text);
    return kept;
  } catch (error) {
    await rm(grows, { recursive: true, force: true }).catch(() => undefined);
    throw error;
  }
}

export async function putText(file: string, text: string): Promise<void> {
  await mkdir(dirname(file), { recursive: true });
  await writeFile(file, text);
}
