import { mkdir, mkdtemp, readdir, readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { putFolder } from '../../../src/commands/parts/put-folder.ts';

test('a finished folder takes the place of what was there and of what an interrupted run left, and leaves nothing beside it', async () => {
  const at = await mkdtemp(join(tmpdir(), 'put-'));
  const finished = join(at, 'growing', 'site');
  const into = join(at, 'stick', 'York & Münzen');
  for (const [folder, page] of [
    [finished, 'new.html'],
    [into, 'old.html'],
    [`${into}.unfinished`, 'half.html'],
  ] as const) {
    await mkdir(join(folder, 'pages'), { recursive: true });
    await writeFile(join(folder, 'pages', page), page);
  }
  await putFolder(finished, into);
  expect(await readdir(join(at, 'stick'))).toEqual(['York & Münzen']);
  expect(await readdir(join(into, 'pages'))).toEqual(['new.html']);
  expect(await readFile(join(into, 'pages', 'new.html'), 'utf8')).toBe('new.html');
  expect(await readdir(join(at, 'growing'))).toEqual([]);
});
