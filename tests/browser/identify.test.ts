import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import process from 'node:process';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { OpenSite } from './open-site.ts';
import { openSite } from './open-site.ts';

const axe = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const KEY = 'types/edward-i-pence/key/';

let site: OpenSite;
beforeAll(async () => {
  // A build that lies elsewhere may be named.
  site = await openSite(process.env['BUILT'] ?? 'dist');
});
afterAll(async () => {
  await site.close();
});

/** Opens the key with the answers of an address, and expects no error of a script or of the policy. */
async function visit(
  answers: string,
  act: (page: Page) => Promise<void>,
  how: BrowserContextOptions = {},
): Promise<void> {
  const context = await site.browser.newContext({ viewport: { width: 1280, height: 900 }, ...how });
  const page = await context.newPage();
  const wrong: string[] = [];
  page.on('pageerror', (error) => wrong.push(error.message));
  page.on('console', (message) => message.type() === 'error' && wrong.push(message.text()));
  await page.goto(`${site.address}${KEY}${answers}`);
  if (how.javaScriptEnabled !== false) await page.waitForSelector('[data-ask] h2');
  await act(page);
  await context.close();
  expect(wrong).toEqual([]);
}

const says = (page: Page): Promise<string | null> => page.textContent('[data-says]');
const asked = (page: Page): Promise<string | null> => page.textContent('[data-ask] h2');
/** The types whose wells are not empty yet, each with what is said under it. */
const remaining = async (page: Page): Promise<readonly string[]> =>
  (await page.locator('[data-type]:not([data-out])').allInnerTexts()).map((text) => text.replaceAll(/\s+/g, ' '));
async function strict(page: Page): Promise<void> {
  await page.getByText('How sure you are').click();
  await page.getByText('I am sure of every mark').click();
}
/** Goes to a question by its name, or by its place on the photograph. */
async function lookAt(page: Page, label: string): Promise<void> {
  const ring = page.getByRole('button', { name: `${label}: look here`, exact: true });
  await ((await ring.count()) > 0 ? ring : page.locator('[data-elsewhere]').getByText(label, { exact: true })).click();
}
const focused = (page: Page): Promise<boolean> =>
  page.evaluate(() => document.activeElement?.closest('[data-ask]') !== null);

