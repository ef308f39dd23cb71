import { mkdtemp, open, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { LIMITS } from '../../../src/import/sheets/limits.ts';
import { readSheetsFrom } from '../../../src/import/sheets/read-sheets.ts';
import { readPart } from '../../../src/import/sheets/package/read-part.ts';
import { openZip, unpack } from '../../../src/import/sheets/package/zip.ts';
import { odsOf, workbookOf, zipOf } from './make-workbook.ts';
import { bytesOf, problemOf, publishedSheet, readFileOf, readOne, textsOf } from './read-one.ts';

const sheetOf = (rows: string): string => `<sheetData>${rows}</sheetData>`;

describe('files that are something else', () => {
  const AS_XLSX = 'Open it in a spreadsheet program and save it as .xlsx, .ods or .csv.';
  test.for([
    ['%PDF-1.7\n', 'coins.csv is a PDF. Copy its table into a spreadsheet and save that as .xlsx, .ods or .csv.'],
    ['<!DOCTYPE html><table><tr><td>1', `coins.csv is a web page. ${AS_XLSX}`],
    ['\n<html><body>', `coins.csv is a web page. ${AS_XLSX}`],
    [
      '<?xml version="1.0"?><Workbook xmlns="urn:schemas-microsoft-com:office:spreadsheet">',
      `coins.csv is XML, whatever its name. ${AS_XLSX}`,
    ],
    [
      '{\\rtf1\\ansi',
      'coins.csv is a text with a layout (RTF). Copy its table into a spreadsheet and save that as .xlsx, .ods or .csv.',
    ],
    ['[\n  {"id": 1}]', 'coins.csv is JSON. Export its records as .csv and name that.'],
    ['SQLite format 3\0', 'coins.csv is a database. Export its table as .csv and name that.'],
  ] as const)('%j is told by its first bytes', async ([text, problem]) => {
    expect(await problemOf(text, 'coins.csv')).toBe(problem);
  });

  test('a photograph named .csv, and bytes that are no text', async () => {
    expect(await problemOf(Uint8Array.from([0xff, 0xd8, 0xff, 0xe0, 1, 2]), 'a.csv')).toMatch(
      /^a\.csv is a photograph\./,
    );
    const noise = Uint8Array.from({ length: 4000 }, (_, at) => (at * 7919) % 256);
    expect(await problemOf(noise, 'a.csv')).toMatch(/^(a\.csv is not a text|The letters of this file)/);
  });

  // A compound file's first sectors, with the table of sectors gone (MS-CFB 2.3).
  test.for([600, 3000])('an old workbook cut short after %d bytes', async (length) => {
    const bytes = (await publishedSheet('old-workbook.xls')).subarray(0, length);
    expect(await problemOf(bytes, 'old.xls')).toMatch(
      /^old\.xls is (an old workbook \(\.xls\) that cannot be read to its end|no spreadsheet that can be read)\. Open it/,
    );
  });

  test.for([
    [{ 'xl/workbook.bin': '' }, /is a binary workbook \(\.xlsb\)/],
    [{ 'Index/Document.iwa': '' }, /is a workbook of a kind that is not read \(\.numbers\)/],
    [{ '[Content_Types].xml': '', 'word/document.xml': '' }, /is a text document/],
    [{ 'coins.csv': 'a,b' }, /is a packed folder, no spreadsheet/],
    [{ '[Content_Types].xml': '<Types/>' }, /holds no sheets that can be read/],
  ] as const)('a package of %j', async ([parts, problem]) => {
    expect(await problemOf(zipOf(parts), 'a.xlsx')).toMatch(problem);
  });
});

describe('locked files', () => {
  // MS-CFB 2.2 and 2.6, MS-OFFCRYPTO 2.3.4: a compound file with a stream called EncryptedPackage.
  test('a workbook with a password', async () => {
    const bytes = new Uint8Array(2048);
    bytes.set([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]);
    bytes.set(Buffer.from('EncryptionInfo', 'utf16le'), 1024);
    bytes.set(Buffer.from('EncryptedPackage', 'utf16le'), 1152);
    expect(await problemOf(bytes, 'coins.xlsx')).toBe(
      'coins.xlsx is locked with a password. Open it, save it again as .xlsx without the password, and name that file.',
    );
  });

  // OpenDocument 1.3 part 2, 4.3 and 3.4.1.
  test('an OpenDocument workbook with a password', async () => {
    const bytes = zipOf({
      mimetype: 'application/vnd.oasis.opendocument.spreadsheet',
      'content.xml': '\u0001\u0002',
      'META-INF/manifest.xml':
        '<m:manifest xmlns:m="urn:oasis:names:tc:opendocument:xmlns:manifest:1.0"><m:file-entry m:full-path="content.xml"><m:encryption-data/></m:file-entry></m:manifest>',
    });
    expect(await problemOf(bytes, 'coins.ods')).toBe(
      'coins.ods cannot be read. It is locked with a password. Open it, save it again without the password, and name that file.',
    );
  });
});

describe('files that are too much', () => {
  test('two hundred megabytes are told of before they are read', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'sheets-'));
    try {
      const file = await open(join(folder, 'big.csv'), 'w');
      await file.truncate(200 * 1024 * 1024);
      await file.close();
      const before = process.memoryUsage().rss;
      expect(await readSheetsFrom(join(folder, 'big.csv'))).toEqual({
        ok: false,
        problem:
          'big.csv is 200 MB, and 64 MB is the most that is read at once. Save it as several files of fewer rows, each beginning with the row of headings, and bring them in one after another.',
      });
      expect(process.memoryUsage().rss - before).toBeLessThan(50 * 1024 * 1024);
      expect(await readSheetsFrom(folder)).toMatchObject({
        ok: false,
        problem: `${folder} is a folder. Name the spreadsheet in it.`,
      });
      expect(await readSheetsFrom(join(folder, 'no.csv'))).toMatchObject({ ok: false });
    } finally {
      await rm(folder, { recursive: true });
    }
  });

  test('more rows than are read at once are told of', async () => {
    expect(await problemOf('a,b\n'.repeat(LIMITS.rows + 2), 'long.csv')).toMatch(
      /^long\.csv has more than 200,000 rows\. Save it as several files/,
    );
  });

  test('a bomb is left when the allowance is used up, in one part or in several', () => {
    // Each part is 6 MB of blanks in 6 KB; what the two may have together is 8 MB. The whole file does it with 512 MB.
    const blank = new Uint8Array(6 * 1024 * 1024).fill(32);
    const zip = openZip(zipSync({ 'a.xml': blank, 'b.xml': blank }, { level: 6 }));
    if (!zip.ok) throw new Error(zip.problem);
    const allowance = { bytes: 8 * 1024 * 1024 };
    let largest = 0;
    const take = (chunk: Uint8Array): boolean => {
      largest = Math.max(largest, chunk.length);
      return true;
    };
    expect(unpack(zip.value, 'a.xml', allowance, take)).toEqual({ ok: true, value: 'whole' });
    expect(unpack(zip.value, 'b.xml', allowance, take)).toEqual({ ok: true, value: 'too much' });
    expect(largest).toBeLessThan(17 * 1024 * 1024);
    expect(readPart({ zip: zip.value, name: 'bomb.ods', allowance: { bytes: 1000 } }, 'a.xml', {})).toEqual({
      ok: false,
      problem:
        'bomb.ods unpacks to more than 512 MB, as no list of pieces does. Copy its cells into a new workbook and save that.',
    });
  });

  test('rows of repeated cells with something in them are counted before they are made', async () => {
    const cell =
      '<t:table-cell t:number-columns-repeated="16384" o:value-type="float" o:value="7"><text:p>7</text:p></t:table-cell>';
    const problem = await problemOf(
      odsOf(`<t:table-row t:number-rows-repeated="1048576">${cell}</t:table-row>`),
      'a.ods',
    );
    expect(problem).toMatch(/^Coins has more than (200,000 rows|8,000,000 cells)/);
  });

  test('16,384 columns are read; one more is no sheet', async () => {
    const rows =
      '<row r="1"><c r="A1" t="inlineStr"><is><t>No</t></is></c><c r="XFD1" t="inlineStr"><is><t>Last</t></is></c></row><row r="2"><c r="XFD2"><v>7</v></c></row>';
    const sheet = await readOne(workbookOf(sheetOf(rows)));
    expect([sheet.columns.map(({ letter }) => letter), textsOf(sheet)]).toEqual([['A', 'XFD'], [['', '7']]]);
    expect(await problemOf(workbookOf(sheetOf('<row r="1"><c r="XFE1"><v>7</v></c></row>')), 'a.xlsx')).toMatch(
      /^Coins has more than/,
    );
  });

  test('fifty thousand rows of empty cells cost little', async () => {
    const rows =
      '<row r="1"><c r="A1" t="inlineStr"><is><t>No</t></is></c></row>' + '<row><c s="0"/></row>'.repeat(50_000);
    const started = performance.now();
    expect((await readOne(workbookOf(sheetOf(rows)))).rows).toEqual([]);
    expect(performance.now() - started).toBeLessThan(20_000);
  });

  test('elements within elements without end', async () => {
    expect(await problemOf(workbookOf('<a>'.repeat(100_000)), 'deep.xlsx')).toBe(
      'deep.xlsx cannot be read. Its inner text is nested deeper than any spreadsheet. Copy its cells into a new workbook and save that.',
    );
  });

  test('a cell of a million letters', async () => {
    const long = 'æ'.repeat(1_000_000);
    const rows = `<row r="1"><c t="inlineStr"><is><t>${long}</t></is></c></row>`;
    expect((await readOne(workbookOf(sheetOf(rows)))).columns[0]?.heading ?? '').toHaveLength(0);
    expect(textsOf(await readOne(workbookOf(sheetOf(rows)), 'a.xlsx', { headingRow: 0 }))[0]?.[0]).toHaveLength(
      1_000_000,
    );
  });
});

