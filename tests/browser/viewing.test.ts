import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import process from 'node:process';
import type { BrowserContextOptions, Locator, Page } from 'playwright-core';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { OpenSite } from './open-site.ts';
import { openSite } from './open-site.ts';

const axe = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true } as const;
const STILL = { reducedMotion: 'reduce' } as const;
const PENNY = 'york-penny-3b';

let site: OpenSite;
beforeAll(async () => {
  // A build that lies elsewhere may be named.
  site = await openSite(process.env['BUILT'] ?? 'dist');
});
afterAll(async () => {
  await site.close();
});

/** Opens the page of a piece, lets a visitor do something there, and expects no error of a script or of the policy. */
async function visit(piece: string, how: BrowserContextOptions, act: (page: Page) => Promise<void>): Promise<void> {
  const context = await site.browser.newContext({ viewport: { width: 1280, height: 860 }, ...how });
  const page = await context.newPage();
  const wrong: string[] = [];
  page.on('pageerror', (error) => wrong.push(error.message));
  page.on('console', (message) => {
    // A browser asks for an icon where a picture alone is opened.
    if (message.type() === 'error' && !message.location().url.endsWith('/favicon.ico')) wrong.push(message.text());
  });
  await page.goto(`${site.address}pieces/${piece}/`);
  await act(page);
  await context.close();
  expect(wrong).toEqual([]);
}

const rest = (page: Page): Promise<void> =>
  page.evaluate(() => {
    for (const moving of document.getAnimations()) moving.finish();
  });

describe('turning', () => {
  /** A square of the screen about the middle of a face, in grey. */
  async function seen(face: Locator, side: number): Promise<Buffer> {
    const box = await boxOf(face);
    const x = Math.round(box.x + box.width / 2 - side / 2);
    const y = Math.round(box.y + box.height / 2 - side / 2);
    return face.page().screenshot({ clip: { x, y, width: side, height: side } });
  }

  // Common practice: hold the obverse upright, turn the piece about its height like a revolving door, and read the hour
  // of the clock that the top of the reverse comes to. So the turned piece must look as the upright reverse beside it
  // does when sharp, an outside program, has turned that clockwise by so many hours.
  test.for([
    { piece: 'elizabeth-sixpence', hours: 4 },
    { piece: PENNY, hours: 6 },
    { piece: 'edward-i-durham-penny', hours: 12 },
  ])('$piece comes up with the top of its reverse at $hours o’clock', async ({ piece, hours }) => {
    const said = await readFile(`content/pieces/${piece}/piece.md`, 'utf8');
    const noted = Number(/^axis: (\d+)h$/m.exec(said)?.[1]);
    await visit(piece, {}, async (page) => {
      const side = 120;
      const upright = await seen(page.locator('[data-face="reverse"] .turns'), side * 1.5);
      await page.locator('[data-turn-over]').click();
      await rest(page);
      const turned = await seen(page.locator('[data-face="obverse"] .turns'), side);
      const unlike: number[] = [];
      for (let hour = 1; hour <= 12; hour++) unlike.push(await difference(turned, upright, hour * 30, side));
      expect(unlike.indexOf(Math.min(...unlike)) + 1).toBe(hours);
      expect(noted).toBe(hours);
      expect(await page.locator('turn-over output').innerText()).toContain(`${hours} o’clock`);
    });
  });

  /** Mean difference in grey, within the circle that both squares hold whole, once the second is turned clockwise. */
  async function difference(one: Buffer, other: Buffer, degrees: number, side: number): Promise<number> {
    const turned = await sharp(other).rotate(degrees).png().toBuffer({ resolveWithObject: true });
    const left = Math.round((turned.info.width - side) / 2);
    const top = Math.round((turned.info.height - side) / 2);
    const cut = sharp(turned.data).extract({ left, top, width: side, height: side });
    const a = await sharp(one).greyscale().blur(1.5).raw().toBuffer();
    const b = await cut.greyscale().blur(1.5).raw().toBuffer();
    let sum = 0;
    let count = 0;
    for (const [at, grey] of a.entries()) {
      if (Math.hypot((at % side) - side / 2, Math.floor(at / side) - side / 2) > side / 2) continue;
      sum += Math.abs(grey - (b[at] ?? 0));
      count += 1;
    }
    return sum / count;
  }

  test('a blank back and a missing photograph turn as well, and say what they are', async () => {
    await visit('lead-token', {}, async (page) => {
      const front = page.locator('[data-face="obverse"]');
      await page.locator('[data-turn-over]').click();
      await rest(page);
      expect(await front.locator('.behind .blank').isVisible()).toBe(true);
      expect(await front.innerText()).toMatch(/reverse\s+Blank/i);
      await page.locator('[data-turn-over]').click();
      expect(await front.locator('figcaption:visible').innerText()).toMatch(/^obverse$/i);
      expect(await page.locator('a[data-look]:visible').count()).toBe(1);
    });
    await visit('edward-i-farthing-york', {}, async (page) => {
      await page.locator('[data-turn-over]').click();
      expect(await page.locator('turn-over').innerText()).toContain('No photograph yet');
      expect(await page.locator('a[data-look]').count()).toBe(0);
    });
  });

  test('with no script both faces lie side by side with the axis between them', async () => {
    await visit(PENNY, { javaScriptEnabled: false }, async (page) => {
      expect(await page.locator('[data-turn-over]:visible').count()).toBe(0);
      const parts = ['[data-face="obverse"] img', 'turn-over svg', '[data-face="reverse"] img'];
      const lefts = await Promise.all(parts.map(async (part) => (await boxOf(page.locator(part))).x));
      expect(lefts).toEqual(lefts.toSorted((a, b) => a - b));
      expect(await page.locator('turn-over').innerText()).toContain('Die axis 6h');
    });
  });

  test('with reduced motion the faces change places at once, and the piece is still one', async () => {
    await visit(PENNY, STILL, async (page) => {
      const behind = page.locator('[data-face="obverse"] .behind');
      await page.locator('[data-turn-over]').click();
      expect(await page.evaluate(() => document.getAnimations().length)).toBe(0);
      expect((await boxOf(behind.locator('img'))).width).toBeGreaterThan(100);
      expect((await boxOf(page.locator('[data-face="obverse"] .turns > img'))).width).toBe(0);
      expect(await page.locator('[data-face="reverse"] img').isVisible()).toBe(false);
    });
  });
});

