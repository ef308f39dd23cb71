import { describe, expect, test } from 'vitest';
import { headingsOf, problemOf, publishedSheet, readFileOf, readOne, textsOf } from './read-one.ts';

// coins.fods by hand, the others of it by LibreOffice: tests/published/sheets/README.md.
describe.for(['xlsx', 'ods'] as const)('a workbook that LibreOffice saved as .%s', (format) => {
  const file = async () => readFileOf(await publishedSheet(`coins.${format}`), `coins.${format}`);

  test('has its sheets, hidden ones too', async () => {
    const { reading, sheets } = await file();
    expect(reading).toEqual({ kind: 'workbook', format });
    expect(sheets.map(({ name, isHidden, rows }) => [name, isHidden, rows.length])).toEqual([
      ['Pence & groats', false, 3],
      ['Old prices', true, 1],
    ]);
  });

  test('has its headings below the title, and the hidden column flagged', async () => {
    const [sheet] = (await file()).sheets;
    expect(sheet?.headingRow).toBe(3);
    expect(sheet?.setAside).toEqual([
      { row: 1, text: 'Coins in the oak cabinet', because: 'it stands above the headings' },
    ]);
    expect(sheet?.columns.filter(({ isHidden }) => isHidden).map(({ letter, heading }) => [letter, heading])).toEqual([
      ['G', 'Paid'],
    ]);
    expect(sheet?.columns.map(({ heading }) => heading).slice(-2)).toEqual(['Comments on cells', 'Links of cells']);
  });

  test('has each cell as it is shown, with what the sheet knows of it', async () => {
    const [sheet] = (await file()).sheets;
    expect(sheet?.rows[0]?.cells).toEqual([
      { text: '0123', value: { kind: 'number', figure: '123' } },
      { text: 'Penny of Æthelred II, York' },
      { text: 'c. 997-1003' },
      { text: '1.40', value: { kind: 'number', figure: '1.4' } },
      { text: '92.5%', value: { kind: 'number', figure: '0.925' } },
      { text: '14/05/2011', value: { kind: 'day', iso: '2011-05-14' } },
      { text: '£1,250.50', value: { kind: 'money', figure: '1250.5', currency: 'GBP' } },
      { text: '12.00 €', value: { kind: 'money', figure: '12', currency: 'EUR' } },
      { text: '2.80', value: { kind: 'number', figure: '2.8' } },
      { text: '#DIV/0!', value: { kind: 'error', says: '#DIV/0!' } },
      { text: 'TRUE' },
      { text: 'B: From my aunt' },
      { text: '' },
    ]);
  });

  test('has a merged text in each of its rows, a hidden row, a year without a day, and a link', async () => {
    const [sheet] = (await file()).sheets;
    const [, second, third] = sheet?.rows ?? [];
    expect([second?.row, second?.isHidden, third?.row, third?.isHidden]).toEqual([5, true, 6, undefined]);
    expect(second?.cells[1]?.text).toMatch(/^Groat of Łódź,\nsecond +line +<b>$/);
    expect(third?.cells[1]).toEqual(second?.cells[1]);
    expect(second?.cells[2]).toEqual({ text: '1279' });
    expect(second?.cells.at(-1)).toEqual({ text: 'J: https://example.org/124' });
    expect(sheet?.remarks?.map(({ says }) => says)).toEqual([
      'B5:B6 is one cell merged over several rows. Its text is read in each of them.',
      'One cell carries a comment. They are in a column of their own, L, called Comments on cells.',
      'One cell carries a link. They are in a column of their own, M, called Links of cells.',
    ]);
  });

  test('gives the one sheet that is asked for, or says which there are', async () => {
    const bytes = await publishedSheet(`coins.${format}`);
    const sheet = await readOne(bytes, 'coins', { sheet: 'old prices' });
    expect([headingsOf(sheet), textsOf(sheet)]).toEqual([['No.', 'Price'], [['0123', '£900.00']]]);
    expect(await problemOf(bytes, 'coins', { sheet: 'Medals' })).toBe(
      'coins has no sheet called "Medals". Write one of: Pence & groats, Old prices.',
    );
  });

  test('is known by what is in it, not by its name', async () => {
    expect((await readFileOf(await publishedSheet(`coins.${format}`), 'coins.csv')).reading.kind).toBe('workbook');
  });
});

// The same workbook as LibreOffice saved it in the old format, in which it stores 0 for the result of a formula.
test('an old workbook (.xls) has the same cells, and says which results it does not hold', async () => {
  const { reading, sheets } = await readFileOf(await publishedSheet('old-workbook.xls'), 'old.xls');
  const [sheet] = sheets;
  const asXlsx = (await readFileOf(await publishedSheet('coins.xlsx'), 'coins.xlsx')).sheets[0];
  expect(reading).toEqual({ kind: 'workbook', format: 'xls' });
  expect(sheets.map(({ name, isHidden }) => [name, isHidden])).toEqual([
    ['Pence & groats', false],
    ['Old prices', true],
  ]);
  expect(sheet?.columns.filter(({ isHidden }) => isHidden).map(({ heading }) => heading)).toEqual(['Paid']);
  const withoutFormula = (cells: readonly unknown[] = []) => cells.filter((_, at) => at !== 8);
  expect(sheet?.rows.map(({ cells }) => withoutFormula(cells))).toEqual(
    asXlsx?.rows.map(({ cells }) => withoutFormula(cells)),
  );
  expect(sheet?.rows[0]?.cells[8]?.text).toBe('0.00');
  expect(sheet?.remarks?.[0]?.says).toMatch(/^Formulas in row 4 have 0 for their stored result/);
});
