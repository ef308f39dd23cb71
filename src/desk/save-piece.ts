import { PIECE_ROWS } from '../catalogue/fields/piece-fields.ts';
import { splitFrontMatter } from '../catalogue/front-matter.ts';
import type { Problem } from '../catalogue/problem.ts';
import { editStory } from '../catalogue/write/edit-fields.ts';
import { editFacts } from '../catalogue/write/edit-list.ts';
import { editRow } from '../catalogue/write/edit-table.ts';
import { PIECE_ORDER } from '../catalogue/write/write-piece.ts';
import { readYaml } from '../catalogue/yaml.ts';
import { LEDGER_COLUMNS, LEDGER_NAMES, isLedgerColumn } from '../catalogue/fields/ledger-columns.ts';
import { digestOf, LEDGER } from './cabinet-state.ts';
import type { CabinetState } from './cabinet-state.ts';
import type { FileChange } from './cabinet-files.ts';
import { ledgerRow, withCurrency } from './form/ledger-rows.ts';
import { changesIn, isFields, leavesOf } from './form/leaves.ts';
import type { Fields, Leaf, Posted } from './form/leaves.ts';
import type { Meant, NewName } from './new-names.ts';
import { namesMeant, withIds } from './new-names.ts';
import { rowNamed } from './form/read-aloud.ts';

/** A piece as it lies on the disk: its texts, and what they say. */
export type PieceOnDesk = {
  readonly id: string;
  readonly file: string;
  readonly text: string;
  readonly digest: string;
  /** Null where the facts cannot be read; then only the text can be edited. */
  readonly facts: Fields | null;
  readonly leaves: readonly Leaf[];
  /** What the file holds and the form does not know, by its name. */
  readonly unknown: readonly string[];
  readonly story: string;
  readonly ledgerText: string | null;
  readonly ledger: Readonly<Record<string, string>>;
  readonly ledgerColumns: readonly string[];
};

/** What came of a save. */
export type Saved =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'stale' }
  | { readonly kind: 'wrong'; readonly problems: readonly Problem[]; readonly unread: Readonly<Record<string, string>> }
  | { readonly kind: 'ready'; readonly changes: readonly FileChange[]; readonly made: readonly NewName[] };

/** Reads a piece for its form; null when there is none. */
export async function readPiece(state: CabinetState, id: string): Promise<PieceOnDesk | null> {
  const file = `pieces/${id}/piece.md`;
  const text = await state.textOf(file);
  if (text === null) return null;
  const ledgerText = await state.textOf(LEDGER);
  const halves = splitFrontMatter(text);
  const read = readYaml((halves?.facts ?? '').replace(/^\uFEFF/, ''));
  const facts = halves !== null && read.ok && isFields(read.value) ? read.value : null;
  const row = state.ledger().get(id) ?? {};
  const own = Object.keys(row).filter((column) => !isLedgerColumn(column) && !['', 'piece'].includes(column));
  return {
    id,
    file,
    text,
    digest: digestOf(`${text}\n${ledgerText ?? ''}`),
    facts,
    leaves: facts === null ? [] : leavesOf(PIECE_ROWS, facts),
    unknown: Object.keys(facts ?? {}).filter((name) => !(name in PIECE_ROWS)),
    story: (halves?.story ?? '').replace(/\r\n?/g, '\n').trim(),
    ledgerText,
    ledger: row,
    ledgerColumns: [...LEDGER_NAMES, ...own],
  };
}

/**
 * What a form would write of a piece, checked and not yet written: only the fields whose words were changed, in the lines they
 * are in. A form that was made from another text than is there now is stale.
 */
export function savePiece(state: CabinetState, piece: PieceOnDesk, posted: Posted): Saved {
  if (posted.get('digest') !== piece.digest) return { kind: 'stale' };
  const { named, unread: slips } = changesOf(state, piece.leaves, 'pieces', posted);
  const unread = { ...slips, ...named.unknown };
  const edited = editFacts(piece.text, named.changes, PIECE_ORDER);
  if (!edited.ok) return { kind: 'wrong', problems: [], unread: { ...unread, '': edited.problem } };
  const story = posted.get('story')?.replace(/\r\n?/g, '\n');
  const text = story === undefined || story === piece.story ? edited.value : editStory(edited.value, story);
  const ledger = ledgerAfter(piece, posted, state.records().cabinet?.fields.currency);
  const files: readonly FileChange[] = [
    ...named.made.map(({ file, text: list }) => ({ file, text: list, from: null })),
    ...(ledger === (piece.ledgerText ?? '') ? [] : [{ file: LEDGER, text: ledger, from: piece.ledgerText }]),
    ...(text === piece.text ? [] : [{ file: piece.file, text, from: piece.text }]),
  ];
  const isSlip = Object.keys(unread).length > 0;
  if (files.length === 0 && !isSlip) return { kind: 'nothing' };
  // What is told of an unknown name says more than what is wrong with it as the name of a file.
  const problems = state.problemsOf(files).filter(({ field }) => !isUnder(field ?? '', Object.keys(unread)));
  return problems.length > 0 || isSlip
    ? { kind: 'wrong', problems, unread }
    : { kind: 'ready', changes: files, made: named.made };
}

/** What a form changes, with ids for the names in it. */
export function changesOf(
  state: CabinetState,
  leaves: readonly Leaf[],
  kind: string,
  posted: Posted,
): { readonly unread: Readonly<Record<string, string>>; readonly named: Meant } {
  const records = state.records();
  const { changes, unread } = changesIn(
    leaves,
    withIds(posted, (box) => rowNamed(box, kind), records),
  );
  return { unread, named: namesMeant(changes, leaves, posted, records) };
}

function ledgerAfter(
  { id, ledgerText, ledger, ledgerColumns }: PieceOnDesk,
  posted: Posted,
  currency: string | undefined,
): string {
  const cells: Record<string, string> = {};
  for (const column of ledgerColumns) {
    const words = posted.get(`ledger.${column}`)?.replace(/\r\n?/g, '\n').trim();
    if (words === undefined || words === (ledger[column] ?? '').trim()) continue;
    cells[column] = ledgerRow(column).reads === 'money' ? withCurrency(words, currency) : words;
  }
  if (Object.keys(cells).length === 0) return ledgerText ?? '';
  const before = (ledgerText ?? '').trim() === '' ? `${LEDGER_COLUMNS.join(',')}\n` : (ledgerText ?? '');
  return editRow(before, { column: 'piece', value: id }, cells);
}

/** Whether a field is one of these boxes or an entry in one. */
function isUnder(field: string, boxes: readonly string[]): boolean {
  return boxes.some((box) => box !== '' && (field === box || field.startsWith(`${box}.`)));
}
