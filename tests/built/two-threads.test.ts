import { execFile } from 'node:child_process';
import { hash } from 'node:crypto';
import { cp, mkdtemp, readFile, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, relative, resolve } from 'node:path';
import process from 'node:process';
import { promisify } from 'node:util';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { addPiece, chanceFrom, CHANGES } from './cabinet-changes.ts';
import type { Place } from './cabinet-changes.ts';

const run = promisify(execFile);
const LONG = { timeout: 240_000 };
let place: Place;

beforeAll(async () => {
  const cabinet = join(await mkdtemp(join(tmpdir(), 'two-threads-')), 'cabinet');
  await cp('tests/cabinets/marked', cabinet, { recursive: true });
  place = { project: '.', cabinet, chance: chanceFrom(1158) };
  for (let count = 0; count < 12; count += 1) await addPiece(place);
});
afterAll(() => rm(join(place.cabinet, '..'), { recursive: true, force: true }));

/** Builds with so many threads into a folder named after them, and answers with what the build said. */
async function builtBy(threads: 1 | 2): Promise<string> {
  const request = { cabinet: { at: place.cabinet, shown: 'cabinet' }, out: join(place.cabinet, `../site-${threads}`), address: 'https://example.org/', threads }; // prettier-ignore
  const script = join(place.cabinet, '../build.ts');
  const code = `import { buildSite } from ${JSON.stringify(resolve('src/commands/parts/build-site.ts'))};
const done = await buildSite(${JSON.stringify(request)});
process.stdout.write(done.ok ? done.value.says : done.problem);`;
  await writeFile(script, code);
  return (await run(process.execPath, [script])).stdout;
}

async function filesOf(threads: 1 | 2): Promise<Readonly<Record<string, string>>> {
  const folder = join(place.cabinet, `../site-${threads}`);
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const paths = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  const all = paths.sort().map(async (path) => [relative(folder, path), hash('sha256', await readFile(path))]);
  return Object.fromEntries(await Promise.all(all)) as Readonly<Record<string, string>>;
}

test('two threads make the site that one makes, from nothing and after changes, and take as much of the last one', LONG, async () => {
  await builtBy(2);
  await builtBy(1);
  expect(await filesOf(2)).toEqual(await filesOf(1));
  for (const name of ['an edit', 'a new piece', 'a renamed ruler', 'another rule of a set']) await CHANGES[name]?.(place);
  const [two, one] = [await builtBy(2), await builtBy(1)];
  expect(await filesOf(2)).toEqual(await filesOf(1));
  const taken = (said: string): string | undefined => /(\d+) pages as they were/.exec(said)?.[1];
  expect(Number(taken(one))).toBeGreaterThan(20);
  expect(taken(two)).toBe(taken(one));
}); // prettier-ignore
