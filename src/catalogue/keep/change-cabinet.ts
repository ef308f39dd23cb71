import { lstat, rename, rm, stat } from 'node:fs/promises';
import { dirname, join, relative } from 'node:path';
import process from 'node:process';
import type { Outcome } from '../../core/outcome.ts';
import { refuse } from '../../core/outcome.ts';
import { faultSentence } from './fault-sentence.ts';
import {
  digestOf,
  fileAt,
  flusher,
  flushFolder,
  forAll,
  isThere,
  placeNew,
  PRIVATE_FILE,
  PRIVATE_FOLDER,
  removeIfEmpty,
  sweep,
  unfinishedIn,
  writeBeside,
} from './flush.ts';
import type { Flusher } from './flush.ts';
import type { ChangedFile, EntryKind } from './journal.ts';
import {
  closeEntry,
  forgetOld,
  lockOf,
  makeJournal,
  newEntryId,
  openEntries,
  openEntry,
  pathIn,
  takeBack,
} from './journal.ts';
import { isHeld, withLock } from './lock.ts';

/** Who changes a cabinet, and under which name it can be undone. */
export type Change = {
  /** As a keeper writes it: `npm run add`. */
  readonly command: string;
  /** Without it, a command. */
  readonly kind?: EntryKind;
  /** Strokes of the same run are undone together; without it, this is a run of its own. */
  readonly run?: string;
  /** The run this takes back. */
  readonly undoes?: string;
  /** How long to wait for another command, in milliseconds; without it, two minutes. */
  readonly wait?: number;
  /** Is told what was taken back of a command that was stopped, and who is waited for; without it, it goes to the error output. */
  readonly tell?: (sentence: string) => void;
};

/** The writes of one stroke. Nothing of them is in its place before the work has ended well. Paths are inside the cabinet. */
export type Changes = {
  /** Writes a file, new or in the place of what is there. `from` is the text it was made from: another one now refuses. */
  readonly put: (file: string, what: string | Uint8Array, from?: string | null) => Promise<void>;
  /** Writes a file that must not be there yet. */
  readonly create: (file: string, what: string | Uint8Array) => Promise<void>;
  /** Takes a file away; `from` is the text it had when that was decided, where it has one: another one now refuses. */
  readonly remove: (file: string, from?: string) => Promise<void>;
};

type Staged = ChangedFile & { readonly unfinished: string | null };

/** A stroke that cannot be done, with its sentence; `isWhole` when everything is as it was. */
class Refusal extends Error {
  readonly isWhole: boolean;
  constructor(sentence: string, isWhole = true) {
    super(sentence);
    this.isWhole = isWhole;
  }
}

/**
 * Does work that changes a cabinet, alone and whole: under the cabinet's lock, from reading what will be changed to the end of
 * writing. After it, or after the next command's recovery if this one is killed, either every write is in its place or none is.
 * A refusal of the work, and every fault of the machine, leaves everything as it was. Do not ask the keeper anything in it.
 */
export async function changeCabinet<T>(
  at: string,
  change: Change,
  work: (changes: Changes) => Promise<Outcome<T>>,
): Promise<Outcome<T>> {
  try {
    return await changeUnderLock(at, change, work);
  } catch (error) {
    if (error instanceof Refusal && !error.isWhole) return refuse(error.message);
    const sentence = error instanceof Refusal ? error.message : faultSentence(error);
    if (sentence === null) throw error;
    return refuse(`${sentence} Nothing was changed.`);
  }
}

async function changeUnderLock<T>(
  at: string,
  change: Change,
  work: (changes: Changes) => Promise<Outcome<T>>,
): Promise<Outcome<T>> {
  await mustBeThere(at);
  await makeJournal(at);
  const { command, wait } = change;
  const shown = relative(process.cwd(), at) || '.';
  const { tell = tellAloud } = change;
  const lock = { folder: lockOf(at), thing: `The cabinet ${shown}`, tell, ...(wait === undefined ? {} : { wait }) };
  const done = await withLock(lock, command, async () => {
    await recoverNow(at, tell, change.kind === 'save' && sweptOnce.has(at));
    const staged = new Map<string, Staged>();
    const written = flusher();
    try {
      const outcome = await work(changesOf(at, staged, written));
      await written.end();
      if (outcome.ok && staged.size > 0) await stroke(at, change, inOrder([...staged.values()]));
      // All of it is in its place.
      if (outcome.ok) staged.clear();
      return outcome;
    } finally {
      await written.end().catch(() => undefined);
      await throwAway(at, [...staged.values()]);
    }
  });
  return done.ok ? done.value : done;
}

/**
 * Takes back what a killed command left half-done, and sweeps what it left half-written. For commands that only read: the others
 * do it by themselves. Leaves alone a cabinet that is being changed, and one that may not be written to.
 */
export async function recoverCabinet(at: string, tell: (sentence: string) => void = tellAloud): Promise<void> {
  const isWhole = (await openEntries(at)).length === 0 && unfinishedIn(at).length === 0;
  if (isWhole) sweptOnce.add(at);
  if (isWhole || (await isHeld(lockOf(at)))) return;
  const lock = { folder: lockOf(at), thing: at, wait: 0 };
  await withLock(lock, 'the recovery', () => recoverNow(at, tell)).catch((error: unknown) => {
    if (faultSentence(error) === null) throw error;
  });
}

/** Cabinets that this process has swept or found whole: the desk walks through every folder when it opens and not at each save. */
const sweptOnce = new Set<string>();