describe('the key in the browser', () => {
  // What is read first is the town (common practice of cataloguers); the crown is what wears off first.
  test('is answered with the keyboard alone, the next question being under the hand', async () => {
    await visit('', async (page) => {
      expect(await says(page)).toMatch(/any of the 31/);
      expect(await asked(page)).toMatch(/^Which town/);
      expect(await page.getAttribute('.ring[aria-current]', 'aria-label')).toMatch(/^The town/);
      const before = await remaining(page);
      await page.focus('[data-ask] input');
      const line = page.locator('[data-ask] .states li').filter({ hasText: /^York/ });
      while (!(await line.locator('input:focus').count())) await page.keyboard.press('Tab');
      await page.keyboard.press('Space');
      // What remains is seen at once, next to the answers and in the wells, before one goes on.
      await expect.poll(() => page.url()).toContain('#town=york');
      expect(await asked(page)).toMatch(/^Which town/);
      expect(await page.textContent('[data-still]')).toMatch(/^1 · · · · +2 a b/);
      await page.keyboard.press('Enter');
      expect(await asked(page)).not.toMatch(/^Which town/);
      expect(await focused(page)).toBe(true);
      // The Foxes' list of mints has no York in classes 1, 4, 5, 7, 8 and 10.
      const left = await remaining(page);
      expect(left.length).toBeLessThan(before.length / 2);
      expect(left.join(' ')).not.toMatch(/Class (?:1|4|5|7|8|10)[a-z]/);
    });
  });

  test('shows each answer, and the piece that is left, in pictures', async () => {
    await visit('#crown=pearls', async (page) => {
      await page.locator('[data-remaining] .differences li').first().getByText('Look at it').click();
      expect(await asked(page)).toMatch(/^Look under the chin/);
      // Seven draperies are drawn, and each drawing is there.
      const boxes = await page
        .locator('[data-ask] .states .drawn use')
        .evaluateAll((uses) => uses.map((use) => (use as SVGGraphicsElement).getBBox().width));
      expect(boxes).toHaveLength(7);
      expect(boxes.every((width) => width > 10)).toBe(true);
      await page.getByLabel('a segment of a circle').check();
      await page.click('[data-foot] .go');
      // The table says pearls and a segment of class 3b alone.
      expect(await says(page)).toMatch(/^It is Class 3b,/);
      const picture = page.locator('[data-likeliest] img');
      await picture.scrollIntoViewIfNeeded();
      await expect.poll(() => picture.evaluate((img: HTMLImageElement) => img.naturalWidth)).toBeGreaterThan(50);
    });
  });

  test('takes answers back and changes them in any order, and knows them again on the way back from a type', async () => {
    await visit('#crown=pearls&drapery=segment&face=?', async (page) => {
      const answers = page.locator('[data-answered] li');
      expect(await answers.allInnerTexts()).toEqual([
        expect.stringContaining('pearls'),
        expect.stringContaining('a segment'),
        expect.stringContaining('cannot be made out'),
      ]);
      const whole = await remaining(page);
      await answers.first().getByText('Take back').click();
      expect(await remaining(page)).not.toEqual(whole);
      // Given again, last now, the crown leads to the same place; a second state may be ticked with it.
      await lookAt(page, 'The letter N');
      expect(await asked(page)).toMatch(/^Find an N/);
      await answers.last().getByText('Look again').click();
      await page.getByText('Leave it as it was').click();
      expect(await asked(page)).toMatch(/^Which town/);
      await lookAt(page, 'The crown');
      await page.click('[data-foot] .go');
      expect(await page.textContent('[role="alert"]')).toMatch(/Tap what you see first/);
      await page.getByLabel('pearls on the points').check();
      await page.click('[data-foot] .go');
      expect(await remaining(page)).toEqual(whole);
      await answers.last().getByText('Look again').click();
      await page.getByLabel('a plain band').check();
      await page.click('[data-foot] .go');
      expect(page.url()).toMatch(/crown=plain-band%2Fpearls/);
      const before = await remaining(page);
      await page.locator('[data-type="lc-3b"] a').click();
      await page.waitForURL('**/lc-3b/');
      await page.goBack();
      await page.waitForSelector('[data-answered] li');
      expect(await remaining(page)).toEqual(before);
      await page.getByText('Begin with another piece').click();
      expect(await says(page)).toMatch(/any of the 31/);
    });
  });

  test('says when nothing fits, leaves nothing in the strict manner, and tells two candidates from each other', async () => {
    await visit('#name=edwa&breast=rose&crown=plain-band&letter-n=pot-hook', async (page) => {
      expect(await says(page)).toMatch(/^It is probably not in this list/);
      await strict(page);
      expect(await says(page)).toMatch(/shuts out every type/);
    });
    await visit('#crown=pearls', async (page) => {
      await strict(page);
      const rows = page.locator('[data-remaining] .differences li');
      expect(await rows.allInnerTexts()).toEqual([
        expect.stringMatching(/^Drapery at the neck.*Class 3a: .*hooked ends.*Class 3b: a segment of a circle/s),
        expect.stringMatching(/^The town/),
      ]);
      await rows.first().getByText('Look at it').click();
      expect(await asked(page)).toMatch(/^Look under the chin/);
      await page.getByText('I cannot make it out').click();
      expect(await page.locator('[data-answered] li').last().innerText()).toContain('cannot be made out');
    });
    await visit('#weight=heavy&nonsense=1', async (page) => {
      expect(await page.locator('[data-answered] li').count()).toBe(0);
      await lookAt(page, 'Weight');
      await page.fill('[data-ask] input', '1.4');
      await page.keyboard.press('Enter');
      expect(await page.textContent('[role="alert"]')).toMatch(/unit/);
    });
  });

  test('fits a phone, in the dark too, with nothing that shuts anyone out', async () => {
    await visit(
      '#crown=pearls',
      async (page) => {
        expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
        // A debugger's evaluation may run what the policy of the page forbids a page.
        await page.evaluate(axe);
        const found = await page.evaluate(async () => {
          const { violations } = await (
            window as never as { axe: { run: () => Promise<{ violations: { id: string }[] }> } }
          ).axe.run();
          return violations.map(({ id }) => id);
        });
        expect(found).toEqual([]);
      },
      { viewport: { width: 390, height: 844 }, colorScheme: 'dark' },
    );
  });

  test('is a board and a table of the marks, with their drawings, where no script runs', async () => {
    await visit(
      '',
      async (page) => {
        expect(await page.isVisible('[data-ask]')).toBe(false);
        expect(await page.isVisible('[data-type="lc-3a"] .drawn')).toBe(true);
        const row = page.locator('table tbody tr').filter({ hasText: 'Class 3b' });
        expect(await row.innerText()).toMatch(/pearls.*a segment of a circle/s);
        expect(await row.locator('.drawn').count()).toBeGreaterThan(5);
      },
      { javaScriptEnabled: false },
    );
  });
});
