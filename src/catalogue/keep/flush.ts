import { hash } from 'node:crypto';
import {
  chmodSync,
  closeSync,
  constants,
  copyFileSync,
  fsync,
  linkSync,
  openSync,
  rmSync,
  statSync,
  unlinkSync,
  writeFileSync,
} from 'node:fs';
import { copyFile, link, readFile, rename, rm, rmdir, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import process from 'node:process';
import { promisify } from 'node:util';
import { listed } from '../files.ts';
import { isCode, makeFolder } from './fault-sentence.ts';
import { isRunning } from './lock-owner.ts';

/** The ending of what is being written; nothing reads a file of this name. */
const UNFINISHED = /^\..+\.(\d+)\.unfinished$/;
/** Stands for a step down in the name of what is being written, where the folders between are not there yet. */
const DOWN = '~';
/** The mode of private files, and of the folders they lie in: their owner's alone. */
export const PRIVATE_FILE = 0o600;
export const PRIVATE_FOLDER = 0o700;

export function digestOf(what: string | Uint8Array): string {
  return hash('sha256', what);
}

/** Whether something has this name. */
export function isThere(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false }) !== undefined;
}

/** The bytes and mode of a file; null when there is none. */
export async function fileAt(path: string): Promise<{ readonly bytes: Uint8Array; readonly mode: number } | null> {
  if (!isThere(path)) return null;
  try {
    return { bytes: await readFile(path), mode: (await stat(path)).mode & 0o777 };
  } catch (error) {
    if (isCode(error, 'ENOENT') || isCode(error, 'ENOTDIR')) return null;
    throw error;
  }
}

/** A file under a name that nothing reads, still open so that it can be flushed. */
export type Unfinished = { readonly unfinished: string; readonly file: number };

/**
 * Writes a file under a name that nothing reads, beside its place; a flusher brings it down to the disk and closes it. Where its
 * folder is not there yet, it lies in the nearest one that is: a folder is made only when it gets its file.
 */
export function writeBeside(path: string, what: string | Uint8Array, mode: number | null): Unfinished {
  const { folder, within } = nearestFolder(dirname(path));
  const name = [...within, basename(path)].join(DOWN);
  const short = name.length <= 200 ? name : `${name.slice(0, 130)}${digestOf(name).slice(0, 64)}`;
  const unfinished = join(folder, `.${short}.${process.pid}.unfinished`);
  const file = openSync(unfinished, 'w', mode ?? 0o666);
  try {
    writeFileSync(file, what);
    if (mode !== null) setMode(unfinished, mode);
  } catch (error) {
    closeSync(file);
    rmSync(unfinished, { force: true });
    throw error;
  }
  return { unfinished, file };
}

/** Some disks know no modes. */
function setMode(path: string, mode: number): void {
  try {
    chmodSync(path, mode);
  } catch {
    return;
  }
}

/** The folder itself where it is there, or the nearest one above it, and the steps down from that. */
function nearestFolder(path: string): { readonly folder: string; readonly within: readonly string[] } {
  const within: string[] = [];
  let folder = path;
  for (; !isThere(folder) && dirname(folder) !== folder; folder = dirname(folder)) within.unshift(basename(folder));
  return { folder, within };
}

/** Gives a written file its name where nothing has that name yet, in a folder made for it; throws EEXIST where something has. */
export function placeNew(unfinished: string, path: string, mode?: number): void {
  makeFolder(dirname(path), mode);
  try {
    linkSync(unfinished, path);
  } catch (error) {
    if (isCode(error, 'EEXIST')) throw error;
    // A disk that knows no links; where the file is there already, this fails as well.
    copyFileSync(unfinished, path, constants.COPYFILE_EXCL);
  }
  unlinkSync(unfinished);
}

/** A second name for the same bytes, or a copy where the other place is on another disk. */
export async function linkOrCopy(from: string, to: string): Promise<void> {
  await link(from, to).catch(async () => copyFile(from, to, constants.COPYFILE_EXCL));
}

