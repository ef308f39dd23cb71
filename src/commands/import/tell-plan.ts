import { formatInLine } from '../../catalogue/write/write-yaml.ts';
import type { Conflict } from '../../import/reimport/three-way.ts';
import type { ImportPlan } from '../../import/plan/plan-import.ts';
import type { ListKind } from '../../catalogue/write/write-piece.ts';
import type { Written } from '../../catalogue/yaml.ts';
import { shorten } from './tell-columns.ts';
import type { UnreadCell } from '../../import/plan/draft.ts';
import { grouped } from '../../import/names/grouped.ts';

/** Lines of a list that are told; the rest is counted. */
const TOLD = 12;

/** What a plan comes to, for a keeper to read: counts that add up, then each thing there is to know. */
export function tellPlan(plan: ImportPlan, rows: number, fullList: string): string {
  const count = (state: string): number => plan.pieces.filter((piece) => piece.state === state).length;
  const isAgain = plan.pieces.some(({ state }) => state !== 'new');
  const aside = plan.setAside.length;
  const sum = [
    `${count('new')} new ${count('new') === 1 ? 'piece' : 'pieces'}`,
    ...(isAgain ? [`${count('changed')} changed`, `${count('same')} as they were`] : []),
    `${aside} skipped`,
  ];
  return [
    `${rows} ${rows === 1 ? 'row' : 'rows'} = ${sum.join(' + ')}`,
    setAsideInWords(plan),
    section(
      'Changed',
      plan.pieces.filter(({ state }) => state === 'changed'),
      ({ id, changed }) => `${id}: ${changed.join(', ')}`,
    ),
    section(
      'Changed in the sheet and by hand since; the file is left as it is',
      plan.pieces.flatMap(({ id, conflicts }) => conflicts.map((conflict) => ({ id, conflict }))),
      ({ id, conflict }) => `${id}, ${inWords(conflict)}`,
      'Add --conflicts sheet to write what the sheet says, or --conflicts file to keep what the files say and not be told again.',
    ),
    section(
      'Emptied in the sheet; kept in the piece',
      plan.pieces.flatMap(({ id, emptied }) => emptied.map((path) => `${id}, ${path}`)),
      (line) => line,
    ),
    section(
      'No longer in the sheet; kept in the cabinet',
      plan.vanished,
      ({ id, number }) => `${id} (number ${number})`,
    ),
    newLists(plan),
    section('To look at', plan.remarks, (line) => line),
    tellUnread(plan.unread, fullList),
  ]
    .filter((part) => part !== '')
    .join('\n\n');
}

/** Rows skipped for one reason are told together. */
function setAsideInWords({ setAside }: ImportPlan): string {
  const reasons = new Map<string, { row: number; text: string }[]>();
  for (const { row, text, because } of setAside) reasons.set(because, [...(reasons.get(because) ?? []), { row, text }]);
  return section(`Skipped (${setAside.length})`, [...reasons], ([because, rows]) => {
    const shown = rows
      .slice(0, TOLD)
      .map(({ row, text }) =>
        text === '' || rows.length > 6 ? String(row) : `${row} [${shorten(text, rows.length === 1 ? 60 : 24)}]`,
      );
    const more = rows.length > TOLD ? ` and ${rows.length - TOLD} more` : '';
    return `${rows.length === 1 ? 'row' : 'rows'} ${shown.join(', ')}${more}: ${because}`;
  });
}

const LISTS: Readonly<Record<ListKind, string>> = {
  rulers: 'New rulers',
  mints: 'New mints',
  denominations: 'New denominations',
  works: 'New books',
};

function newLists({ lists }: ImportPlan): string {
  const kinds = ['rulers', 'mints', 'denominations', 'works'] as const;
  return kinds
    .flatMap((kind) => {
      const mine = lists.filter((one) => one.kind === kind);
      // Two of one name are told by their files.
      const names = mine.map(({ name, file }) =>
        mine.some((other) => other.name === name && other.file !== file) ? fileName(file) : name,
      );
      const more = names.length > TOLD ? ` and ${names.length - TOLD} more` : '';
      return names.length === 0 ? [] : [`${LISTS[kind]} (${names.length}): ${names.slice(0, TOLD).join(', ')}${more}`];
    })
    .join('\n');
}

