import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cellsOf, gridFor, layInCells, placeOf, spareFrom } from '../../../../src/site/models/paper/cells.ts';
import { A4, across, LETTER, MARGIN, roomOn } from '../../../../src/site/models/paper/paper.ts';
import type { CutOut } from '../../../../src/site/models/paper/paper.ts';

const cutOut = (width: number, height: number): CutOut => ({ width, height, cut: 'own', marks: [] });
const cell = fc.record({
  width: fc.double({ min: 24, max: 190, noNaN: true }),
  height: fc.double({ min: 15, max: 120, noNaN: true }),
});
const count = fc.integer({ min: 1, max: 90 });

describe('cells on a sheet', () => {
  test.for([A4, LETTER])('lie apart, and within the room of $name', (paper) => {
    fc.assert(
      fc.property(cell, count, (size, many) => {
        const grid = gridFor(size, 4, many, paper);
        const room = roomOn(grid.isAcross ? across(paper) : paper);
        const last = placeOf(cellsOf(grid) - 1, grid);
        expect(last.x + size.width).toBeLessThanOrEqual(MARGIN.side + room.width + 1e-6);
        expect(last.y + size.height).toBeLessThanOrEqual(MARGIN.top + room.height + 1e-6);
        expect(grid.right).toBeGreaterThanOrEqual(size.width + 4 - 1e-9);
      }),
    );
  });

  test('wherever the first lies, each cut-out is in one cell of one sheet, in order, and a spare sheet comes only when needed', () => {
    fc.assert(
      fc.property(cell, count, fc.nat(), (size, many, where) => {
        const grid = gridFor(size, 4, many, A4);
        const each = cellsOf(grid);
        const begin = where % each;
        const all = Array.from({ length: many }, () => cutOut(size.width, size.height));
        const sheets = layInCells(all, grid, A4, { name: 'Labels', id: 'label' });
        const isSpareShown = begin + 1 >= (spareFrom(many, grid) ?? Infinity);
        const seen = sheets
          .filter(({ isSpare }) => isSpare !== true || isSpareShown)
          .map(({ cells = [] }) => cells.filter(({ at }) => at + begin >= 0 && at + begin < each));
        expect(seen.flat().map(({ id }) => id)).toEqual(all.map((_one, at) => `label-${at + 1}`));
        for (const cells of seen) expect(cells.length).toBeGreaterThan(0);
      }),
    );
  });
});