/** Moves a file, across disks where it must be. */
export async function moveTo(from: string, to: string): Promise<void> {
  try {
    await rename(from, to);
  } catch (error) {
    if (!isCode(error, 'EXDEV')) throw error;
    await writeWhole(to, await readFile(from), (await stat(from)).mode & 0o777);
    await rm(from, { force: true });
  }
}

/** How many files are flushed at once: a disk takes many together nearly as fast as one. */
const AT_ONCE = 64;

/** Does something for each, many at once. */
export async function forAll<T>(all: Iterable<T>, work: (one: T) => Promise<void>): Promise<void> {
  const rest = all[Symbol.iterator]();
  const worker = async (): Promise<void> => {
    for (let next = rest.next(); next.done !== true; next = rest.next()) await work(next.value);
  };
  await Promise.all(Array.from({ length: AT_ONCE }, worker));
}

const sync = promisify(fsync);

/** Brings written files down to the disk while others are being written; `end` waits for all, and throws what went wrong. */
export type Flusher = { readonly flush: (file: number) => Promise<void>; readonly end: () => Promise<void> };

/** Of the steps for a file only its way down to the disk is slow, and is done for many at once; so many files are open at most. */
export function flusher(): Flusher {
  let underWay: Promise<{ readonly error: unknown } | null>[] = [];
  const end = async (): Promise<void> => {
    const waited = underWay;
    underWay = [];
    for (const fault of await Promise.all(waited)) if (fault !== null) throw fault.error;
  };
  const flush = async (file: number): Promise<void> => {
    const flushed = sync(file).then(
      () => null,
      (error: unknown) => ({ error }),
    );
    underWay.push(flushed.finally(() => closeSync(file)));
    if (underWay.length >= AT_ONCE) await end();
  };
  return { flush, end };
}

/** Brings the names in a folder down to the disk, where the system has a way to. */
export async function flushFolder(folder: string): Promise<void> {
  try {
    const opened = openSync(folder, 'r');
    await sync(opened).catch(() => undefined);
    closeSync(opened);
  } catch {
    // Windows opens no folders and flushes names by itself.
  }
}

/** Writes a file whole or not at all, down to the disk. For what is no part of a cabinet's journal. */
export async function writeWhole(path: string, what: string | Uint8Array, mode: number | null = null): Promise<void> {
  const { unfinished, file } = writeBeside(path, what, mode);
  const { flush, end } = flusher();
  try {
    await flush(file);
    await end();
    makeFolder(dirname(path), mode === PRIVATE_FILE ? PRIVATE_FOLDER : undefined);
    await rename(unfinished, path);
  } finally {
    await rm(unfinished, { force: true });
  }
  await flushFolder(dirname(path));
}

/** What processes that ended have left half-written in a folder. */
export function unfinishedIn(at: string): readonly string[] {
  return (listed(at) ?? [])
    .filter(({ entry }) => entry.isFile())
    .flatMap(({ path, entry }) => {
      const writer = UNFINISHED.exec(entry.name)?.[1];
      return writer === undefined || isRunning(Number(writer)) ? [] : [join(at, path)];
    });
}

/** Removes what processes that ended have left half-written in a folder, and the folders in which nothing else lies. */
export async function sweep(at: string): Promise<void> {
  for (const file of unfinishedIn(at)) {
    await rm(file, { force: true });
    await removeIfEmpty(dirname(file), at);
  }
}

/** Removes a folder in which nothing lies, and its parents, but none that is in the cabinet's own folder. */
export async function removeIfEmpty(folder: string, at: string): Promise<void> {
  for (let one = folder; one !== at && dirname(one) !== at && one !== dirname(one); one = dirname(one))
    try {
      await rmdir(one);
    } catch {
      return;
    }
}

/** The text of a file; null when there is none. */
export async function readIfThere(path: string): Promise<string | null> {
  const found = await fileAt(path);
  return found === null ? null : new TextDecoder().decode(found.bytes);
}
