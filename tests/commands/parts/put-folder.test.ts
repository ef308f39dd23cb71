import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import process from 'node:process';
import { expect, test } from 'vitest';
import { aloneIn, putFolder } from '../../../src/commands/parts/put-folder.ts';
import { good } from '../../../src/core/outcome.ts';

const NEW = '.York & Münzen.underglass-new';
const OLD = '.York & Münzen.underglass-old';

function folders(): { at: string; finished: string; into: string } {
  const at = mkdtempSync(join(tmpdir(), 'put-'));
  const finished = join(at, 'growing', 'site');
  const into = join(at, 'stick', 'York & Münzen');
  for (const [folder, page] of [[finished, 'new'], [into, 'old']] as const) fill(folder, page); // prettier-ignore
  return { at, finished, into };
}
function fill(folder: string, page: string): void {
  mkdirSync(join(folder, 'pages'), { recursive: true });
  for (let index = 0; index < 5; index += 1) writeFileSync(join(folder, 'pages', `${page}-${index}.html`), page);
}

test('a finished folder takes the place of what was there, and leaves nothing beside it', async () => {
  const { at, finished, into } = folders();
  await putFolder(finished, into);
  expect(readdirSync(join(at, 'stick'))).toEqual(['York & Münzen']);
  expect(readdirSync(join(into, 'pages'))).toHaveLength(5);
  expect(readFileSync(join(into, 'pages', 'new-0.html'), 'utf8')).toBe('new');
  expect(readdirSync(join(at, 'growing'))).toEqual([]);
});

test.for<readonly [string, readonly string[], string]>([
  ['killed before the old one went', [NEW], 'old'],
  ['killed while the two changed places', [NEW, OLD], 'old'],
  ['killed while the old one was deleted', [OLD], 'new'],
])('%s, the folder is whole after the next start', async ([, left, page]) => {
  const { at, into } = folders();
  const stick = join(at, 'stick');
  const isBetween = left.length === 2;
  if (isBetween) (await import('node:fs')).renameSync(into, join(stick, OLD));
  else for (const name of left) fill(join(stick, name), name === NEW ? 'new' : 'old');
  if (left.length === 1 && page === 'new') fill(into, 'new');
  if (isBetween) fill(join(stick, NEW), 'new');
  const done = await aloneIn(into, () => Promise.resolve(good(readdirSync(join(into, 'pages')).length)));
  expect(done.ok && done.value >= 5).toBe(true);
  expect(existsSync(join(into, 'pages', `${page}-0.html`))).toBe(true);
  expect(readdirSync(stick)).toEqual(['York & Münzen']);
});

test('killed at every point of the change, the folder is the old one or the new one', () => {
  const program = `import { putFolder } from './src/commands/parts/put-folder.ts';
    await putFolder(process.argv.at(-2), process.argv.at(-1));`;
  const start = `import { aloneIn } from './src/commands/parts/put-folder.ts';
    await aloneIn(process.argv.at(-1), async () => ({ ok: true, value: null }));`;
  const run = (text: string, words: readonly string[], env: NodeJS.ProcessEnv, ...more: readonly string[]) =>
    spawnSync(process.execPath, [...more, '--input-type=module', '-e', text, ...words], {
      encoding: 'utf8',
      env: { ...process.env, ...env },
    });
  const preload = ['--import', resolve('tests/catalogue/keep/stop-at.mjs')];
  const seen = new Set<string>();
  for (let point = 1; ; point += 1) {
    const { at, finished, into } = folders();
    const stopped = run(
      program,
      [finished, into],
      { STOP_IN: at, STOP_HOW: 'kill', STOP_AT: String(point) },
      ...preload,
    );
    expect(run(start, [into], {}).status).toBe(0);
    const pages = readdirSync(join(into, 'pages'));
    expect(pages).toHaveLength(5);
    expect(new Set(pages.map((name) => name.slice(0, 3))).size).toBe(1);
    expect(readdirSync(join(at, 'stick'))).toEqual(['York & Münzen']);
    seen.add(pages[0]?.slice(0, 3) ?? '');
    if (stopped.signal === null) break;
  }
  expect([...seen].sort()).toEqual(['new', 'old']);
}, 120_000);
