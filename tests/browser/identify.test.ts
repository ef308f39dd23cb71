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
  await page.getByText('How the answers are weighed').click();
  await page.getByText('Every answer is certain').click();
}
const focused = (page: Page): Promise<boolean> =>
  page.evaluate(() => document.activeElement?.closest('[data-ask]') !== null);

describe('the key in the browser', () => {
  // What is read first is the town (common practice of cataloguers); the crown is what wears off first.
  test('is answered with the keyboard alone, the next question being under the hand', async () => {
    await visit('', async (page) => {
      expect(await says(page)).toMatch(/^31 types/);
      expect(await asked(page)).toMatch(/^The town on the reverse/);
      const before = await remaining(page);
      await page.focus('[data-ask] input');
      const line = page.locator('[data-ask] .states li').filter({ hasText: /^York/ });
      while (!(await line.locator('input:focus').count())) await page.keyboard.press('Tab');
      await page.keyboard.press('Space');
      await page.keyboard.press('Enter');
      expect(page.url()).toContain('#town=york');
      expect(await asked(page)).not.toMatch(/^The town/);
      expect(await focused(page)).toBe(true);
      // The Foxes' list of mints has no York in classes 1, 4, 5, 7, 8 and 10.
      const left = await remaining(page);
      expect(left.length).toBeLessThan(before.length / 2);
      expect(left.join(' ')).not.toMatch(/Class (?:1|4|5|7|8|10)[a-z]/);
    });
  });

  test('shows each answer, and the piece that is left, in pictures', async () => {
    await visit('#crown=pearls', async (page) => {
      await page.locator('[data-remaining] .differences li').first().getByText('Answer this').click();
      expect(await asked(page)).toMatch(/^Drapery at the neck/);
      // Seven draperies are drawn, and each drawing is there.
      const boxes = await page
        .locator('[data-ask] .states .drawn use')
        .evaluateAll((uses) => uses.map((use) => (use as SVGGraphicsElement).getBBox().width));
      expect(boxes).toHaveLength(7);
      expect(boxes.every((width) => width > 10)).toBe(true);
      await page.getByLabel('a segment of a circle').check();
      await page.click('[data-ask] .go');
      // The table says pearls and a segment of class 3b alone.
      expect(await says(page)).toMatch(/^Most likely Class 3b\./);
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
        expect.stringContaining('could not be told'),
      ]);
      const whole = await remaining(page);
      await answers.first().getByText('Take back').click();
      expect(await remaining(page)).not.toEqual(whole);
      // Given again, last now, the crown leads to the same place; a second state may be ticked with it.
      await page.click('[data-ask] summary');
      await page.locator('[data-ask] details').getByText('The letter N').click();
      expect(await asked(page)).toMatch(/^The letter N/);
      await answers.last().getByText('Change').click();
      await page.getByText('Leave it as it was').click();
      expect(await asked(page)).toMatch(/^The town/);
      await page.click('[data-ask] summary');
      await page.locator('[data-ask] details').getByText('The crown', { exact: true }).click();
      await page.click('[data-ask] .go');
      expect(await page.textContent('[role="alert"]')).toMatch(/Tick at least one/);
      await page.getByLabel('pearls on the points').check();
      await page.click('[data-ask] .go');
      expect(await remaining(page)).toEqual(whole);
      await answers.last().getByText('Change').click();
      await page.getByLabel('a plain band').check();
      await page.click('[data-ask] .go');
      expect(page.url()).toMatch(/crown=plain-band%2Fpearls/);
      const before = await remaining(page);
      await page.locator('[data-type="lc-3b"] a').click();
      await page.waitForURL('**/lc-3b/');
      await page.goBack();
      await page.waitForSelector('[data-answered] li');
      expect(await remaining(page)).toEqual(before);
      await page.getByText('Begin again').click();
      expect(await says(page)).toMatch(/^31 types/);
    });
  });

  test('says when nothing fits, leaves nothing in the strict manner, and tells two candidates from each other', async () => {
    await visit('#name=edwa&breast=rose&crown=plain-band&letter-n=pot-hook', async (page) => {
      expect(await says(page)).toMatch(/^Probably not in this list/);
      await strict(page);
      expect(await says(page)).toMatch(/^Every type is excluded/);
    });
    await visit('#crown=pearls', async (page) => {
      await strict(page);
      const rows = page.locator('[data-remaining] .differences li');
      expect(await rows.allInnerTexts()).toEqual([
        expect.stringMatching(/^Drapery at the neck.*Class 3a: .*hooked ends.*Class 3b: a segment of a circle/s),
        expect.stringMatching(/^The town/),
      ]);
      await rows.first().getByText('Answer this').click();
      expect(await asked(page)).toMatch(/^Drapery at the neck/);
      await page.getByText('I cannot tell').click();
      expect(await page.locator('[data-answered] li').last().innerText()).toContain('could not be told');
    });
    await visit('#weight=heavy&nonsense=1', async (page) => {
      expect(await page.locator('[data-answered] li').count()).toBe(0);
      await page.click('[data-ask] summary');
      await page.locator('[data-ask] details').getByText('Weight').click();
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
