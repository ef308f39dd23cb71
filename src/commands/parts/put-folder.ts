import { cp, mkdir, rename, rm } from 'node:fs/promises';
import { dirname } from 'node:path';

/**
 * Puts a finished folder in the place of whatever is there. It is brought beside its place first, which takes long when that
 * is another disk or a stick; then the two change places.
 */
export async function putFolder(finished: string, into: string): Promise<void> {
  const beside = `${into}.unfinished`;
  await rm(beside, { recursive: true, force: true });
  await mkdir(dirname(into), { recursive: true });
  try {
    await rename(finished, beside);
  } catch {
    // Another disk: a folder cannot be renamed across.
    await cp(finished, beside, { recursive: true });
    await rm(finished, { recursive: true, force: true });
  }
  await rm(into, { recursive: true, force: true });
  await rename(beside, into);
}
