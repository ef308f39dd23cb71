import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { unguarded } from '../../../src/catalogue/csv-guard.ts';
import { addRow, editRow } from '../../../src/catalogue/write/edit-table.ts';

const KEY = { column: 'piece', value: 'b' };
const TABLE = '\uFEFFpiece,cost,notes\r\na,1 GBP,"one, ""two"""\r\n\r\nb,2 GBP,\r\nc,3 GBP,last';

describe('a row of a table is changed', () => {
  test('in its own cells, and every other byte stays', () => {
    expect(editRow(TABLE, KEY, { cost: '2.50 GBP' })).toBe(TABLE.replace('2 GBP', '2.50 GBP'));
    expect(editRow(TABLE, KEY, { notes: 'so, "and"' })).toBe(TABLE.replace('b,2 GBP,', 'b,2 GBP,"so, ""and"""'));
    expect(editRow(TABLE, KEY, { cost: '2 GBP' })).toBe(TABLE);
    expect(editRow(TABLE, { column: 'piece', value: 'a' }, { notes: '' })).toBe(TABLE.replace('"one, ""two"""', ''));
  });

  test('at its end where it is new, with a column that it wants', () => {
    expect(editRow(TABLE, { column: 'piece', value: 'd' }, { cost: '' })).toBe(TABLE);
    expect(editRow(TABLE, { column: 'piece', value: 'd' }, { cost: '4 GBP', box: 'K' })).toBe(
      `${TABLE.replace('notes', 'notes,box')}\r\nd,4 GBP,,K\r\n`,
    );
    expect(editRow('', KEY, { cost: '1 GBP' })).toBe('piece,cost\nb,1 GBP\n');
    expect(addRow('piece,date\n', { piece: 'a', date: '2003', note: '' })).toBe('piece,date\na,2003\n');
  });

  test('in a row that is shorter than its table', () => {
    expect(editRow('piece,cost,notes\nb\nc,1,2\n', KEY, { notes: 'n' })).toBe('piece,cost,notes\nb,,n\nc,1,2\n');
  });

  test('and never becomes a formula of a spreadsheet', () => {
    expect(editRow('piece,notes\nb,\n', KEY, { notes: '=1+1' })).toBe("piece,notes\nb,'=1+1\n");
  });
});

// The second opinion: papaparse reads what was written (RFC 4180).
test('whatever the cells hold, another reader finds the change and everything else as it was', () => {
  const cell = fc.string({ unit: fc.constantFrom('a', 'b', ',', '"', '\n', ' ', 'é', ';') });
  fc.assert(
    fc.property(fc.array(fc.tuple(cell, cell), { minLength: 1, maxLength: 5 }), cell, fc.nat(4), (rows, to, at) => {
      const index = at % rows.length;
      const before = Papa.unparse([['piece', 'x', 'y'], ...rows.map(([x, y], row) => [`p${row}`, x, y])], {
        newline: '\n',
      });
      const after = editRow(before, { column: 'piece', value: `p${index}` }, { y: to });
      const read = Papa.parse<string[]>(after).data;
      expect(unguarded(read[index + 1]?.[2] ?? '')).toBe(to);
      expect(read.toSpliced(index + 1, 1)).toEqual(Papa.parse<string[]>(before).data.toSpliced(index + 1, 1));
    }),
  );
});
