import { execFile, spawn } from 'node:child_process';
import type { ChildProcess } from 'node:child_process';
import { mkdtemp, readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { promisify } from 'node:util';
import type { Browser, Page } from 'playwright-core';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { COLOURS, forbidden, LEVELS } from './forbidden.ts';
import { openBrowser } from './open-site.ts';

/** The whole evening: ten pieces with photographs, and the site built. Without it, three pieces and what was built is not looked at. */
const IS_LONG = process.env['DESK'] === 'long';
const PIECES = IS_LONG ? 10 : 3;
const PICTURED = IS_LONG ? 10 : 1;
/** Photographs of a piece, small enough to be looked at quickly. */
let PICTURES: readonly string[] = [];

const axe = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
let [browser, page, desk, at]: [Browser?, Page?, ChildProcess?, string?] = [];
const wrong: string[] = [];

beforeAll(async () => {
  at = join(await mkdtemp(join(tmpdir(), 'desk-')), 'cabinet');
  PICTURES = await Promise.all(['obverse', 'reverse'].map(async (face) => {
    const small = join(at ?? '', `../${face}.jpg`);
    await sharp(`content/pieces/york-penny-3b/${face}.jpg`).resize(450).toFile(small);
    return small;
  })); // prettier-ignore
  const begin = ['src/commands/begin.ts', at, '--title', 'My cabinet', '--keeper', 'A. N. Other', '--language', 'en', '--currency', 'GBP', '--lists']; // prettier-ignore
  await promisify(execFile)(process.execPath, begin);
  desk = spawn(process.execPath, ['src/commands/desk.ts', '--cabinet', at, '--out', join(at, '../site')], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const address = await new Promise<string>((found) =>
    desk?.stdout?.setEncoding('utf8').on('data', (said: string) => {
      const told = /http:\S+/.exec(said)?.[0];
      if (told !== undefined) found(told);
    }),
  );
  browser = await openBrowser();
  page = await browser.newPage({ viewport: { width: 1280, height: 900 }, reducedMotion: 'reduce' });
  page.setDefaultTimeout(60_000);
  page.on('pageerror', (error) => wrong.push(error.message));
  page.on('dialog', (dialog) => void dialog.accept());
  await page.goto(address);
}, 120_000);
afterAll(async () => {
  await browser?.close();
  desk?.kill('SIGTERM');
});

/** The page that the browser shows. */
function shown(): Page {
  if (page === undefined) throw new Error('No page is open.');
  return page;
}
const button = (name: string) => shown().getByRole('button', { name, exact: true });
const link = (name: string) => shown().getByRole('link', { name, exact: true });
const box = (name: string) => shown().getByLabel(name, { exact: true });
const says = (words: string | RegExp) => shown().getByRole('main').getByText(words).first().waitFor();

/** Every width in light and in the dark in the long form; in the short one a narrow light page, and the colours of a wide dark one. */
const LOOKS = [
  [390, 'light', LEVELS],
  [1280, 'dark', IS_LONG ? LEVELS : COLOURS],
  ...(IS_LONG ? ([[390, 'dark', LEVELS], [820, 'light', LEVELS], [1280, 'light', LEVELS]] as const) : []),
] as const; // prettier-ignore

/** No wider than its window, and nothing that WCAG 2.2 AA forbids. */
async function lookAround(onlyInLong = false): Promise<void> {
  if (onlyInLong && !IS_LONG) return;
  await shown().evaluate(axe);
  for (const [width, colorScheme, levels] of LOOKS) {
    await shown().setViewportSize({ width, height: 900 });
    await shown().emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    const over = await shown().evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth); // prettier-ignore
    const spot = `${shown().url()} at ${String(width)}, ${colorScheme}`;
    expect([spot, over > 0]).toEqual([spot, false]);
    expect([spot, await shown().evaluate(forbidden, levels)]).toEqual([spot, []]);
  }
  await shown().setViewportSize({ width: 1280, height: 900 });
  await shown().emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' });
}

async function measure(): Promise<void> {
  await box('Metal').fill('silver');
  await box('Weight').fill('1.38 g');
  await box('Diameter').fill('18.6 mm');
  await box('Cost').fill('45 GBP');
  await box('Kept').fill('tray 3');
  await box('Date').fill('c. 1279-81');
}

async function makePiece(title: string, grade: string, isFirst: boolean): Promise<void> {
  await link('New piece').click();
  await box('Title').fill(title);
  await button('Make the piece').click();
  await says('The piece has been made.');
  await box('Ruler').fill('Edward I');
  await box('Mint').fill(isFirst ? 'Shaftesbury' : 'York');
  await box('Denomination').fill('Penny');
  await box('Grade').fill(grade);
  await box('Grade scale').selectOption('uk');
  if (IS_LONG || isFirst) await measure();
  if (isFirst) {
    // How it is read is said while it is typed.
    await shown().locator('[id="date-read"]', { hasText: 'about 1279 to 1281' }).waitFor();
    await lookAround();
  }
  await button('Save').click();
  if (isFirst) {
    await says('Nothing was written.');
    await box('It is new: add it to the list of mints').check();
    await button('Save').click();
  }
  await says('Saved.');
}

async function addPhotographs(isFirst: boolean): Promise<void> {
  await link('Photographs').click();
  await box('Obverse').setInputFiles(PICTURES[0] ?? '');
  await box('Reverse').setInputFiles(PICTURES[1] ?? '');
  await button('Look at them').click();
  await button('Copy them').waitFor();
  if (isFirst) await lookAround();
  await button('Copy them').click();
  await says('The photographs have been copied.');
}

test(
  'a cabinet is kept by clicking and typing alone: pieces with photographs, a set, an exhibit of two cases, a sale, an upgrade',
  { timeout: IS_LONG ? 1_200_000 : 420_000 },
  async () => {
    for (let at = 1; at <= PIECES; at += 1) {
      await makePiece(`Penny ${at}`, 'F', at === 1);
      if (at <= PICTURED) await addPhotographs(at === 1);
    }
    await link('Pieces').click();
    await says(`${PIECES + 1} pieces.`);
    await lookAround(true);

    await link('Lists, sets and exhibits').click();
    await shown().getByText('A new set', { exact: true }).click();
    await box('What is the set?').fill('A penny from every mint');
    await box('One piece for each').selectOption('mint');
    await box('Only of this denomination').fill('Penny');
    await shown()
      .locator('#new-places', { hasText: /York:\s+filled/ })
      .waitFor();
    await lookAround(true);
    await button('Make the set').click();
    await says('It has been made.');
    await shown()
      .locator('#set-places', { hasText: /York:\s+filled/ })
      .waitFor();
    await lookAround();

    await link('Lists, sets and exhibits').click();
    await shown().getByText('A new exhibit', { exact: true }).click();
    await box('Its title').fill('My pennies');
    for (const title of [/, Penny 1$/, /, Penny 2$/]) await shown().getByLabel(title).check();
    await button('Make the exhibit').click();
    await says('It has been made.');
    await box('Its first piece').last().fill(`Penny ${PIECES}`);
    await button('Add the case').click();
    await says('Case 2');
    // Both cases are in the window, so that nothing scrolls under the pointer.
    await shown().setViewportSize({ width: 1280, height: 2000 });
    const target = { targetPosition: { x: 20, y: 5 } };
    await shown().locator('li[data-at="0.0.0"]').dragTo(shown().locator('li[data-at="1.0.0"]'), target);
    await shown().locator('li[data-at="1.0.0"]', { hasText: 'Penny 1' }).waitFor();
    await lookAround();
    // The picture of the case says what is in it, and that it fits.
    await says('Everything fits.');

    await link('Came and left').click();
    await box('Piece').fill(`Penny ${PIECES}`);
    await box('When').fill('2026-11-01');
    await box('What happened').selectOption('sold');
    await box('For how much').fill('60 GBP');
    await lookAround(true);
    await button('Save').click();
    // What is sold is still in a case: that is said at once, and set right in the same save.
    await says(/It lies in the exhibit “My pennies”/);
    await box('Take it out of the exhibit as well').check();
    await button('Save').click();
    await says('Saved.');

    await makePiece('A better penny', 'EF', false);
    await link('Lists, sets and exhibits').click();
    await link('A penny from every mint').click();
    await shown()
      .locator('#set-places', { hasText: /York:\s+filled,\s+A better penny/ })
      .waitFor();

    // What goes with a piece is told before it goes, and it comes back from Undo.
    await link('Pieces').click();
    await link('Penny 2').click();
    await link('Delete this piece …').click();
    await says('It is taken out of the exhibit “My pennies”.');
    await lookAround();
    await button('Delete this piece').click();
    await says('Deleted. It can be taken back under Undo.');
    await link('Undo').click();
    await button('Undo').first().click();
    await says('Undone.');

    await link('Lists, sets and exhibits').click();
    await shown()
      .getByText(/^Series of types/)
      .click();
    await box('A new series of types called').fill('Pence of one reign');
    await button('Make the series').click();
    await box('Id').fill('3b');
    await box('Label').fill('Class 3b');
    await lookAround(true);
    await button('Add the type').click();
    await says('It has been made.');
    await box('Metal').fill('silver');
    await lookAround();
    await button('Save').click();
    await says('Saved.');

    for (const name of IS_LONG ? ['Totals', 'Tickets', 'Undo', 'New piece', 'Check and build'] : []) {
      await link(name).click();
      await lookAround();
    }
    await checkUntil('No problems.');
    if (IS_LONG) await buildAndLook();
    expect(wrong).toEqual([]);
  },
);

/** Looks at the check again until it says this. */
async function checkUntil(words: string | RegExp): Promise<void> {
  await link('Check and build').click();
  for (let looked = 0; looked < 240; looked += 1) {
    if ((await shown().getByText(words).count()) > 0) return;
    await shown().waitForTimeout(500);
    await shown().reload();
  }
  throw new Error(`The check says: ${await shown().getByRole('main').innerText()}`);
}

async function buildAndLook(): Promise<void> {
  await button('Build the site').click();
  await expect.poll(async () => {
    await shown().goto(new URL('/site', shown().url()).href);
    return (await shown().getByText('Building').count()) > 0;
  }, { timeout: 240_000, interval: 2000 }).toBe(false); // prettier-ignore
  await says(/built in/);
  await button('Open the built site on this machine').click();
  const address = await shown().getByRole('link', { name: /^http:/ }).getAttribute('href'); // prettier-ignore
  const site = await (await openBrowser()).newPage();
  await site.goto(`${address ?? ''}sets/a-penny-from-every-mint/`);
  await site.getByText('A better penny').first().waitFor();
  await site.goto(`${address ?? ''}exhibits/my-pennies/`);
  await site.getByText('Penny 1').first().waitFor();
  await site.context().browser()?.close();
}

/** Presses Tab until a thing has the keyboard; no further than the end of the page. */
async function tabTo(selector: string): Promise<void> {
  for (let pressed = 0; pressed < 300; pressed += 1) {
    if (await shown().evaluate((wanted) => document.activeElement?.matches(wanted) === true, selector)) return;
    await shown().keyboard.press('Tab');
  }
  throw new Error(`The keyboard does not reach ${selector} on ${shown().url()}.`);
}
async function type(selector: string, words: string): Promise<void> {
  await tabTo(selector);
  await shown().keyboard.press('Control+A');
  await shown().keyboard.type(words);
}
async function press(selector: string, key = 'Enter'): Promise<void> {
  await tabTo(selector);
  await shown().keyboard.press(key);
}

test('the main parts are done by the keyboard alone', { timeout: 180_000 }, async () => {
  await press('nav a[href="/new"]');
  await shown().waitForURL('**/new');
  await type('#title', 'By the keyboard');
  await press('form[action="/new"] button');
  await says('The piece has been made.');
  await type('#date', '1351');
  await type('#weight', '1.1 g');
  await press('.saving button');
  await says('Saved.');
  await press('nav a[href="/lists"]');
  await shown().waitForURL('**/lists');
  await press('a[href="/exhibits/my-pennies"]');
  await shown().waitForURL('**/exhibits/my-pennies');
  await type('#add-0-0', 'By the keyboard');
  await press('.adding button');
  await says('By the keyboard');
  // The button that was pressed has the keyboard again, so that a piece goes on with one key.
  await press('li[data-at="0.0.1"] button[value="earlier"]');
  await shown().locator('li[data-at="0.0.0"]', { hasText: 'By the keyboard' }).waitFor();
  expect(await shown().evaluate(() => document.activeElement?.getAttribute('aria-label'))).toBe('Earlier: By the keyboard'); // prettier-ignore
  await press('nav a[href="/undo"]');
  await says('a save at the desk');
  await press('.runs button');
  await says('Undone.');
  expect(wrong).toEqual([]);
});
