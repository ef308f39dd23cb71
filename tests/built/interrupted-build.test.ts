import { spawn } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { hash } from 'node:crypto';
import { tmpdir } from 'node:os';
import { join, relative, resolve } from 'node:path';
import process from 'node:process';
import { setTimeout as later } from 'node:timers/promises';
import { isDeepStrictEqual } from 'node:util';
import { beforeAll, expect, test } from 'vitest';
import { changeCabinet } from '../../src/catalogue/keep/change-cabinet.ts';
import { aloneIn } from '../../src/commands/parts/put-folder.ts';
import { good } from '../../src/core/outcome.ts';
import { folderTexts } from '../catalogue/keep/folder-texts.ts';
import { leftBehind } from '../catalogue/keep/left-behind.ts';
import { copyProgram } from './own-place.ts';

/** With `TRIES=full` a build is killed at many more moments, and a disk refuses at many more points of it. */
const IS_FULL = process.env['TRIES'] === 'full';
const PRELOAD = resolve('tests/catalogue/keep/stop-at.mjs');

/** A folder with a copy of the program, a small cabinet, and beside each other the site as it was before and after a change. */
const room = mkdtempSync(join(tmpdir(), 'interrupted-build-'));
const [project, cabinet, web] = [join(room, 'project'), join(room, 'cabinet'), join(room, 'web')];
const [site, cache] = [join(web, 'site'), join(project, '.cache')];

/** Digests of a folder's files by their paths; nothing for a folder that is not there. */
function digests(folder: string): Readonly<Record<string, string>> {
  if (!existsSync(folder)) return {};
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  const paths = files.map((entry) => join(entry.parentPath, entry.name)).sort();
  return Object.fromEntries(paths.map((path) => [relative(folder, path), hash('sha256', readFileSync(path))]));
}

