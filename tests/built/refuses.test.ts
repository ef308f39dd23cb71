import { execFileSync } from 'node:child_process';
import { appendFile, cp, mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { beforeAll, beforeEach, expect, test } from 'vitest';
import { builtFiles } from './site-links.ts';

let home = '';
let cabinet = '';
/** The site of the cabinet as it is, built once; a test that publishes over it takes a copy. */
let published = '';
let folder = '';
beforeAll(async () => {
  home = await mkdtemp(join(tmpdir(), 'refuses-'));
  cabinet = join(home, 'cabinet');
  published = join(home, 'published');
  await cp('tests/cabinets/marked', cabinet, { recursive: true });
  expect(build(published)).toMatchObject({ status: 0 });
});
beforeEach(async () => {
  folder = await mkdtemp(join(home, 'test-'));
  // In the same place, so that what is remembered of the first build could be taken for this one's.
  await rm(cabinet, { recursive: true });
  await cp('tests/cabinets/marked', cabinet, { recursive: true });
});

/** The files of a site that name something, in their path or their bytes. */
async function tracesOf(name: string, out: string): Promise<readonly string[]> {
  const files = await builtFiles(out);
  const named = await Promise.all(
    files.map(async (file) => file.includes(name) || (await readFile(join(out, file))).includes(name)),
  );
  return files.filter((_, index) => named[index]);
}

/** Runs the build and answers with what it said and how it ended. */
function build(out: string): { readonly status: number; readonly said: string } {
  try {
    const said = execFileSync(process.execPath, ['src/commands/build.ts', '--cabinet', cabinet, '--out', out], {
      encoding: 'utf8',
      stdio: 'pipe',
    });
    return { status: 0, said };
  } catch (error) {
    const { status, stderr } = error as { status: number; stderr: string };
    return { status, said: stderr };
  }
}

test('a leak found at the end leaves what was published before as it was', async () => {
  const out = join(folder, 'site');
  await cp(published, out, { recursive: true });
  const before = await readFile(join(out, 'pieces/plain-penny/index.html'), 'utf8');
  // What no text of the cabinet holds and only a page puts together: the title of a piece and that of the cabinet.
  const ledger = join(cabinet, 'private/ledger.csv');
  const together = 'Penny of a plain king · A marked cabinet';
  await writeFile(ledger, (await readFile(ledger, 'utf8')).replace('MARK-STORAGE bank box', together));
  const { status, said } = build(out);
  expect(status).toBe(1);
  expect(said).toContain('holds what the column storage of private/ledger.csv keeps in its line 2');
  expect(said).not.toContain(together);
  expect(said).toContain('is as it was');
  expect(await readFile(join(out, 'pieces/plain-penny/index.html'), 'utf8')).toBe(before);
  expect(await readdir(folder)).toEqual(['site']);
});

test('an unlisted piece named in a story is told of before anything is built, at its line', async () => {
  await appendFile(join(cabinet, 'pieces/plain-penny/piece.md'), '\nSee also unlisted-groat.\n');
  const { status, said } = build(join(folder, 'site'));
  expect(status).toBe(1);
  expect(said).toMatch(/plain-penny\/piece\.md:29\n {2}This names unlisted-groat, which is unlisted/);
  expect(await readdir(folder)).toEqual([]);
});

test('a piece made private leaves no trace in the next build', async () => {
  const out = join(folder, 'site');
  await cp(published, out, { recursive: true });
  expect(await tracesOf('plain-penny', out)).not.toEqual([]);
  const file = join(cabinet, 'pieces/plain-penny/piece.md');
  await writeFile(file, (await readFile(file, 'utf8')).replace('kind: coin', 'kind: coin\npublish: no'));
  await rm(join(cabinet, 'exhibits'), { recursive: true });
  expect(build(out)).toMatchObject({ status: 0 });
  expect(await tracesOf('plain-penny', out)).toEqual([]);
  expect(await tracesOf('Penny of a plain king', out)).toEqual([]);
});

test('a cabinet with problems is not built', async () => {
  await appendFile(join(cabinet, 'cabinet.yaml'), 'colour: blue\n');
  const { status, said } = build(join(folder, 'site'));
  expect(status).toBe(1);
  expect(said).toContain('There is no field "colour" here.');
  expect(said).toContain('Nothing was built: fix the 1 problem above first.');
  expect(await readdir(folder)).toEqual([]);
});

test('a folder of other files is not emptied', async () => {
  const out = join(folder, 'letters');
  await mkdir(out);
  await writeFile(join(out, 'will.txt'), 'To my nephew the cabinet.');
  const { status, said } = build(out);
  expect(status).toBe(1);
  expect(said).toContain('holds files that no build put there');
  expect(await readFile(join(out, 'will.txt'), 'utf8')).toBe('To my nephew the cabinet.');
});

test('a site is not built over the cabinet it is made from', () => {
  expect(build(cabinet).said).toContain('the cabinet or the project is in it');
  expect(build(join(cabinet, 'site')).said).toContain('cannot be built inside the cabinet');
});
