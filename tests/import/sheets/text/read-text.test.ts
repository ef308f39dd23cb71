import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { formatRecords, readRecords } from '../../../../src/import/sheets/text/records.ts';
import { findSeparator, parseSeparator } from '../../../../src/import/sheets/text/read-text.ts';
import { headingsOf, problemOf, readFileOf, readOne, textsOf } from '../read-one.ts';

test('titles stand aside, headings are found, rows keep the number a spreadsheet gives them', async () => {
  const text = 'My coins;;\r\n\r\nNr.;Text;Preis\r\n0123;"Penny; York";1,38\r\n0124;;2,5\r\n';
  expect(await readFileOf(text, 'coins.csv')).toEqual({
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
  });
});

describe('records', () => {
  // RFC 4180, section 2, rules 1 to 7, in its own words and examples.
  test.for([
    [
      'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      'aaa,bbb,ccc\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'b\r\nbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    ['"aaa","b""bb","ccc"', [['aaa', 'b"bb', 'ccc']]],
  ] as const)('%j as RFC 4180 has it', ([text, records]) => {
    expect(readRecords(text, ',').records.map(({ fields }) => fields)).toEqual(records);
  });

  test('lines may end in CR LF, CR and LF in one file', () => {
    expect(readRecords('a,b\r\nc,d\re,f\ng,h', ',').records.map(({ row }) => row)).toEqual([1, 2, 3, 4]);
  });

  test('quotation marks that quote nothing stay where they are', () => {
    const { records } = readRecords('"Widow\'s mite" of Alexander,a 5" disc,  "quoted" \n', ',');
    expect(records[0]?.fields).toEqual(['"Widow\'s mite" of Alexander', 'a 5" disc', 'quoted']);
  });

  const field = fc.string({ unit: fc.constantFrom('a', 'Þ', '"', ',', ';', '\n', '\r', ' ', '=', '\t', '1') });

  test('written and read again they are the same', () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(field, { minLength: 1 }), { minLength: 1 }),
        fc.constantFrom(',', ';', '\t'),
        (records, separator) => {
          const text = formatRecords(records, separator);
          expect(readRecords(text, separator).records.map(({ fields }) => fields)).toEqual(records);
        },
      ),
    );
  });

  test('what papaparse writes is read as it was meant', () => {
    fc.assert(
      fc.property(fc.array(fc.array(field, { minLength: 2 }), { minLength: 1 }), (records) => {
        const { records: read } = readRecords(Papa.unparse(records, { quotes: true }), ',');
        expect(read.map(({ fields }) => fields)).toEqual(records);
      }),
    );
  });
});

describe('the separator', () => {
  test.for([
    [';', 'Nr;Gewicht;Preis\n1;1,38;12,50\n2;1,40;3,25\n'],
    [';', 'Gewicht;Preis\n1,38;12,50\n1,40;3,25\n'],
    [',', 'No,Title,Weight\n1,"Penny; York; 3b",1.38\n2,"Groat; London",4.1\n'],
    ['\t', 'No\tTitle\n1\tPenny, York, 3b\n2\tGroat, London\n'],
    ['|', 'No|Title|Paid\n1|Penny, York|1,38\n2|Groat: London|2,50\n'],
    [',', 'Title\nPenny of York\nGroat\n'],
    [';', 'Coins, medals, tokens, all\n\nNo;Title;Date\n1;Penny, York;1279\n2;Groat;1351\n'],
    [',', 'No,Where,When\n1,York,10:30\n2,"Lincoln, Bail",11:15\n'],
  ] as const)('%j is found in %j', ([separator, text]) => {
    expect(findSeparator(text)).toBe(separator);
  });

  test('is named by its sign or in words', () => {
    for (const sign of [',', ';', '\t', '|', ':', ' ', '^', '~', '§']) expect(parseSeparator(sign)).toBe(sign);
    expect(['tab', 'Semicolon', 'comma'].map(parseSeparator)).toEqual(['\t', ';', ',']);
  });

  test('is taken from a line that states it, which is no row', async () => {
    const sheet = await readOne('sep=^\r\nNo^Title\r\n1^a,b\r\n');
    expect(textsOf(sheet)).toEqual([['1', 'a,b']]);
    expect(sheet.headingRow).toBe(1);
  });

  test('is taken from the keeper by its name', async () => {
    expect(textsOf(await readOne('No,x|Title\n1|a\n', 'a.csv', { separator: 'pipe' }))).toEqual([['1', 'a']]);
    expect(await problemOf('a,b', 'a.csv', { separator: '::' })).toBe(
      'Cells are separated by one character; this says "::". Write comma, semicolon, tab or pipe, or the character itself.',
    );
  });
});

