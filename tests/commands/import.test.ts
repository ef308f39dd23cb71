import { spawn } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, test } from 'vitest';
import { recoverCabinet } from '../../src/catalogue/keep/change-cabinet.ts';
import { checkCabinet } from '../../src/catalogue/check-cabinet.ts';
import { PRIVACY } from '../../src/privacy/privacy.ts';
import { folderTexts } from '../catalogue/keep/folder-texts.ts';
import { runHere } from './run-here.ts';
import type { Ran } from './run-here.ts';

const COMMAND = fileURLToPath(new URL('../../src/commands/import.ts', import.meta.url));
const made: string[] = [];
afterAll(() => made.forEach((folder) => rmSync(folder, { recursive: true, force: true })));

/** A new folder with an empty cabinet in it, and a sheet beside it. */
function begun(sheet: string, mapping: string): { at: string; file: string; words: readonly string[] } {
  const folder = mkdtempSync(join(tmpdir(), 'import-'));
  made.push(folder);
  const at = join(folder, 'cabinet');
  cpSync('tests/cabinets/empty', at, { recursive: true });
  const file = join(folder, 'My coins.csv');
  writeFileSync(file, sheet);
  writeFileSync(join(folder, 'my.mapping.yaml'), mapping);
  return { at, file, words: [COMMAND, file, '--cabinet', at, '--mapping', join(folder, 'my.mapping.yaml')] };
}

const run = ([, ...words]: readonly string[], ...more: readonly string[]): Promise<Ran> =>
  runHere('import', ...words, ...more);

const SHEET = `No.;Ruler;Weight (g);Bought from;Remark
1;Edward I;1,38;Mr Oak of Nowhere;"=HYPERLINK(""http://example.org"";""click"")"
2;Edw. I;heavy;;<script>alert(1)</script>
3;Henry III;1,41;;"<img src=x onerror=alert(1)> & more"
;Henry III;1,40;;no number
`;
const MAPPING = `title: "Coin of {ruler}"
read: { decimal: comma }
always: { kind: coin }
columns:
  No.: number
  Ruler: ruler
  Weight (g): weight in g
  Bought from: ledger seller
  Remark: story
`;