describe('XML that asks for more than it holds', () => {
  const withType = (type: string): Uint8Array =>
    workbookOf('', {
      parts: {
        'xl/worksheets/sheet1.xml': `<?xml version="1.0"?>${type}<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData><row r="1"><c t="inlineStr"><is><t>&x;</t></is></c></row></sheetData></worksheet>`,
      },
    });
  const DECLARES = /^a\.xlsx cannot be read\. It declares entities of its own, as no spreadsheet does\./;

  test.for([
    ['a file of this machine', '<!DOCTYPE w [<!ENTITY x SYSTEM "file:///etc/passwd">]>'],
    ['an address', '<!DOCTYPE w SYSTEM "http://localhost:1/x.dtd">'],
    ['laughs by the billion', '<!DOCTYPE w [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;&a;"><!ENTITY x "&b;&b;&b;&b;">]>'],
  ] as const)('%s is never resolved', async ([, type]) => {
    expect(await problemOf(withType(type), 'a.xlsx')).toMatch(DECLARES);
  });

  test('an entity nobody declared, and XML that breaks off', async () => {
    expect(await problemOf(withType(''), 'a.xlsx')).toMatch(
      /^a\.xlsx cannot be read\. Its inner text breaks off or is not well formed\./,
    );
    expect(await problemOf(workbookOf('<sheetData><row>'), 'a.xlsx')).toMatch(/breaks off or is not well formed/);
  });
});

