import { readCsv } from '../csv.ts';
import type { CabinetFile } from '../files.ts';
import type { Filed, FiledSeries } from '../records.ts';
import type { SeriesFields } from '../schema/series.ts';
import { lineOf } from '../yaml.ts';
import { TABLE_NAMES } from './series-tables.ts';
import type { SeriesRows, SeriesTable } from './series-tables.ts';

/** The tables that stand in the folder of a series, or, for a small one, in its `series.yaml`. */
export function withTables(
  series: Filed<SeriesFields>,
  files: ReadonlyMap<string, CabinetFile>,
): Omit<FiledSeries, 'whole'> {
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
