import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { pathToFileURL } from 'node:url';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { makeHallCopy } from '../../src/publish/offline-copy/make-offline-copy.ts';
import { serveFolder } from '../../src/commands/parts/serve-folder.ts';
import { openBrowser } from './open-site.ts';

/** How many pages are opened side by side. */
const SIDE_BY_SIDE = 2;
/** How many pages of one sort are opened; with the variable EVERY_PAGE all are, which takes half a minute. */
const OF_A_SORT = process.env['EVERY_PAGE'] === undefined ? 2 : Infinity;
/** Every page on a machine that is busy. */
const LONG = { timeout: 300_000 };

let folder = '';
let browser: Awaited<ReturnType<typeof openBrowser>>;
let context: BrowserContext;
/** What a page said on its console, threw, asked for and did not get, or asked of any place but the folder. */
let wrong: string[] = [];

beforeAll(async () => {
  // A stick is carried about: blanks and letters beyond ASCII in its path.
  folder = join(await mkdtemp(join(tmpdir(), 'stick-')), 'Münzen & medals', 'in the hall');
  await makeHallCopy(
    'dist',
    folder,
    { base: '/', exhibit: 'struck-in-york' },
    { title: 'York and its money', cabinet: 'The Circle', address: null },
  );
  browser = await openBrowser();
  context = await browser.newContext({ viewport: { width: 1280, height: 900 } });
  await context.setOffline(true);
  await context.route(/^(?!file:)/, async (route) => {
    wrong.push(`asked for ${route.request().url()}`);
    await route.abort();
  });
});
afterAll(async () => {
  await browser.close();
  await rm(join(folder, '../..'), { recursive: true, force: true });
});

async function newPage(): Promise<Page> {
  const page = await context.newPage();
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) wrong.push(`${page.url()}: ${message.text()}`);
  });
  page.on('pageerror', (error) => wrong.push(`${page.url()}: ${error.message}`));
  page.on('requestfailed', (request) => {
    // What was still on its way when the page was left is not missing.
    if (request.failure()?.errorText !== 'net::ERR_ABORTED') wrong.push(`${page.url()}: no ${request.url()}`);
  });
  return page;
}

const addressOf = (place: string): string => pathToFileURL(join(folder, place)).href;

async function openAt(place: string): Promise<Page> {
  wrong = [];
  const page = await newPage();
  await page.goto(addressOf(place));
  return page;
}

