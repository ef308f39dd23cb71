import type { GridRow, Merge } from './grid.ts';
import { filledCells } from './heading-row.ts';

const TOTAL =
  /^(grand total|sub-?total|total|totals|sum|summe|gesamt|gesamtsumme|somme|totaux|totale|somma|suma|totaal|итого|всего)\b[:\s]*$/iu;
const UNIT =
  /^[([]?(g|gr|gm|gms|gram|grams|kg|mm|cm|in|inch|inches|h|oz|oz t|dwt|gn|ct|%|‰|£|€|\$|gbp|eur|usd|chf)[)\]]?\.?$/i;

/** Why a row below the headings is no record of a piece; null for one that is. */
export function whyNoRecord(
  row: GridRow,
  headings: ReadonlyMap<number, string>,
  merges: readonly Merge[],
  isAmongLast: boolean,
): string | null {
  const filled = filledCells(row.cells);
  const repeats = filled.filter(({ cell, column }) => headings.get(column) === cell.text);
  if (repeats.length === filled.length && filled.length > Math.min(1, headings.size - 1)) {
    return 'it repeats the headings';
  }
  const first = filled[0];
  if (first === undefined) return null;
  const isSum = ({ cell }: { readonly cell: { readonly text: string } }): boolean => /\d/.test(cell.text);
  if (isAmongLast && TOTAL.test(first.cell.text) && filled.slice(1).every(isSum)) return 'it is a total';
  const across = merges.some(
    ({ fromRow, toRow, fromColumn, toColumn }) =>
      fromRow === row.row &&
      toRow === row.row &&
      fromColumn === first.column &&
      toColumn - fromColumn + 1 >= headings.size / 2,
  );
  return filled.length === 1 && across && headings.size > 1 ? 'it is a title that runs across the columns' : null;
}

/** Whether a row says in which unit each column is (`g`, `mm`, `h`) and nothing else. */
export function isRowOfUnits(row: GridRow): boolean {
  const filled = filledCells(row.cells);
  return filled.length > 0 && filled.every(({ cell }) => cell.value === undefined && UNIT.test(cell.text));
}
