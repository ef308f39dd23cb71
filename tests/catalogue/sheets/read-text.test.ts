import { expect, test } from 'vitest';
import { readSheets } from '../../../src/catalogue/sheets/read-sheets.ts';

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

test('titles stand aside, headings are found, rows keep the number a spreadsheet gives them', async () => {
  const text = 'My coins;;\r\n\r\nNr.;Text;Preis\r\n0123;"Penny; York";1,38\r\n0124;;2,5\r\n';
  const read = await readSheets(bytesOf(text), 'coins.csv');
  expect(read).toEqual({
    ok: true,
    value: {
      reading: { kind: 'text', encoding: 'utf-8', separator: ';', doubts: [] },
      sheets: [
        {
          name: 'coins',
          isHidden: false,
          headingRow: 3,
          columns: [
            { letter: 'A', heading: 'Nr.', isHidden: false },
            { letter: 'B', heading: 'Text', isHidden: false },
            { letter: 'C', heading: 'Preis', isHidden: false },
          ],
          rows: [
            { row: 4, cells: [{ text: '0123' }, { text: 'Penny; York' }, { text: '1,38' }] },
            { row: 5, cells: [{ text: '0124' }, { text: '' }, { text: '2,5' }] },
          ],
          setAside: [{ row: 1, text: 'My coins', because: 'it stands above the headings' }],
        },
      ],
    },
  });
});
