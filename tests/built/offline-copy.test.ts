import { execFileSync } from 'node:child_process';
import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { homedir, hostname, tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { makeHallCopy } from '../../src/publish/offline-copy/make-offline-copy.ts';
import { builtFiles, builtPages } from './site-links.ts';

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'hall-'));
});
afterAll(async () => {
  await rm(folder, { recursive: true, force: true });
});

describe('the hall copy of the demo', () => {
  const hall = (): string => join(folder, 'demo');
  beforeAll(async () => {
    const shown = { title: 'York and its money', cabinet: 'The Circle', address: null };
    await makeHallCopy('dist', hall(), { base: '/', exhibit: 'struck-in-york' }, shown);
  });

  test('shows whoever opens the folder three things to open, and one folder behind them', async () => {
    expect((await readdir(hall())).sort()).toEqual(['READ-ME.txt', 'catalogue', 'index.html', 'open-me.html']);
  });

  test('leads from every page to files of the folder by name, and to places that are on them', async () => {
    const pages = await builtPages(hall());
    const files = new Set(await builtFiles(hall()));
    const anchors = new Map(pages.map((page) => [page.path, page.anchors]));
    expect(pages.length).toBeGreaterThan(250);
    const wrong: string[] = [];
    for (const { path, to } of pages) {
      const at = path === '' || path.endsWith('/') ? `${path}index.html` : path;
      for (const address of to) {
        if (/^(mailto|data|https?):/.test(address)) continue;
        const { pathname, hash } = new URL(address, `file:///${at}`);
        const file = decodeURIComponent(pathname.slice(1));
        const place = decodeURIComponent(hash.slice(1));
        if (address.startsWith('/') || !files.has(file)) wrong.push(`${path} → ${address}`);
        else if (place !== '' && !anchors.get(file.replace(/index\.html$/, ''))?.has(place))
          wrong.push(`${path} → ${address} (no such place)`);
      }
    }
    expect(wrong).toEqual([]);
  });

  test('holds every page of the site that search engines may show', async () => {
    const copied = new Set((await builtFiles(hall())).map((file) => file.replace('catalogue/', '')));
    const pages = (await builtFiles('dist')).filter((file) => file.endsWith('/index.html'));
    const gone: string[] = [];
    for (const page of pages.filter((file) => !copied.has(file) && file !== 'exhibits/struck-in-york/index.html'))
      if (!/http-equiv="refresh"|noindex/.test(await readFile(join('dist', page), 'utf8'))) gone.push(page);
    expect(gone).toEqual([]);
  });

  test('loads no module, and names nothing from the root of a host in a style or a script', async () => {
    const files = await builtFiles(hall());
    const wrong: string[] = [];
    for (const file of files.filter((name) => /\.(html|css|js)$/.test(name))) {
      const text = await readFile(join(hall(), file), 'utf8');
      if (/type="module"|rel="modulepreload"/.test(text)) wrong.push(`${file}: a module`);
      if (file.endsWith('.css') && /url\(["']?\//.test(text)) wrong.push(`${file}: an address from the root`);
      if (file.endsWith('.js') && /["'`]\/(pieces|data|photographs|compare|_astro)\//.test(text))
        wrong.push(`${file}: an address from the root`);
    }
    expect(files.filter((name) => name.endsWith('.js')).length).toBeGreaterThan(3);
    expect(wrong).toEqual([]);
  });
});

test('a copy without an exhibit begins with the first page of the catalogue, and holds the same pieces', async () => {
  const into = join(folder, 'whole');
  await makeHallCopy('dist', into, { base: '/', exhibit: null }, { title: 'The Circle', cabinet: 'The Circle', address: null, whole: 'listed' }); // prettier-ignore
  const [whole, hall] = await Promise.all([into, join(folder, 'demo')].map(builtFiles));
  const pieces = (files: readonly string[] = []) => files.filter((file) => /^catalogue\/pieces\/[^/]+\/index\.html$/.test(file)).sort(); // prettier-ignore
  expect(pieces(whole)).toEqual(pieces(hall));
  expect(whole).not.toContain('catalogue/index.html');
  expect(whole).toContain('catalogue/exhibits/struck-in-york/index.html');
  expect(await readFile(join(into, 'READ-ME.txt'), 'utf8')).toMatch(/^The Circle\r\nThe whole catalogue\.\r\n/);
});

test('npm run build -- --copy --unlisted lists for one friend what is on no list, and nothing that is hidden', async () => {
  const into = join(folder, 'for a friend');
  const words = ['src/commands/build.ts', '--cabinet', 'tests/cabinets/marked', '--copy', '--unlisted', '--out', into];
  execFileSync(process.execPath, words, { encoding: 'utf8', stdio: 'pipe' });
  expect(await readFile(join(into, 'catalogue/pieces/index.html'), 'utf8')).toContain('unlisted-groat');
  for (const file of await builtFiles(into))
    expect([file, (await readFile(join(into, file), 'latin1')).includes('hidden-noble')]).toEqual([file, false]);
  expect(await readFile(join(into, 'READ-ME.txt'), 'utf8')).toContain('do not pass it on');
});

describe('npm run build -- --hall', () => {
  const out = (): string => join(folder, 'Clubs & Münzen', 'small show');
  const hall = (exhibit: string, into = out()): { readonly status: number; readonly said: string } => {
    const words = ['src/commands/build.ts', '--cabinet', 'tests/cabinets/marked', '--hall', exhibit, '--out', into];
    try {
      return { status: 0, said: execFileSync(process.execPath, words, { encoding: 'utf8', stdio: 'pipe' }) };
    } catch (error) {
      const { status, stderr } = error as { status: number; stderr: string };
      return { status, said: stderr };
    }
  };

  test('says how much it made and how to open it; nothing unlisted and nothing of this machine is in it', async () => {
    const { status, said } = hall('small-show');
    expect(said).toMatch(
      /^\d+ pages, \d+\.\d MB, put in .* in \d+\.\d s; every byte inspected, nothing private in it/m,
    );
    expect(said).toContain('open open-me.html: it needs no network and no server');
    expect(status).toBe(0);
    const traces: string[] = [];
    for (const file of await builtFiles(out())) {
      const text = `${file}\n${await readFile(join(out(), file), 'latin1')}`;
      for (const name of ['unlisted-groat', 'hidden-noble', process.cwd(), folder, homedir(), hostname(), 'localhost'])
        if (text.includes(name) && name.length > 3) traces.push(`${file} names ${name}`);
    }
    expect(traces).toEqual([]);
    expect(await readdir(join(out(), '..'))).toEqual(['small show']);
  });

  test('has a note beside it with the title, the way to open it and the address on the web', async () => {
    const note = await readFile(join(out(), 'READ-ME.txt'), 'utf8');
    expect(note).toMatch(/^A small show\r\n/);
    expect(note).toContain('Double-click open-me.html');
    expect(note).toMatch(/https:\/\/\S+\/exhibits\/small-show\//);
  });

  test('names the exhibit that was meant when there is none of that name', () => {
    expect(hall('smal-show', join(folder, 'none'))).toMatchObject({ status: 1 });
    expect(hall('smal-show', join(folder, 'none')).said).toBe(
      'There is no exhibit "smal-show". Write --hall small-show.\n',
    );
  });

  test('empties no folder that it did not make', async () => {
    const letters = join(folder, 'letters');
    await mkdir(letters);
    await writeFile(join(letters, 'index.html'), 'Dear nephew,');
    expect(hall('small-show', letters).said).toContain('holds files that no build put there');
    expect(await readdir(letters)).toEqual(['index.html']);
  });
});
