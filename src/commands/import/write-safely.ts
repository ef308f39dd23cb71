import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import process from 'node:process';

/**
 * Writes a text whole or not at all: beside its place first, under a name that nothing reads, then in it. What was there before stays
 * until then.
 */
export async function writeSafely(path: string, text: string): Promise<void> {
  const folder = dirname(path);
  await mkdir(folder, { recursive: true });
  const part = join(folder, `.${basename(path)}.${process.pid}.part`);
  try {
    await writeFile(part, text);
    await rename(part, path);
  } catch (error) {
    await rm(part, { force: true });
    throw error;
  }
}

/** The text of a file; null when there is none. */
export async function readIfThere(path: string): Promise<string | null> {
  try {
    return await readFile(path, 'utf8');
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return null;
    throw error;
  }
}
