import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { readCsv, writeCsv } from '../../src/catalogue/csv.ts';
import { guarded, unguarded } from '../../src/catalogue/csv-guard.ts';
import { mergeLedger } from '../../src/import/plan/merge-ledger.ts';
import { readRows } from '../../src/import/cells/read-rows.ts';
import { suggestMapping } from '../../src/import/columns/suggest-mapping.ts';
import { readOne } from '../import/sheets/read-one.ts';
import { piecesCsv } from '../../src/publish/pieces-csv.ts';
import { unreadCsv } from '../../src/commands/import/write-import.ts';
import { ledgerWith } from '../../src/commands/add/new-piece.ts';

// The first letters are those of OWASP, "CSV Injection" (tab, carriage return and full-width forms among them), and of ASVS 5.0, 1.2.10.
const EVALUATED = ['=1+1', "=cmd|' /C calc'!A0", '=HYPERLINK("http://example.org")', '+EDW R ANGL', '+44 1904 000000', '-2+3+cmd', '- slight crease', '@SUM(A1)', '\t=1', '\r=1', '\n=1', '＝1', '＋1', '－1', '＠A1', "'=1", '-0043/-0001+A1', '-2/3']; // prettier-ignore
const LEFT_ALONE = ['-0043', '+5', '-3.50', '-1,5', '-44', '-0043~', '-0043/-0001', '-005X~', '-0100/..', '+5%', '-', '+', '', 'Penny', "Widow's mite", "'tis", 'a=b', '1279/1281', '(=1)', '£45']; // prettier-ignore

/** What a spreadsheet would evaluate, said in OWASP's own words; a figure with its sign, or a date of figures, is neither. */
const isFormula = (cell: string): boolean =>
  /^[=+\-@\t\r\n\0＝＋－＠]/.test(cell) &&
  cell.length > 1 &&
  !/^-[\dX]{4}[\dX/.~?%-]*$/.test(cell) &&
  Number.isNaN(Number(cell.replace(',', '.').replace(/[~?%]$/, '')));

describe('a cell of a file that is written', () => {
  test.for(EVALUATED)('%j is given an apostrophe, and comes back without it', (cell) => {
    expect(guarded(cell)).toBe(`'${cell}`);
    expect(unguarded(guarded(cell))).toBe(cell);
  });
  test.for(LEFT_ALONE)('%j stays as it is, both ways', (cell) => {
    expect([guarded(cell), unguarded(cell)]).toEqual([cell, cell]);
  });
});

const cells = fc.oneof(
  fc.constantFrom(...EVALUATED, ...LEFT_ALONE),
  fc.tuple(fc.constantFrom('=', '+', '-', '@', "'", "'=", "''@", '\t'), fc.string()).map(([sign, rest]) => sign + rest),
  fc.string({ unit: 'grapheme' }),
);

test('Whatever a cell holds, a table goes there and back, and nothing in it is a formula', () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(cells, cells), { minLength: 1, maxLength: 5 }), (rows) => {
      const text = writeCsv(['one', 'other'], [...rows, ['end', 'end']]);
      const back = readCsv(text).rows.map((row) => [row['one'], row['other']]);
      // Rows that are blank throughout, as they are written, are no rows.
      const filled = rows.filter((row) => row.some((cell) => guarded(cell).trim() !== ''));
      expect(back).toEqual([...filled, ['end', 'end']]);
      expect(Papa.parse<string[]>(text.slice(1)).data.flat().filter(isFormula)).toEqual([]);
    }),
  );
});

describe('each of our own tables', () => {
  const BAD = '=HYPERLINK("http://example.org";"click")';
  const ledger = mergeLedger('piece,cost,notes\na,,\n', [
    { piece: 'b', cells: { notes: BAD, '=1+1': '@fair' } },
    { piece: 'a', cells: { cost: '-5.00 GBP', notes: '- mine' } },
  ]);
  const tables: readonly (readonly [string, string])[] = [
    ['pieces.csv', piecesCsv([{ id: 'a', number: '=1', title: BAD, kind: 'coin', obverse: { legend: '+EDW R' }, address: 'https://example.org/' }])],
    ['the list of unread cells', unreadCsv({ unread: [{ row: 2, heading: '=A1', text: BAD, because: '-', field: 'date' }], setAside: [{ row: 3, text: '@x', because: '+y' }] })],
    ['the ledger of an import', ledger],
    ['the ledger of a new piece', ledgerWith(null, 'a', { notes: BAD, storage: '+ upstairs' })?.text ?? ''],
  ]; // prettier-ignore
  test.for(tables)('%s holds no formula', ([, text]) => {
    expect(text).toContain(`HYPERLINK`);
    expect(
      Papa.parse<string[]>(text.replace(/^\uFEFF/, ''))
        .data.flat()
        .filter(isFormula),
    ).toEqual([]);
  });

  test('the ledger comes back as it was said, and rows that nothing changes in stay byte for byte', () => {
    const { headings, rows } = readCsv(ledger);
    expect(headings).toEqual(['piece', 'cost', 'notes', '=1+1']);
    expect(rows).toEqual([
      { piece: 'a', cost: '-5.00 GBP', notes: '- mine', '=1+1': '' },
      { piece: 'b', cost: '', notes: BAD, '=1+1': '@fair' },
    ]);
    expect(mergeLedger('piece,notes\na,- mine\n', [{ piece: 'b', cells: { notes: 'x' } }])).toBe('piece,notes\na,- mine\nb,x\n'); // prettier-ignore
    expect(mergeLedger('piece,constructor\n', [{ piece: 'b', cells: {} }])).toBe('piece,constructor\nb,\n');
  });

  test('pieces.csv is imported again as it was, and the table of another as it is', async () => {
    const sheet = await readOne(piecesCsv([{ id: 'a', number: "'=1", title: '@home', kind: 'coin', date: '-0043', obverse: { legend: '+EDW R' }, edtf: '-0043', address: 'x' }])); // prettier-ignore
    const { mapping } = suggestMapping(sheet, { rulers: [], mints: [], denominations: [], works: [] });
    const { facts } = readRows(sheet, mapping).drafts[0] ?? expect.fail('no draft');
    expect(facts).toEqual({
      number: "'=1",
      title: '@home',
      kind: 'coin',
      date: '-0043',
      obverse: { legend: '+EDW R' },
    });
    expect((await readOne("No,Legend\n1,'+EDW R\n")).rows[0]?.cells[1]?.text).toBe("'+EDW R");
  });
});
