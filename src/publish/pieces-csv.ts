import { writeCsv } from '../catalogue/csv.ts';
import { DATA_ROWS } from './public-facts.ts';
import type { PublicFacts } from './public-facts.ts';

/** The columns of `pieces.csv`, in the order of the table of fields. */
export const COLUMNS: readonly string[] = ['id', ...DATA_ROWS.flatMap(({ columns }) => columns), 'edtf', 'address'];

/** One row a piece, every cell in the keeper's words; several values in a cell are separated by `; `. */
export function piecesCsv(facts: readonly PublicFacts[]): string {
  return writeCsv(
    COLUMNS,
    facts.map((piece) => COLUMNS.map((column) => cell(column.split(' ').reduce<unknown>(within, piece)))),
  );
}

function within(held: unknown, field: string): unknown {
  return typeof held === 'object' && held !== null ? (held as Readonly<Record<string, unknown>>)[field] : undefined;
}

function cell(value: unknown): string {
  if (value === undefined || value === null) return '';
  if (Array.isArray(value)) return value.map(cell).join('; ');
  if (typeof value === 'object')
    return Object.entries(value)
      .map(([name, held]) => `${name}: ${cell(held)}`)
      .join(', ');
  return typeof value === 'string' ? value : JSON.stringify(value);
}
