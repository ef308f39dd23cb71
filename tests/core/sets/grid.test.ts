import { expect, test } from 'vitest';
import { gridOf } from '../../../src/core/sets/grid.ts';
import type { SetPiece } from '../../../src/core/sets/set-piece.ts';
import type { Lists, SetRule } from '../../../src/core/sets/set-rule.ts';

const LISTS: Lists = {
  rulers: [
    { id: 'second', name: 'Second', dynasty: 'Later', reigns: [{ low: 1200, high: 1220 }] },
    { id: 'first', name: 'First', dynasty: 'Earlier', reigns: [{ low: 1100, high: 1120 }] },
  ],
  mints: [{ id: 'york', name: 'York' }, { id: 'hull', name: 'Hull' }],
  types: [
    { id: '1', names: ['1', 's/1'], series: 's', label: 'Class 1', level: 'class', leaf: true },
    { id: '2', names: ['2', 's/2'], series: 's', label: 'Class 2', level: 'class', leaf: false },
    { id: '2a', names: ['2a', 's/2a'], series: 's', label: 'Class 2a', level: 'variety', leaf: true },
    { id: '2b', names: ['2b', 's/2b'], series: 's', label: 'Class 2b', level: 'variety', leaf: true },
  ],
}; // prettier-ignore

const piece = (id: string, more: Partial<SetPiece>): SetPiece => ({
  id, kind: 'coin', status: 'kept', rulers: ['first'], struckFor: [], interval: null, references: [], tags: [],
  altered: false, details: false, grade: null, sure: {}, ...more,
}); // prettier-ignore

const PIECES = [
  piece('a', { mint: 'york', types: { is: ['1', 's/1'], maybe: [] } }),
  piece('b', { mint: 'hull', rulers: ['second'], types: { is: ['2', 's/2'], maybe: ['2a', 's/2a', '2b', 's/2b'] } }),
  piece('c', { types: { is: ['2b', 's/2b', '2', 's/2'], maybe: [] } }),
  piece('d', { mint: 'york', sure: { mint: 'probable' }, types: { is: ['1', 's/1'], maybe: [] } }),
];
const rule = (more: Partial<SetRule>): SetRule => ({
  id: 'set',
  title: 'A set',
  'one-per': 'type',
  where: {},
  ...more,
});
const read = (grid: ReturnType<typeof gridOf>) => ({
  rows: grid.rows.map(({ value }) => value),
  columns: grid.columns.map(({ label, value }) => (value === null ? null : label)),
  cells: grid.cells.map((row) =>
    row.map((cell) => cell.map(({ piece: id, sure }) => (sure ? id : `${id}?`)).join(' ')),
  ),
});
const name = (_: string, value: string): string => LISTS.mints.find(({ id }) => id === value)?.name ?? value;

test('what the set is one per has a line for every place; a piece known to a class alone may be either of its varieties', () => {
  const grid = gridOf(rule({ series: 's' }), { rows: 'type', columns: 'mint' }, PIECES, LISTS, name);
  expect(read(grid)).toEqual({
    rows: ['1', '2a', '2b'],
    // By name; what does not record the mint comes last.
    columns: ['Hull', 'York', null],
    cells: [['', 'a d?', ''], ['b?', '', ''], ['b?', '', 'c']],
  }); // prettier-ignore
  const classes = gridOf(rule({ series: 's', level: 'class' }), { rows: 'type', columns: 'mint' }, PIECES, LISTS, name);
  expect(read(classes).cells).toEqual([['', 'a d?', ''], ['b', '', 'c']]); // prettier-ignore
});

test('any other side has the values that occur; dynasties and rulers stand by their first year', () => {
  const grid = gridOf(
    rule({ 'one-per': 'mint' }),
    { rows: 'dynasty', columns: 'mint' },
    PIECES.slice(0, 2),
    LISTS,
    name,
  );
  expect(read(grid)).toEqual({
    rows: ['Earlier', 'Later'],
    columns: ['Hull', 'York'],
    cells: [['', 'a'], ['b', '']],
  }); // prettier-ignore
});
