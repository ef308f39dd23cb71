import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import process from 'node:process';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { OpenSite } from './open-site.ts';
import { openSite } from './open-site.ts';

const axe = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const [FIRST, SECOND, MEDAL, FARTHING] = [
  'william-iii-sixpence', 'william-iii-sixpence-second', 'minster-medal-1829', 'edward-i-farthing-york',
] as const; // prettier-ignore

let site: OpenSite;
beforeAll(async () => {
  // A build that lies elsewhere may be named.
  site = await openSite(process.env['BUILT'] ?? 'dist');
});
afterAll(async () => {
  await site.close();
});

/** Opens an address, waits for what is said of it, and expects no error of a script or of the policy. */
async function visit(path: string, act: (page: Page) => Promise<void>, how: BrowserContextOptions = {}): Promise<void> {
  const context = await site.browser.newContext({ viewport: { width: 1280, height: 900 }, ...how });
  const page = await context.newPage();
  const wrong: string[] = [];
  page.on('pageerror', (error) => wrong.push(error.message));
  page.on('console', (message) => {
    // That there is no such piece the browser notes by itself.
    if (message.type() === 'error' && !message.text().includes('404')) wrong.push(message.text());
  });
  page.on('request', (request) => {
    if (!request.url().startsWith(site.address)) wrong.push(`asked for ${request.url()}`);
  });
  await page.goto(`${site.address}${path}`);
  if (path.startsWith('compare/')) await said(page, /./);
  await act(page);
  await context.close();
  expect(wrong).toEqual([]);
}

const said = async (page: Page, what: RegExp): Promise<void> => {
  await page.waitForFunction(
    (source) => new RegExp(source).test(document.querySelector('[data-part="says"]')?.textContent ?? ''),
    what.source,
  );
};
const lying = (page: Page): Promise<(string | undefined)[]> =>
  page.locator('[data-part="laid"] > li').evaluateAll((lines) => lines.map((line) => line.dataset['piece']));

describe('laying side by side', () => {
  test('pieces lie in the order of the address, at one scale, which is the scale of the rule', async () => {
    const sizes: readonly { id: string; diameter?: string }[] = JSON.parse(
      await readFile(`${process.env['BUILT'] ?? 'dist'}/data/pieces.json`, 'utf8'),
    ) as never;
    await visit(`compare/?pieces=${MEDAL},${FIRST},${FARTHING}`, async (page) => {
      expect(await lying(page)).toEqual([MEDAL, FIRST, FARTHING]);
      const rule = await page
        .locator('[data-part="board"] .rule li')
        .first()
        .evaluate((li) => li.getBoundingClientRect().width / 10);
      // A photograph keeps a margin of about a seventh round its piece; the farthing has none and is a disc of its size.
      for (const [id, margin] of [
        [MEDAL, 1.14],
        [FIRST, 1.14],
        [FARTHING, 1],
      ] as const) {
        const millimetres = Number.parseFloat(sizes.find((one) => one.id === id)?.diameter ?? '');
        const wide = await page
          .locator(`[data-piece="${id}"] .face`)
          .first()
          .evaluate((face) => face.getBoundingClientRect().width);
        expect(wide / rule / millimetres / margin, id).toBeCloseTo(1, 1);
      }
    });
  });

  test('what is wrong in the address is said, and the rest is shown', async () => {
    await visit(`compare/?pieces=${FIRST},no-such-piece,${SECOND},..%2Fsecret,hidden-york-noble`, async (page) => {
      expect(await lying(page)).toEqual([FIRST, SECOND]);
      const says = await page.locator('[data-part="says"]').innerText();
      expect(says).toContain('2 pieces at one scale.');
      expect(says).toContain('There are no pieces “no-such-piece”, “../secret”, “hidden-york-noble” here');
    });
  });

  test('an unlisted piece lies there for those who have its id, and cannot be found', async () => {
    await visit('compare/?pieces=roman-stray-unlisted', async (page) => {
      expect(await lying(page)).toEqual(['roman-stray-unlisted']);
      const title = await page.locator('[data-part="laid"] .title').innerText();
      await page.locator('#add').fill(title);
      await page.waitForFunction(() => document.querySelector('[data-part="answers-say"]')?.textContent !== '');
      expect(await page.locator('[data-part="answers"]').innerText()).not.toContain(title);
    });
  });

  test('by keys alone a piece is found, added, moved and taken away; the address follows, and so does the way back', async () => {
    await visit(`compare/?pieces=${FIRST}`, async (page) => {
      await page.locator('#add').focus();
      await page.keyboard.type('0163');
      await page.locator('[data-part="answers"] button').first().waitFor();
      await page.keyboard.press('Enter');
      await said(page, /^2 pieces/);
      expect(await lying(page)).toEqual([FIRST, SECOND]);
      expect(new URL(page.url()).search).toBe(`?pieces=${FIRST},${SECOND}`);
      await page.locator(`[data-piece="${FIRST}"] [data-move="1"]`).focus();
      await page.keyboard.press('Enter');
      await page.waitForFunction(
        (id) => document.querySelector('[data-part="laid"] > li')?.getAttribute('data-piece') === id,
        SECOND,
      );
      expect(await page.evaluate(() => document.activeElement?.closest('li')?.dataset['piece'])).toBe(FIRST);
      await page.locator(`[data-piece="${SECOND}"] [data-away]`).focus();
      await page.keyboard.press('Enter');
      await said(page, /^One piece/);
      expect(new URL(page.url()).search).toBe(`?pieces=${FIRST}`);
      await page.goBack();
      await said(page, /^2 pieces/);
      expect(await lying(page)).toEqual([SECOND, FIRST]);
    });
  });

  test('what differs lies under its piece, and what is alike is said once', async () => {
    await visit(`compare/?pieces=${FIRST},${SECOND}`, async (page) => {
      const row = page.locator('[data-part="differs"] tbody tr', { has: page.locator('th', { hasText: 'Weight' }) });
      expect(await row.innerText()).toMatch(/2\.98\sg[\s\S]*2\.91\sg[\s\S]*0\.07\sg less than the first/);
      const left = (where: string): Promise<readonly number[]> =>
        page.locator(where).evaluateAll((all) => all.map((one) => Math.round(one.getBoundingClientRect().left)));
      expect((await left('[data-part="differs"] tbody tr:first-child td')).slice(0, 2)).toEqual(
        await left('[data-part="laid"] > li'),
      );
      const alike = await page.locator('[data-part="alike"]').innerText();
      expect(alike).toContain('Die axis 6h');
      expect(await page.locator('[data-part="differs"]').innerText()).not.toContain('Die axis');
    });
  });
});

