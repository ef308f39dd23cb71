import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { COLOURS, forbidden, LEVELS } from './forbidden.ts';
import type { OpenSite } from './open-site.ts';
import { openSite } from './open-site.ts';

/** One page of every sort, looked at in light and in dark; the others below are drawn with the same parts and colours. */
const PAGES = [
  '', 'pieces/', 'pieces/york-penny-3b/', 'rulers/', 'sets/mints-of-1279/', 'sets/mints-of-1279/wanted/', 'eras/', 'measures/',
  'exhibits/struck-in-york/', 'exhibits/struck-in-york/print/set-up/', 'compare/', 'data/', 'types/edward-i-pence/key/',
  'types/edward-i-pence/dies/',
] as const; // prettier-ignore
const LIKE_THEM = [
  'pieces/love-token-1797/', 'pieces/gallo-belgic-stater/', 'pieces/samanid-dirham-cut/', 'pieces/edward-i-farthing-york/',
  'rulers/edward-iv/', 'mints/', 'mints/york/', 'sets/', 'eras/heritage-data/', 'exhibits/', 'exhibits/struck-in-york/print/', 'works/', 'about/',
  'about/readings/', 'sets/edward-i-classes/', 'pieces/edward-i-durham-penny/', 'types/', 'types/edward-i-pence/', 'types/edward-i-pence/lc-3/',
  'types/edward-i-pence/lc-3e/', 'types/edward-i-pence/concordance/',
] as const; // prettier-ignore

/** Pages made for paper are looked at on a screen before they are printed. */
const ON_PAPER = [
  'exhibits/struck-in-york/print/letter/', 'exhibits/struck-in-york/print/anonymous/', 'pieces/york-penny-3b/ticket/',
] as const; // prettier-ignore

const axe = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
let site: OpenSite;
beforeAll(async () => {
  site = await openSite('dist');
});
afterAll(async () => {
  await site.close();
});

describe('every page opens without an error, asks nothing of another host, has one heading, is no wider than the screen, and has nothing that WCAG 2.2 AA forbids', () => {
  let page: Page;
  const wrong: string[] = [];
  // One window for all of them, as a visitor has: opening one costs more than all that is asked of a page.
  beforeAll(async () => {
    const context = await site.browser.newContext({ reducedMotion: 'reduce', viewport: { width: 1280, height: 720 } });
    // Put in by the browser's own tools, which the page's policy does not bind; it needs no eval.
    await context.addInitScript(axe);
    page = await context.newPage();
    page.on('console', (message) => {
      if (['error', 'warning'].includes(message.type())) wrong.push(message.text());
    });
    page.on('pageerror', (error) => wrong.push(error.message));
    page.on('request', (request) => {
      if (!request.url().startsWith(site.address)) wrong.push(`asked for ${request.url()}`);
    });
  });

  async function lookAt(path: string): Promise<void> {
    wrong.length = 0;
    const response = await page.goto(`${site.address}${path}`, { waitUntil: 'load' });
    expect(response?.status()).toBe(200);
    expect(await page.locator('h1').count()).toBe(1);
    for (const width of [320, 390, 1280]) {
      await page.setViewportSize({ width, height: 720 });
      const over = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(over, `at ${String(width)}`).toBeLessThanOrEqual(0);
    }
    expect(wrong).toEqual([]);
    expect(await page.evaluate(forbidden, LEVELS)).toEqual([]);
  }

  test.for(PAGES)('/%s, in light and in dark', async (path) => {
    await lookAt(path);
    // The same page in the dark differs by its colours alone.
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await page.evaluate(forbidden, COLOURS), 'dark').toEqual([]);
    await page.emulateMedia({ colorScheme: 'light' });
  });

  test.for(LIKE_THEM)('/%s', lookAt);
});

// WCAG 2.2, 1.4.4 and 1.4.10: letters twice their size, and no scrolling in two directions.
test('where the visitor has set letters to 24 or 32 pixels, no page is wider than a screen of 320, whatever is unfolded', async () => {
  const context = await site.browser.newContext({ reducedMotion: 'reduce', viewport: { width: 320, height: 740 } });
  const page = await context.newPage();
  const browser = await context.newCDPSession(page);
  const wider: string[] = [];
  for (const path of [...PAGES, ...LIKE_THEM, ...ON_PAPER])
    for (const standard of [24, 32]) {
      await browser.send('Page.setFontSizes', { fontSizes: { standard } });
      await page.goto(`${site.address}${path}`);
      const { over, letters } = await page.evaluate(() => {
        for (const folded of document.querySelectorAll('details')) folded.open = true;
        const { scrollWidth, clientWidth } = document.documentElement;
        const letters = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
        return { over: scrollWidth - clientWidth, letters };
      });
      expect(letters).toBeGreaterThanOrEqual(standard);
      if (over > 0) wider.push(`/${path} by ${String(over)} at ${String(standard)}`);
    }
  expect(wider).toEqual([]);
  await context.close();
}, 120_000);

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

describe('at one common scale', () => {
  test('pieces on a board are as wide, one beside another, as their diameters say', async () => {
    const page = await site.browser.newPage({ viewport: { width: 1280, height: 900 } });
    await page.goto(`${site.address}pieces/`);
    const facts = JSON.parse(await readFile('dist/data/pieces.json', 'utf8')) as readonly {
      id: string;
      diameter?: string;
    }[];
    const manifest = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLImageElement>('main li img')].map((img) => ({
        piece: /photographs\/([a-z0-9-]+)\//.exec(img.src)?.[1] ?? '',
        width: img.getBoundingClientRect().width,
      })),
    );
    const scales = manifest.flatMap(({ piece, width }) => {
      const said = facts.find(({ id }) => id === piece)?.diameter ?? '';
      const round = /^(\d+(?:\.\d+)?) mm$/.exec(said)?.[1];
      return round === undefined ? [] : [width / Number(round)];
    });
    expect(scales.length).toBeGreaterThan(20);
    // A picture is the piece and a margin of about a seventh of it; found to a pixel of 320, so within a few per cent.
    for (const scale of scales) expect(scale / (scales[0] ?? 1)).toBeCloseTo(1, 1);
    await page.close();
  });
});

