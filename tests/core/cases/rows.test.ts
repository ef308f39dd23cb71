import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { balancedRows, lengthOf } from '../../../src/core/cases/rows.ts';
import { tries } from '../../tries.ts';

/** Every way to break a list into rows in order: between any two there is a break or there is none. */
function everyBreak(widths: readonly number[]): readonly (readonly (readonly number[])[])[] {
  return Array.from({ length: 2 ** Math.max(0, widths.length - 1) }, (_, breaks) => {
    const rows: number[][] = [[]];
    for (const [at, width] of widths.entries()) {
      if (at > 0 && (breaks >> (at - 1)) % 2 === 1) rows.push([]);
      rows.at(-1)?.push(width);
    }
    return rows;
  });
}

const alone = (row: readonly number[], room: number, gap: number) => row.length === 1 || lengthOf(row, gap) <= room;
const longest = (rows: readonly (readonly number[])[], gap: number) =>
  Math.max(...rows.map((row) => lengthOf(row, gap)));

describe('pieces are broken into rows', () => {
  test('as a compositor would: six in room for five stand three and three', () => {
    const six = [30, 30, 30, 30, 30, 30];
    expect(balancedRows(six, 5 * 30 + 4 * 10, 10)).toEqual([3, 3]);
    expect(balancedRows(six, 6 * 30 + 5 * 10, 10)).toEqual([6]);
    expect(balancedRows(six, 6 * 30 + 5 * 10 - 1, 10)).toEqual([3, 3]);
    expect(balancedRows(six.slice(0, 5), 4 * 30 + 3 * 10, 10)).toEqual([3, 2]);
  });

  test('a piece wider than the room has a row of its own, and the others keep theirs', () => {
    expect(balancedRows([20, 200, 20, 20], 100, 10)).toEqual([1, 1, 2]);
    expect(balancedRows([200], 100, 10)).toEqual([1]);
    expect(balancedRows([], 100, 10)).toEqual([]);
  });

  test('the length of a row counts the gaps between, none at its ends', () => {
    expect(lengthOf([], 10)).toBe(0);
    expect(lengthOf([30], 10)).toBe(30);
    expect(lengthOf([30, 40, 50], 10)).toBe(140);
  });

  test('of all ways there are, the fewest rows, and of those the shortest longest row (every way tried)', () => {
    const width = fc.integer({ min: 5, max: 60 });
    fc.assert(
      fc.property(
        fc.array(width, { minLength: 1, maxLength: 9 }),
        fc.integer({ min: 60, max: 200 }),
        fc.constantFrom(0, 4, 10),
        (widths, room, gap) => {
          const counts = balancedRows(widths, room, gap);
          expect(counts.reduce((sum, many) => sum + many, 0)).toBe(widths.length);
          let from = 0;
          const rows = counts.map((many) => widths.slice(from, (from += many)));
          const lawful = everyBreak(widths).filter((each) => each.every((row) => alone(row, room, gap)));
          const fewest = Math.min(...lawful.map(({ length }) => length));
          expect(rows).toHaveLength(fewest);
          expect(longest(rows, gap)).toBe(
            Math.min(...lawful.filter(({ length }) => length === fewest).map((each) => longest(each, gap))),
          );
        },
      ),
      { numRuns: tries(300) },
    );
  });
});
