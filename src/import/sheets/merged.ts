import { formatColumn } from './column-letter.ts';
import type { Grid, GridRow } from './grid.ts';
import { LIMITS } from './limits.ts';
import type { SheetCell, SheetRemark } from './sheet.ts';

/**
 * Rows with the text of a cell that is merged over several of them in each, as a reader sees it. A figure or a sum stays
 * in the first row alone: one price beside five rows is the price of the five, and five prices would be invented.
 */
export function spreadMerges(
  grid: Pick<Grid, 'merges'>,
  rows: readonly GridRow[],
): { readonly rows: readonly GridRow[]; readonly remarks: readonly SheetRemark[] } {
  const downward = grid.merges.filter(({ fromRow, toRow }) => toRow > fromRow);
  if (downward.length === 0) return { rows, remarks: [] };
  const at = new Map(rows.map(({ row }, index) => [row, index]));
  const spread = rows.map((row) => row);
  const remarks: SheetRemark[] = [];
  let filled = 0;
  for (const { fromRow, toRow, fromColumn } of downward) {
    const first = at.get(fromRow);
    const cell = first === undefined ? undefined : rows[first]?.cells[fromColumn];
    if (first === undefined || cell === undefined || cell.text === '') continue;
    const covered: number[] = [];
    for (let index = first + 1; index < rows.length && filled < LIMITS.cells; index += 1) {
      const row = spread[index];
      if (row === undefined || row.row > toRow) break;
      covered.push(row.row);
      if (isFigure(cell) || (row.cells[fromColumn]?.text ?? '') !== '') continue;
      const cells = [...row.cells];
      cells[fromColumn] = cell;
      spread[index] = { ...row, cells };
      filled += 1;
    }
    if (covered.length === 0) continue;
    const where = `${formatColumn(fromColumn)}${fromRow}:${formatColumn(fromColumn)}${toRow}`;
    remarks.push({
      rows: [fromRow, ...covered],
      says: isFigure(cell)
        ? `${where} is one cell merged over several rows. Its figure is in row ${fromRow} alone; write it into the others if it is theirs too.`
        : `${where} is one cell merged over several rows. Its text is read in each of them.`,
    });
  }
  return { rows: spread, remarks };
}

function isFigure({ text, value }: SheetCell): boolean {
  return value?.kind === 'number' || value?.kind === 'money' || /^[\s\d.,£€$]+$/.test(text);
}
