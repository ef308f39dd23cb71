import { expect, test } from 'vitest';
import { parseMapping } from '../../../src/import/columns/parse-mapping.ts';
import { readRows } from '../../../src/import/cells/read-rows.ts';
import { sheetOf } from '../columns/sheet-of.ts';

function rowsBy(mapping: string, headings: readonly string[], rows: readonly (readonly string[])[]) {
  const read = parseMapping(mapping);
  return read.ok ? readRows(sheetOf(headings, rows), read.value) : expect.fail(read.problem);
}

test('a rule leaves rows out, and says that it did', () => {
  const { drafts, setAside } = rowsBy(
    'columns: { No: number }\nskip: [{ column: No, is: "Total*" }]\n',
    ['No'],
    [['1'], ['TOTAL of all']],
  );
  expect(drafts.map(({ row }) => row)).toEqual([2]);
  expect(setAside).toMatchObject([{ row: 3, text: 'TOTAL of all' }]);
});

test('the second of one number is told apart by a suffix, and told of', () => {
  const { drafts } = rowsBy('columns: { No: number }\n', ['No'], [['7'], ['7'], ['7-2'], ['7']]);
  expect(drafts.map(({ facts }) => facts['number'])).toEqual(['7', '7-2', '7-2-2', '7-3']);
  expect(drafts[1]?.unread).toMatchObject([{ row: 3, heading: 'No', text: '7', field: 'number' }]);
});

test('the keeper’s own words for nothing are which blank the keeper says', () => {
  const { drafts } = rowsBy(
    'columns: { No: number, Mint: mint, Ruler: ruler }\nblanks: { xx: unknown, zz: not recorded }\n',
    ['No', 'Mint', 'Ruler'],
    [['1', 'XX', 'zz']],
  );
  expect(drafts[0]?.facts).toMatchObject({ mint: 'unknown' });
  expect(drafts[0]?.facts).not.toHaveProperty('ruler');
  expect(drafts[0]?.names).toEqual({});
});

test('what is always so gives way to what a cell says', () => {
  const { drafts } = rowsBy('columns: { No: number, Kind: kind }\nalways: { kind: coin }\n', ['No', 'Kind'], [['1', 'Medaille'], ['2', '']]); // prettier-ignore
  expect(drafts.map(({ facts }) => facts['kind'])).toEqual(['medal', 'coin']);
});

test('two columns make one fact: first and last year, book and number', () => {
  const { drafts } = rowsBy(
    'columns: { No: number, From: date from, To: date to, Book: reference work, Nr: reference number }\n',
    ['No', 'From', 'To', 'Book', 'Nr'],
    [['1', '1279', '1281', 'North', '1018'], ['2', '1279', '', '', ''], ['3', '', '1281', '', '']],
  ); // prettier-ignore
  expect(drafts.map(({ facts }) => facts['date'])).toEqual(['1279/1281', '1279/', '/1281']);
  expect(drafts[0]?.names.references).toMatchObject([{ name: 'North', cited: { number: '1018' } }]);
});
