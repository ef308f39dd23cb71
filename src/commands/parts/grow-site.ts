import { existsSync } from 'node:fs';
import { mkdir, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { handOver, takeBack } from '../../catalogue/handed-over.ts';
import type { Problem } from '../../catalogue/problem.ts';
import { linkPhotographs } from '../../photographs/cache/link-photographs.ts';
import { linkTiles } from '../../photographs/render/make-tiles.ts';
import { inspectAgain, joinInspections } from '../../privacy/inspect-built.ts';
import type { Clean, Inspection } from '../../privacy/inspect-built.ts';
import type { Hosted } from '../../publish/host-files.ts';
import { cleanIn, isAsRemembered, takenFrom } from './last-site.ts';
import type { Kept, LastSite } from './last-site.ts';
import { leaveOldAddresses } from './old-addresses.ts';
import { makePages, PARTS } from './pages-program.ts';
import { HALVES, secondThread } from './second-thread.ts';
import type { SecondThread, SiteWork } from './second-thread.ts';

/** Where a site grows, and what it is made of. */
export type Growing = Omit<SiteWork, 'last' | 'program'> & {
  /** Of which pieces tiles are made, and where they are kept between builds; null where the keeper wants none. */
  readonly tiles: { readonly pieces: readonly string[]; readonly store: string } | null;
  readonly hosted: Hosted;
  readonly texts: readonly { readonly file: string; readonly text: string }[];
  /** How many threads make the pages. */
  readonly threads: 1 | 2;
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
  const work = { ...growing, last, program: join(growing.bundled, PARTS.files) };
  await rm(growing.grows, { recursive: true, force: true });
  const second = growing.threads === 1 ? null : secondThread();
  try {
    const kept = second === null ? await makeAlone(work) : await makeBoth(work, second);
    // Two routes to one page, one in each half: alone the first of them makes it.
    if (kept === null) return await grow(last, { ...growing, threads: 1 });
    takeBack();
    return { kept, ...(await inspect(work, second)) };
  } finally {
    await second?.end();
  }
}

type Work = Growing & SiteWork;

async function makeAlone(work: Work): Promise<Kept> {
  // A copy: what is worked out of it lasts as long as it does.
  handOver({ ...work.handed });
  const kept: Kept = { taken: new Set(), keys: new Map() };
  await grownOrGone(work, () => makePages(work.bundled, work.grows, takenFrom(work.last, work.into, work.grows, kept)));
  return kept;
}

/** Null where both halves made a page of the same address. */
async function makeBoth(work: Work, second: SecondThread): Promise<Kept | null> {
  const { handed, folder, bundled, program, grows, into, last } = work;
  handOver({ ...handed, share: HALVES[0] });
  const own: Kept = { taken: new Set(), keys: new Map() };
  const theirs = second.make({ handed, folder, bundled, program, grows, into, last });
  // It is told of once this half has ended.
  theirs.catch(() => undefined);
  await grownOrGone(work, () => makePages(bundled, grows, takenFrom(last, into, grows, own), HALVES[0], theirs));
  const other = await theirs;
  if ([...other.keys.keys()].some((file) => own.keys.has(file))) return null;
  return { taken: new Set([...own.taken, ...other.taken]), keys: new Map([...own.keys, ...other.keys]) };
}

/** Makes the pages and then the files next to them; a full disk gets its room back. */
async function grownOrGone(work: Work, makePagesOf: () => Promise<void>): Promise<void> {
  const { grows, handed, tiles, hosted, texts } = work;
  try {
    await makePagesOf();
    await linkPhotographs(handed.photographs, grows);
    if (tiles !== null) await linkTiles(tiles.pieces, { made: handed.photographs, store: tiles.store, built: grows });
    leaveOldAddresses(grows, hosted);
    for (const { file, text } of texts) if (!existsSync(join(grows, file))) await putText(join(grows, file), text);
  } catch (error) {
    await rm(grows, { recursive: true, force: true }).catch(() => undefined);
    throw error;
  }
}

async function inspect(
  { grows, handed: { records }, folder, last, program }: Work,
  second: SecondThread | null,
): Promise<Inspection> {
  const before = last === null ? null : cleanIn(last);
  if (second === null) return inspectAgain(grows, records, folder, before, program);
  const theirs = second.inspect(before);
  theirs.catch(() => undefined);
  return joinInspections([inspectAgain(grows, records, folder, before, program, HALVES[0]), await theirs]);
}

export async function putText(file: string, text: string): Promise<void> {
  await mkdir(dirname(file), { recursive: true });
  await writeFile(file, text);
}
