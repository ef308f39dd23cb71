import { spawn } from 'node:child_process';
import type { ChildProcess } from 'node:child_process';
import { get } from 'node:http';
import { resolve } from 'node:path';
import process from 'node:process';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { leadsElsewhere } from '../../src/commands/dev/serve-only-pages.ts';

/** Within the project, where a server that follows edits reads most. */
const CABINET = 'tests/cabinets/marked';
/** What stands in its private folder, and in its piece that is not published. */
const MARKS = ['MARK-', '431.17', '4317.17', 'bank box', 'HIDDEN-0003', 'Noble that must not be seen', 'HIDDENLEGEND', 'A hidden story']; // prettier-ignore
const SLOW = 240_000;

let dev: ChildProcess | undefined;
let port = 0;

/** Asks for an address as it is written: a browser's own ways of tidying it are not in between. */
function ask(path: string): Promise<{ readonly status: number; readonly text: string }> {
  return new Promise((answered, failed) => {
    get({ host: '127.0.0.1', port, path, headers: { host: `localhost:${port}` } }, (answer) => {
      let text = '';
      answer.setEncoding('utf8').on('data', (part: string) => (text += part));
      answer.on('end', () => answered({ status: answer.statusCode ?? 0, text }));
    }).on('error', failed);
  });
}

beforeAll(async () => {
  dev = spawn(process.execPath, ['src/commands/dev.ts', '--cabinet', CABINET], {
    stdio: ['ignore', 'pipe', 'inherit'],
    // As a keeper's shell has it: a test runner's variables make the server one of tests.
    env: { PATH: process.env['PATH'], HOME: process.env['HOME'] },
  });
  port = await new Promise<number>((found) =>
    dev?.stdout?.setEncoding('utf8').on('data', (said: string) => {
      const told = /Open http:\/\/localhost:(\d+)/.exec(said)?.[1];
      if (told !== undefined) found(Number(told));
    }),
  );
}, SLOW);

afterAll(() => dev?.kill());

const FILES = ['private/ledger.csv', 'private/guide.csv', 'pieces/hidden-noble/piece.md'];
const HERE = resolve('.');
/** Ways to name the cabinet's folder. */
const WAYS = [
  `/${CABINET}/`, `//${CABINET}/`, `/src/../${CABINET}/`, `/src/%2e%2e/${CABINET}/`, `/src/..%2f${CABINET.replaceAll('/', '%2f')}%2f`,
  `/@fs${HERE}/${CABINET}/`, `/@fs/${HERE}/${CABINET}/`, `/@fs${HERE}/src/../${CABINET}/`, `/@fs${HERE}/node_modules/..%2f${CABINET}/`,
  `/@id/${CABINET}/`, `/@id/${HERE}/${CABINET}/`, `/@id/__x00__${HERE}/${CABINET}/`, `/${CABINET.replaceAll('/', '\\')}\\`,
  `/${CABINET.replaceAll('/', '%255c')}%255c`, `/node_modules/../${CABINET}/`, '/',
]; // prettier-ignore
/** What makes a server that follows edits give out a file in another form. */
const FORMS = ['', '?raw', '?import', '?import&raw', '?import&raw??', '?url', '?inline', '?html-proxy', '?worker', '?.svg?import', '?astro&type=style', '#/x?raw']; // prettier-ignore

/** Every page and file of data that shows pieces. */
const PAGES = [
  '/', '/pieces/', '/sets/', '/sets/plain-set/', '/rulers/', '/rulers/hidden-king/', '/mints/', '/works/', '/measures/', '/eras/', '/exhibits/',
  '/compare/', '/about/', '/data/', '/data/search.json', '/data/pieces.json', '/data/pieces.csv', '/data/feed.xml', '/data/sitemap.xml',
  '/data/catalogue.jsonld', '/data/sets/plain-set.json', '/robots.txt',
]; // prettier-ignore
/** Where a hidden piece would be, and other doors of such a server. */
const DOORS = [
  '/pieces/hidden-noble/', '/data/pieces/hidden-noble.json', '/data/iiif/hidden-noble/manifest.json',
  '/photographs/hidden-noble/obverse-320.webp', `/_image?href=/@fs${HERE}/${CABINET}/private/ledger.csv&f=svg`,
  `/__open-in-editor?file=${CABINET}/private/ledger.csv`, '/content/private/ledger.csv', '/package.json', `/@fs${HERE}/package.json`,
]; // prettier-ignore

describe('while edits are followed, the server gives out pages alone', () => {
  test.for(WAYS)('%s leads to no private file and no hidden piece, in no form', { timeout: SLOW }, async (way) => {
    for (const file of FILES)
      for (const form of FORMS) {
        const { text } = await ask(`${way}${file}${form}`);
        expect(MARKS.filter((mark) => text.includes(mark))).toEqual([]);
      }
  });

  test.for(PAGES)('%s shows nothing of a hidden piece', { timeout: SLOW }, async (page) => {
    const { status, text } = await ask(page);
    expect(status).toBe(200);
    expect([...MARKS, 'hidden-noble'].filter((mark) => text.includes(mark))).toEqual([]);
  });

  test.for(DOORS)('%s is closed', { timeout: SLOW }, async (door) => {
    const { status, text } = await ask(door);
    expect(status).toBeGreaterThan(399);
    expect(MARKS.filter((mark) => text.includes(mark))).toEqual([]);
  });

  test('what a page asks for comes: its style, its scripts', { timeout: SLOW }, async () => {
    const { text } = await ask('/pieces/plain-penny/');
    const asked = [...text.matchAll(/<(?:script|link)\b[^>]*?(?:src|href)="(\/[^"]+)"/g)].map(([, path = '']) => path);
    expect(asked.length).toBeGreaterThan(3);
    for (const path of asked.map((one) => one.replaceAll('&#38;', '&').replaceAll('&amp;', '&')))
      expect([path, (await ask(path)).status]).toEqual([path, 200]);
  });
});

test('an address is judged by every way in which it may be read', () => {
  const outside = [
    `/${CABINET}/cabinet.yaml`,
    '/package.json?import',
    `/@fs${HERE}/package.json`,
    '/src/%252e%252e/package.json',
    '/.gitignore',
  ];
  expect(outside.filter((address) => !leadsElsewhere(address))).toEqual([]);
  const inside = [
    '/',
    '/pieces/',
    '/src/commands/dev.ts',
    `/@fs${HERE}/src/commands/dev.ts?import`,
    '/@vite/client',
    '/no-such-page/',
    '/%',
  ];
  expect(inside.filter((address) => leadsElsewhere(address))).toEqual([]);
});
