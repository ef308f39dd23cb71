import { LIST_ROWS } from '../catalogue/fields/list-fields.ts';
import type { ListFile } from '../catalogue/fields/list-fields.ts';
import type { FactsTable } from '../catalogue/fields/row.ts';
import { splitFrontMatter } from '../catalogue/front-matter.ts';
import { editStory } from '../catalogue/write/edit-fields.ts';
import { editFacts } from '../catalogue/write/edit-list.ts';
import { readYaml } from '../catalogue/yaml.ts';
import type { Outcome } from '../core/outcome.ts';
import { good, refuse } from '../core/outcome.ts';
import type { CabinetState } from './cabinet-state.ts';
import type { FileChange } from './cabinet-files.ts';
import { digestOf } from './cabinet-state.ts';
import { isFields, leavesOf } from './form/leaves.ts';
import type { Fields, Leaf, Posted } from './form/leaves.ts';
import type { NewName } from './new-names.ts';
import { changesOf } from './save-piece.ts';
import type { Saved } from './save-piece.ts';

/** A file that pieces share, as it is on the disk. */
export type ListFileOnDesk = {
  readonly kind: ListFile;
  readonly id: string;
  readonly file: string;
  readonly text: string;
  readonly digest: string;
  readonly rows: FactsTable;
  /** Null where the facts cannot be read; then only the text can be edited. */
  readonly facts: Fields | null;
  readonly leaves: readonly Leaf[];
  /** The text below the facts of an exhibit; null for files without one. */
  readonly story: string | null;
};

export function isListFile(kind: string): kind is ListFile {
  return Object.hasOwn(LIST_ROWS, kind);
}

/** Reads a file for its form; null when there is none. */
export async function readListFile(state: CabinetState, kind: ListFile, id: string): Promise<ListFileOnDesk | null> {
  const { named } = state.records();
  const isThere = kind === 'cabinet' ? id === 'cabinet' : named[kind].includes(id);
  const file = kind === 'cabinet' ? 'cabinet.yaml' : kind === 'exhibits' ? `exhibits/${id}/exhibit.md` : `${kind}/${id}.yaml`; // prettier-ignore
  const text = isThere ? await state.textOf(file) : null;
  return text === null ? null : listFileOf(kind, id, file, text);
}

export function listFileOf(kind: ListFile, id: string, file: string, text: string): ListFileOnDesk {
  const halves = kind === 'exhibits' ? splitFrontMatter(text) : { facts: text, story: '' };
  const read = readYaml((halves?.facts ?? '').replace(/^\uFEFF/, ''));
  // A file with nothing in it but comments says nothing yet.
  const held = read.ok && read.value === '' ? {} : read.ok ? read.value : null;
  const facts = halves !== null && held !== null && isFields(held) ? held : null;
  const rows = LIST_ROWS[kind];
  return {
    kind, id, file, text, rows, facts,
    digest: digestOf(text),
    leaves: facts === null ? [] : leavesOf(rows, facts),
    story: kind === 'exhibits' ? (halves?.story ?? '').replace(/\r\n?/g, '\n').trim() : null,
  }; // prettier-ignore
}

type Edited = {
  readonly text: string;
  readonly made: readonly NewName[];
  readonly unread: Readonly<Record<string, string>>;
};

/** The text of a file after what a form says, in the lines of the fields it changes; not checked and not written. */
export function editedText(state: CabinetState, held: ListFileOnDesk, posted: Posted): Outcome<Edited> {
  const { unread, named } = changesOf(state, held.leaves, held.kind, posted);
  const { changes: meant, made, unknown } = named;
  const edited = editFacts(held.text, meant, Object.keys(held.rows));
  if (!edited.ok) return refuse(edited.problem);
  const story = held.story === null ? undefined : posted.get('story')?.replace(/\r\n?/g, '\n');
  const text = story === undefined || story === held.story ? edited.value : editStory(edited.value, story);
  return good({ text, made, unread: { ...unread, ...unknown } });
}

/** What a form would write of such a file, checked and not yet written. */
export function saveListFile(state: CabinetState, held: ListFileOnDesk, posted: Posted): Saved {
  if (posted.get('digest') !== held.digest) return { kind: 'stale' };
  const edited = editedText(state, held, posted);
  if (!edited.ok) return { kind: 'wrong', problems: [], unread: { '': edited.problem } };
  const { text, made, unread } = edited.value;
  if (Object.keys(unread).length > 0) return { kind: 'wrong', problems: [], unread };
  const changes: readonly FileChange[] = [
    ...made.map(({ file, text: list }) => ({ file, text: list, from: null })),
    ...(text === held.text ? [] : [{ file: held.file, text, from: held.text }]),
  ];
  if (changes.length === 0) return { kind: 'nothing' };
  const problems = state.problemsOf(changes);
  return problems.length > 0 ? { kind: 'wrong', problems, unread } : { kind: 'ready', changes, made };
}