/** `james-i-scotland` of `rulers/james-i-scotland.yaml`. */
function fileName(file: string): string {
  return file.slice(file.indexOf('/') + 1, -'.yaml'.length);
}

function section<T>(title: string, all: readonly T[], line: (one: T) => string, after = ''): string {
  if (all.length === 0) return '';
  const lines = all.slice(0, TOLD).map((one) => `  ${line(one)}`);
  const more = all.length > TOLD ? [`  … and ${all.length - TOLD} more`] : [];
  return [
    title.endsWith(')') ? `${title}:` : `${title} (${all.length}):`,
    ...lines,
    ...more,
    ...(after === '' ? [] : [after]),
  ].join('\n');
}

function inWords({ path, was, inSheet, inFile }: Conflict): string {
  return `${path}: the sheet says ${told(inSheet)}, the file ${told(inFile)}; it was ${told(was)}`;
}

function told(value: Written | null): string {
  if (value === null) return 'nothing';
  return typeof value === 'string' ? `"${shorten(value, 40)}"` : shorten(formatInLine(value), 60);
}

/** Cells of one column that could not be read for one reason. */
type UnreadGroup = { readonly heading: string; readonly cells: readonly UnreadCell[] };

/** Groups that are told, and cells of each; the rest is counted, and is in the file. */
const GROUPS = 12;
const EXAMPLES = 3;

/** Unread cells by column and reason, those of most rows first, and of as many the one that stands first in the sheet. */
export function unreadGroups(unread: readonly UnreadCell[]): readonly UnreadGroup[] {
  return grouped(unread, ({ heading, because }) => `${heading}\n${reasonOf(because)}`)
    .map((cells) => ({ heading: cells[0]?.heading ?? '', cells }))
    .toSorted((a, b) => b.cells.length - a.cells.length || (a.cells[0]?.row ?? 0) - (b.cells[0]?.row ?? 0));
}

/** A sentence without what is of one cell alone: its text in quotation marks, its figures. */
function reasonOf(because: string): string {
  return because.replace(/"[^"]*"/g, '""').replace(/[\d.,:/-]*\d[\d.,:/-]*/g, '0');
}

/** What could not be read, for a keeper to see at a glance what to fix once; empty for nothing. */
export function tellUnread(unread: readonly UnreadCell[], fullList: string): string {
  if (unread.length === 0) return '';
  const groups = unreadGroups(unread);
  const isCut = groups.length > GROUPS || groups.some(({ cells }) => cells.length > EXAMPLES);
  const more = groups.length - GROUPS;
  return [
    `Cells that could not be read; each is kept word for word, under as-written in its piece or in the ledger (${unread.length}):`,
    ...groups.slice(0, GROUPS).flatMap(groupInWords),
    ...(more > 0 ? [`  … and ${more} more ${more === 1 ? 'reason' : 'reasons'}`] : []),
    ...(isCut ? [`All of them: ${fullList}`] : []),
  ].join('\n');
}

function groupInWords({ heading, cells }: UnreadGroup): readonly string[] {
  const [first] = cells;
  if (first === undefined) return [];
  if (cells.length === 1) return [`  row ${first.row}, ${heading}: "${shorten(first.text, 40)}". ${first.because}`];
  const shown = cells.slice(0, EXAMPLES).map(({ row, text }) => `row ${row} "${shorten(text, 30)}"`);
  const more = cells.length > EXAMPLES ? ` and ${cells.length - EXAMPLES} more` : '';
  return [`  ${heading}, ${cells.length} cells: ${shown.join(', ')}${more}`, `    ${first.because}`];
}
