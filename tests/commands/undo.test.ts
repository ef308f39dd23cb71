import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { expect, test } from 'vitest';
import { folderTexts } from '../catalogue/keep/folder-texts.ts';

const cabinet = join(mkdtempSync(join(tmpdir(), 'undo-')), 'cabinet');
cpSync('tests/cabinets/marked', cabinet, { recursive: true });
const run = (command: string, ...words: readonly string[]) =>
  spawnSync(process.execPath, [`src/commands/${command}.ts`, '--cabinet', cabinet, ...words], { encoding: 'utf8' });

test('what a command did is listed, shown, taken back, and brought again', () => {
  expect(run('undo').stdout).toMatch(/^No command has changed .*cabinet yet\.\n$/);
  const before = folderTexts(cabinet);
  expect(run('add', '--title', 'Penny of nobody', '--cost', '12 GBP').status).toBe(0);
  const after = folderTexts(cabinet);
  expect(run('undo').stdout).toMatch(/^ {2}1 {2}\d{4}-\d\d-\d\d \d\d:\d\d {2}npm run add {2}2 files\n/);
  const shown = run('undo', '1').stdout;
  expect(shown).toContain('remove     pieces/penny-of-nobody/piece.md');
  expect(shown).toMatch(/put back {3}private\/ledger\.csv as it was \(\d+ lines\)/);
  expect(shown).not.toContain('12 GBP');
  expect(run('undo', '1', '--restore').stdout).toBe('1 file put back as before, 1 file taken away again.\n');
  expect(folderTexts(cabinet)).toEqual(before);
  expect(run('undo').stdout).toContain('npm run add   2 files, undone'.replace('   ', '  '));
  expect(run('undo', '2', '--restore').stderr).toBe('This has been undone already.\n');
  expect(run('undo', '1', '--restore').status).toBe(0);
  expect(folderTexts(cabinet)).toEqual(after);

  writeFileSync(join(cabinet, 'private/ledger.csv'), `${readFileSync(join(cabinet, 'private/ledger.csv'), 'utf8')}\n`);
  const refused = run('undo', '3', '--restore');
  expect([refused.status, refused.stderr]).toEqual([1, expect.stringMatching(/^private\/ledger\.csv has been changed since, so nothing was undone/)]); // prettier-ignore
  for (const [words, says] of [
    [['9'], 'The list goes from 1 to 3'],
    [['one'], 'The list goes from 1'],
    [['--restore'], 'Name what to undo'],
  ] as const)
    // prettier-ignore
    expect(run('undo', ...words).stderr).toContain(says);
});