describe('finding', () => {
  const says = '[data-says][role="status"]';

  test('the state is in the address, and what was typed comes to stand there', async () => {
    const page = await site.browser.newPage({ viewport: { width: 1280, height: 900 } });
    await page.goto(`${site.address}pieces/?words=wolsey`);
    await page.waitForFunction(() => /pieces? of /.test(document.querySelector('[data-says]')?.textContent ?? ''));
    expect(await page.locator('[data-board] li[data-piece]').first().innerText()).toContain('Cardinal Wolsey');
    await page.locator('input[name="words"]').fill('sovreign victoria');
    await page.waitForFunction(() => location.search.includes('sovreign'));
    await page.waitForFunction(
      () => document.querySelector('[data-board]')?.textContent.includes('Sovereign of Victoria') === true,
    );
    expect(page.url()).toContain('words=sovreign+victoria');
    await page.close();
  });

  test('what searches comes when somebody begins to ask, and answers what was typed until then', async () => {
    const page = await site.browser.newPage({ viewport: { width: 1280, height: 900 } });
    const asked: string[] = [];
    page.on('request', (request) => asked.push(new URL(request.url()).pathname));
    // Late, so that all is typed and sent before it has come.
    await page.route(/\/_astro\/find\./, async (route) => {
      await new Promise((settle) => setTimeout(settle, 500));
      await route.continue();
    });
    await page.goto(`${site.address}pieces/`, { waitUntil: 'networkidle' });
    expect(asked.filter((path) => /\/find\.|\.json$/.test(path))).toEqual([]);
    await page.locator('input[name="words"]').fill('wolsey');
    await page.locator('input[name="words"]').press('Enter');
    await page.waitForFunction(() => location.search === '?words=wolsey');
    await page.waitForFunction(() => /pieces? of /.test(document.querySelector('[data-says]')?.textContent ?? ''));
    expect(await page.locator('[data-board] li[data-piece]').first().innerText()).toContain('Cardinal Wolsey');
    await page.close();
  });

  test('a worn legend is found wherever it begins round the rim', async () => {
    const page = await site.browser.newPage();
    // Of CIVITAS EBORACI only …CI CIV… can be read: the end of one word and the beginning of the other.
    await page.goto(`${site.address}pieces/?legend=RACICIV`);
    await page.waitForFunction(() => /\d/.test(document.querySelector('[data-says]')?.textContent ?? ''));
    await page.waitForFunction(() => !(document.querySelector('[data-says]')?.textContent ?? '').startsWith('All'));
    expect(await page.locator('[data-board]').innerText()).toContain('York');
    expect(await page.locator(says).innerText()).not.toMatch(/^No|^0/);
    await page.close();
  });
});

describe('turning a piece over', () => {
  test('by the keyboard alone, and back', async () => {
    const page = await site.browser.newPage();
    await page.goto(`${site.address}pieces/york-penny-3b/`);
    const says = page.locator('turn-over output');
    const reverse = page.locator('turn-over [data-face="obverse"] .behind');
    await page.locator('[data-turn-over]').focus();
    await page.keyboard.press('Enter');
    expect(await says.innerText()).toContain('the top of the reverse comes up at 6 o’clock');
    expect(await reverse.getAttribute('aria-hidden')).toBe('false');
    await page.keyboard.press('Enter');
    expect(await says.innerText()).toBe('');
    expect(await reverse.getAttribute('aria-hidden')).toBe('true');
    await page.close();
  });
});

describe('on a phone with poor signal', () => {
  const phone = { viewport: { width: 390, height: 844 }, isMobile: true, hasTouch: true };

  test('a piece is one page, one style sheet and two pictures', async () => {
    const context = await site.browser.newContext(phone);
    const page = await context.newPage();
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.resourceType()));
    await page.goto(`${site.address}pieces/york-penny-3b/`, { waitUntil: 'networkidle' });
    expect(asked.filter((kind) => kind === 'document')).toHaveLength(1);
    expect(asked.filter((kind) => kind === 'stylesheet')).toHaveLength(1);
    expect(asked.filter((kind) => kind === 'image')).toHaveLength(2);
    await context.close();
  });

  // A cumulative layout shift up to 0.1 is good (Web Vitals, web.dev/articles/cls); ours is to be none, to two places.
  test.for(['', 'pieces/', 'pieces/york-penny-3b/', 'sets/mints-of-1279/', 'exhibits/struck-in-york/'])(
    '/%s lies still when its fonts and scripts arrive late',
    async (path) => {
      const context = await site.browser.newContext(phone);
      const page = await context.newPage();
      await page.route(/\.(?:js|woff2)$/, async (route) => {
        await new Promise((late) => setTimeout(late, 500));
        await route.continue();
      });
      await page.goto(`${site.address}${path}`, { waitUntil: 'networkidle' });
      const shift = await page.evaluate(
        () =>
          new Promise<number>((seen) => {
            let sum = 0;
            new PerformanceObserver((list) => {
              for (const entry of list.getEntries()) sum += (entry as unknown as { value: number }).value;
            }).observe({ type: 'layout-shift', buffered: true });
            void document.fonts.ready.then(() => setTimeout(() => seen(sum), 300));
          }),
      );
      expect(shift).toBeLessThan(0.005);
      await context.close();
    },
  );
});
