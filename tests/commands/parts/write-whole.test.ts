import { mkdir, mkdtemp, readdir, readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeEach, expect, test } from 'vitest';
import { writeNew, writeWhole } from '../../../src/commands/parts/write-whole.ts';

let at = '';
beforeEach(async () => {
  at = await mkdtemp(join(tmpdir(), 'whole-'));
});

test('a file is written with its folder, written over when it changes, and nothing stands beside it', async () => {
  const file = join(at, 'pieces/penny/piece.md');
  await writeWhole(file, 'first');
  await writeWhole(file, 'second');
  expect(await readFile(file, 'utf8')).toBe('second');
  expect(await readdir(join(at, 'pieces/penny'))).toEqual(['piece.md']);
});

test('a new file is never written over what is there', async () => {
  const file = join(at, 'obverse.jpg');
  await writeNew(file, 'the keeper’s own');
  await expect(writeNew(file, 'another')).rejects.toThrow('EEXIST');
  expect(await readFile(file, 'utf8')).toBe('the keeper’s own');
  expect(await readdir(at)).toEqual(['obverse.jpg']);
});

test('what cannot be put in its place leaves nothing behind', async () => {
  await mkdir(join(at, 'piece.md'));
  await expect(writeWhole(join(at, 'piece.md'), 'text')).rejects.toThrow();
  expect(await readdir(at)).toEqual(['piece.md']);
});
