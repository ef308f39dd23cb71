import { Worker } from 'node:worker_threads';
import { good, refuse, type Outcome } from '../../../core/outcome.ts';
import { numberFormat, showCell, type NumberFormat } from '../formats/show-cell.ts';
import { sayRows, type Grid, type GridRow, type Hanging } from '../grid.ts';
import { LIMITS, tooManyCells, tooManyLetters, tooManyRows } from '../limits.ts';
import type { SheetCell } from '../sheet.ts';
import type { XlsBook, XlsCell, XlsSheet } from './xls-worker.ts';

const AS_XLSX = 'Open it in a spreadsheet program and save it as .xlsx, .ods or .csv.';

/**
 * The sheets of an old workbook (.xls, BIFF5 and BIFF8), read by a library. That format has no sums to tell damage by, and
 * damaged files keep its reader busy without end, so it works in a thread that is ended after a while or when it takes too
 * much memory. What a cell shows is worked out here, as for every other workbook.
 */
export async function readXls(
  bytes: Uint8Array,
  name: string,
  isWanted: (sheet: string) => boolean,
): Promise<Outcome<{ names: readonly string[]; grids: readonly Grid[] }>> {
  const book = await bookOf(bytes);
  if (book === null) return refuse(`${name} is an old workbook (.xls) that cannot be read to its end. ${AS_XLSX}`);
  const formats = new Map<string, NumberFormat>();
  const taken = { cells: 0, letters: 0 };
  const grids: Grid[] = [];
  for (const sheet of book.sheets.filter((one) => isWanted(one.name))) {
    const grid = gridOf(sheet, book.is1904, formats);
    for (const { cells } of grid.rows)
      cells.forEach((cell) => {
        taken.cells += 1;
        taken.letters += cell?.text.length ?? 0;
      });
    if (grid.rows.length > LIMITS.rows) return refuse(tooManyRows(sheet.name));
    if (taken.cells > LIMITS.cells) return refuse(tooManyCells(sheet.name));
    if (taken.letters > LIMITS.letters) return refuse(tooManyLetters(sheet.name));
    grids.push(grid);
  }
  return good({ names: book.sheets.map((sheet) => sheet.name), grids });
}

/** What the library makes of the file; null when it fails, or must be stopped. */
function bookOf(bytes: Uint8Array): Promise<XlsBook | null> {
  return new Promise((resolve) => {
    const worker = new Worker(new URL('xls-worker.ts', import.meta.url), {
      workerData: bytes,
      resourceLimits: { maxOldGenerationSizeMb: LIMITS.oldWorkbookMegabytes },
      // It writes of records it does not know, which tells a keeper nothing.
      stdout: true,
      stderr: true,
    });
    const end = (book: XlsBook | null): void => {
      clearTimeout(timer);
      resolve(book);
      void worker.terminate();
    };
    const timer = setTimeout(() => end(null), LIMITS.oldWorkbookMilliseconds);
    worker.once('message', (book: XlsBook) => end(book));
    worker.once('error', () => end(null));
    worker.once('exit', () => end(null));
  });
}

function gridOf(sheet: XlsSheet, is1904: boolean, formats: Map<string, NumberFormat>): Grid {
  const rows = new Map<number, (SheetCell | undefined)[]>();
  const noughts: number[] = [];
  for (const cell of sheet.cells) {
    const shown = shownCell(cell, is1904, formats);
    if (shown.text === '') continue;
    const cells = rows.get(cell.row) ?? [];
    cells[cell.column] = shown;
    rows.set(cell.row, cells);
    if (cell.isFormula && cell.value === 0) noughts.push(cell.row + 1);
  }
  const hiddenRows = new Set(sheet.hiddenRows);
  const isThere = (hanging: Hanging & { readonly at: XlsCell }): boolean => hanging.text.trim() !== '';
  const hanging = (textOf: (cell: XlsCell) => string | null): readonly Hanging[] =>
    sheet.cells
      .map((cell) => ({ row: cell.row + 1, column: cell.column, text: textOf(cell) ?? '', at: cell }))
      .filter(isThere)
      .map(({ row, column, text }) => ({ row, column, text }));
  const says = `Formulas in ${sayRows([...new Set(noughts)])} have 0 for their stored result, which some programs write instead of working it out. Open the workbook in a spreadsheet program and save it as .xlsx, and their results are read.`;
  return {
    name: sheet.name,
    isHidden: sheet.isHidden,
    rows: [...rows]
      .toSorted(([a], [b]) => a - b)
      .map(([row, cells]): GridRow => ({ row: row + 1, cells, ...(hiddenRows.has(row) && { isHidden: true }) })),
    hiddenColumns: new Set(sheet.hiddenColumns),
    merges: sheet.merges.map(({ from, to }) => ({
      fromRow: from[0] + 1,
      toRow: to[0] + 1,
      fromColumn: from[1],
      toColumn: to[1],
    })),
    comments: hanging(({ comment }) => comment),
    links: hanging(({ link, value }) => (link === null || link === value ? null : link)),
    remarks: noughts.length === 0 ? [] : [{ rows: [...new Set(noughts)], says }],
  };
}

function shownCell(cell: XlsCell, is1904: boolean, formats: Map<string, NumberFormat>): SheetCell {
  const { type, value, format } = cell;
  if (type === 'e') return { text: cell.shown, value: { kind: 'error', says: cell.shown } };
  if (typeof value === 'boolean') return { text: value ? 'TRUE' : 'FALSE' };
  if (typeof value !== 'number') return { text: (value ?? '').replace(/\r\n?/g, '\n').trim() };
  const known = formats.get(format) ?? numberFormat(format);
  formats.set(format, known);
  return showCell(value, known, is1904);
}