describe('damaged packages', () => {
  test('cut short anywhere, or a bit turned anywhere, it is told of or read the same', async () => {
    const whole = await publishedSheet('coins.xlsx');
    const meant = JSON.stringify(await readFileOf(whole, 'coins.xlsx'));
    for (let length = 4; length < whole.length; length += 401) {
      expect(await problemOf(whole.subarray(0, length), 'coins.xlsx')).not.toBe('it was read');
    }
    for (let at = 0; at < whole.length; at += 193) {
      const turned = Uint8Array.from(whole);
      turned[at] = (turned[at] ?? 0) ^ 0x10;
      const problem = await problemOf(turned, 'coins.xlsx');
      if (problem !== 'it was read') continue;
      // A bit in what is not read (dates of parts, pictures of the sheet) changes nothing, or a missing part leaves something out.
      const read = JSON.stringify(await readFileOf(turned, 'coins.xlsx'));
      expect([meant.length, read]).toEqual([meant.length, meant]);
    }
  });

  test('a size that lies is not believed', async () => {
    const bytes = Uint8Array.from(workbookOf(sheetOf('<row r="1"><c t="inlineStr"><is><t>No</t></is></c></row>')));
    const view = new DataView(bytes.buffer);
    for (let at = 0; at + 46 < bytes.length; at += 1) {
      if (view.getUint32(at, true) === 0x02014b50) view.setUint32(at + 24, 0x7fffffff, true);
    }
    expect((await readOne(bytes, 'a.xlsx')).columns[0]?.heading).toBe('No');
  });

  test('many quotation marks take no longer than few', async () => {
    const started = performance.now();
    await problemOf(`a,b\n${'"x\n'.repeat(150_000)}`, 'a.csv');
    await problemOf(`a,b\n${'"",'.repeat(300_000)}"`, 'a.csv');
    expect(performance.now() - started).toBeLessThan(4000);
  });

  test('a text of one line is no trouble', async () => {
    expect(await readFileOf(bytesOf('No'), 'a.csv')).toMatchObject({
      sheets: [{ columns: [{ heading: 'No' }], rows: [] }],
    });
  });
});
