import { hash } from 'node:crypto';
import { lstatSync, mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import type { Clean } from '../../privacy/inspect-built.ts';
import { writeWhole } from '../../catalogue/keep/flush.ts';
import { makeFolder } from '../../catalogue/keep/fault-sentence.ts';
import { linkOrCopy } from '../../photographs/cache/link-photographs.ts';

/** What is remembered of one file of a built site: a digest of its bytes, its stamp and, of a page that has one, its key. */
type Remembered = readonly [bytes: string, stamp: string, key?: string];

/**
 * What is remembered of the site that was last built into a folder. It holds no text: the pages themselves are in that folder.
 * Each of its statements is true for ever: a page of this key, made by this program, is these bytes.
 */
export type LastSite = {
  /** A digest of the program, and of where the site stands. */
  readonly madeBy: string;
  /** A digest of what the files were inspected for, in which nothing was found. */
  readonly cleanOf: string;
  /** By their paths in the site. */
  readonly files: Readonly<Record<string, Remembered>>;
};

const memory = (store: string): string => join(store, 'last-site.json');

/** What is remembered of a site by this program; null when there is nothing of use. */
export function readLastSite(store: string, madeBy: string): LastSite | null {
  try {
    const last = JSON.parse(readFileSync(memory(store), 'utf8')) as LastSite;
    return last.madeBy === madeBy ? last : null;
  } catch {
    return null;
  }
}

export async function rememberSite(store: string, site: LastSite): Promise<void> {
  makeFolder(store);
  await writeWhole(memory(store), JSON.stringify(site));
}

/** Forgets all: after a leak nothing of it is used again. */
export function forgetSite(store: string): void {
  rmSync(memory(store), { force: true });
}

/** What of a remembered site was found clean. */
export function cleanIn({ cleanOf, files }: LastSite): Clean {
  return {
    of: cleanOf,
    files: new Map(Object.entries(files).map(([file, [bytes, stamp]]) => [file, { bytes, stamp }])),
  };
}

export function lastSiteOf(madeBy: string, { of, files }: Clean, { keys }: Kept): LastSite {
  const remembered = [...files].map(([file, { bytes, stamp }]): [string, Remembered] => {
    const key = keys.get(file);
    return [file, key === undefined ? [bytes, stamp] : [bytes, stamp, key]];
  });
  return { madeBy, cleanOf: of, files: Object.fromEntries(remembered) };
}

/**
 * Whether the pages that were taken from a site are what was remembered of them, and refer to the same scripts and styles as
 * the new ones do.
 */
export function isAsRemembered({ files }: LastSite, now: Clean, { taken }: Kept): boolean {
  const shared = (paths: Iterable<string>): string =>
    [...paths]
      .filter((path) => path.startsWith('_astro/'))
      .sort()
      .join('\n');
  return (
    [...taken].every((file) => now.files.get(file)?.bytes === files[file]?.[0]) &&
    (taken.size === 0 || shared(now.files.keys()) === shared(Object.keys(files)))
  );
}

/** What a build took from the last site, and the keys of all its pages, by their paths in the site. */
export type Kept = { readonly taken: Set<string>; readonly keys: Map<string, string> };

/**
 * Whether a page is as it was in the last site, which is in the folder `from`: then it is taken from there, as a hard link.
 * Whether its bytes are still those that were remembered is for the inspection to say, which reads them.
 */
export function takenFrom(last: LastSite | null, from: string, into: string, { taken, keys }: Kept) {
  const made = new Set<string>();
  return (file: string, key: string): boolean => {
    keys.set(file, key);
    if (last?.files[file]?.[2] !== key) return false;
    const folder = dirname(file);
    if (!made.has(folder)) mkdirSync(join(into, folder), { recursive: true });
    made.add(folder);
    try {
      linkOrCopy(`${from}/${file}`, `${into}/${file}`);
    } catch {
      // Somebody removed it.
      return false;
    }
    taken.add(file);
    return true;
  };
}

/** Everything a page is made by besides the cabinet: the whole program and its packages, Node, and the manners of the machine. */
const PROGRAM = ['src', 'public', 'package.json', 'package-lock.json', 'astro.config.mjs', 'tsconfig.json'];

let program: string | undefined;

/** The folder the program is in, wherever a command is called from. */
const HOME = fileURLToPath(new URL('../../../', import.meta.url));

/** A digest of the program, read once by a command, and of where a site is to stand. */
export function programDigest(...where: readonly string[]): string {
  program ??= hash('sha256', JSON.stringify(partsOfProgram()), 'base64url');
  return hash('sha256', JSON.stringify([program, ...where]), 'base64url');
}

function partsOfProgram(): readonly string[] {
  const { locale, timeZone } = Intl.DateTimeFormat().resolvedOptions();
  const files = PROGRAM.flatMap(filesUnder);
  const digests = files.flatMap((path) => [path, hash('sha256', readFileSync(join(HOME, path)), 'base64url')]);
  return [process.version, process.versions['icu'] ?? '', locale, timeZone, ...digests];
}

function filesUnder(path: string): readonly string[] {
  const at = join(HOME, path);
  if (lstatSync(at).isFile()) return [path];
  return readdirSync(at, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(HOME, join(entry.parentPath, entry.name)))
    .sort();
}
