import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { describe, expect, test } from 'vitest';
import { accountFor } from '../../../src/import/cells/account-for.ts';
import { parseMapping } from '../../../src/import/columns/parse-mapping.ts';
import { readRows } from '../../../src/import/cells/read-rows.ts';
import { readSheets } from '../../../src/import/sheets/read-sheets.ts';
import type { Sheet } from '../../../src/import/sheets/sheet.ts';
import { sheetOf } from './sheet-of.ts';

async function sheetAt(file: string): Promise<Sheet> {
  const read = await readSheets(readFileSync(file), file);
  const sheet = read.ok ? read.value.sheets[0] : expect.fail(read.problem);
  return sheet ?? expect.fail('no sheet');
}

function readWith(name: string, sheet: Sheet) {
  const text = readFileSync(join(import.meta.dirname, 'files', `${name}.yaml`), 'utf8');
  const mapping = parseMapping(text);
  if (!mapping.ok) throw new Error(mapping.problem);
  expect(text.split('\n').length).toBeLessThanOrEqual(41);
  const { drafts, setAside } = readRows(sheet, mapping.value);
  return { drafts, setAside, account: accountFor(sheet, drafts, mapping.value) };
}

/** The columns of a university museum's list with rows of our own: the list itself is under a licence that keeps it out of here. */
const LIKE_UNIVERSITY = sheetOf(
  ['provider', 'title', 'homepage', 'from', 'to', 'min_lon', 'min_lat', 'max_lon', 'max_lat', 'image_urls'],
  [
    ['A museum', 'Penny of Edward I, York, 1279-1281. 1.', 'https://example.org/1', '1279', '1281', '-1.08', '53.96', '', '', 'https://example.org/a.jpg'],
    ['A museum', 'Denarius of Hadrian, Rome, A.D. 134-138. 1997.7.2.', 'https://example.org/2', '134', '138', '', '', '', '', ''],
    ['A museum', 'Antoninianus, Rome, A.D. 249. 1991.3.', 'https://example.org/3', '244', '247', '', '', '', '', ''],
    ['A museum', 'Coin, Ambracia, 238 B.C.-168 B.C. 1989.1.', 'https://example.org/4', '-238', '-168', '', '', '', '', ''],
    ['A museum', 'No number at all', 'https://example.org/5', '', '', '', '', '', '', ''],
  ],
); // prettier-ignore

describe('titles that say it all are parted', () => {
  const { drafts, setAside, account } = readWith('university-museum', LIKE_UNIVERSITY);

  test('into number, ruler, mint, denomination and date', () => {
    expect(drafts[0]).toMatchObject({
      facts: { number: '1', kind: 'coin', date: '1279-1281' },
      names: { denomination: { name: 'Penny' }, ruler: [{ name: 'Edward I' }], mint: { name: 'York' } },
    });
    expect(drafts.map(({ facts }) => facts['number'])).toEqual(['1', '1997.7.2', '1991.3', '1989.1']);
  });

  test('and a date that another column contradicts is told of', () => {
    expect(drafts.flatMap(({ unread }) => unread).map(({ text }) => text)).toEqual(['244 / 247']);
  });

  test('and a row without a number is set aside, every row and cell accounted for', () => {
    expect(setAside.map(({ row }) => row)).toEqual([6]);
    expect(account).toMatchObject({ rows: 5, pieces: 4, rowsSetAside: 1, lost: [] });
    const { inFields, inLedger, unread, blanks, leftOut, inRowsSetAside } = account;
    expect(inFields + inLedger + unread + blanks + leftOut + inRowsSetAside).toBe(account.cells);
    const filled = LIKE_UNIVERSITY.rows.flatMap(({ cells }) => cells).filter(({ text }) => text !== '').length;
    expect(account.cells).toBe(filled);
  });
});

test('a date that cannot be read does not spoil the number behind it', () => {
  const backwards = sheetOf(['title'], [['Coin of Cleopatra, Damascus, A.D. 33-A.D. 32. 7.']]);
  const [draft] = readWith('university-museum', backwards).drafts;
  expect(draft?.facts).toMatchObject({ number: '7' });
  expect(draft?.unread.map(({ text }) => text)).toEqual(['A.D. 33-A.D. 32']);
});

test.each([
  ['museum-roman', 'museum-roman-excerpt.csv'],
  ['official-commemoratives', 'official-commemoratives-excerpt.csv'],
])('a real sheet, %s, loses no cell', async (name, file) => {
  const sheet = await sheetAt(join('tests/published/sheets', file));
  const { account } = readWith(name, sheet);
  expect(account.lost).toEqual([]);
  expect(account.pieces).toBe(sheet.rows.length);
  expect(account.inFields).toBeGreaterThan(account.cells / 2);
});

test('a cell that was dropped is seen to be lost', async () => {
  const sheet = await sheetAt('tests/published/sheets/official-commemoratives-excerpt.csv');
  const mapping = parseMapping(readFileSync(join(import.meta.dirname, 'files/official-commemoratives.yaml'), 'utf8'));
  if (!mapping.ok) throw new Error(mapping.problem);
  const { drafts } = readRows(sheet, mapping.value);
  const robbed = drafts.map((draft) => {
    const facts = Object.fromEntries(Object.entries(draft.facts).filter(([field]) => field !== 'weight'));
    return { ...draft, facts, ledger: {} };
  });
  const { lost } = accountFor(sheet, robbed, mapping.value);
  expect(new Set(lost.map(({ heading }) => heading))).toEqual(
    new Set(['weight_g', 'promulgated', 'mintage_text_de', 'mint_letters_mentioned', 'image_files']),
  );
});

// The whole sheets, where a folder of them is named: REFERENCE_SHEETS=/a/folder npx vitest run tests/catalogue/import
const FOLDER = process.env['REFERENCE_SHEETS'];
const WHOLE = [
  ['university-museum', 'university_museum_380.csv', 380],
  ['museum-roman', 'museum_roman_1836.csv', 1836],
  ['official-commemoratives', 'official_commemoratives_20.csv', 20],
] as const;
for (const [name, file, rows] of FOLDER === undefined ? [] : WHOLE) {
  test(`the whole of ${file} loses no cell`, async () => {
    const { account } = readWith(name, await sheetAt(join(FOLDER ?? '', file)));
    expect(account).toMatchObject({ rows, pieces: rows, rowsSetAside: 0, lost: [] });
  });
}
