import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { OpenSite } from './open-site.ts';
import { openSite } from './open-site.ts';

/** One page of every sort. */
const PAGES = [
  '', 'pieces/', 'pieces/york-penny-3b/', 'pieces/love-token-1797/', 'pieces/gallo-belgic-stater/', 'pieces/samanid-dirham-cut/',
  'pieces/edward-i-farthing-york/', 'rulers/', 'rulers/edward-iv/', 'mints/', 'mints/york/', 'sets/', 'sets/mints-of-1279/',
  'sets/mints-of-1279/wanted/', 'eras/', 'eras/heritage-data/', 'measures/', 'exhibits/', 'exhibits/struck-in-york/', 'exhibits/struck-in-york/print/', 'works/', 'about/',
  'about/readings/', 'data/',
] as const; // prettier-ignore

const axe = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
let site: OpenSite;
beforeAll(async () => {
  site = await openSite('dist');
});
afterAll(async () => {
  await site.close();
});

describe.for(PAGES)('the page /%s', (path) => {
  test('opens without an error, asks nothing of another host, and has one heading', async () => {
    const page = await site.browser.newPage();
    const wrong: string[] = [];
    page.on('console', (message) => {
      if (['error', 'warning'].includes(message.type())) wrong.push(message.text());
    });
    page.on('pageerror', (error) => wrong.push(error.message));
    page.on('request', (request) => {
      if (!request.url().startsWith(site.address)) wrong.push(`asked for ${request.url()}`);
    });
    const response = await page.goto(`${site.address}${path}`, { waitUntil: 'load' });
    expect(response?.status()).toBe(200);
    expect(await page.locator('h1').count()).toBe(1);
    expect(wrong).toEqual([]);
    await page.close();
  });

  test.for(['light', 'dark'] as const)('has nothing that WCAG 2.2 AA forbids, in %s', async (colorScheme) => {
    const context = await site.browser.newContext({ colorScheme, bypassCSP: true, reducedMotion: 'reduce' });
    const page = await context.newPage();
    await page.goto(`${site.address}${path}`, { waitUntil: 'load' });
    await page.evaluate(axe);
    const found = await page.evaluate(async () => {
      const run = (
        globalThis as unknown as {
          axe: { run: (on: Document, how: object) => Promise<{ violations: readonly Violation[] }> };
        }
      ).axe.run;
      type Violation = { id: string; nodes: readonly { target: unknown; failureSummary?: string }[] };
      const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
      const { violations } = await run(document, { runOnly: { type: 'tag', values: tags } });
      return violations.flatMap(({ id, nodes }) =>
        nodes
          .slice(0, 3)
          .map(({ target, failureSummary }) => `${id}: ${JSON.stringify(target)} ${failureSummary ?? ''}`),
      );
    });
    expect(found).toEqual([]);
    await context.close();
  });

  test.for([320, 390, 1280])('is no wider than a screen of %d', async (width) => {
    const page = await site.browser.newPage({ viewport: { width, height: 800 } });
    await page.goto(`${site.address}${path}`, { waitUntil: 'load' });
    const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    expect(over).toBeLessThanOrEqual(0);
    await page.close();
  });
});

describe('without JavaScript', () => {
  test('a visitor comes from / to a piece and reads it', async () => {
    const context = await site.browser.newContext({ javaScriptEnabled: false });
    const page = await context.newPage();
    await page.goto(site.address);
    await page.locator('nav a', { hasText: 'Pieces' }).first().click();
    await page.locator('main a[href*="/pieces/"]', { hasText: 'Vespasian' }).first().click();
    expect(await page.locator('h1').innerText()).toContain('Vespasian');
    expect(await page.locator('main').innerText()).toContain('IMP CAES VESP');
    await context.close();
  });
});
