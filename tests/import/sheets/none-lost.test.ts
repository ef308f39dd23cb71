import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatColumn, parseColumn } from '../../../src/import/sheets/column-letter.ts';
import { formatRecords } from '../../../src/import/sheets/text/records.ts';
import { escapeXml, odsOf, workbookOf } from './make-workbook.ts';
import { bytesOf, readOne, textsOf } from './read-one.ts';

/** Words as keepers write them; no blanks at the ends or in a row, which no reader of a sheet sees. */
const word = fc
  .array(fc.constantFrom('a', 'Æ', 'ß', 'Ł', '銀', '"', "'", ',', ';', '<', '>', '&', '|', '=', '-', '.', '7', 'b c'), {
    minLength: 1,
    maxLength: 6,
  })
  .map((letters) => letters.join(''))
  .filter((text) => !/^=".*"$/.test(text));
const grid = fc.integer({ min: 2, max: 5 }).chain((width) =>
  fc.array(fc.array(fc.oneof(word, fc.constant('')), { minLength: width, maxLength: width }), {
    minLength: 1,
    maxLength: 6,
  }),
);

const inXlsx = (rows: readonly (readonly string[])[]): Uint8Array =>
  workbookOf(
    `<sheetData>${rows
      .map(
        (cells) =>
          `<row>${cells.map((text) => (text === '' ? '<c/>' : `<c t="inlineStr"><is><t>${escapeXml(text)}</t></is></c>`)).join('')}</row>`,
      )
      .join('')}</sheetData>`,
  );
const inOds = (rows: readonly (readonly string[])[]): Uint8Array =>
  odsOf(
    rows
      .map(
        (cells) =>
          `<t:table-row>${cells.map((text) => (text === '' ? '<t:table-cell/>' : `<t:table-cell><text:p>${escapeXml(text)}</text:p></t:table-cell>`)).join('')}</t:table-row>`,
      )
      .join(''),
  );
const inCsv = (rows: readonly (readonly string[])[]): Uint8Array => bytesOf(formatRecords(rows, ';'));

test.for([
  ['.xlsx', inXlsx],
  ['.ods', inOds],
  ['.csv', inCsv],
] as const)('every cell of a sheet saved as %s comes out in its row and column', async ([, write]) => {
  await fc.assert(
    fc.asyncProperty(grid, async (rows) => {
      fc.pre(rows.some((cells) => cells.some((text) => text !== '')));
      const sheet = await readOne(write(rows), 'coins', { headingRow: 0, separator: ';' });
      const used = [...(rows[0] ?? []).keys()].filter((column) => rows.some((cells) => cells[column] !== ''));
      const filled = rows
        .map((cells, at) => ({ cells, row: at + 1 }))
        .filter(({ cells }) => cells.some((text) => text !== ''));
      expect(sheet.columns.map(({ letter }) => letter)).toEqual(used.map(formatColumn));
      expect(sheet.rows.map(({ row }) => row)).toEqual(filled.map(({ row }) => row));
      expect(textsOf(sheet)).toEqual(filled.map(({ cells }) => used.map((column) => cells[column])));
    }),
  );
});

test('a column is named and read again', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 16_383 }), (column) => {
      expect(parseColumn(formatColumn(column))).toBe(column);
    }),
  );
  expect([formatColumn(25), formatColumn(26), formatColumn(16_383)]).toEqual(['Z', 'AA', 'XFD']);
});
