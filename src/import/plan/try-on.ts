import { checkRecords } from '../../catalogue/check-records.ts';
import type { Place } from '../../catalogue/rules/rule.ts';
import { readCsv } from '../../catalogue/csv.ts';
import type { CabinetFile, CabinetFolder } from '../../catalogue/files.ts';
import { checkExactLocations } from '../../privacy/exact-in-text.ts';
import { PRIVACY } from '../../privacy/privacy.ts';
import { answerFor } from '../../privacy/not-secret.ts';
import type { Exposed } from '../../privacy/private-in-text.ts';
import type { ReadCabinet } from '../../catalogue/read-cabinet.ts';
import type { Records } from '../../catalogue/records.ts';
import type { NewFile } from '../names/list-file-of-name.ts';
import type { PlacedPiece } from './piece-to-write.ts';

/** What `check` would say of a fact; `secret` where it tells what a private column keeps. */
export type Refused = {
  readonly field: string | null;
  readonly says: string;
  /** Whether the fact may be in no public file at all. */
  readonly isSecret: boolean;
  readonly secret?: Secret;
};

/** The private cell that a public text tells: its column, and the piece it is of, where the ledger says so. */
export type Secret = { readonly column: string; readonly piece: string | null };

/** A private column that a file which is no piece of the sheet tells. */
export type ToldElsewhere = { readonly column: string; readonly file: string };

/** What is said of a private column that a file of the cabinet tells which is no piece of the sheet. */
export function inOtherFile({ column, file }: ToldElsewhere): string {
  return `The private column "${column}" keeps a word that is in ${file} too, which is published, and check will ask about it. Change that file, or write ${column}, the word and today's date in private/not-secret.csv.`;
}

export type TriedOn = {
  /** Reads a cabinet, and of what it read before only what has changed. */
  readonly read: (folder: CabinetFolder) => ReadCabinet;
  /** Finds what is private in a cabinet, and of what it looked through before only what is newly private. */
  readonly exposed: (records: Records, folder: CabinetFolder) => readonly Exposed[];
  readonly folder: CabinetFolder;
  readonly records: Records;
  readonly lists: readonly NewFile[];
  readonly pieces: readonly PlacedPiece[];
  /** The pieces that no earlier round has looked at as they are; without it, all. What is private is looked for in every one. */
  readonly anew?: ReadonlySet<PlacedPiece>;
  /** The day it is, `2026-11-30`. */
  readonly day: string;
  /** The ledger as it will be, the same object for as long as it says the same; null when it stays. */
  readonly ledger: CabinetFile | null;
};

/**
 * What `check` would say of new and changed pieces once they are in the cabinet, by row; and which private columns other files of
 * the cabinet tell.
 */
export function tryOn({ read: readAgain, exposed, folder, records, lists, pieces, ledger, day, anew }: TriedOn): {
  readonly refused: ReadonlyMap<number, readonly Refused[]>;
  readonly elsewhere: readonly ToldElsewhere[];
} {
  const rows = new Map(pieces.map(({ file, row }) => [file, row]));
  const before = folder.files.filter(({ file }) => !file.startsWith('pieces/') && !file.startsWith('private/import/'));
  const others = ledger === null ? before : before.filter(({ file }) => file !== 'private/ledger.csv');
  const tried: CabinetFolder = {
    at: folder.at,
    files: [
      ...others,
      ...(ledger === null ? [] : [ledger]),
      ...lists,
      ...pieces,
      ...folder.files.filter(({ file }) => file.startsWith('pieces/') && !file.endsWith('/piece.md')),
    ],
  };
  const read = readAgain(tried);
  const texts = new Map(tried.files.map(({ file, text }) => [file, text]));
  // Where a problem stands is told by its field; the line is not wanted here.
  const place: Place = (file, path) => ({ file, line: null, field: path.join('.') || null });
  const refused = new Map<number, Refused[]>();
  const tell = (file: string, one: Refused): void => {
    const row = rows.get(file);
    if (row !== undefined) refused.set(row, [...(refused.get(row) ?? []), one]);
  };
  const files = anew === undefined ? null : new Set([...anew].map(({ file }) => file));
  const looked = { ...read.records, pieces: read.records.pieces.filter(({ file }) => files?.has(file) ?? true) };
  const found = [
    ...read.problems,
    ...checkRecords(looked, tried, PRIVACY, day, place),
    ...checkExactLocations(looked, tried),
  ];
  // That two columns say the same is asked once, by check, and not row by row.
  for (const { file, field, says, kind } of found)
    if (kind !== 'told-twice') tell(file, { field, says, isSecret: kind === 'spot-too-exact' });
  const elsewhere = new Map<string, ToldElsewhere>();
  const pieceAt = piecesByLine(texts.get('private/ledger.csv') ?? '');
  for (const { file, at, column, from, line } of exposed(
    { ...read.records, pieces: joined(records, read.records) },
    tried,
  )) {
    const secret = { column, piece: from === 'private/ledger.csv' ? (pieceAt.get(line) ?? null) : null };
    if (!rows.has(file)) elsewhere.set(`${column} ${file}`, { column, file });
    else if (at === null)
      tell(file, { field: 'folder', says: secretIn('the name of its folder', secret), isSecret: false, secret });
    else {
      const field = fieldAt(texts.get(file) ?? '', at);
      tell(file, { field, says: secretIn(field ?? 'the story', secret), isSecret: true, secret });
    }
  }
  return { refused, elsewhere: [...elsewhere.values()] };
}

/** Says where a private cell is told, and what to write, without the cell. */
function secretIn(where: string, { column, piece }: Secret): string {
  const whose = piece === null ? '' : ` of ${piece}`;
  const answer =
    answerFor(column) === '*'
      ? `If that column guards nothing, write ${column},*, and today's date in private/not-secret.csv`
      : `If these words may be known, write ${column}, the words and today's date in private/not-secret.csv`;
  return `This tells, in ${where}, what the private column "${column}"${whose} keeps. ${answer}; if it may be published, give it a field in the mapping; or take the words out here.`;
}

function piecesByLine(ledger: string): ReadonlyMap<number, string> {
  const { rows, lines } = readCsv(ledger);
  return new Map(rows.map((row, at) => [lines[at] ?? 0, (row['piece'] ?? '').trim()]));
}

/** The pieces of the cabinet, those tried on in place of those that were there. */
function joined(before: Records, now: Records): Records['pieces'] {
  const files = new Set(now.pieces.map(({ file }) => file));
  return [...before.pieces.filter(({ file }) => !files.has(file)), ...now.pieces];
}

/** The field that a line of a file belongs to; null for the story. */
function fieldAt(text: string, line: number): string | null {
  const lines = text.split('\n').slice(0, line);
  if (lines.slice(1).includes('---')) return null;
  const top = lines.findLast((one) => /^[a-z]/.test(one));
  return top?.slice(0, top.indexOf(':')) ?? null;
}