describe('one over the other', () => {
  const over = (page: Page): Promise<{ a: number; b: number; e: number; opacity: string }> =>
    page
      .locator('[data-part="stage"] .face')
      .nth(1)
      .evaluate((face) => {
        const { transform, opacity } = getComputedStyle(face);
        const { a, b, e } = new DOMMatrix(transform);
        return { a, b, e, opacity };
      });

  test('keys move and turn the upper face, lift it off and put it straight', async () => {
    await visit(`compare/?pieces=${FIRST},${SECOND}&laid=over`, async (page) => {
      expect(await page.locator('[data-part="stage"] .face').count()).toBe(2);
      await page.locator('[data-part="stage"]').focus();
      for (const key of ['ArrowRight', 'ArrowRight', ']', ']', ']']) await page.keyboard.press(key);
      const { a, b, e } = await over(page);
      // Clockwise on a screen, whose y points down, is atan2(b, a) > 0.
      expect((Math.atan2(b, a) * 180) / Math.PI).toBeCloseTo(3, 3);
      const millimetre = await page
        .locator('.rule li')
        .first()
        .evaluate((li) => li.getBoundingClientRect().width / 10);
      expect(e / millimetre).toBeCloseTo(0.4, 2);
      expect(await page.locator('[data-part="over-says"]').innerText()).toBe(
        'turned 3° to the right, 0.4 mm to the right',
      );
      // The address says how it lies, and whoever opens it sees the same.
      await page.waitForURL(/lie=3,0\.4,0$/);
      await page.reload();
      await page.locator('[data-part="stage"] .face').nth(1).waitFor();
      const again = await over(page);
      expect(again.b).toBeCloseTo(b, 4);
      expect(again.e / millimetre).toBeCloseTo(0.4, 2);
      await page.locator('[data-part="swap"]').click();
      await page.waitForURL(new RegExp(`${SECOND},${FIRST}.*lie=-3,`));
      await page.locator('[data-part="swap"]').click();
      await page.waitForURL(new RegExp(`${FIRST},${SECOND}.*lie=3,`));
      await page.locator('[data-part="stage"]').focus();
      await page.keyboard.press('Space');
      expect((await over(page)).opacity).toBe('0');
      await page.keyboard.press('Space');
      await page.keyboard.press('0');
      expect(await over(page)).toMatchObject({ a: 1, b: 0, e: 0, opacity: '0.5' });
    });
  });

  test('of three, another can be laid over the first', async () => {
    await visit(`compare/?pieces=${FIRST},${SECOND},${FARTHING}&laid=over&lie=5,1,1`, async (page) => {
      await page.locator('[data-part="next"]').click();
      await page.waitForURL(new RegExp(`${FIRST},${FARTHING},${SECOND}&laid=over$`));
    });
    await visit(`compare/?pieces=${FIRST},${SECOND}&laid=over`, async (page) => {
      await page.locator('[data-part="stage"] .face').nth(1).waitFor();
      expect(await page.locator('[data-part="next"]').isVisible()).toBe(false);
    });
  });

  test('of a face that was not photographed it says so', async () => {
    await visit(`compare/?pieces=${FIRST},${FARTHING}&laid=over`, async (page) => {
      expect(await page.locator('[data-part="over-name"]').innerText()).toContain('no photograph');
      expect(await page.locator('[data-part="stage"]').isVisible()).toBe(false);
    });
  });
});

