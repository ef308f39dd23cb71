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
  readonly isUndone: boolean;
  readonly isUndo: boolean;
  readonly files: readonly RunFile[];
};

/** What can be undone, newest first. */
export async function runsOf(at: string): Promise<readonly Run[]> {
  const runs = new Map<string, Run & { readonly undoes: string | null }>();
  for (const { id, run, kind, command, when, undoes, files } of await readEntries(at)) {
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
    runs.set(run, {
      run,
      kind,
      command,
      when,
      undoes,
      isUndone: false,
      isUndo: undoes !== null,
      files: [...joined.values()],
    });
  }
  // An undo that was itself undone undoes nothing; the later ones are known first.
  const undone = new Set<string>();
  for (const { run, undoes } of [...runs.values()].reverse())
    if (undoes !== null && !undone.has(run)) undone.add(undoes);
  return [...runs.values()].reverse().map(({ undoes: _, ...run }) => ({ ...run, isUndone: undone.has(run.run) }));
}

/** The newest run of a command that has not been undone; null when there is none. */
export async function lastRunOf(at: string, command: string): Promise<Run | null> {
  return (await runsOf(at)).find((run) => run.command === command && !run.isUndone && !run.isUndo) ?? null;
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
 * since, unless what has been changed is to be left alone.
 */
export async function undoRun(at: string, run: Run, leaveChanged = false): Promise<Outcome<Undone>> {
  return changeCabinet(at, { command: 'npm run undo', undoes: run.run }, async (changes) => {
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
