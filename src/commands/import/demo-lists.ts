import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { readFolder } from '../../catalogue/files.ts';
import type { CabinetFolder } from '../../catalogue/files.ts';

const DEMO = fileURLToPath(new URL('../../../content', import.meta.url));

/** The lists of the demo, which are facts and free to use; null for the demo itself, or where they are not there. */
export async function lentLists(cabinet: string): Promise<CabinetFolder | null> {
  if (resolve(cabinet) === resolve(DEMO)) return null;
  const folder = await readFolder(DEMO);
  if (folder === null) return null;
  const isList = (file: string): boolean => /^(?:rulers|mints|denominations|works)\/|^cabinet\.yaml$/.test(file);
  return { ...folder, files: folder.files.filter(({ file }) => isList(file)) };
}
