import { rmSync } from 'node:fs';
import { cp, readdir, rename, rm } from 'node:fs/promises';
import { basename, dirname, join, relative } from 'node:path';
import process from 'node:process';
import { makeFolder } from '../../catalogue/keep/fault-sentence.ts';
import { withLock } from '../../catalogue/keep/lock.ts';
import type { Outcome } from '../../core/outcome.ts';
import { cacheFolder } from './cache-folder.ts';

/** Beside a folder, under names that no keeper gives: the new one on its way, and the old one while the two change places. */
const besides = (into: string): { readonly coming: string; readonly going: string } => ({
  coming: join(dirname(into), `.${basename(into)}.underglass-new`),
  going: join(dirname(into), `.${basename(into)}.underglass-old`),
});

/**
 * Puts a finished folder in the place of whatever is there. It is brought beside its place first, which takes long when that
 * is another disk or a stick; then the old one is renamed away, the new one renamed in, and only then the old one deleted.
 * Ended at any moment, the folder is whole: the old one or the new one, once `recoverFolder` has run.
 */
export async function putFolder(finished: string, into: string): Promise<void> {
  const { coming, going } = besides(into);
  makeFolder(dirname(into));
  try {
    await rename(finished, coming);
  } catch {
    try {
      // Another disk: a folder cannot be renamed across.
      await cp(finished, coming, { recursive: true, preserveTimestamps: true });
    } catch (error) {
      await rm(coming, { recursive: true, force: true });
      throw error;
    }
    await rm(finished, { recursive: true, force: true }).catch(() => undefined);
  }
  const wasThere = await isThere(into);
  if (wasThere) await rename(into, going);
  try {
    await rename(coming, into);
  } catch (error) {
    if (wasThere) await rename(going, into);
    throw error;
  }
  // At once: of tens of thousands of files, waiting for each takes longer than removing it.
  try {
    rmSync(going, { recursive: true, force: true });
  } catch {
    // The new one is in its place: what stays of the old one is for the next start to remove.
  }
}

/** Sets right what a command left that was killed while it put a folder in its place. */
async function recoverFolder(into: string): Promise<void> {
  const { coming, going } = besides(into);
  if ((await isThere(going)) && !(await isThere(into))) await rename(going, into);
  await rm(going, { recursive: true, force: true });
  await rm(coming, { recursive: true, force: true });
}

/** Does the work while no other command builds into this folder, and after what a killed one left has been set right. */
export async function aloneIn<T>(into: string, work: () => Promise<Outcome<T>>): Promise<Outcome<T>> {
  const lock = {
    folder: cacheFolder('locks', into),
    thing: `The folder ${relative(process.cwd(), into) || '.'}`,
    tell: (sentence: string) => void process.stderr.write(`${sentence}\n`),
  };
  const done = await withLock(lock, 'npm run build', async () => {
    await recoverFolder(into);
    return work();
  });
  return done.ok ? done.value : done;
}

async function isThere(folder: string): Promise<boolean> {
  return readdir(folder).then(
    () => true,
    () => false,
  );
}

/** What is in every folder that was built: a site, or a copy of one for a hall. */
export const MARKS = { site: ['index.html', 'data'], hall: ['open-me.html', 'catalogue'] } as const;

/** Why a folder may not be emptied and filled; null when it may: it is new, empty, or was built before and has the marks of it. */
export async function refuseFolder(
  into: string,
  cabinet: string,
  marks: readonly string[] = MARKS.site,
): Promise<string | null> {
  const holds = (inner: string): boolean => inner === into || !relative(into, inner).startsWith('..');
  if (holds(cabinet) || holds(process.cwd()))
    return `The site cannot be built over ${into}: the cabinet or the project is in it.`;
  if (!relative(cabinet, into).startsWith('..'))
    return `The site cannot be built inside the cabinet. Choose another folder than ${into}.`;
  const held = await readdir(into).catch((): string[] => []);
  if (held.length === 0 || marks.every((mark) => held.includes(mark))) return null;
  return `The folder ${into} holds files that no build put there, and building would remove them. Choose a new folder.`;
}
