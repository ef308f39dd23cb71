import type { GridRow } from './grid.ts';
import type { SheetCell } from './sheet.ts';

/** How far down a row of headings is looked for, in rows that hold something. */
const DEPTH = 40;
const FIGURE = /^[\s\d.,:/%£€$¥+-]+$/;
const YEAR = /^(1[89]|20)\d\d$/;

/**
 * The row that holds the headings: the first that is about as wide as the rows below it, if it is made of words alone.
 * Titles above are narrower. 0 where the first wide row holds figures, and so is a record already.
 */
export function findHeadingRow(rows: readonly GridRow[]): number {
  const top = rows.slice(0, DEPTH);
  const widths = top.map(({ cells }) => filledCells(cells).length);
  const usual = [...widths].sort((a, b) => a - b)[Math.floor(widths.length / 2)] ?? 0;
  const least = usual < 2 ? 1 : Math.max(2, usual / 2);
  const first = widths.findIndex((width) => width >= least);
  if (first === -1) return 0;
  // A title in several cells (`Coins of the house`, `as of May`) may be wide enough; the headings below it are wider.
  const wider = widths.findIndex(
    (width, at) => at > first && at <= first + 10 && width >= (widths[first] ?? 0) * 1.6 && isHeadings(top, at),
  );
  const chosen = wider === -1 ? first : wider;
  return isHeadings(top, chosen) ? (top[chosen]?.row ?? 0) : 0;
}

function isHeadings(rows: readonly GridRow[], at: number): boolean {
  const cells = rows[at]?.cells ?? [];
  const filled = filledCells(cells);
  const texts = filled.map(({ cell }) => cell.text.toLowerCase());
  const repeated = texts.length - new Set(texts).size;
  return (
    repeated <= texts.length / 3 &&
    filled.every(({ cell, column }) => isWords(cell) || isYearOverOther(rows.slice(at + 1), cell, column))
  );
}

function isWords(cell: SheetCell): boolean {
  return cell.value === undefined && cell.text.length <= 120 && !FIGURE.test(cell.text);
}

/** `2019` above a column of sums is a heading; above a column of years it is one of them. */
function isYearOverOther(below: readonly GridRow[], cell: SheetCell, column: number): boolean {
  if (!YEAR.test(cell.text)) return false;
  const texts = below.map(({ cells }) => cells[column]?.text ?? '').filter((text) => text !== '');
  return texts.length > 0 && texts.filter((text) => YEAR.test(text)).length < texts.length / 2;
}

/** The cells of a row that hold something, with their columns. */
export function filledCells(cells: GridRow['cells']): readonly { readonly cell: SheetCell; readonly column: number }[] {
  const filled: { cell: SheetCell; column: number }[] = [];
  // forEach passes over holes, of which a row that ends in column XFD has sixteen thousand.
  cells.forEach((cell, column) => {
    if (cell !== undefined && cell.text !== '') filled.push({ cell, column });
  });
  return filled;
}
