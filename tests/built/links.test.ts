import { readFile } from 'node:fs/promises';
import { expect, test } from 'vitest';
import { buildInto } from './build-into.ts';
import { brokenLinks, builtPages } from './site-links.ts';

test('the demo under / has no broken link, image or anchor', async () => {
  expect(await brokenLinks('dist', '/', 'https://example.org')).toEqual([]);
});

test('the demo under /sub/path/ has no broken link, image or anchor', async () => {
  const built = await buildInto({ cabinet: 'content', address: 'https://example.org/sub/path/' });
  expect(await brokenLinks(built, '/sub/path/', 'https://example.org')).toEqual([]);
});

test('every page of a piece can be reached from / by links alone', async () => {
  const pages = new Map((await builtPages('dist')).map((page) => [page.path, page]));
  const reached = new Set<string>();
  const waiting = [''];
  for (let path = waiting.pop(); path !== undefined; path = waiting.pop()) {
    if (reached.has(path)) continue;
    reached.add(path);
    for (const to of pages.get(path)?.to ?? []) {
      const url = new URL(to, `https://example.org/${path}`);
      if (url.origin === 'https://example.org') waiting.push(decodeURIComponent(url.pathname.slice(1)));
    }
  }
  const pieces = JSON.parse(await readFile('dist/data/pieces.json', 'utf8')) as readonly { id: string }[];
  expect(pieces.length).toBeGreaterThanOrEqual(60);
  expect(pieces.filter(({ id }) => !reached.has(`pieces/${id}/`))).toEqual([]);
});
