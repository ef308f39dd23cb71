import type { CutOut, Paper, PaperSheet, PlacedCell } from './paper.ts';
import { MARGIN, across, fitted, roomOn, withCutMarks } from './paper.ts';

/** Equal cells on a sheet, in millimetres from one to the next. */
export type CellGrid = {
  readonly columns: number;
  readonly rows: number;
  readonly right: number;
  readonly down: number;
  readonly isAcross: boolean;
};

type Size = { readonly width: number; readonly height: number };

/** As many cells of this size as a sheet holds; on paper laid across when that saves a sheet. */
export function gridFor(cell: Size, between: number, count: number, paper: Paper): CellGrid {
  const on = (laid: Paper, isAcross: boolean): CellGrid => {
    const room = roomOn(laid);
    return {
      columns: Math.max(1, Math.floor((room.width + between) / (cell.width + between))),
      rows: Math.max(1, Math.floor((room.height + between) / (cell.height + between))),
      right: cell.width + between,
      down: cell.height + between,
      isAcross,
    };
  };
  const [upright, laid] = [on(paper, false), on(across(paper), true)];
  const sheets = (grid: CellGrid): number => Math.ceil(count / cellsOf(grid));
  return sheets(laid) < sheets(upright) ? laid : upright;
}

/** How many cells a sheet has. */
export function cellsOf({ columns, rows }: CellGrid): number {
  return columns * rows;
}

/** Where a cell stands on its sheet, by its count from 0. */
export function placeOf(at: number, { columns, right, down }: CellGrid): { readonly x: number; readonly y: number } {
  return { x: MARGIN.side + (at % columns) * right, y: MARGIN.top + Math.floor(at / columns) * down };
}

/**
 * Lays cut-outs in cells, left to right and down, sheet after sheet. Each sheet also holds copies of those of the sheet before,
 * and one sheet more than is needed ends the row: so a style sheet alone can begin the first sheet at any cell.
 */
export function layInCells(
  cutOuts: readonly CutOut[],
  grid: CellGrid,
  paper: Paper,
  { name, id }: { readonly name: string; readonly id: string },
): readonly PaperSheet[] {
  const room = roomOn(grid.isAcross ? across(paper) : paper);
  const each = cellsOf(grid);
  const count = Math.ceil(cutOuts.length / each);
  if (count === 0) return [];
  const on = (sheet: number): readonly CutOut[] => (sheet < 0 ? [] : cutOuts.slice(sheet * each, (sheet + 1) * each));
  return Array.from({ length: count + 1 }, (_, sheet): PaperSheet => ({
    name,
    marks: [],
    isAcross: grid.isAcross,
    isSpare: sheet === count,
    cells: [
      ...on(sheet - 1)
        .map((_cutOut, at): PlacedCell => ({ at: at - each, id: idOf(id, (sheet - 1) * each + at), marks: null }))
        .slice(1),
      ...on(sheet).map((cutOut, at): PlacedCell => ({
        at,
        id: idOf(id, sheet * each + at),
        marks: withCutMarks(fitted(cutOut, room)),
      })),
    ],
  }));
}

/** From which first cell on one more sheet is needed; counted from 1, and null when even the last cell is soon enough. */
export function spareFrom(count: number, grid: CellGrid): number | null {
  const each = cellsOf(grid);
  const free = Math.ceil(count / each) * each - count;
  return free + 2 > each ? null : free + 2;
}

function idOf(id: string, at: number): string {
  return `${id}-${at + 1}`;
}
