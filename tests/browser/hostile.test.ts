import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import process from 'node:process';
import { parse } from 'parse5';
import type { DefaultTreeAdapterMap } from 'parse5';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { lacksIn, loadsFrom } from '../../src/privacy/page-policy.ts';
import { buildInto } from '../built/build-into.ts';
import { acceptedCabinet, HOSTILE_STRINGS } from '../built/hostile-cabinet.ts';
import { builtFiles } from '../built/site-links.ts';
import { problemsOf } from '../catalogue/small-cabinet.ts';
import { openSite } from './open-site.ts';
import type { OpenSite } from './open-site.ts';

/**
 * Twelve pieces hold each of the five hundred strings about once; with `TRIES=full` five hundred pieces hold each in every field,
 * and every page is opened, not one of each kind and a few more.
 */
const isFull = process.env['TRIES'] === 'full';
const PIECES = isFull ? 500 : 12;
const WIDTHS = [1280, 320] as const;
const LANES = 2;

let built = '';
let pages: readonly string[] = [];
let site: OpenSite;
beforeAll(async () => {
  const { folder } = acceptedCabinet(PIECES, problemsOf);
  const cabinet = join(mkdtempSync(join(tmpdir(), 'hostile-')), 'cabinet');
  for (const { file, text } of folder.files) {
    mkdirSync(dirname(join(cabinet, file)), { recursive: true });
    writeFileSync(join(cabinet, file), text ?? '');
  }
  built = await buildInto({ cabinet, address: 'http://127.0.0.1/' });
  pages = (await builtFiles(built)).filter((file) => file.endsWith('.html')).sort();
  site = await openSite(built);
}, 900_000);
afterAll(() => site.close());

type Node = DefaultTreeAdapterMap['node'];
function elementsOf(node: Node): readonly DefaultTreeAdapterMap['element'][] {
  const inner = 'childNodes' in node ? node.childNodes.flatMap(elementsOf) : [];
  return 'tagName' in node ? [node, ...inner] : inner;
}
/** Elements that no page of ours has. */
const NEVER = new Set(['iframe', 'object', 'embed', 'base', 'math', 'xmp', 'plaintext', 'frame', 'applet', 'marquee', 'video', 'audio']); // prettier-ignore

test(`of ${HOSTILE_STRINGS.length} hostile strings in every field none is an element, an address or a script of a page, and each page has its policies`, () => {
  expect(HOSTILE_STRINGS).toHaveLength(500);
  let shown = 0;
  for (const file of pages) {
    const html = readFileSync(join(built, file), 'utf8');
    expect(lacksIn(html), file).toBeNull();
    expect(loadsFrom(file, html), file).toBeNull();
    for (const { tagName, attrs, childNodes } of elementsOf(parse(html))) {
      const where = `${file}: <${tagName}>`;
      expect(NEVER.has(tagName), where).toBe(false);
      for (const { name, value } of attrs) {
        expect(/^on/i.test(name), `${where} ${name}`).toBe(false);
        if (/^(?:href|src|srcset|action|formaction|data|poster|ping)$/.test(name))
          expect(value, where).not.toMatch(/^[\s\p{Cc}]*(?:javascript|data|vbscript):/iu);
      }
      const text = childNodes.map((node) => ('value' in node ? node.value : '')).join('');
      if (text.includes('hit(')) shown += 1;
      const isData = attrs.some(({ name, value }) => name === 'type' && /json/.test(value));
      if (tagName === 'script' && isData) expect(() => JSON.parse(text) as unknown, where).not.toThrow();
      else if (tagName === 'script' || tagName === 'style') expect(text, where).not.toMatch(/hit\(\d|example\.net/);
    }
  }
  // They are there, as words.
  expect(shown).toBeGreaterThan(100);
});

/** One page of each kind, and then others up to so many. */
function opened(): readonly string[] {
  if (isFull) return pages;
  const kindOf = (file: string): string => file.replace(/(?:piece|king|town|penny|book|set|show|era)-\d+|[^/]*hit[^/]*/g, '*');
  const first = new Map(pages.toReversed().map((file) => [kindOf(file), file]));
  const rest = pages.filter((file) => /^pieces\/piece-\d+\/index/.test(file) && ![...first.values()].includes(file));
  return [...first.values(), ...rest].slice(0, 60);
} // prettier-ignore

test(
  'no page runs one of them, asks for anything elsewhere, or is wider than the screen',
  { timeout: isFull ? 7_200_000 : 120_000 },
  async () => {
    // Without the policy: nothing may depend on it alone.
    const context = await site.browser.newContext({ bypassCSP: true });
    const wrong: string[] = [];
    const queue = [...opened()];
    const crawl = async (): Promise<void> => {
      const page = await context.newPage();
      let now = '';
      await page.exposeFunction('hit', (number: unknown) => void wrong.push(`${now} ran ${String(number)}`));
      page.on('dialog', (dialog) => (wrong.push(`${now} asked`), void dialog.dismiss()));
      page.on('request', (request) => {
        const url = request.url();
        if (!url.startsWith(site.address) && !url.startsWith('data:')) wrong.push(`${now} wanted ${url.slice(0, 80)}`);
      });
      page.on('pageerror', (error) => void wrong.push(`${now} failed: ${error.message.slice(0, 80)}`));
      for (let file = queue.shift(); file !== undefined; file = queue.shift()) {
        now = file;
        const address = new URL(file.split('/').map(encodeURIComponent).join('/'), site.address).href;
        await page.setViewportSize({ width: WIDTHS[0], height: 800 });
        await page.goto(address, { waitUntil: 'load' });
        for (const width of WIDTHS) {
          await page.setViewportSize({ width, height: 800 });
          const wide = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
          if (wide > 0) wrong.push(`${file} is ${wide} px wider than ${width}`);
        }
        if (page.url() !== address) wrong.push(`${file} led to ${page.url().slice(0, 80)}`);
      }
      await page.close();
    };
    await Promise.all(Array.from({ length: LANES }, crawl));
    await context.close();
    expect(wrong).toEqual([]);
  },
); // prettier-ignore
