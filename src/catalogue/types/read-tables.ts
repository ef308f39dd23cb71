import { readCsv } from '../csv.ts';
import type { CabinetFile } from '../files.ts';
import type { Filed, FiledSeries } from '../records.ts';
import type { SeriesFields } from '../schema/series.ts';
import { lineOf } from '../yaml.ts';
import { TABLE_NAMES } from './series-tables.ts';
import type { SeriesRow, SeriesRows, SeriesTable } from './series-tables.ts';

/** The tables that are in the folder of a series, or, for a small one, in its `series.yaml`. */
export function withTables(
  series: Filed<SeriesFields>,
  files: ReadonlyMap<string, CabinetFile>,
): Omit<FiledSeries, 'whole' | 'drawn'> {
  const folder = series.file.slice(0, series.file.lastIndexOf('/'));
  const text = files.get(series.file)?.text ?? '';
  const tables: Partial<Record<SeriesTable, SeriesRows>> = {};
  for (const name of TABLE_NAMES) {
    const file = `${folder}/${name}.csv`;
    const csv = files.get(file)?.text;
    const listed = series.fields[name];
    if (typeof csv === 'string') {
      const { headings, rows, lines } = readCsv(csv);
      const columns = headings.map(plainHeading);
      tables[name] = { file, columns, rows: rows.map((row, at) => ({ line: lines[at] ?? 1, cells: cellsOf(row) })) };
    } else if (listed !== undefined) {
      tables[name] = {
        file: series.file,
        columns: [...new Set(listed.flatMap((row) => Object.keys(row)))],
        rows: listed.map((row, at) => ({ line: lineOf(text, [name, at]), cells: row })),
      };
    }
  }
  return { ...series, tables };
}

/** `Grade  Scale` is `grade scale`. */
function plainHeading(heading: string): string {
  return heading.trim().toLowerCase().replace(/\s+/gu, ' ');
}

/** The cells that say something, by column. */
function cellsOf(row: Readonly<Record<string, string>>): Readonly<Record<string, string>> {
  const cells = Object.entries(row).map(([heading, cell]): [string, string] => [plainHeading(heading), cell.trim()]);
  return Object.fromEntries(cells.filter(([, cell]) => cell !== ''));
}

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

/** The type a row is of; null, with a slip, where the series has none of that id. */
export function typeIn(
  found: Found,
  table: SeriesTable,
  row: SeriesRow,
  isKnown: (id: string) => boolean,
): string | null {
  const type = wanted(found, table, row, 'type');
  if (type === null || isKnown(type)) return type;
  slipAt(found, table, row, 'type', `There is no type ${type} in this series. Write the id of a row of types.csv.`);
  return null;
}