describe('the hall copy, opened from a folder with the network off', () => {
  test('shows pages of every sort, each in its own type and with all its pictures', LONG, async () => {
    wrong = [];
    const all = (await readdir(folder, { recursive: true })).filter((file) => file.endsWith('.html'));
    const bySort = new Map<string, string[]>();
    for (const file of all.filter((name) => name !== 'index.html')) {
      const sort = file.split(/[/\\]/).slice(0, -2).join('/');
      bySort.set(sort, [...(bySort.get(sort) ?? []), file]);
    }
    const waiting = [...bySort.values()].flatMap((files) => files.slice(0, OF_A_SORT));
    expect(bySort.size).toBeGreaterThan(15);
    const visit = async (): Promise<void> => {
      const page = await newPage();
      for (let file = waiting.pop(); file !== undefined; file = waiting.pop()) {
        const name = file;
        await page.goto(addressOf(name));
        wrong.push(...(await page.evaluate(missing)).map((what) => `${name}: ${what}`));
      }
      await page.close();
    };
    await Promise.all(Array.from({ length: SIDE_BY_SIDE }, visit));
    expect(wrong).toEqual([]);
  });

  test('begins with the exhibit, whichever of the two files is opened, and goes on to the catalogue and back', async () => {
    const page = await openAt('index.html');
    await page.waitForURL(/open-me\.html$/);
    expect(await page.locator('h1').innerText()).toBe('York and its money');
    await page.locator('header a').first().click();
    expect(page.url()).toMatch(/\/catalogue\/index\.html$/);
    await page.locator('main a', { hasText: 'York and its money' }).first().click();
    expect(page.url()).toMatch(/\/open-me\.html$/);
    await page.locator('a[href="#case-2"]').first().click();
    expect(page.url()).toMatch(/open-me\.html#case-2$/);
    await page.close();
    expect(wrong).toEqual([]);
  });

  test('finds a piece by a word from the first page, narrows by a facet, and opens what it found', async () => {
    const page = await openAt('catalogue/index.html');
    await page.locator('input[name="words"]').fill('wolsey');
    await page.keyboard.press('Enter');
    await page.waitForURL(/catalogue\/pieces\/index\.html\?words=wolsey/);
    await page.waitForFunction(answered);
    expect(await page.locator('[data-board] li[data-piece]').first().innerText()).toContain('Wolsey');
    const picture = page.locator('[data-board] li img').first();
    expect(
      await picture.evaluate((image: HTMLImageElement) => image.decode().then(() => image.naturalWidth)),
    ).toBeGreaterThan(0);

    await page.locator('input[name="words"]').fill('');
    await page.locator('[data-facet="mint"] summary').click();
    await page.locator('[data-facet="mint"] input[value="london"]').check();
    await page.waitForURL(/mint=london/);
    await page.waitForFunction(() => document.querySelector('[data-board]')?.textContent.includes('Wolsey') === false);
    await page.locator('[data-board] li a').first().click();
    await page.waitForURL(/catalogue\/pieces\/[a-z0-9-]+\/index\.html$/);
    await page.close();
    expect(wrong).toEqual([]);
  });

  test('finds a worn legend wherever it begins round the rim', async () => {
    const page = await openAt('catalogue/pieces/index.html');
    // Of CIVITAS EBORACI only …CI CIV… can be read: the end of one word and the beginning of the other.
    await page.locator('[data-worn] > summary').click();
    await page.locator('input[name="legend"]').fill('RACICIV');
    await page.waitForURL(/legend=RACICIV/);
    await page.waitForFunction(answered);
    expect(await page.locator('[data-board]').innerText()).toContain('York');
    expect(await page.locator('[data-says][role="status"]').innerText()).toMatch(/^[1-9]/);
    await page.close();
    expect(wrong).toEqual([]);
  });

  test('turns a piece over, and lays it at true size once the screen is measured', async () => {
    const page = await openAt('catalogue/pieces/york-penny-3b/index.html');
    await page.locator('[data-turn-over]').first().click();
    expect(await page.locator('turn-over .turned').count()).toBe(1);
    await page.locator('true-size [data-show]').click();
    await page.locator('true-size input').fill('4');
    await page.locator('true-size [data-done]').click();
    const scale = await page.evaluate(() => document.documentElement.style.getPropertyValue('--piece-scale'));
    expect(scale).toBe('4px');
    await page.close();
    expect(wrong).toEqual([]);
  });
});

test('the hall copy opens a photograph under the glass', async () => {
  const page = await openAt('catalogue/pieces/york-penny-3b/index.html');
  await page.locator('a[data-look="obverse"]').click();
  const glass = page.locator('look-closer dialog[open] img');
  // A decoding that the finer picture interrupts is no fault: it is asked again.
  await expect
    .poll(() =>
      glass.evaluate((image: HTMLImageElement) =>
        image.decode().then(
          () => image.naturalWidth,
          () => 0,
        ),
      ),
    )
    .toBeGreaterThan(0);
  await page.close();
  expect(wrong).toEqual([]);
});

test('the hall copy lays two pieces side by side, as a link of its own asks', async () => {
  const page = await openAt('catalogue/compare/index.html');
  await page.locator('main a[href*="?pieces="]').first().click();
  await page.waitForURL(/compare\/index\.html\?pieces=[a-z0-9-]+(,|%2C)[a-z0-9-]+/);
  await page.waitForFunction(() => document.querySelectorAll('[data-part="laid"] > li').length >= 2);
  const pictures = page.locator('[data-part="laid"] img');
  expect(await pictures.count()).toBeGreaterThanOrEqual(2);
  expect(
    await pictures.first().evaluate((image: HTMLImageElement) => image.decode().then(() => image.naturalWidth)),
  ).toBeGreaterThan(0);
  await page.locator('[data-part="laid"] a').first().click();
  await page.waitForURL(/catalogue\/pieces\/[a-z0-9-]+\/index\.html$/);
  await page.close();
  expect(wrong).toEqual([]);
});

test('the hall copy, served by a laptop, begins with the exhibit and finds', async () => {
  const served = await serveFolder(folder, '/', 0);
  if (!served.ok) throw new Error(served.problem);
  const page = await browser.newPage();
  await page.goto(served.value.address);
  await page.waitForURL(/open-me\.html$/);
  await page.goto(`${served.value.address}catalogue/pieces/index.html?words=wolsey`);
  await page.waitForFunction(answered);
  expect(await page.locator('[data-board] li[data-piece]').first().innerText()).toContain('Wolsey');
  await page.close();
  await served.value.close();
});

/** Runs in the page: whether Find has answered. */
function answered(): boolean {
  return /^\d+ (?:piece|pieces) of|^\d+ of|^No/.test(document.querySelector('[data-says]')?.textContent ?? '');
}

/** Runs in the page: what it should show and does not. That every picture is there is held against the files elsewhere. */
async function missing(): Promise<readonly string[]> {
  await document.fonts.ready;
  const pictures = [...document.images].filter((image) => image.hasAttribute('src')).slice(0, 12);
  for (const picture of pictures) picture.loading = 'eager';
  const said = await Promise.all(
    pictures.map((picture) =>
      picture.decode().then(
        () => [],
        () => [`no picture ${picture.currentSrc}`],
      ),
    ),
  );
  // The fallbacks are fonts of the visitor's own machine, which this one need not have.
  const faces = [...document.fonts]
    .filter(({ status, family }) => status === 'error' && !family.includes('Fallback'))
    .map(({ family }) => `no ${family}`);
  const heads = document.querySelectorAll('h1').length === 1 ? [] : ['no heading'];
  return [...said.flat(), ...faces, ...heads];
}
