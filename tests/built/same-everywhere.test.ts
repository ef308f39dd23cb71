import { execFile } from 'node:child_process';
import { hash } from 'node:crypto';
import { cp, mkdtemp, readFile, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, relative, sep } from 'node:path';
import process from 'node:process';
import { promisify } from 'node:util';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { copyProgram } from './own-place.ts';

const run = promisify(execFile);

/** Moves the clock of a program by so many days. */
const CLOCK = (days: number): string => `
const Real = Date;
const by = ${days} * 86400000;
globalThis.Date = class extends Real {
  constructor(...words) { super(...(words.length === 0 ? [Real.now() + by] : words)); }
  static now() { return Real.now() + by; }
};`;

/** Every file of a folder, by its path, as a digest. */
async function filesOf(folder: string): Promise<Readonly<Record<string, string>>> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const paths = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  const all = paths.map(async (path) => [relative(folder, path).split(sep).join('/'), hash('sha256', await readFile(path))]); // prettier-ignore
  return Object.fromEntries(await Promise.all(all)) as Readonly<Record<string, string>>;
}

test('the same cabinet is the same site, byte for byte, in another folder, zone, language and year, from nothing and over the last one', async () => {
  const at = await mkdtemp(join(tmpdir(), 'everywhere-'));
  const disc = '<svg xmlns="http://www.w3.org/2000/svg" width="400" height="400"><rect width="400" height="400" fill="#d7dbdc"/><circle cx="200" cy="200" r="150" fill="#543"/></svg>';
  const photograph = await sharp(Buffer.from(disc)).jpeg().toBuffer();
  /** A place of its own: a copy of the program, of the cabinet, and a clock. */
  const place = async (name: string, env: Readonly<Record<string, string>>, days: number, from = 'tests/cabinets/marked') => {
    const [project, cabinet, out] = ['project', 'cabinet', 'site'].map((part) => join(at, name, part)) as [string, string, string];
    await copyProgram(project);
    await cp(from, cabinet, { recursive: true });
    // Old ids in another order than that of the list of addresses, which the first build writes and the second reads.
    const piece = join(cabinet, 'pieces/plain-penny/piece.md');
    await writeFile(piece, (await readFile(piece, 'utf8')).replace('formerly: penny-one', 'formerly: [penny-one, a-penny]'));
    await writeFile(join(cabinet, 'pieces/plain-penny/obverse.jpg'), photograph);
    await writeFile(join(at, name, 'clock.mjs'), CLOCK(days));
    const words = ['--import', join(at, name, 'clock.mjs'), 'src/commands/build.ts', '--cabinet', cabinet, '--out', out];
    const build = async () => {
      await run(process.execPath, words, { cwd: project, env: { ...process.env, ...env } });
      return filesOf(out);
    };
    return { build, cabinet };
  };
  const here = await place('here', { TZ: 'America/Adak', LANG: 'en_US.UTF-8', LC_ALL: 'en_US.UTF-8' }, 0);
  const first = await here.build();
  expect(Object.keys(first).length).toBeGreaterThan(80);
  // The cabinet goes on with what it keeps: the days on which its records were last changed are in it.
  const there = await place('Über den Fluß & back', { TZ: 'Pacific/Kiritimati', LANG: 'tr_TR.UTF-8', LC_ALL: 'tr_TR.UTF-8' }, 400, here.cabinet);
  expect(await there.build(), 'from nothing, elsewhere').toEqual(first);
  expect(await there.build(), 'over the last one').toEqual(first);
  await rm(at, { recursive: true });
}, 600_000); // prettier-ignore
