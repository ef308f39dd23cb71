import { readFile } from 'node:fs/promises';
import { expect, test } from 'vitest';
import { buildInto } from './build-into.ts';
import { plainHost } from './plain-host.ts';
import { brokenLinks, builtPages, linksIn } from './site-links.ts';

test('the demo under / has no broken link, image or anchor', async () => {
  expect(await brokenLinks('dist', '/', 'https://example.org')).toEqual([]);
});

test(
  'the demo under /a/b/ has no broken link, image or anchor, as files and as a plain host serves them',
  { timeout: 420_000 },
  async () => {
    const built = await buildInto({ cabinet: 'content', address: 'https://example.org/a/b/' });
    expect(await brokenLinks(built, '/a/b/', 'https://example.org')).toEqual([]);
    expect(await crawled(built, '/a/b/')).toEqual([]);
  },
);

test(
  'the demo under / answers at every link, with the headers of its _headers, as a plain host serves it',
  { timeout: 300_000 },
  async () => {
    expect(await crawled('dist', '/')).toEqual([]);
  },
);

/** What everything is served with (WHATWG Fetch, nosniff; Referrer Policy; CSP 3, frame-ancestors), and what some paths have besides. */
const SERVED_WITH: readonly (readonly [path: RegExp, name: string, value: RegExp])[] = [
  [/./, 'x-content-type-options', /^nosniff$/],
  [/./, 'referrer-policy', /^no-referrer$/],
  [/./, 'content-security-policy', /frame-ancestors 'none'/],
  [/^(_astro|photographs)\//, 'cache-control', /max-age=31536000.*immutable/],
  [/^(data|photographs)\//, 'access-control-allow-origin', /^\*$/],
];

/** Follows every link from the home page of a served site; what does not answer as it should. */
async function crawled(built: string, base: string): Promise<readonly string[]> {
  const host = await plainHost(built, base);
  const wrong: string[] = [];
  const reached = new Set<string>();
  const moved = (await readFile(`${built}/_redirects`, 'utf8').catch(() => '')).match(/^\S+/gm) ?? [];
  const waiting = [base, ...moved];
  const go = async (path: string): Promise<void> => {
    const answer = await fetch(host.origin + path, { redirect: 'manual' });
    if (answer.status === 301) return void waiting.push(answer.headers.get('location') ?? '/nowhere');
    if (answer.status !== 200) wrong.push(`${path}: ${answer.status}`);
    for (const [at, name, value] of SERVED_WITH)
      if (at.test(path.slice(base.length) || '.') && !value.test(answer.headers.get(name) ?? ''))
        wrong.push(`${path}: ${name} is ${answer.headers.get(name)}`);
    const text = await answer.text();
    if (answer.headers.get('content-type')?.startsWith('text/html') !== true) return;
    if (!text.includes('http-equiv="Content-Security-Policy"')) wrong.push(`${path}: no policy of its own`);
    for (const to of linksIn(text).to) {
      const url = new URL(to.replace(/^https:\/\/example\.org/, host.origin), host.origin + path);
      if (url.origin === host.origin && !/^(mailto|data):/.test(to)) waiting.push(url.pathname);
    }
  };
  for (let path = waiting.pop(); path !== undefined; path = waiting.pop()) {
    if (reached.has(path)) continue;
    reached.add(path);
    await go(path);
  }
  host.close();
  expect(reached.size).toBeGreaterThan(500);
  return wrong;
}

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