type Ended = { readonly status: number | null; readonly signal: string | null; readonly said: string };
/** Runs a build of the cabinet; `during` may stop it. */
function build(
  env: Readonly<Record<string, string>> = {},
  during?: (kill: () => void) => Promise<void>,
): Promise<Ended> {
  const words = [...(env['STOP_IN'] === undefined ? [] : ['--import', PRELOAD]), 'src/commands/build.ts'];
  const child = spawn(process.execPath, [...words, '--cabinet', cabinet, '--out', site], {
    cwd: project,
    env: { ...process.env, ...env },
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  let said = '';
  child.stderr.on('data', (part: Buffer) => (said += part.toString()));
  const ended = new Promise<Ended>((done) => child.on('close', (status, signal) => done({ status, signal, said })));
  void during?.(() => child.kill('SIGKILL'));
  return ended;
}

/** The site and the cabinet before the change is built, and after. */
let [old, fresh] = [digests(web), digests(web)];
let [texts, textsAfter] = [folderTexts(room), folderTexts(room)];
/** How long a build of the change takes, in milliseconds. */
let lasts = 0;
const KEPT = [[web, 'web.old'], [cache, 'cache.old'], [cabinet, 'cabinet.new']] as const; // prettier-ignore

/** Puts everything back as it was before the change was built. */
function putBack(): void {
  for (const [to, from] of KEPT) {
    rmSync(to, { recursive: true, force: true });
    cpSync(join(room, from), to, { recursive: true });
  }
}

beforeAll(async () => {
  await copyProgram(project);
  cpSync('tests/cabinets/marked', cabinet, { recursive: true });
  expect(await build()).toMatchObject({ status: 0 });
  old = digests(site);
  const file = join(cabinet, 'pieces/plain-penny/piece.md');
  writeFileSync(file, readFileSync(file, 'utf8').replace('penny-one', '[penny-one, old-penny]'));
  texts = folderTexts(cabinet);
  for (const [from, to] of KEPT) cpSync(from, join(room, to), { recursive: true });
  const began = Date.now();
  expect(await build()).toMatchObject({ status: 0, said: '' });
  lasts = Date.now() - began;
  [fresh, textsAfter] = [digests(site), folderTexts(cabinet)];
  expect(fresh).not.toEqual(old);
  expect(textsAfter).not.toEqual(texts);
}, 600_000);

/** After the recovery with which the next command begins, the old site or the new one stands whole, and the cabinet too. */
async function isWhole(where: string): Promise<'old' | 'new'> {
  await aloneIn(site, () => Promise.resolve(good(null)));
  const now = digests(site);
  const isOld = isDeepStrictEqual(now, old);
  expect(now, where).toEqual(isOld ? old : fresh);
  expect(readdirSync(web), where).toEqual(['site']);
  await leftBehind(cabinet, texts, textsAfter, where);
  return isOld ? 'old' : 'new';
}

/** The next build after one that was stopped ends well, and what it makes is what it would have been. */
async function nextEndsWell(where: string): Promise<void> {
  expect(await build(), where).toMatchObject({ status: 0, said: '' });
  expect(digests(site), where).toEqual(fresh);
  expect(readdirSync(web), where).toEqual(['site']);
}

test('a build that is killed at any moment leaves the old site or the new one, and the next one ends well', { timeout: 3_600_000 }, async () => {
  const moments = IS_FULL ? 50 : 3;
  for (let at = 0; at < moments; at += 1) {
    putBack();
    const moment = Math.round((lasts * (at + 0.5)) / moments);
    const { signal } = await build({}, async (kill) => {
      await later(moment);
      kill();
    });
    const where = `killed after ${moment} of ${lasts} ms (${signal ?? 'it had ended'})`;
    await isWhole(where);
    if (at % 10 === moments % 10) await nextEndsWell(where);
  }
}); // prettier-ignore

test('a build that is killed while the new site takes its place leaves the old one or the new one', { timeout: 3_600_000 }, async () => {
  const seen = new Set<string>();
  // Before the old one is renamed away, and when the new one is in; with all of it, at each change until nothing is left to stop.
  for (let point = IS_FULL ? 1 : 4; IS_FULL || point <= 6; point += IS_FULL ? 1 : 2) {
    putBack();
    const { signal } = await build({ STOP_IN: web, STOP_HOW: 'kill', STOP_AT: String(point) });
    seen.add(await isWhole(`killed at ${point}`));
    await nextEndsWell(`after a kill at ${point}`);
    if (signal === null) break;
  }
  expect([...seen].sort()).toEqual(['new', 'old']);
}); // prettier-ignore

/** What a build says whose disk refuses: one sentence or two, on one line. */
const SENTENCE = /^[^\n]*(?:room|written|changed|opened)[^\n]*\.\n$/;
/** Which disk refuses, how, and at how many of its changes: a few of all, or ever farther apart as far as there are changes. */
const SAMPLE = [[web, 'EACCES', 3], [web, 'EROFS', 6], [cache, 'ENOSPC', 60]] as const; // prettier-ignore
const POINTS = [1, 2, 3, 4, 5, 6, 8, 11, 15, 20, 30, 45, 70, 100, 150, 220, 330, 500];
const CODES = ['ENOSPC', 'EROFS', 'EACCES'];
const FAULTS: readonly { readonly disk: string; readonly points: readonly (readonly [how: string, point: number])[] }[] = [web, cache, cabinet].map((disk) => ({
  disk,
  points: IS_FULL
    ? CODES.flatMap((how) => POINTS.map((point) => [how, point] as const))
    : SAMPLE.filter(([of]) => of === disk).map(([, how, point]) => [how, point] as const),
})); // prettier-ignore

test.for(FAULTS.filter(({ points }) => points.length > 0).map((fault) => ({ ...fault, name: relative(room, fault.disk) })))(
  'a build whose disk is full or refuses in $name ends in a sentence, with everything as it was',
  { timeout: 3_600_000 },
  async ({ disk, points, name }) => {
    const over = new Set<string>();
    for (const [how, point] of points) {
      // Where there is no such change any more, there is none farther on.
      if (over.has(how)) continue;
      putBack();
      const { status, said } = await build({ STOP_IN: disk, STOP_HOW: how, STOP_AT: String(point) });
      const where = `${how} in ${name} at ${point}: ${String(status)} ${said}`;
      if (status === 0) {
        expect(said, where).toBe('');
        over.add(how);
      } else expect(said, where).toMatch(SENTENCE);
      expect(await isWhole(where), where).toBe(status === 0 ? 'new' : 'old');
    }
    // At its sixth change the new site is in its place already, and only the old one cannot be removed.
    expect([...over]).toEqual(IS_FULL ? CODES : disk === web ? ['EROFS'] : []);
  },
); // prettier-ignore

test('two builds at once into one folder both end well', { timeout: 600_000 }, async () => {
  putBack();
  const [one, other] = await Promise.all([build(), build()]);
  expect([one.status, other.status]).toEqual([0, 0]);
  expect(`${one.said}${other.said}`).toMatch(/^(?:The folder .* is being changed by npm run build.*\n)?$/);
  expect(await isWhole('two at once')).toBe('new');
});

test('a build while the cabinet is being changed shows it as it was before or after a change', { timeout: 600_000 }, async () => {
  putBack();
  const files = ['pieces/plain-penny/piece.md', 'pieces/unlisted-groat/piece.md'];
  const before = files.map((file) => readFileSync(join(cabinet, file), 'utf8'));
  const goesOn = { isBuilding: true };
  const building = build().then((ended) => ((goesOn.isBuilding = false), ended));
  for (let round = 1; goesOn.isBuilding; round += 1)
    await changeCabinet(cabinet, { command: 'the desk', kind: 'save' }, async ({ put }) => {
      for (const [at, file] of files.entries()) await put(file, `${before[at]}\nRound ${round}.\n`);
      return good(null);
    });
  expect(await building).toMatchObject({ status: 0 });
  const rounds = ['plain-penny', 'unlisted-groat'].map((id) => /Round (\d+)\./.exec(readFileSync(join(site, 'pieces', id, 'index.html'), 'utf8'))?.[1]);
  expect(rounds[0]).toBe(rounds[1]);
}); // prettier-ignore
