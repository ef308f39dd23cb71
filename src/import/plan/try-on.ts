import { checkRecords } from '../../catalogue/check-records.ts';
import type { CabinetFolder } from '../../catalogue/files.ts';
import { PRIVACY } from '../../privacy/privacy.ts';
import type { Problem } from '../../catalogue/problem.ts';
import { readCabinet } from '../../catalogue/read-cabinet.ts';
import type { Records } from '../../catalogue/records.ts';
import type { NewFile } from '../names/new-list-file.ts';
import type { PlacedPiece } from './place-piece.ts';

/** What `check` would say of a fact; `isSecret` where the fact may stand in no public file at all. */
export type Refused = { readonly field: string | null; readonly says: string; readonly isSecret: boolean };

export type TriedOn = {
  readonly folder: CabinetFolder;
  readonly records: Records;
  readonly lists: readonly NewFile[];
  readonly pieces: readonly PlacedPiece[];
  /** The ledger as it will be; null when it stays. */
  readonly ledger: string | null;
};

/** What `check` would say of new and changed pieces once they are in the cabinet, by row. */
export function tryOn({ folder, records, lists, pieces, ledger }: TriedOn): ReadonlyMap<number, readonly Refused[]> {
  const rows = new Map(pieces.map(({ file, row }) => [file, row]));
  const before = folder.files.filter(({ file }) => !file.startsWith('pieces/') && !file.startsWith('private/import/'));
  const others = ledger === null ? before : before.filter(({ file }) => file !== 'private/ledger.csv');
  const tried: CabinetFolder = {
    at: folder.at,
    files: [
      ...others,
      ...(ledger === null ? [] : [{ file: 'private/ledger.csv', text: ledger }]),
      ...lists,
      ...pieces.map(({ file, text }) => ({ file, text })),
      ...folder.files.filter(({ file }) => file.startsWith('pieces/') && !file.endsWith('/piece.md')),
    ],
  };
  const read = readCabinet(tried);
  const texts = new Map(tried.files.map(({ file, text }) => [file, text]));
  const found = [
    ...read.problems,
    // Where a problem stands is told by its field; the line is not wanted here.
    ...checkRecords(read.records, tried, PRIVACY, (file, path) => ({
      file,
      line: null,
      field: path.join('.') || null,
    })),
    ...PRIVACY.inTexts({ ...read.records, pieces: joined(records, read.records) }, tried),
  ];
  const refused = new Map<number, Refused[]>();
  for (const problem of found) {
    const row = rows.get(problem.file);
    if (row === undefined) continue;
    const isSecret = problem.kind === 'private-in-text' || problem.kind === 'spot-too-exact';
    const field = problem.kind === 'private-in-text' ? fieldAt(texts.get(problem.file) ?? '', problem) : problem.field;
    // The ledger tried on has lines that no file has yet.
    const says = problem.says.replace(/ in its line \d+(?=,)/, '');
    refused.set(row, [...(refused.get(row) ?? []), { field, says, isSecret }]);
  }
  return refused;
}

/** The pieces of the cabinet, those tried on in place of those that were there. */
function joined(before: Records, now: Records): Records['pieces'] {
  const files = new Set(now.pieces.map(({ file }) => file));
  return [...before.pieces.filter(({ file }) => !files.has(file)), ...now.pieces];
}

/** The field that the line of a problem belongs to; null for the story. */
function fieldAt(text: string, { line }: Problem): string | null {
  const lines = text.split('\n').slice(0, line ?? 0);
  if (lines.slice(1).includes('---')) return null;
  const top = lines.findLast((one) => /^[a-z]/.test(one));
  return top?.slice(0, top.indexOf(':')) ?? null;
}
