import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import { readCsv } from '../catalogue/csv.ts';
import type { CabinetFolder } from '../catalogue/files.ts';
import type { Improvement } from '../catalogue/improvements.ts';
import { recoverCabinet } from '../catalogue/keep/change-cabinet.ts';
import { readBetweenStrokes, strokesOfOthers } from '../catalogue/keep/journal.ts';
import { LIFE } from '../catalogue/life-file.ts';
import type { Problem } from '../catalogue/problem.ts';
import { readCabinet } from '../catalogue/read-cabinet.ts';
import type { FiledPiece, Records } from '../catalogue/records.ts';
import { guardOf } from '../privacy/guard.ts';
import type { PrivateGuard } from '../privacy/guard.ts';
import { byName, folderIn, inOrder, isPrivate, pieceIn, readOne } from './cabinet-files.ts';
import type { FileChange, Files } from './cabinet-files.ts';
import { problemsAfter } from './problems-after.ts';

export const LEDGER = 'private/ledger.csv';

/** What `check` finds in the whole cabinet; null while it is looking. */
export type Found = { readonly problems: readonly Problem[]; readonly improvements: readonly Improvement[] } | null;

/** A cabinet that lies open on the desk: read once, and then file by file as it changes. */
export type CabinetState = {
  readonly at: string;
  readonly records: () => Records;
  readonly ledger: () => ReadonlyMap<string, Readonly<Record<string, string>>>;
  readonly found: () => Found;
  /** The text of a file as it lies on the disk now; null when there is none. What it says is taken up. */
  readonly textOf: (file: string) => Promise<string | null>;
  /** The text of a file as it was read last; null when there is none. */
  readonly heldText: (file: string) => string | null;
  /** A piece as it would be read were its text this; null where it cannot be. */
  readonly pieceAs: (id: string, text: string) => FiledPiece | null;
  /** What would be wrong after a change that is not wrong now. */
  readonly problemsOf: (changes: readonly FileChange[]) => readonly Problem[];
  /** Takes up what was written. */
  readonly take: (changes: readonly Pick<FileChange, 'file' | 'text'>[]) => void;
  /** Reads everything again. */
  readonly readAgain: () => Promise<void>;
  /** Reads everything again when another command has changed the cabinet; whether one has. */
  readonly catchUp: () => Promise<boolean>;
  readonly close: () => Promise<void>;
};

export function digestOf(text: string): string {
  return createHash('sha256').update(text).digest('hex');
}

/** Opens a cabinet; null when there is none. The whole of it is checked `pause` milliseconds after the last change. */
export async function openCabinet(at: string, { pause = 1000 } = {}): Promise<CabinetState | null> {
  // What a killed command left is taken back before anything is shown, and not only by the first save.
  await recoverCabinet(at);
  let seen = await strokesOfOthers(at);
  const first = await readBetweenStrokes(at);
  if (first === null) return null;
  let files = byName(first);
  let records = readCabinet(first).records;
  let ledger = ledgerIn(files);
  let kept: PrivateGuard | null = guardOf(first, records);
  const { checkSoon, found, close } = checkerOf(at, pause);
  const folder = (): CabinetFolder => ({ at, files: inOrder(files) });

  function take(changes: readonly Pick<FileChange, 'file' | 'text'>[]): void {
    for (const { file, text } of changes)
      if (text === null) files.delete(file);
      else files.set(file, { file, text });
    if (changes.some(({ file }) => isPrivate(file))) kept = null;
    if (changes.some(({ file }) => file === LEDGER)) ledger = ledgerIn(files);
    records = recordsAfter(records, files, changes) ?? readCabinet(folder()).records;
    checkSoon();
  }

  async function readAgain(): Promise<void> {
    const again = await readBetweenStrokes(at);
    if (again === null) return;
    [files, records, kept] = [byName(again), readCabinet(again).records, null];
    ledger = ledgerIn(files);
    checkSoon();
  }

  async function catchUp(): Promise<boolean> {
    const before = seen;
    seen = await strokesOfOthers(at);
    if (seen !== before) await readAgain();
    return seen !== before;
  }

  checkSoon();
  return {
    at,
    records: () => records,
    ledger: () => ledger,
    found, take, readAgain, catchUp, close,
    textOf: async (file) => {
      const text = await readFile(join(at, file), 'utf8').catch(() => null);
      if (text !== null && text !== (files.get(file)?.text ?? null)) take([{ file, text }]);
      return text;
    },
    heldText: (file) => files.get(file)?.text ?? null,
    pieceAs: (id, text) => readAs(files, id, text),
    problemsOf: (changes) => {
      kept ??= guardOf(folder(), records);
      return problemsAfter({ at, files, records, guard: kept }, changes);
    },
  }; // prettier-ignore
}

/** The records after a change of pieces and of what is private; null where everything must be read again. */
function recordsAfter(
  before: Records,
  files: Files,
  changes: readonly Pick<FileChange, 'file' | 'text'>[],
): Records | null {
  let records = before;
  for (const { file, text } of changes) {
    const id = text === null ? folderIn(file) : pieceIn(file);
    // What became of pieces says where each of them is: then all are read again.
    if (id === null && (!isPrivate(file) || file === LIFE)) return null;
    if (id === null) continue;
    records = files.has(`pieces/${id}/piece.md`)
      ? withPiece(records, readOne(files, id), id)
      : withoutPiece(records, id);
  }
  return records;
}

/** Checks the whole cabinet in a thread of its own, `pause` milliseconds after the last change. */
function checkerOf(at: string, pause: number) {
  let found: Found = null;
  let checking: Worker | null = null;
  let isStale = false;
  let bell: ReturnType<typeof setTimeout> | undefined;

  function checkSoon(): void {
    clearTimeout(bell);
    if (checking === null) bell = setTimeout(check, pause);
    else isStale = true;
  }

  function check(): void {
    checking = new Worker(new URL('./check-worker.ts', import.meta.url), { workerData: at });
    checking.once('message', (told: Found) => (found = told));
    checking.once('error', () => undefined);
    checking.once('exit', () => {
      checking = null;
      if (!isStale) return;
      isStale = false;
      checkSoon();
    });
  }

  async function close(): Promise<void> {
    clearTimeout(bell);
    isStale = false;
    await checking?.terminate();
  }

  return { checkSoon, close, found: () => found };
}

function ledgerIn(files: Files): ReadonlyMap<string, Readonly<Record<string, string>>> {
  return new Map(readCsv(files.get(LEDGER)?.text ?? '').rows.map((row) => [row['piece'] ?? '', row]));
}

/** A piece as it would be read were its text this. */
function readAs(files: Files, id: string, text: string): FiledPiece | null {
  const file = `pieces/${id}/piece.md`;
  return readOne(new Map(files).set(file, { file, text }), id);
}

function withoutPiece(records: Records, id: string): Records {
  const named = records.named.pieces.filter((one) => one !== id);
  return {
    ...records,
    named: { ...records.named, pieces: named },
    pieces: records.pieces.filter((one) => one.id !== id),
  };
}

function withPiece(records: Records, piece: FiledPiece | null, id: string): Records {
  const others = records.pieces.filter((one) => one.id !== id);
  const named = records.named.pieces.includes(id) ? records.named.pieces : [...records.named.pieces, id].sort();
  const pieces = piece === null ? others : [...others, piece].sort((a, b) => (a.id < b.id ? -1 : 1));
  return { ...records, named: { ...records.named, pieces: named }, pieces };
}
