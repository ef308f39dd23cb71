import { readFile } from 'node:fs/promises';
import { expect, test } from 'vitest';
import { DECIDING } from '../../src/photographs/recipe.ts';

/** Says nothing of how a picture looks: where it is written, and how it is called. */
const NOT_DECIDING = ['kept.ts', 'manifest.ts'];

/** The files of the room that a file imports, and those that they import. */
async function imported(file: string, seen = new Set<string>()): Promise<Set<string>> {
  seen.add(file);
  const text = await readFile(`src/photographs/${file}`, 'utf8');
  for (const [, other = ''] of text.matchAll(/ from '\.\/([^']+)'/g)) if (!seen.has(other)) await imported(other, seen);
  return seen;
}

test('every file that decides what a picture looks like is in the name of the recipe', async () => {
  const all = [...(await imported('make-face.ts'))].filter((file) => !NOT_DECIDING.includes(file));
  expect([...DECIDING].sort()).toEqual(all.sort());
});
