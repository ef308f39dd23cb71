import { readdirSync, statSync } from 'node:fs';
import { appendFile, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import process from 'node:process';
import { sharedFile } from './manifest.ts';
import type { FacePictures, PhotographManifest } from './manifest.ts';

/** What is known of a photograph without opening it. */
export type Known = {
  /** Its length and the time it was last written. */
  readonly seen: string;
  readonly digest: string;
  readonly recipe: string;
  readonly request: string;
  readonly pictures: FacePictures;
};

/** What `Known` keeps of a file as it lies there now. Throws when it does not. */
export function seenOf(file: string): string {
  const { mtimeMs, size } = statSync(file);
  return `${size} ${mtimeMs}`;
}

/** By the file of the photograph inside the cabinet. */
export type Index = Readonly<Record<string, Known>>;

/** What earlier runs made and remembered, also those that were ended; nothing when it cannot be read. */
export async function readIndex(folder: string): Promise<Index> {
  const index = Object.entries(await readJson<Index>(join(folder, 'index.json'), {}));
  const journal = await readFile(join(folder, JOURNAL), 'utf8').catch(() => '');
  // The last line breaks off where a run was ended while it wrote.
  const later = journal.split('\n').flatMap((line) => readLine(line));
  return Object.fromEntries([...index, ...later]);
}

/** Remembers at once what was made of one photograph, so that a run that is ended goes on from there. */
export async function remember(folder: string, file: string, known: Known): Promise<void> {
  await appendFile(join(folder, JOURNAL), `\n${JSON.stringify([file, known])}`);
}

/** Writes down the whole, and nothing is left to remember singly. */
export async function writeIndex(folder: string, index: Index): Promise<void> {
  await writeWhole(join(folder, 'index.json'), JSON.stringify(index));
  await rm(join(folder, JOURNAL), { force: true });
}

const JOURNAL = 'made-since.jsonl';

function readLine(line: string): readonly (readonly [string, Known])[] {
  try {
    return line === '' ? [] : [JSON.parse(line) as readonly [string, Known]];
  } catch {
    return [];
  }
}

async function readJson<T>(file: string, otherwise: T): Promise<T> {
  try {
    return JSON.parse(await readFile(file, 'utf8')) as T;
  } catch {
    return otherwise;
  }
}

export async function writeManifest(folder: string, manifest: PhotographManifest): Promise<void> {
  await writeWhole(join(folder, 'manifest.json'), JSON.stringify(manifest));
}

/** The names of the files in each folder of made pictures. */
export function madeFiles(folder: string): ReadonlyMap<string, ReadonlySet<string>> {
  // Thousands of small folders, each too small to be worth waiting for by itself.
  const folders = readdirSync(folder, { withFileTypes: true }).filter((entry) => entry.isDirectory());
  return new Map(folders.map(({ name }) => [name, new Set(filesIn(join(folder, name)))]));
}

/** The names of the files in a folder; none when another run has just taken it away. */
function filesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch {
    return [];
  }
}

/** The names of the files made of one photograph. */
export function filesOf({ webp, jpeg }: FacePictures): readonly string[] {
  return [...webp, jpeg].map(({ file }) => file);
}

/** Where the pictures lie that sets and exhibits are shared by; no piece can have this name. */
export const BOARDS = '_boards';

/** Removes, of the files that are there, what no photograph stands behind any more, and what a run that was ended left half-written. */
export async function prune(
  folder: string,
  there: ReturnType<typeof madeFiles>,
  manifest: PhotographManifest,
): Promise<void> {
  for (const [name, files] of there) {
    if (name === BOARDS) continue;
    const faces = manifest[name] ?? [];
    const kept = new Set([...faces.flatMap(filesOf), sharedFile(faces) ?? '']);
    for (const file of files)
      if (!kept.has(file) && !isBeingWritten(file)) await rm(join(folder, name, file), { force: true });
    if (faces.length === 0) await rm(join(folder, name), { recursive: true, force: true });
  }
  for (const file of await readdir(folder))
    if (file.endsWith(UNFINISHED) && !isBeingWritten(file)) await rm(join(folder, file), { force: true });
}

const UNFINISHED = '.unfinished';

/** Writes a file so that nothing half-written ever carries its name. */
export async function writeWhole(file: string, what: string | Uint8Array): Promise<void> {
  const unfinished = `${file}.${process.pid}${UNFINISHED}`;
  await writeFile(unfinished, what);
  await rename(unfinished, file);
}

/** Whether another run, which still goes on, is writing this. */
function isBeingWritten(file: string): boolean {
  const by = Number(/\.(\d+)\.unfinished$/.exec(file)?.[1] ?? NaN);
  if (Number.isNaN(by) || by === process.pid) return false;
  try {
    return process.kill(by, 0);
  } catch {
    return false;
  }
}
