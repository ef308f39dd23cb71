import { writeFileSync } from 'node:fs';
import { link, readdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import process from 'node:process';
import { setTimeout as pause } from 'node:timers/promises';
import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';
import { isCode, makeFolder } from './fault-sentence.ts';
import type { Holder } from './lock-owner.ts';
import { changedBy, hasDied, heldBy, holderNow, isRunning, parseHolder } from './lock-owner.ts';

export type Lock = {
  /** The folder that holds the lock; it is made where it is not there. */
  readonly folder: string;
  /** What is locked, at the beginning of a sentence: `The cabinet ../coins`. */
  readonly thing: string;
  /** How long to wait for another holder, in milliseconds; without it, two minutes. */
  readonly wait?: number;
  /** Is told whom it waits for, once, when that takes more than a moment. */
  readonly tell?: (sentence: string) => void;
};

/** The work under a lock asks nobody anything and ends by itself; a large import on a busy machine takes a minute. */
const WAIT = 120_000;
/** After so many milliseconds of waiting it is told who is waited for. */
const MOMENT = 2_000;
const STEP = 25;
/** A lock with nothing in it is being written, unless it has stood so for this long, in milliseconds. */
const WRITING = 5_000;
const FREE = 'free';

/** The locks this process holds, to be given back when it ends on its own account. */
const held = new Set<string>();
/** Those that it has done with and that a failing disk would not let it give back. They hold up others until it ends. */
const leftLying = new Set<string>();
process.on('exit', () => {
  for (const file of held) giveBackAtOnce(file);
});

/**
 * Does the work while nobody else does any under the same lock; refuses with who holds it when that takes too long.
 *
 * The lock is the file with the highest number in its folder. Whoever finds it free, or its holder dead, creates the next number,
 * which only one can; a number is never used twice, so a slow process cannot take what it saw long ago. The last file stays.
 */
export async function withLock<T>(lock: Lock, who: string, work: () => Promise<T>): Promise<Outcome<T>> {
  const taken = await take(lock, who);
  if (!taken.ok) return taken;
  held.add(taken.value);
  try {
    return good(await work());
  } finally {
    held.delete(taken.value);
    await giveBack(taken.value);
  }
}

/** Whether somebody alive holds this lock now. */
export async function isHeld(folder: string): Promise<boolean> {
  const top = await highest(folder).catch(() => 0);
  return top > 0 && (await stateOf(join(folder, String(top)))) !== 'free';
}

async function take({ folder, thing, wait = WAIT, tell }: Lock, who: string): Promise<Outcome<string>> {
  const began = Date.now();
  let isTold = false;
  makeFolder(folder, 0o700);
  for (;;) {
    const top = await highest(folder);
    const state = top === 0 ? 'free' : await stateOf(join(folder, String(top)));
    if (state === 'free') {
      const mine = join(folder, String(top + 1));
      if (await create(mine, JSON.stringify(holderNow(who)))) {
        if ((await highest(folder)) === top + 1) {
          await clear(folder, top);
          return good(mine);
        }
        // The number had been used and taken away: others have gone past it.
        await rm(mine, { force: true });
      }
      continue;
    }
    const waited = Date.now() - began;
    if (waited >= wait)
      return refuse(state === 'being written' ? `${thing} is being changed. Try again.` : heldBy(thing, state, folder));
    if (!isTold && waited >= MOMENT && state !== 'being written') {
      isTold = true;
      tell?.(`${changedBy(thing, state)}. Waiting for it to end.`);
    }
    await pause(STEP);
  }
}

async function highest(folder: string): Promise<number> {
  const numbers = (await readdir(folder)).filter((name) => /^\d+$/.test(name)).map(Number);
  return Math.max(0, ...numbers);
}

async function stateOf(file: string): Promise<'free' | 'being written' | Holder> {
  if (leftLying.has(file)) return 'free';
  try {
    const text = await readFile(file, 'utf8');
    if (text.trim() === FREE) return 'free';
    const holder = parseHolder(text);
    if (holder !== null) return hasDied(holder) ? 'free' : holder;
    return Date.now() - (await stat(file)).mtimeMs > WRITING ? 'free' : 'being written';
  } catch {
    // Taken away by whoever came after.
    return 'being written';
  }
}

/** Creates a lock with its text in it at once; false where there is one. */
async function create(file: string, text: string): Promise<boolean> {
  const ready = join(file, '..', `.${process.pid}.${Math.random().toString(36).slice(2)}`);
  try {
    await writeFile(ready, text, { mode: 0o600 });
    await link(ready, file);
    return true;
  } catch (error) {
    if (isCode(error, 'EEXIST')) return false;
    if (isCode(error, 'ENOSPC')) throw error;
    // A disk that knows no links.
    return await writeFile(file, text, { flag: 'wx', mode: 0o600 }).then(
      () => true,
      (again: unknown) => {
        if (isCode(again, 'EEXIST')) return false;
        throw again;
      },
    );
  } finally {
    await rm(ready, { force: true }).catch(() => undefined);
  }
}

/** Removes what is below the lock now held: numbers that are over, and what a process that died left behind. */
async function clear(folder: string, over: number): Promise<void> {
  for (const name of await readdir(folder)) {
    const isOver = /^\d+$/.test(name) && Number(name) <= over;
    const writer = /^\.(\d+)\./.exec(name)?.[1];
    if (isOver || (writer !== undefined && !isRunning(Number(writer)))) await rm(join(folder, name), { force: true });
  }
}

async function giveBack(file: string): Promise<void> {
  const ready = `${file}.free`;
  try {
    await writeFile(ready, FREE, { mode: 0o600 });
    await rename(ready, file);
  } catch {
    // A full disk: no file, no lock. The number is lost, which matters only to a process asleep since before it.
    await rm(ready, { force: true }).catch(() => undefined);
    await rm(file, { force: true }).catch(() => leftLying.add(file));
  }
}

function giveBackAtOnce(file: string): void {
  try {
    writeFileSync(file, FREE);
  } catch {
    // The next command finds the holder dead.
  }
}
