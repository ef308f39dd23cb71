import type { UnreadCell } from '../../import/plan/draft.ts';
import { grouped } from '../../import/names/grouped.ts';
import { shorten } from './tell-columns.ts';

/** Cells of one column that could not be read for one reason. */
export type UnreadGroup = { readonly heading: string; readonly cells: readonly UnreadCell[] };

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