async function recoverNow(at: string, tell: (sentence: string) => void, isSwept = false): Promise<void> {
  for (const name of (await openEntries(at)).toReversed()) {
    const sentence = await takeBack(at, name);
    if (sentence !== null) tell(sentence);
  }
  if (isSwept) return;
  await sweep(at);
  sweptOnce.add(at);
}

function tellAloud(sentence: string): void {
  process.stderr.write(`${sentence}\n`);
}

async function mustBeThere(at: string): Promise<void> {
  const isFolder = (path: string): Promise<boolean> =>
    stat(path).then(
      (found) => found.isDirectory(),
      () => false,
    );
  if (!(await isFolder(at))) throw new Refusal(`There is no cabinet at ${relative(process.cwd(), at) || '.'}.`);
  const inside = join(at, 'private');
  const isNamed = await lstat(inside).then(
    () => true,
    () => false,
  );
  if (isNamed && !(await isFolder(inside)))
    throw new Refusal(
      'private is no folder that can be opened. Bring back the disk it lies on, or remove what has this name.',
    );
}

function changesOf(at: string, staged: Map<string, Staged>, { flush, end }: Flusher): Changes {
  const stage = async (
    file: string,
    what: string | Uint8Array | null,
    from: string | null | undefined,
  ): Promise<void> => {
    const path = pathIn(at, file);
    if (relative(at, path).startsWith('..')) throw new Refusal(`${file} lies outside the cabinet.`);
    const earlier = staged.get(file);
    if (earlier?.unfinished != null) {
      await end();
      await rm(earlier.unfinished, { force: true });
    }
    const found = await fileAt(path);
    const before = found === null ? null : digestOf(found.bytes);
    if (from !== undefined && before !== (from === null ? null : digestOf(from)))
      throw new Refusal(
        from === null
          ? `${file} is there already, and nothing is written over it.`
          : `${file} has been changed while this was being done. Try again.`,
      );
    const after = what === null ? null : digestOf(what);
    staged.delete(file);
    if (after === before) return;
    const mode = found?.mode ?? (file.startsWith('private/') ? PRIVATE_FILE : null);
    const written = what === null ? null : writeBeside(path, what, mode);
    staged.set(file, { file, before, after, unfinished: written?.unfinished ?? null });
    if (written !== null) await flush(written.file);
  };
  return {
    put: (file, what, from) => stage(file, what, from),
    create: (file, what) => stage(file, what, null),
    remove: (file, from) => stage(file, null, from),
  };
}

/** What goes before what comes, and a private row before the public piece it guards: so half a stroke publishes nothing unguarded. */
function inOrder(staged: readonly Staged[]): readonly Staged[] {
  const rank = ({ file, after }: Staged): number => (after === null ? 0 : file.startsWith('private/') ? 1 : 2);
  return staged.toSorted((a, b) => rank(a) - rank(b));
}

/** Puts every write in its place, or, when one cannot be, none. */
async function stroke(
  at: string,
  { command, kind = 'command', run, undoes }: Change,
  staged: readonly Staged[],
): Promise<void> {
  const when = Date.now();
  const id = newEntryId(when, command);
  const files = staged.map(({ file, before, after }) => ({ file, before, after }));
  const placed = new Set<string>();
  try {
    await openEntry(at, { id, run: run ?? id, kind, command, when, undoes: undoes ?? null, files });
    for (const one of staged) {
      await place(at, one);
      placed.add(one.file);
    }
    await forAll(foldersAbove(at, staged), flushFolder);
    for (const { file, after } of staged) if (after === null) await removeIfEmpty(dirname(pathIn(at, file)), at);
    await closeEntry(at, id);
  } catch (error) {
    await backOut(at, placed, error);
    throw error;
  }
  // What is kept a little too long harms nothing.
  await forgetOld(at, when).catch(() => undefined);
}

/** The folders of files, and those that these are in, up to the cabinet's own: a new folder is a name in the one above it. */
function foldersAbove(at: string, files: readonly ChangedFile[]): ReadonlySet<string> {
  const folders = new Set<string>();
  for (const { file } of files)
    for (let one = dirname(pathIn(at, file)); !folders.has(one); one = dirname(one)) {
      folders.add(one);
      if (one === at || dirname(one) === one) break;
    }
  return folders;
}

/** Takes back what a stroke has placed; where even that cannot be, says that the next command will. */
async function backOut(at: string, placed: ReadonlySet<string>, because: unknown): Promise<void> {
  try {
    for (const name of await openEntries(at)) await takeBack(at, name, placed);
  } catch {
    const sentence = because instanceof Refusal ? because.message : faultSentence(because);
    throw new Refusal(
      `${sentence ?? 'Not everything could be written.'} What had been written will be taken back by the next command.`,
      false,
    );
  }
}

async function place(at: string, { file, before, after, unfinished }: Staged): Promise<void> {
  const path = pathIn(at, file);
  if (before === null && unfinished !== null) {
    placeNew(unfinished, path, file.startsWith('private/') ? PRIVATE_FOLDER : undefined);
    return;
  }
  const now = await fileAt(path);
  if (now === null || digestOf(now.bytes) !== before)
    throw new Refusal(`${file} has been changed while this was being done. Try again.`);
  if (after === null) await rm(path);
  else if (unfinished !== null) await rename(unfinished, path);
}

/** Removes what was staged and did not come to its place. */
async function throwAway(at: string, staged: readonly Staged[]): Promise<void> {
  for (const { unfinished } of staged) {
    if (unfinished === null || !isThere(unfinished)) continue;
    // What stays is swept by the next command.
    await rm(unfinished, { force: true }).catch(() => undefined);
    await removeIfEmpty(dirname(unfinished), at);
  }
}
