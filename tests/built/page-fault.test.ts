import { execFileSync } from 'node:child_process';
import { cp, mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { existsSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { beforeAll, expect, test } from 'vitest';
import { copyProgram } from './own-place.ts';

const PAGE = `<!doctype html><head><meta http-equiv="Content-Security-Policy" content="default-src 'none'; base-uri 'none'; form-action 'none'"><meta name="referrer" content="no-referrer"></head><p>x</p>`;
const SECRET = 'the key of Marjorie Brocklebank';

/** A program of two pages, one of which may fail, so that it is bundled in a moment. */
let home = '';
beforeAll(async () => {
  home = await mkdtemp(join(tmpdir(), 'page-fault-'));
  await cp('tests/cabinets/marked', join(home, 'cabinet'), { recursive: true });
  await copyProgram(join(home, 'project'));
  await rm(join(home, 'project/src/pages'), { recursive: true });
  expect(await build('')).toMatchObject({ status: 0, said: '' });
}, 240_000);

async function build(code: string): Promise<{ readonly status: number; readonly said: string }> {
  // A site has a folder data, or it is not built over.
  await mkdir(join(home, 'project/src/pages/data'), { recursive: true });
  await writeFile(join(home, 'project/src/pages/data/index.astro'), `${PAGE}\n`);
  await writeFile(join(home, 'project/src/pages/index.astro'), `---\n${code}\n---\n${PAGE}\n`);
  const words = ['src/commands/build.ts', '--cabinet', join(home, 'cabinet'), '--out', join(home, 'site')];
  try {
    execFileSync(process.execPath, words, { cwd: join(home, 'project'), encoding: 'utf8', stdio: 'pipe' });
    return { status: 0, said: '' };
  } catch (error) {
    const { status, stderr } = error as { status: number; stderr: string };
    return { status, said: stderr };
  }
}

test.for([
  ['throws', `throw new RangeError('${SECRET}');`, 'RangeError'],
  ['answers that it failed', `return new Response('${SECRET}', { status: 500 });`, 'Error'],
] as const)('a page that %s stops the build, which tells where and nothing of the keeper’s', { timeout: 240_000 }, async ([, code, kind]) => {
  const before = await readFile(join(home, 'site/index.html'), 'utf8');
  const { status, said } = await build(code);
  expect(status, said).toBe(2);
  expect(said).toMatch(/^This is a fault in Underglass and not in your cabinet/);
  expect(said).toContain(`fault    ${kind}\n  at       src/pages/index.astro:1\n`);
  expect(said).not.toMatch(/Marjorie|Brocklebank|^ {4}at /m);
  expect(said).not.toContain(home);
  expect(await readFile(join(home, 'site/index.html'), 'utf8')).toBe(before);
  expect(existsSync(join(home, 'site/pieces/plain-penny/index.html'))).toBe(false);
}); // prettier-ignore