describe('headings and what is no record', () => {
  test('a row that is shorter is told of, and one whose cells stand in the wrong columns is none', async () => {
    const sheet = await readOne('No,Title\n1,Penny,York\n2\n3,Groat\n');
    expect(headingsOf(sheet)).toEqual(['No', 'Title']);
    expect(textsOf(sheet)).toEqual([
      ['2', ''],
      ['3', 'Groat'],
    ]);
    expect(sheet.remarks?.map(({ rows }) => rows)).toEqual([[3]]);
    expect(sheet.setAside).toMatchObject([{ row: 2, text: '1 | Penny | York' }]);
    expect(sheet.setAside[0]?.because).toContain('quotation marks');
  });

  test('where most rows have a cell beyond the headings, that is a column without one', async () => {
    const sheet = await readOne('No,Title\n1,Penny,York\n2,Groat,Durham\n3,Groat\n');
    expect(headingsOf(sheet)).toEqual(['No', 'Title', '']);
    expect(sheet.setAside).toEqual([]);
    expect(sheet.remarks?.map(({ rows }) => rows)).toEqual([[2, 3]]);
  });

  test('empty rows and columns are left out', async () => {
    const sheet = await readOne('No,,Title,,\n1,,Penny,,\n,,,,\n\n2,,Groat,,\n,,,,\n');
    expect(sheet.columns.map(({ letter }) => letter)).toEqual(['A', 'C']);
    expect(sheet.rows.map(({ row }) => row)).toEqual([2, 5]);
    expect(sheet.remarks).toBeUndefined();
  });

  test('headings that come again, totals and rows of units stand aside with the reason', async () => {
    const sheet = await readOne('No,Title,Weight\n,,g\n1,Penny,1.38\nNo,Title,Weight\n2,Groat,4.1\nTotal,,5.48\n');
    expect(headingsOf(sheet)).toEqual(['No', 'Title', 'Weight (g)']);
    expect(sheet.rows.map(({ row }) => row)).toEqual([3, 5]);
    expect(sheet.setAside.map(({ row, because }) => [row, because])).toEqual([
      [2, 'it holds the units, which are now in the headings'],
      [4, 'it repeats the headings'],
      [6, 'it is a total'],
    ]);
  });

  test('a title in two cells is no row of headings where a wider one follows', async () => {
    const sheet = await readOne(
      'Coins of the house,as of May\n,\nNo,Title,Date,Weight,Metal\n1,Penny,1279,1.4,silver\n2,Groat,1351,,\n',
    );
    expect(sheet.headingRow).toBe(3);
  });

  test('a sheet without headings keeps its first row as a record', async () => {
    const sheet = await readOne('0123,Penny,Edward I,1.38\n0124,Groat,Edward III,4.1\n');
    expect(sheet.headingRow).toBe(0);
    expect(sheet.rows).toHaveLength(2);
    expect(headingsOf(sheet)).toEqual(['', '', '', '']);
  });

  test('a year may head a column of sums', async () => {
    expect((await readOne('No,Title,2019,2020\n1,Penny,30,35\n2,Groat,50,55\n')).headingRow).toBe(1);
  });

  test('the keeper may name the row', async () => {
    const sheet = await readOne('a,b\nNo,Title\n1,Penny\n', 'a.csv', { headingRow: 2 });
    expect(headingsOf(sheet)).toEqual(['No', 'Title']);
    expect(await problemOf('a,b\n', 'a.csv', { headingRow: 9 })).toBe(
      'Row 9 of a is empty and holds no headings. Name the row they are in, or 0 where there are none.',
    );
  });
});

describe('what is not a good text', () => {
  test('a quotation mark that is never closed is told of by its row and column', async () => {
    expect(await problemOf('No,Title\n1,Penny\n2,"Groat, London\n3,Noble\n', 'coins.csv')).toBe(
      'In coins.csv, row 3, column B, a quotation mark is opened before "Groat, London" and not closed in its row, so that the rows below would run into one cell. Close it there with another ", or take it out.',
    );
  });

  test('nor does one swallow the rows down to the next that happens to close it', async () => {
    const rows = Array.from({ length: 20 }, (_, at) => `${at + 3},Groat,London,4.1`).join('\n');
    const text = `No,Title,Mint,Weight\n1,"Penny,York,1.38\n${rows}\n30,disc of 5",York,1\n`;
    expect(await problemOf(text, 'coins.csv')).toContain(
      'row 2, column B, a quotation mark is opened before "Penny,York,1.38"',
    );
  });

  test('a story over several lines in quotation marks is one cell', async () => {
    const sheet = await readOne('No,Title,Story,Mint\n1,Penny,"Found,\r\nsold, and bought again,\nat last",York\n');
    expect(textsOf(sheet)).toEqual([['1', 'Penny', 'Found,\nsold, and bought again,\nat last', 'York']]);
  });

  test.for(['', '\uFEFF', ' \r\n\r\n', ';;;\n;;\n', '"",""\n"",\n'])('%j is empty', async (text) => {
    expect(await problemOf(text, 'coins.csv')).toMatch(/^coins\.csv is empty\. Name a file/);
  });

  test('formulas and markup are texts', async () => {
    const cells = [
      '=HYPERLINK("http://example.org","x")',
      "=cmd|' /C calc'!A0",
      '<script>alert(1)</script>',
      '@SUM(A1)',
      '+1',
      '&amp;',
    ];
    const sheet = await readOne(formatRecords([['a', 'b', 'c', 'd', 'e', 'f'], cells], ','));
    expect(textsOf(sheet)).toEqual([cells]);
  });

  test('noughts kept by an equals sign are read as a spreadsheet shows them', async () => {
    expect(textsOf(await readOne('No,Title\n="0123",Penny\n'))).toEqual([['0123', 'Penny']]);
  });

  test('bytes of nought are left out and told of', async () => {
    const sheet = await readOne('No,Title\n1,Penny\0\0\n2,Groat of London and a long text beside it\n');
    expect(textsOf(sheet)[0]).toEqual(['1', 'Penny']);
    expect(sheet.remarks?.[0]?.says).toBe('The file holds bytes of nought, which no text has. They are left out.');
  });

  test('one cell may hold a million letters', async () => {
    const long = 'æ'.repeat(1_000_000);
    expect(textsOf(await readOne(`No,Title\n1,${long}\n`))[0]?.[1]).toHaveLength(1_000_000);
  });
});
