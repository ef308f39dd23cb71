import { cpSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { folderTexts } from '../catalogue/keep/folder-texts.ts';
import { runHere } from './run-here.ts';
import type { Ran } from './run-here.ts';

const cabinet = join(mkdtempSync(join(tmpdir(), 'undo-')), 'cabinet');
cpSync('tests/cabinets/marked', cabinet, { recursive: true });
const run = (command: string, ...words: readonly string[]): Promise<Ran> =>
  runHere(command, '--cabinet', cabinet, ...words);

test('what a command did is listed, shown, taken back, and brought again', async () => {
  expect((await run('undo')).stdout).toMatch(/^No command has changed .*cabinet yet\.\n$/);
  const before = folderTexts(cabinet);
  expect((await run('add', '--title', 'Penny of nobody', '--cost', '12 GBP')).status).toBe(0);
  const after = folderTexts(cabinet);
  expect((await run('undo')).stdout).toMatch(/^ {2}1 {2}\d{4}-\d\d-\d\d \d\d:\d\d {2}npm run add {2}2 files\n/);
  const shown = (await run('undo', '1')).stdout;
  expect(shown).toContain('remove     pieces/penny-of-nobody/piece.md');
  expect(shown).toMatch(/put back {3}private\/ledger\.csv as it was \(\d+ lines\)/);
  expect(shown).not.toContain('12 GBP');
  expect((await run('undo', '1', '--redo')).stderr).toMatch(/^Number 1 is not undone/);
  expect((await run('undo', '1', '--restore')).stdout).toMatch(
    /^1 file put back as before, 1 file taken away again\.\nnpm run add of \S+ \S+ is undone\. Bring it back: npm run undo -- 1 --redo --cabinet \S+\n$/,
  );
  expect(folderTexts(cabinet)).toEqual(before);
  expect((await run('undo')).stdout).toMatch(/^ {2}1 {2}\S+ \S+ {2}npm run add {2}2 files, undone\n\n/);
  expect((await run('undo', '1')).stdout).toMatch(/It is undone\. Doing it again would:\n {2}bring back/);
  // The same words again, as from a second window: nothing is undone twice.
  expect((await run('undo', '1', '--restore')).stderr).toMatch(/^This has been undone already\. Bring it back/);
  expect(folderTexts(cabinet)).toEqual(before);
  expect((await run('undo', '1', '--redo')).stdout).toMatch(
    /is done again\. Undo it: npm run undo -- 1 --restore --cabinet \S+\n$/,
  );
  expect(folderTexts(cabinet)).toEqual(after);
  expect((await run('undo', '1', '--redo')).stderr).toMatch(/^Number 1 is not undone/);

  writeFileSync(join(cabinet, 'private/ledger.csv'), `${readFileSync(join(cabinet, 'private/ledger.csv'), 'utf8')}\n`);
  const refused = await run('undo', '1', '--restore');
  expect([refused.status, refused.stderr]).toEqual([1, expect.stringMatching(/^private\/ledger\.csv has been changed since, so nothing was undone/)]); // prettier-ignore
  for (const [words, says] of [
    [['9'], 'The list goes from 1 to 1'],
    [['one'], 'The list goes from 1'],
    [['--restore'], 'Name what to undo'],
    [['--redo'], 'Name what to undo'],
    [['1', '--redo', '--restore'], 'Say either'],
  ] as const)
    // prettier-ignore
    expect((await run('undo', ...words)).stderr).toContain(says);
});
