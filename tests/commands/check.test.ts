import { cp, mkdir, mkdtemp, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { beforeEach, expect, test } from 'vitest';
import { runHere } from './run-here.ts';
import type { Ran } from './run-here.ts';

let cabinet = '';
beforeEach(async () => {
  cabinet = join(await mkdtemp(join(tmpdir(), 'check-')), 'cabinet');
  await cp('tests/cabinets/marked', cabinet, { recursive: true });
});

const check = (at: string): Promise<Ran> => runHere('check', '--cabinet', at);

test('a cabinet without problems ends with 0, says how many pieces it holds, then what a judge would remark and what would improve it', async () => {
  const { status, stdout } = await check(cabinet);
  expect(status).toBe(0);
  expect(stdout).toMatch(/^4 pieces in .*, no problems\.\n\nWhat a judge would remark on:\n/);
  expect(stdout).toContain('The exhibit does not say what in it is your own research');
  expect(stdout).toContain('\n\nWhat would improve the catalogue most');
  expect(stdout).toContain('3 of 4 pieces have no weight: ');
});

test('slips in texts and photographs that cannot be used come in one run, and it ends with 1', async () => {
  const penny = join(cabinet, 'pieces/plain-penny');
  await writeFile(join(penny, 'obverse.jpg'), 'This is no picture.');
  await sharp({ create: { width: 90, height: 90, channels: 3, background: 'red' } }).toFile(join(penny, 'reverse.png'));
  await writeFile(join(cabinet, 'works/empty.yaml'), 'title: A book\nauther: Nobody\n');
  const { status, stdout } = await check(cabinet);
  expect(status).toBe(1);
  expect(stdout).toContain('pieces/plain-penny/obverse.jpg\n  This photograph cannot be opened.');
  expect(stdout).toContain('pieces/plain-penny/reverse.png\n  This photograph is 90 × 90 pixels');
  expect(stdout).toContain('works/empty.yaml:2 · auther\n  There is no field "auther" here. Write author.');
  expect(stdout).toMatch(/\n3 problems in .*\.\n$/);
});

test('a folder that is no cabinet is said to be none', async () => {
  const { status, stdout } = await check(join(cabinet, 'nowhere'));
  expect(status).toBe(1);
  expect(stdout).toContain('There is no cabinet at');
});

test('what a judge would remark on is told with its source, and is no problem', async () => {
  const long = Array.from({ length: 400 }, () => 'word').join(' ');
  await mkdir(join(cabinet, 'exhibits/long'), { recursive: true });
  await writeFile(
    join(cabinet, 'exhibits/long/exhibit.md'),
    `---\ntitle: A long label\nscope: One penny.\ncases:\n  - inside: 800 x 800 mm\n    groups:\n      - title: One\n        pieces: [{ piece: plain-penny, label: ${long} }]\n---\nA statement.\n`,
  );
  const { status, stdout } = await check(cabinet);
  expect(status).toBe(0);
  expect(stdout).toMatch(
    /What a judge would remark on:[^]*exhibits\/long\/exhibit\.md:8\n[^]*400 words[^]*Smithsonian/,
  );
});
