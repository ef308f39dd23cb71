import { execFile } from 'node:child_process';
import { hash } from 'node:crypto';
import { cp, mkdtemp, readFile, readdir, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, relative, resolve } from 'node:path';
import process from 'node:process';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { addPiece, CHANGES, chanceFrom, EVERYTHING } from './cabinet-changes.ts';
import type { Place } from './cabinet-changes.ts';

/** With `TRIES=full` each change is tried by itself, and then fifty sequences of several; else several at once. */
const isFull = process.env['TRIES'] === 'full';
const SEQUENCES = 50;
const SLOW = 600_000;

const run = promisify(execFile);
let place: Place;
let site: string;

beforeAll(async () => {
  const at = await mkdtemp(join(tmpdir(), 'same-as-clean-'));
  const [project, cabinet] = [join(at, 'project'), join(at, 'cabinet')];
  // A copy of the program, so that it can be changed too, and with caches of its own.
  for (const part of ['src', 'public', 'package.json', 'package-lock.json', 'astro.config.mjs', 'tsconfig.json'])
    await cp(part, join(project, part), { recursive: true });
  await symlink(resolve('node_modules'), join(project, 'node_modules'), 'junction');
  await cp('tests/cabinets/marked', cabinet, { recursive: true });
  place = { project, cabinet, chance: chanceFrom(1279) };
  site = join(at, 'site');
  for (let count = 0; count < 9; count += 1) await addPiece(place);
  expect(await taken(site)).toBe(0);
}, SLOW);

afterAll(() => rm(join(place.project, '..'), { recursive: true, force: true }));

/** Builds into a folder, and says how many pages were taken from the site that was there. */
async function taken(out: string): Promise<number> {
  const address = /^address: *(\S+)/m.exec(await readFile(join(place.cabinet, 'cabinet.yaml'), 'utf8'))?.[1] ?? '';
  const words = ['src/commands/build.ts', '--cabinet', place.cabinet, '--out', out, '--address', address];
  const { stdout } = await run(process.execPath, words, { cwd: place.project });
  return Number(/, (\d+) pages? as /.exec(stdout)?.[1] ?? 0);
}

/** Every file of a folder, by its path, as a digest. */
async function filesOf(folder: string): Promise<Readonly<Record<string, string>>> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const paths = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  const all = paths.sort().map(async (path) => [relative(folder, path), hash('sha256', await readFile(path))]);
  return Object.fromEntries(await Promise.all(all)) as Readonly<Record<string, string>>;
}

/** Builds again over the last site, and anew, and compares every byte; says how many pages were taken. */
async function builtBothWays(): Promise<number> {
  const count = await taken(site);
  const clean = `${site}-clean`;
  expect(await taken(clean)).toBe(0);
  expect(await filesOf(site)).toEqual(await filesOf(clean));
  await rm(clean, { recursive: true });
  return count;
}

/** Makes the changes of these names. */
async function change(names: readonly string[]): Promise<void> {
  for (const name of names) await { ...CHANGES, ...EVERYTHING }[name]?.(place);
}

const few: readonly (readonly string[])[] = [
  [
    ...[
      'an edit',
      'another title',
      'a new piece',
      'a deleted piece',
      'made private, unlisted or public',
      'a photograph',
    ],
    ...['a new id', 'a renamed ruler'],
  ],
  [
    ...[
      'another rule of a set',
      'another text of an exhibit',
      'another name of a book',
      'another period',
      'a moved mint',
    ],
    ...['another standard', 'a new private value'],
  ],
];
const named = isFull ? Object.keys(CHANGES).map((name) => [name]) : few;

describe('a site built over the last one is byte for byte a site built from nothing', () => {
  test.for(named)('after %s, with the pages that show nothing of it as they were', { timeout: SLOW }, async (names) => {
    await change(names);
    // What the first lots leave wrong is still there after the last, which alone is held against a clean build.
    const isLast = isFull || names === named.at(-1);
    // Every piece has a page and a file of data, and is in lists of its facets.
    expect(await (isLast ? builtBothWays() : taken(site))).toBeGreaterThan(isFull ? 0 : 9);
  });

  test.runIf(isFull)(`after ${SEQUENCES} sequences of changes`, { timeout: 20 * SLOW }, async () => {
    const all = Object.keys(CHANGES);
    for (let sequence = 0; sequence < SEQUENCES; sequence += 1) {
      const names = Array.from(
        { length: 1 + Math.floor(place.chance() * 4) },
        () => all[Math.floor(place.chance() * all.length)] ?? '',
      );
      await change(names);
      await builtBothWays();
    }
  });

  test.for(isFull ? Object.keys(EVERYTHING) : ['a template'])(
    'after a change of %s, with no page as it was',
    { timeout: SLOW },
    async (name) => {
      await change([name]);
      // Nothing was taken, so it is a clean build.
      expect(await taken(site)).toBe(0);
    },
  );
});

describe('what was built before', () => {
  test('is not taken where somebody has written in it', { timeout: SLOW }, async () => {
    const page = join(site, 'pieces/plain-penny/index.html');
    await writeFile(page, (await readFile(page, 'utf8')).replace('Plain king', 'Written in by hand'));
    await addFamousPiece();
    expect(await taken(site)).toBe(0);
    expect(await readFile(page, 'utf8')).not.toContain('Written in by hand');
    expect(await mentions()).not.toEqual([]);
  });

  test('leaves nothing of a piece that was made private, in the caches neither', { timeout: SLOW }, async () => {
    const file = join(place.cabinet, 'pieces/extra-1/piece.md');
    await writeFile(file, (await readFile(file, 'utf8')).replace('publish: yes', 'publish: no'));
    expect(await taken(site)).toBeGreaterThan(0);
    expect(await mentions()).toEqual([]);
  });

  test('is forgotten when anything private is found in the new site', { timeout: SLOW }, async () => {
    // A page that speaks of what is private, as a faulty template would.
    const page = join(place.project, 'src/pages/about/index.astro');
    const text = await readFile(page, 'utf8');
    await writeFile(page, `${text}\n<p>MARK-CERT-77</p>\n`);
    await expect(taken(site)).rejects.toThrow(/MARK|leak|private/i);
    await writeFile(page, text);
    expect(await taken(site)).toBe(0);
  });
});

/** A piece whose name, number and title stand nowhere else. */
async function addFamousPiece(): Promise<void> {
  const folder = join(place.cabinet, 'pieces/extra-1');
  await cp(join(place.cabinet, 'pieces/old-medal'), folder, { recursive: true });
  const text = await readFile(join(folder, 'piece.md'), 'utf8');
  const named = text.replace('"0004"', '"Z-7717"').replace(/title: .*/, 'title: Quincunx of Erewhon\npublish: yes');
  await writeFile(join(folder, 'piece.md'), named);
}

/** The files of the site and of the caches in which the piece `extra-1` is named, but for where its photographs are kept. */
async function mentions(): Promise<readonly string[]> {
  const found: string[] = [];
  for (const folder of [site, join(place.project, '.cache')]) {
    const entries = await readdir(folder, { recursive: true, withFileTypes: true });
    for (const entry of entries) {
      const path = join(entry.parentPath, entry.name);
      const text = entry.isFile() ? `${path}\n${(await readFile(path)).toString('latin1')}` : path;
      if (/extra-1(?!\d)|Quincunx|Z-7717/.test(text)) found.push(path);
    }
  }
  return found;
}
