import { spawnSync } from 'node:child_process';
import { cp, mkdtemp, readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeEach, expect, test } from 'vitest';
import { readCsv, writeCsv } from '../../src/catalogue/csv.ts';
import { runHere } from './run-here.ts';

let cabinet = '';
beforeEach(async () => {
  cabinet = join(await mkdtemp(join(tmpdir(), 'inventory-')), 'cabinet');
  await cp('content', cabinet, { recursive: true, filter: (from) => !from.includes('private/inventory') });
});

async function inventory(...words: readonly string[]) {
  const run = await runHere('inventory', '--cabinet', cabinet, ...words);
  const held = async (file: string): Promise<string> =>
    readFile(join(cabinet, 'private', file), 'utf8').catch(() => '');
  return { ...run, html: await held('inventory.html'), csv: readCsv(await held('inventory.csv')) };
}

// Source: International Council of Museums, Object ID: the nine categories a record of a piece should have.
const OBJECT_ID = [
  'Type of object',
  'Materials and techniques',
  'Measurements',
  'Inscriptions and markings',
  'Distinguishing features',
  'Title',
  'Subject',
  'Date or period',
  'Maker',
];

test('a schedule has the nine categories of Object ID in their order, and what the ledger holds', async () => {
  const { status, html, csv, stdout } = await inventory('--piece', 'love-token-1797');
  expect({ status, stdout }).toMatchObject({ status: 0 });
  expect(csv.headings.filter((heading) => OBJECT_ID.includes(heading))).toEqual(OBJECT_ID);
  const [row] = csv.rows;
  expect(row).toMatchObject({
    Number: '0168',
    Measurements: '25.12 g, 35.6 mm, 2.8 mm thick, die axis 12h',
    'Inscriptions and markings': 'obverse: T M; reverse: WHEN THIS YOV SEE THINK ON ME',
  });
  const ledger = readCsv(await readFile('content/private/ledger.csv', 'utf8')).rows;
  const kept = ledger.find(({ piece }) => piece === 'love-token-1797');
  expect(row?.['Cost']).toBe(kept?.['cost']);
  expect(row?.['Kept']).toBe(kept?.['storage']);
  expect(html.includes('not a valuation')).toBe(true);
});

test.for([
  ['insurer', ['Cost', 'Value', 'Insured for'], ['Kept', 'Found at', 'Notes']],
  ['police', ['Value'], ['Cost', 'Insured for', 'Kept', 'Found at', 'Notes', 'Bought from']],
] as const)('the %s is told what it needs and no more', async ([reader, told, untold]) => {
  const { csv } = await inventory('--for', reader);
  expect(csv.headings).toEqual(expect.arrayContaining([...told]));
  for (const heading of untold) expect(csv.headings).not.toContain(heading);
});

test('what is insured is added up to the penny, and pieces that have left are not in the sum', async () => {
  const { html, csv } = await inventory();
  const pence = csv.rows.reduce((sum, row) => {
    const [, whole = '0', part = ''] = /^(\d+)(?:\.(\d+))? GBP$/.exec(row['Insured for'] ?? '') ?? [];
    return sum + BigInt(whole) * 100n + BigInt(part.padEnd(2, '0'));
  }, 0n);
  expect(/Insured for: (GBP [\d.]+)\./.exec(html)?.[1]).toBe(
    `GBP ${pence / 100n}.${String(pence % 100n).padStart(2, '0')}`,
  );
  const ids = csv.rows.map((row) => row['Folder']);
  const sold = spawnSync('grep', ['-lE', '^status: (sold|given|exchanged|lost)', '-r', 'content/pieces'], {
    encoding: 'utf8',
  }).stdout;
  const gone = [...sold.matchAll(/pieces\/([^/]+)\//g)].map(([, id]) => id);
  expect(gone.length).toBeGreaterThan(0);
  expect(ids.filter((id) => gone.includes(id))).toEqual([]);
});

test.for([
  [['--piece', 'love-tokn-1797'], 'Write love-token-1797.'],
  [['--for', 'neighbour'], 'A schedule is for the insurer or the police; this says "neighbour".'],
] as const)('%j is told, and nothing is written', async ([words, says]) => {
  const { status, stderr, html } = await inventory(...words);
  expect(status).toBe(1);
  expect(stderr).toContain(says);
  expect(html.length).toBe(0);
});

test('totals are printed by metal, each currency by itself, with the pieces that have no value named', async () => {
  const file = join(cabinet, 'private/ledger.csv');
  const { headings, rows } = readCsv(await readFile(file, 'utf8'));
  const bare = rows.map((row, at) =>
    headings.map((heading) => (heading === 'value' ? (['60 GBP', '40 EUR', ''][at] ?? '') : (row[heading] ?? ''))),
  );
  await writeFile(file, writeCsv(headings, bare));
  const { status, stdout } = await inventory('--by', 'metal');
  expect({ status, stdout }).toMatchObject({ status: 0 });
  expect(stdout).toMatch(
    /^All, \d+ pieces: EUR 40\.00, GBP 60\.00\. \d+ pieces have no value: [a-z0-9-]+, .* and \d+ more\.$/m,
  );
  expect(stdout).toMatch(/^silver, \d+ pieces: /m);
  expect((await inventory('--by', 'colour')).stderr).toContain('Write --by storage.');
});