test('reverses come up as the die axis turns them, at once for those who want no motion', async () => {
  const still = { reducedMotion: 'reduce' } as const;
  await visit(
    `compare/?pieces=${FIRST},${MEDAL}&turned=yes`,
    async (page) => {
      const turned = (id: string): Promise<string> =>
        page
          .locator(`[data-piece="${id}"] [data-face="reverse"] .face`)
          .evaluate((face) => getComputedStyle(face).rotate);
      // Their files say 6h and 12h.
      expect(await turned(FIRST)).toBe('180deg');
      expect(await turned(MEDAL)).toMatch(/^(none|0deg)$/);
      const motion = await page
        .locator('[data-face="reverse"] .face')
        .first()
        .evaluate((face) => getComputedStyle(face).transitionDuration);
      expect(motion).toBe('0s');
    },
    still,
  );
});

test('pieces are gathered on the board where they are found, through a search', async () => {
  await visit('pieces/', async (page) => {
    const find = async (words: string, id: string): Promise<void> => {
      await page.locator('input[name="words"]').fill(words);
      await page.locator(`[data-piece="${id}"] .gathers input`).check();
    };
    await page.locator('[data-begin]').focus();
    await page.keyboard.press('Enter');
    await find('0162', FIRST);
    // Another page of the list remembers what was chosen on this.
    await page.goto(`${site.address}pieces/page/2/`);
    expect(await page.locator('gather-pieces output').innerText()).toBe('One chosen; choose another.');
    await page.goto(`${site.address}pieces/`);
    await find('minster medal', MEDAL);
    await page.locator('gather-pieces a').click();
    await said(page, /^2 pieces/);
    expect(await lying(page)).toEqual([FIRST, MEDAL]);
  });
});

test('from the page of a piece one comes to it beside its related', async () => {
  await visit(`pieces/${FIRST}/`, async (page) => {
    await page.locator('main a[href*="/compare/"]').first().click();
    await said(page, /^2 pieces/);
    expect(await lying(page)).toEqual([FIRST, SECOND]);
  });
});

test('without JavaScript the page says how, and leads to the pieces', async () => {
  const context = await site.browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto(`${site.address}compare/?pieces=${FIRST},${SECOND}`);
  expect(await page.locator('main').innerText()).toContain('needs JavaScript');
  await page.locator('main a', { hasText: 'The list of all pieces' }).click();
  expect(new URL(page.url()).pathname).toBe('/pieces/');
  await context.close();
});

test('what is laid has nothing that WCAG 2.2 AA forbids, and is no wider than a telephone', async () => {
  for (const [query, colorScheme] of [
    [`?pieces=${FIRST},${SECOND}`, 'dark'],
    [`?pieces=${FIRST},${SECOND}&laid=over`, 'light'],
  ] as const) {
    await visit(
      `compare/${query}`,
      async (page) => {
        await page.evaluate(axe);
        expect(await page.evaluate(forbidden), query).toEqual([]);
        for (const width of [320, 390]) {
          await page.setViewportSize({ width, height: 800 });
          const over = await page.evaluate(
            () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
          );
          expect(over, `${query} at ${width}`).toBeLessThanOrEqual(0);
        }
      },
      { bypassCSP: true, colorScheme, reducedMotion: 'reduce' },
    );
  }
});

/** Runs in the page: what axe-core finds against WCAG 2.0 to 2.2, levels A and AA. */
async function forbidden(): Promise<readonly string[]> {
  type Violation = { id: string; nodes: readonly { target: unknown }[] };
  type Axe = { run: (on: Document, how: object) => Promise<{ violations: readonly Violation[] }> };
  const { run } = (globalThis as unknown as { axe: Axe }).axe;
  const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
  const { violations } = await run(document, { runOnly: { type: 'tag', values: tags } });
  return violations.flatMap(({ id, nodes }) =>
    nodes.slice(0, 3).map(({ target }) => `${id}: ${JSON.stringify(target)}`),
  );
}