describe('looking closer', () => {
  const dialog = 'look-closer dialog';
  const open = async (page: Page): Promise<void> => {
    await page.locator('a[data-look="obverse"]').first().click();
    await page.waitForFunction(() =>
      /obverse-8\d\d/.test(document.querySelector<HTMLImageElement>('look-closer img')?.src ?? ''),
    );
  };
  /** Pixels a millimetre as the rule says: from its first number to its third. */
  const ruled = (page: Page): Promise<number> =>
    page.locator('look-closer ol').evaluate((rule) => {
      const [first, , third] = [...rule.children];
      if (first === undefined || third === undefined) return 0;
      return (third.getBoundingClientRect().x - first.getBoundingClientRect().x) / Number(third.textContent);
    });
  const picture = (page: Page): Promise<Box> => boxOf(page.locator('look-closer img'));

  test('without a script the link leads to the largest picture itself', async () => {
    await visit(PENNY, { javaScriptEnabled: false }, async (page) => {
      const [answer] = await Promise.all([
        page.waitForResponse(/obverse-8\d\d.*\.webp$/),
        page.locator('a[data-look="obverse"]').click(),
      ]);
      expect(answer.status()).toBe(200);
    });
  });

  test('the largest picture is fetched when it is asked for and not before', async () => {
    const context = await site.browser.newContext({ viewport: { width: 1280, height: 860 }, ...STILL });
    const page = await context.newPage();
    const largest: string[] = [];
    page.on('request', (request) => {
      if (/-8\d\d\./.test(request.url())) largest.push(request.url());
    });
    await page.goto(`${site.address}pieces/${PENNY}/`, { waitUntil: 'networkidle' });
    expect(largest).toEqual([]);
    await open(page);
    expect(new Set(largest).size).toBe(1);
    await page.locator('[data-part="other"]').click();
    await page.waitForFunction(() =>
      /reverse-8\d\d/.test(document.querySelector<HTMLImageElement>('look-closer img')?.src ?? ''),
    );
    expect(await page.locator(dialog).getByRole('heading').innerText()).toBe('Reverse');
    await context.close();
  });

  test('the rule measures the penny at the 18.6 mm that its keeper states, near and far', async () => {
    await visit(PENNY, STILL, async (page) => {
      await open(page);
      // The piece on the screen, found by its pixels: whatever differs from the plain board along the middle of the glass.
      const glass = await boxOf(page.locator('[data-part="glass"]'));
      const { data, info } = await sharp(
        await page.screenshot({ clip: { ...glass, y: glass.y + 10, height: glass.height - 20 } }),
      )
        .greyscale()
        .raw()
        .toBuffer({ resolveWithObject: true });
      const differs = (x: number): boolean => {
        for (let y = 0; y < info.height; y++)
          if (Math.abs((data[y * info.width + x] ?? 0) - (data[0] ?? 0)) > 24) return true;
        return false;
      };
      const columns = Array.from({ length: info.width }, (_, x) => x).filter(differs);
      const across = (columns.at(-1) ?? 0) - (columns[0] ?? 0) + 1;
      // Found to within a few pixels of 320 when it was cut out, and its rim fades: 3 %.
      expect(across / (await ruled(page)) / 18.6).toBeGreaterThan(0.97);
      expect(across / (await ruled(page)) / 18.6).toBeLessThan(1.03);

      const [far, farRule] = [(await picture(page)).width, await ruled(page)];
      await page.locator('[data-part="nearer"]').click();
      await page.locator('[data-part="nearer"]').click();
      const [near, nearRule] = [(await picture(page)).width, await ruled(page)];
      expect(near / far).toBeCloseTo(2.25, 2);
      expect(nearRule / farRule).toBeCloseTo(2.25, 1);
    });
  });

  test('a mouse drags it, its wheel brings nearer what lies under it, a click does too', async () => {
    await visit(PENNY, STILL, async (page) => {
      await open(page);
      const glass = await boxOf(page.locator('[data-part="glass"]'));
      const [x, y] = [glass.x + glass.width / 2, glass.y + glass.height / 2];
      const whole = await picture(page);
      await page.mouse.move(x + 100, y + 50);
      await page.mouse.wheel(0, -500);
      await page.waitForFunction((width) => (document.querySelector('look-closer img')?.getBoundingClientRect().width ?? 0) > width, whole.width); // prettier-ignore
      const near = await picture(page);
      // The same place of the picture is still under the mouse, up and down, where the glass is full.
      expect((y + 50 - near.y) / near.height).toBeCloseTo((y + 50 - whole.y) / whole.height, 2);
      await page.mouse.down();
      await page.mouse.move(x + 100, y + 20, { steps: 3 });
      await page.mouse.up();
      expect((await picture(page)).y - near.y).toBeCloseTo(-30, 0);
      await page.locator('[data-part="whole"]').click();
      await page.mouse.click(x, y);
      expect((await picture(page)).width / whole.width).toBeCloseTo(2, 1);
      await page.locator('[data-part="close"]').click();
      expect(await page.locator(dialog).isVisible()).toBe(false);
      await page.locator('[data-face="reverse"] img').click();
      expect(await page.locator(dialog).getByRole('heading').innerText()).toBe('Reverse');
    });
  });

  test('keys alone open it, bring it nearer, move it, show the whole and close it, and stay in it meanwhile', async () => {
    await visit(PENNY, STILL, async (page) => {
      await page.locator('a[data-look="reverse"]').focus();
      await page.keyboard.press('Enter');
      const whole = await picture(page);
      for (const key of ['+', '+', '+', '-']) await page.keyboard.press(key);
      const near = await picture(page);
      expect(near.width / whole.width).toBeGreaterThan(2);
      await page.keyboard.press('ArrowDown');
      await page.keyboard.press('ArrowRight');
      const after = await picture(page);
      expect(after.y).toBeLessThan(near.y - 10);
      await page.keyboard.press('0');
      expect((await picture(page)).width).toBeCloseTo(whole.width, 0);
      for (let tabs = 0; tabs < 8; tabs++) {
        await page.keyboard.press('Tab');
        const where = await page.evaluate(() => document.activeElement?.closest('look-closer, body')?.localName);
        const isOut = await page.evaluate(() => document.activeElement?.matches('body *:not(look-closer *)') === true);
        expect(isOut, where).toBe(false);
      }
      await page.keyboard.press('Escape');
      expect(await page.locator(dialog).isVisible()).toBe(false);
      expect(await page.evaluate(() => document.activeElement?.getAttribute('data-look'))).toBe('reverse');
    });
  });

  test('two fingers bring it nearer, one moves it', async () => {
    await visit(PENNY, { ...PHONE, ...STILL }, async (page) => {
      await page.locator('a[data-look="obverse"]').first().tap();
      const hand = await page.context().newCDPSession(page);
      const touch = (
        type: 'touchStart' | 'touchMove' | 'touchEnd',
        ...touchPoints: { x: number; y: number; id: number }[]
      ) => hand.send('Input.dispatchTouchEvent', { type, touchPoints });
      const whole = await picture(page);
      const [x, y] = [whole.x + whole.width / 2, whole.y + whole.height / 2];
      await touch('touchStart', { x: x - 40, y, id: 0 }, { x: x + 40, y, id: 1 });
      for (const apart of [60, 80, 100, 120])
        await touch('touchMove', { x: x - apart, y, id: 0 }, { x: x + apart, y, id: 1 });
      await touch('touchEnd');
      const near = await picture(page);
      expect(near.width / whole.width).toBeCloseTo(3, 1);
      await touch('touchStart', { x, y, id: 0 });
      for (const by of [10, 30, 50]) await touch('touchMove', { x: x - by, y: y - by / 2, id: 0 });
      await touch('touchEnd');
      const after = await picture(page);
      expect(after.x - near.x).toBeCloseTo(-50, 0);
      expect(after.y - near.y).toBeCloseTo(-25, 0);
      expect(await page.evaluate(() => visualViewport?.scale)).toBe(1);
    });
  });

  test('moves gently, but not where a visitor wants no motion', async () => {
    await visit(PENNY, {}, async (page) => {
      // What begins to move is counted, for on a busy machine it has come to rest before one looks.
      await page.evaluate(() => {
        for (const sign of ['transitionrun', 'animationstart'])
          document.addEventListener(sign, () => (document.body.dataset['moved'] = 'yes'), true);
      });
      const moved = (): Promise<boolean> =>
        page.evaluate(
          () =>
            new Promise((settle) => {
              requestAnimationFrame(() =>
                requestAnimationFrame(() => settle(document.body.dataset['moved'] === 'yes')),
              );
            }),
        );
      await open(page);
      await page.keyboard.press('+');
      expect(await moved()).toBe(true);
      await rest(page);
      await page.emulateMedia(STILL);
      await page.evaluate(() => delete document.body.dataset['moved']);
      const before = await picture(page);
      await page.keyboard.press('+');
      expect(await moved()).toBe(false);
      expect((await picture(page)).width).toBeGreaterThan(before.width);
    });
  });

  test('an edge, which lies at no scale, is seen without a rule', async () => {
    await visit('minster-medal-1829', STILL, async (page) => {
      await page.locator('a[data-look="edge"]').click();
      expect(await page.locator(dialog).getByRole('heading').innerText()).toBe('Edge');
      expect(await page.locator('look-closer ol').isVisible()).toBe(false);
      expect(await page.locator('[data-part="other"]').isVisible()).toBe(false);
    });
  });
});

