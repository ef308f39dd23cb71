import { mkdir, readdir, readFile, rename, rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import process from 'node:process';
import { setTimeout as later } from 'node:timers/promises';
import { readFolder } from '../files.ts';
import type { CabinetFolder } from '../files.ts';
import { makeFolder } from './fault-sentence.ts';
import {
  digestOf,
  fileAt,
  flushFolder,
  forAll,
  linkOrCopy,
  moveTo,
  PRIVATE_FILE,
  PRIVATE_FOLDER,
  removeIfEmpty,
} from './flush.ts';
import { writeWhole } from './flush.ts';
import { isHeld } from './lock.ts';

/** A command's work, or one save at the desk. */
export type EntryKind = 'command' | 'save';

/** One file that was changed. Digests are SHA-256; null where there was no file, or is none any more. */
export type ChangedFile = {
  /** Its path inside the cabinet, with forward slashes. */
  readonly file: string;
  readonly before: string | null;
  readonly after: string | null;
};

/** What was changed at one stroke. What was there before is next to it in files named by the place in `files`: 0, 1, 2. */
export type Entry = {
  readonly id: string;
  /** Strokes of the same run are undone together. */
  readonly run: string;
  readonly kind: EntryKind;
  /** `npm run import`. */
  readonly command: string;
  /** In milliseconds since 1970. */
  readonly when: number;
  /** The run that this one took back; null for everything but an undo. */
  readonly undoes: string | null;
  readonly files: readonly ChangedFile[];
};

/** Where a cabinet keeps its lock and its journal. */
export const lockOf = (at: string): string => join(at, 'private', '.lock');
export const journalOf = (at: string): string => join(at, 'private', 'undo');

const ENTRY = 'entry.json';
/** The ending of an entry whose stroke is not complete. */
const OPEN = '.unfinished';
const RUNS_KEPT = 10;
const SAVES_KEPT = 30 * 24 * 60 * 60 * 1000;

let counter = 0;
/** A name that sorts by time and that no other process gives. */
export function newEntryId(when: number, command: string): string {
  counter += 1;
  const word = command.replace(/^npm run /, '').replace(/[^a-z]+/g, '-');
  return `${new Date(when).toISOString().replace(/[-:.]/g, '')}-${word}-${process.pid}-${String(counter).padStart(3, '0')}`;
}

/** Makes `private/` and its journal where they are missing; git leaves alone what is made so. */
export async function makeJournal(at: string): Promise<void> {
  const made = makeFolder(journalOf(at), PRIVATE_FOLDER);
  if (made !== undefined && !made.startsWith(journalOf(at)))
    await writeWhole(join(at, 'private', '.gitignore'), '*\n', PRIVATE_FILE);
}

/** Keeps what a stroke will replace, and writes down what it will do, before anything is done. */
export async function openEntry(at: string, entry: Entry): Promise<void> {
  const folder = join(journalOf(at), `${entry.id}${OPEN}`);
  await mkdir(folder, { mode: PRIVATE_FOLDER });
  await forAll(entry.files.entries(), async ([index, { file, before }]) => {
    if (before !== null) await linkOrCopy(pathIn(at, file), join(folder, String(index)));
  });
  await writeWhole(join(folder, ENTRY), JSON.stringify(entry), PRIVATE_FILE);
  await flushFolder(journalOf(at));
}

/** The stroke is complete. */
export async function closeEntry(at: string, id: string): Promise<void> {
  await rename(join(journalOf(at), `${id}${OPEN}`), join(journalOf(at), id));
  await flushFolder(journalOf(at));
}

/** Every complete entry, oldest first. */
export async function readEntries(at: string): Promise<readonly Entry[]> {
  const names = (await readdir(journalOf(at)).catch((): string[] => [])).filter((name) => !name.endsWith(OPEN)).sort();
  const read = await Promise.all(names.map((name) => readEntry(join(journalOf(at), name))));
  return read.filter((entry) => entry !== null);
}

/** The names of the strokes that were begun and not completed. */
export async function openEntries(at: string): Promise<readonly string[]> {
  const names = await readdir(journalOf(at)).catch((): string[] => []);
  return names.filter((name) => name.endsWith(OPEN)).sort();
}

/** Which complete entries are not this process's own saves at the desk: another text after anybody else has changed the cabinet. */
export async function strokesOfOthers(at: string): Promise<string> {
  const own = `-the-desk-${process.pid}-`;
  const names = await readdir(journalOf(at)).catch((): string[] => []);
  return names
    .filter((name) => !name.endsWith(OPEN) && !name.includes(own))
    .sort()
    .join(' ');
}

/** How often it is looked whether a stroke has ended, how long between in milliseconds, and for how long where its writer lives. */
const [LOOKS, BETWEEN, LONGEST] = [20, 50, 2400];

/**
 * A cabinet as it is before a stroke of another command or after it, and null where there is none: in the middle of one, a private
 * row has no piece yet. What a killed command left open stays so until the next one takes it back, and is waited for no longer
 * than a second; one that lives is waited for.
 */
export async function readBetweenStrokes(at: string): Promise<CabinetFolder | null> {
  const namesNow = (): Promise<string[]> => readdir(journalOf(at)).catch((): string[] => []);
  for (let look = 1; ; look += 1) {
    const before = (await namesNow()).sort().join(' ');
    const isLast = look >= LONGEST || (look >= LOOKS && !(await isHeld(lockOf(at))));
    if (!before.includes(OPEN) || isLast) {
      const read = await readFolder(at);
      if (isLast || before === (await namesNow()).sort().join(' ')) return read;
    }
    await later(BETWEEN);
  }
}

/** What was in a file before a stroke. */
export async function keptBefore(at: string, id: string, index: number): Promise<Uint8Array> {
  return readFile(join(journalOf(at), id, String(index)));
}

/** Forgets what is older than the last ten commands, and saves older than thirty days. */
export async function forgetOld(at: string, now: number): Promise<void> {
  const entries = await readEntries(at);
  const runs = [...new Set(entries.filter(({ kind }) => kind === 'command').map(({ run }) => run))];
  const over = new Set(runs.slice(0, Math.max(0, runs.length - RUNS_KEPT)));
  for (const { id, run, kind, when } of entries)
    if (kind === 'save' ? now - when > SAVES_KEPT : over.has(run))
      await rm(join(journalOf(at), id), { recursive: true, force: true });
}

/**
 * Takes back a stroke that was not completed: every file it changed is as it was before. A file that somebody has changed since
 * stays, and so does what is kept of it. `only` names the files it had come to, where that is known. Answers with a sentence when there was anything to take back.
 */
export async function takeBack(at: string, name: string, only?: ReadonlySet<string>): Promise<string | null> {
  const folder = join(journalOf(at), name);
  const entry = await readEntry(folder);
  if (entry === null) {
    // It ended before it had written down what it would do, and so before it did anything.
    await rm(folder, { recursive: true, force: true });
    return null;
  }
  const changed: string[] = [];
  let taken = 0;
  for (const [index, { file, before, after }] of [...entry.files.entries()].reverse()) {
    const path = pathIn(at, file);
    // Its folder may have been made, and it not have come into it.
    if (before === null) await removeIfEmpty(dirname(path), at);
    if (only !== undefined && !only.has(file)) continue;
    const found = await fileAt(path);
    const now = found === null ? null : digestOf(found.bytes);
    if (now === before) continue;
    if (now !== after) {
      changed.push(file);
      continue;
    }
    taken += 1;
    if (before === null) {
      await rm(path, { force: true });
      await removeIfEmpty(dirname(path), at);
    } else {
      makeFolder(dirname(path));
      await moveTo(join(folder, String(index)), path);
    }
  }
  if (changed.length === 0) await rm(folder, { recursive: true, force: true });
  else await closeEntry(at, entry.id);
  if (taken + changed.length === 0) return null;
  const left = changed.length === 0 ? '' : ` But for ${changed.join(', ')}, which somebody has changed since.`;
  return `The last ${entry.command} was stopped before its end, and what it had written was taken back: run it again.${left}`;
}

async function readEntry(folder: string): Promise<Entry | null> {
  try {
    return JSON.parse(await readFile(join(folder, ENTRY), 'utf8')) as Entry;
  } catch {
    return null;
  }
}

/** A path inside the cabinet on this machine. */
export function pathIn(at: string, file: string): string {
  return join(at, ...file.split('/'));
}
