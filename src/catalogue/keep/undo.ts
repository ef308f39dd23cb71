import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';
import { changeCabinet } from './change-cabinet.ts';
import { digestOf, fileAt } from './flush.ts';
import type { ChangedFile, EntryKind } from './journal.ts';
import { keptBefore, pathIn, readEntries } from './journal.ts';

/** One file of a run as it was before it and after it, and where its former bytes are kept. */
export type RunFile = ChangedFile & { readonly kept: { readonly id: string; readonly index: number } };

/** What one command did, or one save, all strokes together. */
export type Run = {
  readonly run: string;
  readonly kind: EntryKind;
  readonly command: string;
  /** In milliseconds since 1970. */
  readonly when: number;
  /** The run this one took back; null for everything but an undo. */
  readonly undoes: string | null;
  /** The undo that took this run back and stands; null where nothing did. To take that back is to do this again. */
  readonly undoneBy: string | null;
  readonly files: readonly RunFile[];
};

/** What the journal knows, undos among it, newest first. */
export async function runsOf(at: string): Promise<readonly Run[]> {
  const runs = new Map<string, Run>();
  const lastStroke = new Map<string, number>();
  for (const [stroke, entry] of (await readEntries(at)).entries()) {
    const { id, run, kind, command, when, undoes, files } = entry;
    const joined = new Map((runs.get(run)?.files ?? []).map((file) => [file.file, file]));
    for (const [index, { file, before, after }] of files.entries()) {
      const first = joined.get(file);
      joined.set(file, {
        file,
        before: first === undefined ? before : first.before,
        after,
        kept: first?.kept ?? { id, index },
      });
    }
    runs.set(run, { run, kind, command, when, undoes, undoneBy: null, files: [...joined.values()] });
    lastStroke.set(run, stroke);
  }
  const newest = [...runs.values()].reverse();
  // An undo that was itself undone undoes nothing; the later ones are known first. Nor does it undo what a run did after it.
  const undone = new Map<string, string>();
  const strokeOf = (run: string): number => lastStroke.get(run) ?? -1;
  for (const { run, undoes } of newest)
    if (undoes !== null && !undone.has(run) && strokeOf(undoes) < strokeOf(run)) undone.set(undoes, run);
  return newest.map((run) => ({ ...run, undoneBy: undone.get(run.run) ?? null }));
}

/**
 * The runs as a keeper counts them, newest first: an undo is a state of the run that it took back and has no number of its own, so
 * that undoing number 1 twice does not undo the undo. One whose run is forgotten stands by itself.
 */
export function countedRuns(runs: readonly Run[]): readonly Run[] {
  const known = new Set(runs.map(({ run }) => run));
  return runs.filter(({ undoes }) => undoes === null || !known.has(undoes));
}

/** The newest run of a command, whether it has been undone or not; null when there is none. */
export async function lastRunOf(at: string, command: string): Promise<Run | null> {
  return countedRuns(await runsOf(at)).find((run) => run.command === command) ?? null;
}

/** The files of a run that are not any more as it left them. */
export async function changedSince(at: string, { files }: Run): Promise<readonly string[]> {
  const changed: string[] = [];
  for (const { file, after } of files) {
    const found = await fileAt(pathIn(at, file));
    if ((found === null ? null : digestOf(found.bytes)) !== after) changed.push(file);
  }
  return changed;
}

/** The bytes of a file before a run; null when it was not there. */
export async function before(at: string, { before: digest, kept }: RunFile): Promise<Uint8Array | null> {
  return digest === null ? null : keptBefore(at, kept.id, kept.index);
}

export type Undone = { readonly restored: number; readonly removed: number; readonly leftAlone: readonly string[] };

/**
 * Puts every file of a run back as it was before it, as one stroke that can itself be undone. Refuses when a file has been changed
 * since, unless what has been changed is to be left alone, and when it has been undone meanwhile.
 */
export async function undoRun(at: string, { run: id }: Run, leaveChanged = false): Promise<Outcome<Undone>> {
  return changeCabinet(at, { command: 'npm run undo', undoes: id }, async (changes) => {
    const run = (await runsOf(at)).find((one) => one.run === id);
    if (run === undefined) return refuse('This has been forgotten: ten other commands came after it.');
    if (run.undoneBy !== null) return refuse(run.undoes === null ? 'This has been undone already.' : 'This has been done again already.'); // prettier-ignore
    const leftAlone = await changedSince(at, run);
    if (leftAlone.length > 0 && !leaveChanged)
      return refuse(
        `${leftAlone.slice(0, 5).join(', ')}${leftAlone.length > 5 ? ` and ${leftAlone.length - 5} more` : ''} ${leftAlone.length === 1 ? 'has' : 'have'} been changed since, so nothing was undone. Undo what came later first, or add --leave-changed to undo the rest.`,
      );
    const files = run.files.filter(({ file }) => !leftAlone.includes(file));
    for (const one of files) {
      const bytes = await before(at, one);
      if (bytes === null) await changes.remove(one.file);
      else await changes.put(one.file, bytes);
    }
    const removed = files.filter((one) => one.before === null && one.after !== null).length;
    return good({ removed, restored: files.length - removed, leftAlone });
  });
}
