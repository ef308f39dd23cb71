import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { expect, test } from 'vitest';
import { readXml, texts } from '../site/read-xml.ts';
import { buildInto } from './build-into.ts';
import { builtFiles } from './site-links.ts';

/** A file of the built demo under its public address; a folder is its page. */
const fileAt = (address: string): string => {
  const { pathname } = new URL(address);
  return `dist${pathname}${pathname.endsWith('/') ? 'index.html' : ''}`;
};
const json = async <T>(file: string): Promise<T> => JSON.parse(await readFile(file, 'utf8')) as T;

test('every address of the sitemap is a page that is there', async () => {
  const locs = texts(readXml(await readFile('dist/sitemap.xml', 'utf8')), 'loc');
  expect(locs.length).toBeGreaterThan(100);
  expect(locs.filter((loc) => !existsSync(fileAt(loc)))).toEqual([]);
});

test('no address of the sitemap asks search engines to stay away', async () => {
  const locs = texts(readXml(await readFile('dist/sitemap.xml', 'utf8')), 'loc');
  const pages = await Promise.all(locs.map(async (loc) => [loc, await readFile(fileAt(loc), 'utf8')] as const));
  expect(pages.filter(([, page]) => /<meta name="robots" content="noindex/.test(page)).map(([loc]) => loc)).toEqual([]);
});

test('the sitemap names every page that search engines may show, but for lists cut another way', async () => {
  const locs = new Set(texts(readXml(await readFile('dist/sitemap.xml', 'utf8')), 'loc').map(fileAt));
  const pages = (await builtFiles('dist')).filter((file) => file.endsWith('index.html'));
  const unnamed: string[] = [];
  for (const file of pages.filter((page) => !locs.has(`dist/${page}`))) {
    const page = await readFile(`dist/${file}`, 'utf8');
    if (!/noindex|http-equiv="refresh"/.test(page)) unnamed.push(file);
  }
  const isListCutAnotherWay = /^pieces\/(by|page)\/|^sets\/[^/]+\/wanted\//;
  expect(unnamed.filter((file) => !isListCutAnotherWay.test(file))).toEqual([]);
});

test('the sitemap lies at the root and beside the other files, the same in both places', async () => {
  expect(await readFile('dist/data/sitemap.xml', 'utf8')).toBe(await readFile('dist/sitemap.xml', 'utf8'));
});

test('every listed piece has linked data, the same in its file and in its page', async () => {
  for (const { id } of await json<readonly { readonly id: string }[]>('dist/data/pieces.json')) {
    const { compared, ...linked } = await json<{ compared: unknown }>(`dist/data/pieces/${id}.json`);
    expect(compared).toHaveProperty('id', id);
    const page = await readFile(`dist/pieces/${id}/index.html`, 'utf8');
    const [, inPage] = /<script type="application\/ld\+json">(.*?)<\/script>/s.exec(page) ?? [];
    expect(JSON.parse(inPage ?? '{}'), id).toEqual(linked);
  }
});

test('a manifest shows pictures that are there', async () => {
  const manifests = (await builtFiles('dist')).filter((file) => /^data\/iiif\/[^/]+\/manifest\.json$/.test(file));
  expect(manifests.length).toBeGreaterThan(10);
  for (const file of manifests) {
    const text = await readFile(`dist/${file}`, 'utf8');
    const { id } = JSON.parse(text) as { id: string };
    // At the old address of a piece is the manifest of the new one.
    const page = await readFile(`dist/pieces/${file.split('/')[2] ?? ''}/index.html`, 'utf8');
    expect(existsSync(fileAt(id))).toBe(true);
    if (!page.includes('http-equiv="refresh"')) expect(id).toBe(`https://example.org/${file}`);
    const shown = [...text.matchAll(/"id":"([^"]+\.jpg)"/g)].map(([, address]) => address ?? '');
    expect(shown.filter((address) => !existsSync(fileAt(address)))).toEqual([]);
  }
});

test('the entries of the feed are pages that are there', async () => {
  const links = texts(readXml(await readFile('dist/data/feed.xml', 'utf8')), 'link');
  expect(links.length).toBeGreaterThan(10);
  expect(links.filter((link) => !existsSync(fileAt(link)))).toEqual([]);
});

test('under a sub-path every file says the sub-path, and an unlisted piece is in none', async () => {
  const built = await buildInto({ cabinet: 'tests/cabinets/marked' });
  for (const file of ['sitemap.xml', 'data/feed.xml', 'data/pieces.json', 'data/pieces.csv', 'robots.txt']) {
    const text = await readFile(`${built}/${file}`, 'utf8');
    expect(text).toContain('https://example.org/marked/');
    expect(text).not.toMatch(/example\.org\/(?!marked\/)/);
    expect(text).not.toMatch(/unlisted-groat|hidden-noble/);
  }
});
