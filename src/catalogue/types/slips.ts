import type { FiledSeries } from '../records.ts';
import type { SeriesRow, SeriesTable } from './series-tables.ts';

/** Something wrong in a table of a series, by the line and the column of the cell. */
export type SeriesSlip = {
  readonly table: SeriesTable | 'series';
  readonly line: number;
  readonly column: string;
  readonly says: string;
};

/** A series on its way, and the slips found so far. */
export type Found = { readonly slips: SeriesSlip[]; readonly series: FiledSeries };

export function rowsIn({ series }: Found, table: SeriesTable): readonly SeriesRow[] {
  return series.tables[table]?.rows ?? [];
}

export function rowOf(found: Found, table: SeriesTable, id: string | null): SeriesRow | null {
  return rowsIn(found, table).find(({ cells }) => cells['id'] === id) ?? null;
}

export function slipAt(
  { slips }: Found,
  table: SeriesTable,
  row: SeriesRow | null,
  column: string,
  says: string,
): void {
  slips.push({ table: row === null ? 'series' : table, line: row?.line ?? 1, column, says });
}

/** The words of a column, or a slip that they are wanted. */
export function wanted(found: Found, table: SeriesTable, row: SeriesRow, column: string): string | null {
  const text = row.cells[column];
  if (text !== undefined) return text;
  slipAt(
    found,
    table,
    row,
    column,
    `This row has no ${column}, so it belongs to nothing. Write it, or take the row out.`,
  );
  return null;
}
