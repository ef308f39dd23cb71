import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { expect, test } from 'vitest';
import { parseMapping } from '../../src/import/columns/parse-mapping.ts';
import { readRows } from '../../src/import/cells/read-rows.ts';
import { readSheets } from '../../src/import/sheets/read-sheets.ts';
import { problemsOf } from '../catalogue/small-cabinet.ts';
import { bring } from './plan/bring.ts';

// Excerpts of open data (see tests/published/sheets); the whole sheets too, where a folder of them is named in REFERENCE_SHEETS.
const WHOLE = process.env['REFERENCE_SHEETS'];
const SHEETS: readonly (readonly [mapping: string, file: string])[] = [
  ['museum-roman', 'tests/published/sheets/museum-roman-excerpt.csv'],
  ['official-commemoratives', 'tests/published/sheets/official-commemoratives-excerpt.csv'],
  ...(WHOLE === undefined
    ? []
    : ([
        ['museum-roman', join(WHOLE, 'museum_roman_1836.csv')],
        ['official-commemoratives', join(WHOLE, 'official_commemoratives_20.csv')],
        ['university-museum', join(WHOLE, 'university_museum_380.csv')],
      ] as const)),
];

test.for(SHEETS)('a real sheet read by %s becomes a cabinet that check has nothing to say of: %s', async ([name, file]) => {
  const read = await readSheets(readFileSync(file), file);
  const [sheet] = read.ok ? read.value.sheets : [];
  const mapping = parseMapping(readFileSync(join("tests/import/columns/files", `${name}.yaml`), 'utf8'));
  if (sheet === undefined || !mapping.ok) throw new Error('The sheet or its mapping cannot be read.');
  const rows = readRows(sheet, mapping.value);
  const { plan, folder } = bring(rows.drafts, undefined, { setAside: rows.setAside });
  expect(problemsOf(folder)).toEqual([]);
  expect(plan.setAside).toEqual([]);
  expect(plan.pieces).toHaveLength(sheet.rows.length);
  expect(new Set(plan.pieces.map(({ id }) => id)).size).toBe(sheet.rows.length);
}); // prettier-ignore