describe('true size', () => {
  const part = (page: Page, name: string): Locator => page.locator(`true-size [data-${name}]`);
  const across = (page: Page): Promise<number> =>
    page
      .locator('[data-face="obverse"] img')
      .evaluate((face) => face.getBoundingClientRect().width / Number(getComputedStyle(face).getPropertyValue('--mm')));

  test('a phone is measured with the short side of a card, remembers it on itself alone, and forgets it when told to', async () => {
    await visit(PENNY, { ...PHONE, ...STILL }, async (page) => {
      const before = await across(page);
      await part(page, 'show').tap();
      await page.locator('true-size input').fill('6.1');
      await page.locator('true-size [data-step="0.02"]').tap();
      const bar = await boxOf(page.locator('true-size .bar'));
      // ISO/IEC 7810, ID-1: 85.60 by 53.98 mm.
      expect(bar.width).toBeCloseTo(53.98 * 6.12, 0);
      expect(bar.x + bar.width).toBeLessThanOrEqual(390);
      expect(await page.locator('true-size .measure').innerText()).toContain('short side');
      await page.locator('true-size input').fill('9');
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
      await page.locator('true-size input').fill('6.12');
      await part(page, 'done').tap();
      expect(await across(page)).toBeCloseTo(6.12, 2);

      await page.reload();
      expect(await across(page)).toBeCloseTo(before, 2);
      await part(page, 'show').tap();
      expect(await across(page)).toBeCloseTo(6.12, 2);
      expect(await page.locator('true-size .measure').isVisible()).toBe(false);
      expect(await page.context().cookies()).toEqual([]);

      await part(page, 'forget').tap();
      expect(await across(page)).toBeCloseTo(before, 2);
      expect(await page.evaluate(() => localStorage.length)).toBe(0);
      await part(page, 'show').tap();
      expect(await page.locator('true-size .measure').isVisible()).toBe(true);
    });
  });

  test('keys alone measure a screen, leave it as it was, and show it larger again', async () => {
    await visit(PENNY, STILL, async (page) => {
      const before = await across(page);
      await part(page, 'show').focus();
      await page.keyboard.press('Enter');
      await page.keyboard.press('ArrowRight');
      expect((await boxOf(page.locator('true-size .bar'))).width).toBeCloseTo(85.6 * 3.79, 0);
      await page.keyboard.press('Escape');
      expect(await across(page)).toBeCloseTo(before, 2);
      await page.keyboard.press('Enter');
      for (const key of ['ArrowRight', 'ArrowRight', 'Tab', 'Tab', 'Tab', 'Enter']) await page.keyboard.press(key);
      expect(await across(page)).toBeCloseTo(3.8, 2);
      expect(await page.locator('true-size output').innerText()).toBe('At true size on this screen');
      // On paper a millimetre is a millimetre, 96/25.4 pixels of a style sheet (CSS Values and Units 4), whatever the screen.
      await page.emulateMedia({ media: 'print' });
      expect(await across(page)).toBeCloseTo(96 / 25.4, 2);
      await page.emulateMedia({ media: 'screen' });
      await part(page, 'show').focus();
      await page.keyboard.press('Enter');
      expect(await across(page)).toBeCloseTo(before, 2);
    });
  });

  test('a browser that keeps nothing still shows it this once', async () => {
    await visit(PENNY, STILL, async (page) => {
      await page.evaluate(() => {
        Storage.prototype.setItem = () => {
          throw new Error('full');
        };
      });
      await part(page, 'show').click();
      await page.locator('true-size input').fill('4');
      await part(page, 'done').click();
      expect(await across(page)).toBeCloseTo(4, 2);
    });
  });
});

test('axe finds nothing that WCAG 2.2 AA forbids with the glass open, nor while the screen is measured', async () => {
  await visit(PENNY, { bypassCSP: true, ...STILL }, async (page) => {
    await page.evaluate(axe);
    const forbidden = () =>
      page.evaluate(async () => {
        type Found = { violations: readonly { id: string; nodes: readonly { html: string }[] }[] };
        const { run } = (globalThis as unknown as { axe: { run: (how: object) => Promise<Found> } }).axe;
        const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
        const { violations } = await run({ runOnly: { type: 'tag', values: tags } });
        return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
      });
    await page.locator('true-size [data-show]').click();
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      expect(await forbidden(), `measuring, ${colorScheme}`).toEqual([]);
    }
    await page.locator('a[data-look="obverse"]').first().click();
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      expect(await forbidden(), `the glass, ${colorScheme}`).toEqual([]);
    }
  });
});

type Box = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

async function boxOf(part: Locator): Promise<Box> {
  const box = await part.boundingBox();
  if (box === null) throw new Error('It is not to be seen.');
  return box;
}
