import process from 'node:process';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { OpenSite } from './open-site.ts';
import { openSite } from './open-site.ts';

let site: OpenSite;
beforeAll(async () => {
  site = await openSite(process.env['BUILT'] ?? 'dist');
});
afterAll(async () => {
  await site.close();
});

test.for([390, 700, 1000, 1280, 1600])('at %i pixels no piece on a board lies over another', async (width) => {
  const context = await site.browser.newContext({ viewport: { width, height: 900 }, bypassCSP: true });
  const page = await context.newPage();
  for (const path of ['', 'exhibits/struck-in-york/', 'pieces/', 'sets/english-rulers/']) {
    await page.goto(`${site.address}${path}`);
    // What is far below is not laid out until it comes near.
    await page.addStyleTag({ content: '* { content-visibility: visible !important }' });
    const { seen, over } = await page.evaluate(covered);
    expect(seen, path).toBeGreaterThan(3);
    expect(over, path).toEqual([]);
  }
  await context.close();
});

/** Runs in the page: how many faces lie on boards, and which pieces have one that reaches over another's by more than its shadow. */
function covered(): { readonly seen: number; readonly over: readonly string[] } {
  const SHADOW = 2;
  const over: string[] = [];
  let seen = 0;
  for (const board of document.querySelectorAll('.lying')) {
    const faces = [...board.querySelectorAll('.face')].map((face) => ({
      of: face.closest('li'),
      at: face.getBoundingClientRect(),
    }));
    const there = faces.filter(({ at }) => at.width > 0);
    seen += there.length;
    for (const [index, one] of there.entries())
      for (const other of there.slice(index + 1)) {
        const across = Math.min(one.at.right, other.at.right) - Math.max(one.at.left, other.at.left);
        const down = Math.min(one.at.bottom, other.at.bottom) - Math.max(one.at.top, other.at.top);
        if (one.of !== other.of && across > SHADOW && down > SHADOW) over.push(one.of?.textContent.trim() ?? '');
      }
  }
  return { seen, over };
}
