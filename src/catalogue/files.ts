import { readdirSync, readFileSync } from 'node:fs';
import type { Dirent } from 'node:fs';
import { lstat, readdir, readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';

/** A file of the cabinet as it lies on the disk; `text` is null for what is not text and for what is not UTF-8. */
export type CabinetFile = { readonly file: string; readonly text: string | null };

/** The folder of a cabinet: its text files read, its other files named. Paths use forward slashes. */
export type CabinetFolder = { readonly at: string; readonly files: readonly CabinetFile[] };

const TEXT = /\.(md|ya?ml|csv)$|^types\/[^/]+\/[^/]+\.svg$|^addresses\.txt$/i;
/** What the program itself keeps of earlier texts. */
const JOURNAL = 'private/undo/';
const SKIPPED = /(^|\/)(\.[^/]*|Thumbs\.db|desktop\.ini|README[^/]*|open-the-desk\.(cmd|command|sh))$/i;

/** Reads a cabinet's folder; null when there is none. Files come in the order of their paths. */
export async function readFolder(at: string): Promise<CabinetFolder | null> {
  if (!(await isFolder(at))) return null;
  // `private` may be a link, to a disk that is locked away; what else is one is not followed (`linksIn` tells of it).
  const linked = (await isLink(join(at, 'private'))) ? listed(join(at, 'private'), 'private/') : null;
  const entries = listedIn(at, '');
  const paths = [...entries, ...(linked ?? [])]
    .flatMap(({ path, entry }) => (entry.isFile() ? [path] : []))
    .filter((path) => !path.startsWith(JOURNAL) && !path.split('/').some((part) => SKIPPED.test(part)))
    .sort();
  // One after the other and at once: of many small files, waiting for each takes five times the time of reading it.
  return { at, files: paths.map((file) => ({ file, text: readText(at, file) })) };
}

type Listed = { readonly path: string; readonly entry: Dirent };

/**
 * What is in a folder and below it, each with `path` before its way in it; null when it is none, or may not be read. At once, for
 * of many small folders, waiting for each takes several times the time of reading it.
 */
export function listed(folder: string, path = ''): readonly Listed[] | null {
  try {
    return listedIn(folder, path);
  } catch {
    return null;
  }
}

function listedIn(folder: string, before: string): readonly Listed[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry): readonly Listed[] => {
    const path = `${before}${entry.name}`;
    const own = { path, entry };
    return entry.isDirectory() ? [own, ...listedIn(join(folder, entry.name), `${path}/`)] : [own];
  });
}

/** The links in a cabinet, by their paths; with `private`, whether what it leads to is a folder that can be read. */
export async function linksIn(at: string): Promise<readonly { readonly file: string; readonly isFolder: boolean }[]> {
  const links = (listed(at) ?? [])
    .flatMap(({ path, entry }) => (entry.isSymbolicLink() ? [path] : []))
    .filter((path) => !path.split('/').some((part) => SKIPPED.test(part)));
  return Promise.all(links.sort().map(async (file) => ({ file, isFolder: await opens(join(at, file)) })));
}

/** Whether something is a folder whose names can be read. What lies below it is not looked at: a link may lead to a whole disk. */
async function opens(folder: string): Promise<boolean> {
  return readdir(folder).then(
    () => true,
    () => false,
  );
}

async function isLink(path: string): Promise<boolean> {
  const found = await lstat(path).catch(() => null);
  return found?.isSymbolicLink() ?? false;
}

const UTF_8 = new TextDecoder('utf-8', { fatal: true });

function readText(at: string, file: string): string | null {
  if (!TEXT.test(file)) return null;
  const bytes = readFileSync(join(at, file));
  try {
    return UTF_8.decode(bytes);
  } catch {
    return null;
  }
}

async function isFolder(at: string): Promise<boolean> {
  try {
    return (await stat(at)).isDirectory();
  } catch {
    return false;
  }
}

export function isText(file: string): boolean {
  return TEXT.test(file);
}

/** The bytes of one file unless it has more than so many, when it is not opened at all. */
export async function readUpTo(
  path: string,
  most: number,
): Promise<{ readonly bytes: Uint8Array } | { readonly tooLarge: number } | 'missing' | 'folder'> {
  try {
    const found = await stat(path);
    if (found.isDirectory()) return 'folder';
    if (found.size > most) return { tooLarge: found.size };
    return { bytes: await readFile(path) };
  } catch {
    return 'missing';
  }
}
