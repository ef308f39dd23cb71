import { mkdirSync, mkdtempSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';
import { makeHallCopy } from '../../../src/publish/offline-copy/make-offline-copy.ts';
import { plainPage } from '../../../src/publish/host-files.ts';

type Shown = Parameters<typeof makeHallCopy>[3];

const page = (body: string, head = ''): string => `<!DOCTYPE html><html lang="en"><head>${head}</head><body>${body}</body></html>`; // prettier-ignore
const FONT = Buffer.from([1, 2, 3, 0xff]);
/** A site under /coins/: an exhibit of one piece, a piece that only the catalogue leads to, and one that nothing leads to. */
const SITE: Readonly<Record<string, string | Buffer>> = {
  'index.html': page('<a href="/coins/exhibits/york/">York</a> <a href="/coins/pieces/b/">b</a>'),
  'exhibits/york/index.html': page(
    '<a href="/coins/pieces/a/?from=york#legend">a</a> <a href="/coins/">all</a> <a href="/coins/gone/">gone</a> <a href="/elsewhere/">other site</a>',
    '<link rel="preload" href="/coins/kept.woff2"><link rel="manifest" href="/coins/app.json"><link rel="stylesheet" href="/coins/s/all.css"><script type="module" src="/coins/s/find.js"></script>',
  ),
  'pieces/a/index.html': page('<img src="/coins/p/a.webp" srcset="/coins/p/a.webp 160w, /coins/p/a2.webp 320w" alt=""><x-find data-records="/coins/data/found.json" data-note="1/2" data-large="/coins/p/large.webp"></x-find><a href="/coins/data/found.json">the file</a>'), // prettier-ignore
  'pieces/b/index.html': page('b', '<script type="application/ld+json">{}</script>'),
  'pieces/unlisted/index.html': page('nobody is led here'),
  'p/a.webp': Buffer.from([0, 0xff, 7]),
  'p/a2.webp': Buffer.from([0, 0xff, 8]),
  'p/large.webp': Buffer.from([0, 0xff, 9]),
  's/pieces/a.json': JSON.stringify({ face: 'beside what no script reads' }),
  's/all.css':
    '@font-face{src:url(/coins/f/a.woff2)}.a{background:url(/coins/p/a.webp)}.b{src:url(/coins/f/none.woff2)}',
  's/find.js': 'import { said } from "./said.js"; globalThis.found = said;',
  's/said.js': 'export const said = "as one";',
  'f/a.woff2': FONT,
  'kept.woff2': FONT,
  'app.json': '{}',
  'data/found.json': JSON.stringify({ a: '/coins/pieces/a/', note: '/other/' }),
  'data/pieces/a.json': JSON.stringify({ face: '/coins/p/a2.webp' }),
  'data/pieces/b.json': JSON.stringify({ face: null }),
  'data/pieces/unlisted.json': JSON.stringify({ face: 'nobody compares it' }),
};

async function copyOf(exhibit: string | null, told: Partial<Shown> = {}) {
  const folder = mkdtempSync(join(tmpdir(), 'copy-'));
  for (const [file, text] of Object.entries(SITE)) {
    mkdirSync(join(folder, 'site', dirname(file)), { recursive: true });
    writeFileSync(join(folder, 'site', file), text);
  }
  const into = join(folder, 'copy');
  const shown = { title: 'Struck in York', cabinet: 'A Cabinet', address: null, ...told };
  const made = await makeHallCopy(join(folder, 'site'), into, { base: '/coins/', exhibit }, shown);
  const files = readdirSync(into, { recursive: true, encoding: 'utf8' })
    .map((file) => file.replaceAll('\\', '/'))
    .filter((file) => statSync(join(into, file)).isFile());
  return { made, files, read: (file: string): string => readFileSync(join(into, file), 'utf8'), into };
}
const notes = async (told: Partial<Shown>): Promise<string> => (await copyOf(null, told)).read('READ-ME.txt');

test('a copy holds what the exhibit leads to, each file once and as it must be, and nothing that no page leads to', async () => {
  const { made, files, read, into } = await copyOf('york');
  expect(files.toSorted()).toEqual([
    'READ-ME.txt',
    'catalogue/data/found.json',
    'catalogue/data/found.json.js',
    'catalogue/data/pieces/a.json',
    'catalogue/data/pieces/a.json.js',
    'catalogue/data/pieces/b.json',
    'catalogue/data/pieces/b.json.js',
    'catalogue/index.html',
    'catalogue/p/a.webp',
    'catalogue/p/a2.webp',
    'catalogue/p/large.webp',
    'catalogue/pieces/a/index.html',
    'catalogue/pieces/b/index.html',
    'catalogue/s/all.css',
    'catalogue/s/find.js',
    'index.html',
    'open-me.html',
  ]);
  expect(made).toEqual({
    pages: 5,
    bytes: files.map((file) => readFileSync(join(into, file)).length).reduce((all, one) => all + one, 0),
  });
  expect(read('index.html')).toBe(plainPage('open-me.html'));
  expect(read('open-me.html')).toBe(
    page(
      '<a href="catalogue/pieces/a/index.html?from=york#legend">a</a> <a href="catalogue/index.html">all</a> <a href="/coins/gone/">gone</a> <a href="/elsewhere/">other site</a>',
      '<link rel="stylesheet" href="catalogue/s/all.css"><script src="catalogue/s/find.js" defer=""></script>',
    ),
  );
  expect(read('catalogue/index.html')).toBe(page('<a href="../open-me.html">York</a> <a href="pieces/b/index.html">b</a>')); // prettier-ignore
  expect(read('catalogue/pieces/b/index.html')).toBe(SITE['pieces/b/index.html']);
  expect(read('catalogue/pieces/a/index.html')).toBe(page('<img src="../../p/a.webp" srcset="../../p/a.webp 160w, ../../p/a2.webp 320w" alt=""><x-find data-records="../../data/found.json" data-note="1/2" data-large="../../p/large.webp"></x-find><a href="../../data/found.json">the file</a>')); // prettier-ignore
  expect(readFileSync(join(into, 'catalogue/p/a2.webp'))).toEqual(SITE['p/a2.webp']);
  // The font comes within the style sheet; one that is not there keeps its address.
  expect(read('catalogue/s/all.css')).toBe(
    `@font-face{src:url(data:font/woff2;base64,${FONT.toString('base64')})}.a{background:url("../p/a.webp")}.b{src:url("/coins/f/none.woff2")}`,
  );
  // A script and what it imports are one, which imports nothing.
  expect(read('catalogue/s/find.js')).toContain('as one');
  expect(read('catalogue/s/find.js')).not.toMatch(/\b(?:im|ex)port\b/);
  // What a script reads is there as a file and as a script that hands it over, with the addresses of the copy.
  const found = JSON.stringify({ a: '../pieces/a/index.html', note: '/other/' });
  expect(read('catalogue/data/found.json')).toBe(found);
  expect(read('catalogue/data/found.json.js')).toBe(`document.currentScript.laid=${found};\n`);
  expect(read('catalogue/data/pieces/a.json')).toBe(JSON.stringify({ face: '../../p/a2.webp' }));
});

test('a copy of the whole catalogue begins with its first page', async () => {
  const { files, read } = await copyOf(null);
  expect(read('open-me.html')).toContain('<a href="catalogue/exhibits/york/index.html">York</a>');
  expect(files).toContain('catalogue/exhibits/york/index.html');
  expect(files).not.toContain('catalogue/index.html');
});

test('its note says what it is, and to whom it may be given', async () => {
  const exhibit = (await copyOf('york')).read('READ-ME.txt');
  expect(exhibit.split('\r\n').slice(0, 4)).toEqual([
    'Struck in York',
    'An exhibit from A Cabinet, with its whole catalogue behind it.',
    '',
    'TO OPEN IT       Double-click open-me.html. It opens in the web browser.',
  ]);
  expect(exhibit.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  expect(exhibit).toContain('things are kept is not in it, nor is any piece that is on no list.');
  expect(exhibit).not.toMatch(/do not pass it on|ON THE WEB/);
  expect(exhibit.split('\r\n').slice(4)).toEqual([
    '                 Nothing is installed and no network is needed.',
    '',
    'THE WHOLE SCREEN Press F11; on a Mac, Ctrl + Cmd + F. The same again ends it.',
    '',
    'TO FIND A PIECE  Choose Pieces at the top of any page. The name of the cabinet,',
    '                 beside it, leads to the whole catalogue.',
    '',
    'AT TRUE SIZE     A screen has to be measured once, with a bank card, on the page',
    '                 of any piece. Do it when you set up.',
    '',
    'TO COPY IT       Copy the whole folder. open-me.html needs the folder',
    '                 "catalogue" beside it.',
    '',
    'WHAT IS IN IT    What the keeper publishes and nothing else. What was paid and where',
    '                 things are kept is not in it, nor is any piece that is on no list.',
    '',
  ]);
  expect(await notes({ whole: 'listed', address: 'https://example.org/coins/' })).toMatch(
    /^Struck in York\r\nThe whole catalogue\.\r\n[^]*nor is any piece that is on no list\.\r\n\r\nON THE WEB\r\nhttps:\/\/example\.org\/coins\/\r\n$/,
  );
  expect(await notes({ whole: 'with unlisted' })).toMatch(
    /Pieces that are on no list on the web are\.\r\n {17}It is for whom it was given to: do not pass it on\.\r\n$/,
  );
});
