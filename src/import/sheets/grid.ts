import type { SheetCell, SheetRemark } from './sheet.ts';

/** A row of a grid: its cells by column, with holes where there are none. */
export type GridRow = {
  /** As a spreadsheet counts, from 1. */
  readonly row: number;
  readonly cells: readonly (SheetCell | undefined)[];
  readonly isHidden?: boolean;
  /** How many cells the row was written with, where the file says; a text file does. */
  readonly written?: number;
};

/** Rows and columns that are one cell, all ends inclusive; columns from 0. */
export type Merge = {
  readonly fromRow: number;
  readonly toRow: number;
  readonly fromColumn: number;
  readonly toColumn: number;
};

/** What hangs on a cell besides its text: a comment, or an address it leads to. */
export type Hanging = { readonly row: number; readonly column: number; readonly text: string };

/** A sheet as it lies in the file, before anyone asks which row holds the headings. */
export type Grid = {
  readonly name: string;
  readonly isHidden: boolean;
  /** Rows that hold something, from the top down. */
  readonly rows: readonly GridRow[];
  readonly hiddenColumns: ReadonlySet<number>;
  readonly merges: readonly Merge[];
  readonly comments: readonly Hanging[];
  readonly links: readonly Hanging[];
  /** The row that the file itself says holds the headings, as the first of a filter or a table does. */
  readonly statedHeadingRow?: number;
  readonly remarks: readonly SheetRemark[];
};

/** A grid of rows alone, as a text file gives one. */
export function gridOfRows(name: string, rows: readonly GridRow[]): Grid {
  return { name, isHidden: false, rows, hiddenColumns: new Set(), merges: [], comments: [], links: [], remarks: [] };
}

/** "row 5", "rows 5, 9 and 12", "rows 5, 9, 12 and 40 others". */
export function sayRows(rows: readonly number[]): string {
  if (rows.length === 1) return `row ${rows[0] ?? ''}`;
  const shown = rows.slice(0, rows.length > 6 ? 5 : 6);
  const others = rows.length - shown.length;
  const last = others > 0 ? `${others} others` : String(shown.pop() ?? '');
  return `rows ${shown.join(', ')} and ${last}`;
}