describe('a sheet imported', () => {
  const { at, words, file } = begun(SHEET, MAPPING);
  const bytes = readFileSync(file);

  test('is tried first: the counts add up, each cell that could not be read is told of, and no piece is written', async () => {
    const { stdout, status } = await run(words);
    expect(status).toBe(0);
    expect(stdout).toContain('4 rows = 3 new pieces + 1 skipped');
    expect(stdout).toMatch(/row 5 \[Henry III · 1,40 · no number\]: This row has no inventory number/);
    expect(stdout).toMatch(/row 3, Weight \(g\): "heavy"\. /);
    expect(stdout).toContain('rulers/edward-i: Edward I, Edw. I');
    expect(stdout).toContain('New rulers (2): Edward I, Henry III');
    expect(stdout).toContain('Nothing was written to the cabinet.');
    expect(Object.keys(folderTexts(at))).toEqual([
      'cabinet.yaml',
      'private/import/my-coins.names.yaml',
      'private/import/my-coins.trial/index.html',
      'private/import/my-coins.trial/rows-1.html',
      'private/import/my-coins/unread.csv',
    ]);
    expect(folderTexts(at)['private/import/my-coins/unread.csv']?.split('\r\n').slice(0, 3)).toEqual([
      '\uFEFFrow,column,cell,why,field',
      expect.stringMatching(/^3,Weight \(g\),heavy,/),
      expect.stringMatching(/^5,\(the whole row\),"Henry III · 1,40 · no number","This row has no inventory number/),
    ]);
  });

  test('is written when asked for, and check has nothing to say', async () => {
    const { stdout, status } = await run(words, '--write');
    expect([status, stdout.includes('3 pieces written')]).toEqual([0, true]);
    const { records, problems } = await checkCabinet(at, PRIVACY);
    expect(problems).toEqual([]);
    expect(records.pieces.map(({ id, fields }) => [id, fields.ruler])).toEqual([['1', ['edward-i']], ['2', ['edward-i']], ['3', ['henry-iii']]]); // prettier-ignore
    const files = folderTexts(at);
    expect(files['pieces/1/piece.md']).toContain('=HYPERLINK("http://example.org";"click")');
    expect(files['pieces/2/piece.md']).toContain('as-written: { weight: heavy }');
    expect(files['pieces/2/piece.md']).toContain('<script>alert(1)</script>');
    expect(files['private/ledger.csv']).toContain('1,,,,,Mr Oak of Nowhere');
    expect(files['private/import/my-coins/rows.csv']).toContain('5,,"This row has no inventory number');
    expect(
      Object.entries(files).filter(([name, text]) => !name.startsWith('private/') && text.includes('Oak')),
    ).toEqual([]);
    expect(readFileSync(file)).toEqual(bytes);
  });

  test('is imported again without a change', async () => {
    // The trial's pages tell of the run, and so are new each time.
    const kept = (): Readonly<Record<string, string>> =>
      Object.fromEntries(Object.entries(folderTexts(at)).filter(([name]) => !name.includes('.trial/')));
    const before = kept();
    const { stdout } = await run(words, '--write');
    expect(stdout).toContain('4 rows = 0 new pieces + 0 changed + 3 as they were + 1 skipped');
    expect(kept()).toEqual(before);
  });

  test('changes what has changed in it', async () => {
    const before = folderTexts(at);
    writeFileSync(file, SHEET.replace('1,41', '1,42'));
    const { stdout } = await run(words, '--write');
    expect(stdout).toContain('3: weight');
    const after = folderTexts(at);
    const touched = Object.keys(after).filter((name) => after[name] !== before[name]);
    expect(touched).toEqual([
      'pieces/3/piece.md',
      'private/import/my-coins.trial/index.html',
      'private/import/my-coins.trial/rows-1.html',
      'private/import/my-coins/brought-in.jsonl',
      'private/import/my-coins/rows.csv',
    ]);
    expect(after['pieces/3/piece.md']).toBe(before['pieces/3/piece.md']?.replace('1.41 g', '1.42 g'));
  });

  test('is known again under another name', async () => {
    const other = file.replace('My coins', 'Coins 2027');
    writeFileSync(other, SHEET.replace('1,41', '1,42'));
    const renamed = words.map((word) => (word === file ? other : word));
    expect((await run(renamed)).stdout).toContain('If this is that sheet, add --as my-coins');
    expect((await run(renamed, '--as', 'my-coins')).stdout).toContain(
      '= 0 new pieces + 0 changed + 3 as they were + 1 skipped',
    );
  });
});

test('Without a mapping one is suggested and kept, and nothing is written until it has been looked at', async () => {
  const { at, file } = begun(SHEET, MAPPING);
  const words = [COMMAND, file, '--cabinet', at];
  const { stdout, status } = await run(words, '--write');
  expect(status).toBe(0);
  expect(stdout).toContain('look at them first, or add --yes');
  expect(existsSync(join(at, 'pieces'))).toBe(false);
  expect(readFileSync(join(at, 'private/import/my-coins.mapping.yaml'), 'utf8')).toContain('Weight (g): weight in g');
});

test('A ledger that cannot take the private cells stops everything before it begins', async () => {
  const { at, words } = begun(SHEET, MAPPING);
  mkdirSync(join(at, 'private'));
  writeFileSync(join(at, 'private/ledger.csv'), 'cost,notes\n1 GBP,mine\n');
  const { stderr, status } = await run(words, '--write', '--yes');
  expect([status, stderr.includes('has no column piece')]).toEqual([1, true]);
  expect(Object.keys(folderTexts(at))).toEqual(['cabinet.yaml', 'private/ledger.csv']);
});

describe('a slip is told in a sentence', () => {
  const { words, at, file } = begun(SHEET, MAPPING);
  const SLIPS: readonly (readonly [what: string, words: readonly string[], says: string])[] = [
    ['no file', [COMMAND, '--cabinet', at], 'Name one spreadsheet: npm run import -- coins.xlsx'],
    ['a file that is not there', [COMMAND, `${file}x`, '--cabinet', at], 'There is no file'],
    ['a cabinet that is not there', [COMMAND, file, '--cabinet', `${at}x`], 'Begin one: npm run begin -- '],
    ['a name no import has', [...words, '--as', '../out'], '--as takes the name of an import'],
  ]; // prettier-ignore
  test.for(SLIPS)('%s', async ([, slip, says]) => {
    const { stderr, status } = await run(slip);
    expect(stderr).toContain(says);
    expect(stderr).not.toMatch(/^\s+at /m);
    expect(status).toBe(1);
  });
});

test('Killed in the middle and begun again, it comes to the same as one that was let run', async () => {
  const rows = Array.from(
    { length: 600 },
    (_, at) => `K${at};${['Edward I', 'Henry III'][at % 2] ?? ''};1,38;Seller ${at} of the long row;`,
  );
  const sheet = `No.;Ruler;Weight (g);Bought from;Remark\n${rows.join('\n')}\n`;
  const whole = begun(sheet, MAPPING);
  expect((await run(whole.words, '--write')).status).toBe(0);
  const broken = begun(sheet, MAPPING);
  const child = spawn(process.execPath, [...broken.words, '--write'], { stdio: 'ignore' });
  const ended = new Promise<NodeJS.Signals | null>((done) => child.on('exit', (_, signal) => done(signal)));
  const pieces = join(broken.at, 'pieces');
  while (!existsSync(pieces) || readdirSync(pieces).length < 40) await new Promise((go) => setTimeout(go, 5));
  child.kill('SIGKILL');
  expect(await ended).toBe('SIGKILL');
  const left = readdirSync(pieces).length;
  expect(left).toBeLessThan(600);
  // As every command begins.
  await recoverCabinet(broken.at, () => undefined);
  expect((await checkCabinet(broken.at, PRIVACY)).problems).toEqual([]);
  expect((await run(broken.words, '--write')).status).toBe(0);
  const parts = (name: string): boolean => !/\.unfinished$/.test(name);
  const [one, other] = [folderTexts(broken.at), folderTexts(whole.at)];
  expect(Object.keys(one).filter(parts)).toEqual(Object.keys(other));
  for (const [name, text] of Object.entries(other)) expect(one[name]).toBe(text);
});
