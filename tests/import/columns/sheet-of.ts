import type { Sheet, SheetCell } from '../../../src/import/sheets/sheet.ts';

/** A sheet of headings and rows, as a text file would give it. */
export function sheetOf(headings: readonly string[], rows: readonly (readonly (string | SheetCell)[])[]): Sheet {
  return {
    name: 'coins',
    isHidden: false,
    headingRow: 1,
    columns: headings.map((heading, at) => ({ letter: String.fromCharCode(65 + at), heading, isHidden: false })),
    rows: rows.map((cells, at) => ({
      row: at + 2,
      cells: headings.map((_, place) => {
        const cell = cells[place] ?? '';
        return typeof cell === 'string' ? { text: cell } : cell;
      }),
    })),
    setAside: [],
  };
}
