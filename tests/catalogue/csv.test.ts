import { describe, expect, test } from 'vitest';
import { readCsv } from '../../src/catalogue/csv.ts';

describe('one of our own tables', () => {
  // RFC 4180, 2: fields may be quoted, with commas and line ends inside; what is after a comma is a field of its own.
  test.for([
    ['a comma in no quotation marks', 'piece,notes\na,cleaned, bent\nb,\n', [{ line: 2, cells: 3 }], ['cleaned', '']],
    ['a comma in quotation marks', 'piece,notes\na,"cleaned, bent"\nb,\n', [], ['cleaned, bent', '']],
    ['a comma too few', 'piece,cost,notes\na,1 GBP\n', [{ line: 2, cells: 2 }], [undefined]],
    ['empty cells behind the last heading, as spreadsheets write them', 'piece,notes,\na,x,,,\n', [], ['x']],
    [
      'semicolons in every row, which are text',
      'piece,notes\na,one; two\nb,three; four\n',
      [],
      ['one; two', 'three; four'],
    ],
    [
      'a line end in a cell, and another line end',
      'piece,notes\r\na,"one\r\ntwo"\r\nb,x,y\r\n',
      [{ line: 4, cells: 3 }],
      ['one\r\ntwo', 'x'],
    ],
    ['a blank line between rows', 'piece,notes\n\na,x\n,\nb,y,z\n', [{ line: 5, cells: 3 }], ['x', 'y']],
  ] as const)('%s', ([, text, uneven, notes]) => {
    const table = readCsv(text);
    expect(table.uneven).toEqual(uneven);
    expect(table.rows.map((row) => row['notes'])).toEqual(notes);
  });

  test.for([
    ['piece;cost\na;1 GBP\n', 'semicolons'],
    ['piece\tcost\na\t1 GBP\n', 'tabs'],
    ['piece,a;b\n', null],
    ['piece\na\n', null],
    ['', null],
  ] as const)('%j is separated by %s', ([text, mark]) => {
    expect(readCsv(text).otherMark).toBe(mark);
  });
});
