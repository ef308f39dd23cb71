import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compare, heaviestMatching, plus } from '../../../src/core/sets/heaviest-matching.ts';
import type { Edge, Weight } from '../../../src/core/sets/heaviest-matching.ts';
import { tries } from '../../tries.ts';

const PARTS = 3;
const ZERO: Weight = [0, 0, 0];

/** The heaviest sum there is, by trying every way to give columns to rows. */
function bestByTrial(rows: readonly (readonly Edge[])[], used: ReadonlySet<number> = new Set()): Weight {
  const [first, ...rest] = rows;
  if (first === undefined) return ZERO;
  const ways = first
    .filter(({ column }) => !used.has(column))
    .map(({ column, weight }) => plus(weight, bestByTrial(rest, new Set([...used, column]))));
  return [bestByTrial(rest, used), ...ways].reduce((best, way) => (compare(way, best) > 0 ? way : best));
}

function sumOf(rows: readonly (readonly Edge[])[], taken: readonly (number | null)[]): Weight {
  return taken.reduce<Weight>((sum, column, row) => {
    const edge = rows[row]?.find((each) => each.column === column);
    return edge ? plus(sum, edge.weight) : sum;
  }, ZERO);
}

const COLUMNS = 6;
const anyEdge = fc.record({
  column: fc.nat(COLUMNS - 1),
  weight: fc.tuple(fc.nat(1), fc.integer({ min: 0, max: 3 }), fc.integer({ min: -5, max: 70 })),
});
const anyRows = fc.array(fc.uniqueArray(anyEdge, { maxLength: 6, selector: ({ column }) => column }), {
  minLength: 1,
  maxLength: 5,
});

test('2,000 random cases: the sum equals the best found by trying everything, part by part', () => {
  fc.assert(
    fc.property(anyRows, (rows) => {
      const taken = heaviestMatching(rows, COLUMNS, PARTS);
      const columns = taken.filter((column) => column !== null);
      expect(new Set(columns).size).toBe(columns.length);
      for (const [row, column] of taken.entries())
        expect(column === null || rows[row]?.some((edge) => edge.column === column)).toBe(true);
      expect(sumOf(rows, taken)).toEqual(bestByTrial(rows));
    }),
    { numRuns: tries(2000) },
  );
});

test('a row gives way along a chain of others', () => {
  const one = (column: number): Edge => ({ column, weight: [1, 0, 0] });
  const rows = [[one(0), one(1)], [one(1), one(2)], [one(2), one(3)], [one(0)]];
  expect(heaviestMatching(rows, 4, PARTS)).toEqual([1, 2, 3, 0]);
});

test('a column worth less than nothing is left alone', () => {
  expect(heaviestMatching([[{ column: 0, weight: [0, 0, -1] }]], 1, PARTS)).toEqual([null]);
});
