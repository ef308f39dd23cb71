import { HEADING_BETWEEN, whyBetween } from './between-rows.ts';
import type { UsualRows } from './between-rows.ts';
import type { GridRow, Merge } from './grid.ts';
import { filledCells } from './heading-row.ts';

const UNIT =
  /^[([]?(g|gr|gm|gms|gram|grams|kg|mm|cm|in|inch|inches|h|oz|oz t|dwt|gn|ct|%|‰|£|€|\$|gbp|eur|usd|chf)[)\]]?\.?$/i;

/** Why a row below the headings is no record of a piece; null for one that is. */
export function whyNoRecord(
  row: GridRow,
  headings: ReadonlyMap<number, string>,
  merges: readonly Merge[],
  usual: UsualRows,
  isAmongLast: boolean,
): string | null {
  const filled = filledCells(row.cells);
  if (repeatsHeadings(row, headings)) return 'it repeats the headings';
  const first = filled[0];
  if (first === undefined) return null;
  const across = merges.some(
    ({ fromRow, toRow, fromColumn, toColumn }) =>
      fromRow === row.row &&
      toRow === row.row &&
      fromColumn === first.column &&
      toColumn - fromColumn + 1 >= headings.size / 2,
  );
  if (filled.length === 1 && across && headings.size > 1) return TITLE_ACROSS;
  return whyBetween(row, usual, headings.size, isAmongLast);
}

const TITLE_ACROSS = 'it is a title that runs across the columns';

/** Whether a row that is no record is the heading of those below it. */
export function isHeadingBetween(because: string): boolean {
  return because === TITLE_ACROSS || because === HEADING_BETWEEN;
}

/** Whether a row says what the headings say, and nothing else. */
export function repeatsHeadings(row: GridRow, headings: ReadonlyMap<number, string>): boolean {
  const filled = filledCells(row.cells);
  const repeats = filled.filter(({ cell, column }) => alike(headings.get(column)) === alike(cell.text));
  return repeats.length === filled.length && filled.length > Math.min(1, headings.size - 1);
}

function alike(text: string | undefined): string {
  return (text ?? '').replace(/\s+/g, ' ').toLowerCase();
}

/** Whether a row says in which unit each column is (`g`, `mm`, `h`) and nothing else. */
export function isRowOfUnits(row: GridRow): boolean {
  const filled = filledCells(row.cells);
  return filled.length > 0 && filled.every(({ cell }) => cell.value === undefined && UNIT.test(cell.text));
}
