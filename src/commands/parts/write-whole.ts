import { constants } from 'node:fs';
import { copyFile, link, mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import process from 'node:process';

/**
 * Writes a file of a cabinet whole or not at all: first beside its place under a name that nothing reads, then in it. What was
 * there before stays until then.
 */
export async function writeWhole(file: string, what: string | Uint8Array): Promise<void> {
  await besideItsPlace(file, what, (unfinished) => rename(unfinished, file));
}

/** The same for a file that is not there yet; fails where there is one, and leaves that as it is. */
export async function writeNew(file: string, what: string | Uint8Array): Promise<void> {
  await besideItsPlace(file, what, async (unfinished) => {
    try {
      await link(unfinished, file);
    } catch {
      // A stick that knows no links; where the file is there already, this fails as well.
      await copyFile(unfinished, file, constants.COPYFILE_EXCL);
    }
  });
}

async function besideItsPlace(
  file: string,
  what: string | Uint8Array,
  put: (unfinished: string) => Promise<void>,
): Promise<void> {
  await mkdir(dirname(file), { recursive: true });
  const unfinished = join(dirname(file), `.${basename(file)}.${process.pid}.unfinished`);
  try {
    await writeFile(unfinished, what);
    await put(unfinished);
  } finally {
    await rm(unfinished, { force: true });
  }
}

/** The text of a file; null when there is none. */
export async function readIfThere(file: string): Promise<string | null> {
  try {
    return await readFile(file, 'utf8');
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return null;
    throw error;
  }
}
