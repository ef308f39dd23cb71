// Find as a visitor types, in Chromium, in cabinets of growing size: from the key to the pieces on the screen, with the processor
// as it is and four times slower; how soon it is ready after the first touch; what is sent until then, packed. Ends with 1 when a
// bound is passed. SIZES=10000,50000 chooses the sizes.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import process from 'node:process';
import { gzipSync } from 'node:zlib';
import type { Page, Response } from 'playwright-core';
import { openSite } from '../browser/open-site.ts';
import { writeLargeCabinet } from './large-cabinet.ts';
import { run } from './measured-run.ts';

const SIZES = (process.env['SIZES'] ?? '10000,50000').split(',').map(Number);

/** What is typed, letter by letter: names, years, words of a design, a weight, a number in a book, and a slip. */
const TYPED = [
  'inventedtown 4',
  'ruler 17 silver',
  'crowned facing',
  '1280',
  '1.3-1.4 g',
  'north 1017',
  'portculis',
  'gold shield',
];

/** Milliseconds for 95 of 100 keys, by the size of the cabinet up to which they hold; and none above `longest`. */
const BOUNDS: readonly { readonly pieces: number; readonly most: number }[] = [
  { pieces: 10_000, most: 30 },
  { pieces: 50_000, most: 60 },
];
const LONGEST = 100;
/** Milliseconds from the first touch until Find answers, and bytes, packed, until then at 10,000 pieces. */
const READY = 300;
const SENT = 400_000;

type Keys = { readonly most: number; readonly longest: number };

/** In the page: notes when a key was pressed, and when what it brought had been drawn. */
function watchKeys(): void {
  const kept: number[] = [];
  let pressed: number | null = null;
  Object.assign(globalThis, { taken: kept });
  addEventListener('keydown', (event) => (pressed = event.timeStamp), true);
  const list = document.querySelector('[data-board] ul');
  if (list === null) throw new Error('There is no list of pieces.');
  new MutationObserver(() => {
    const from = pressed;
    if (from === null) return;
    pressed = null;
    requestAnimationFrame(() => {
      const drawn = new MessageChannel();
      drawn.port1.onmessage = () => {
        if (kept.length === 0) Object.assign(globalThis, { firstAt: performance.timeOrigin + performance.now() });
        kept.push(performance.now() - from);
      };
      drawn.port2.postMessage(null);
    });
  }).observe(list, { childList: true });
}

const takenOf = (page: Page): Promise<readonly number[]> =>
  page.evaluate(() => Reflect.get(globalThis, 'taken') as readonly number[]);

/** Types everything, each key when the last was answered and a moment had passed. */
async function typeAll(page: Page): Promise<Keys> {
  const field = page.locator('input[type="search"][name="words"]').last();
  let answered = (await takenOf(page)).length;
  const from = answered;
  for (const words of TYPED) {
    await field.fill('');
    await page.waitForTimeout(200);
    for (const letter of words) {
      await field.press(letter === ' ' ? 'Space' : letter);
      answered += 1;
      await page.waitForFunction((count) => (Reflect.get(globalThis, 'taken') as unknown[]).length >= count, answered);
      await page.waitForTimeout(80);
    }
  }
  const taken = (await takenOf(page)).slice(from).toSorted((a, b) => a - b);
  return { most: taken[Math.ceil(taken.length * 0.95) - 1] ?? NaN, longest: taken.at(-1) ?? NaN };
}

type Measured = { readonly ready: number; readonly sent: number; readonly keys: Keys; readonly slow: Keys };

async function measure(site: string): Promise<Measured> {
  const { address, browser, close } = await openSite(site, '/many/');
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
    await page.goto(`${address}pieces/`, { waitUntil: 'networkidle' });
    const came: Response[] = [];
    page.on('response', (response) => came.push(response));
    await page.evaluate(watchKeys);
    const field = page.locator('input[type="search"][name="words"]').last();
    await field.press('i');
    await page.waitForFunction(() => (Reflect.get(globalThis, 'taken') as unknown[]).length > 0);
    const ready = (await takenOf(page))[0] ?? NaN;
    const shownAt = await page.evaluate(() => Number(Reflect.get(globalThis, 'firstAt')));
    const before = came.filter((response) => response.request().timing().startTime < shownAt);
    const bodies = await Promise.all(before.map((response) => response.body()));
    const sent = bodies.reduce((sum, body) => sum + gzipSync(body).length, 0);
    // The first keys make the program ready, as a browser compiles what runs often.
    await typeAll(page);
    const keys = await typeAll(page);
    const session = await page.context().newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: 4 });
    return { ready, sent, keys, slow: await typeAll(page) };
  } finally {
    await close();
  }
}

function tell(what: string, value: number, bound: number | null, unit: string): void {
  const isKept = bound === null || value <= bound;
  process.stdout.write(
    `  ${what.padEnd(58)}${`${value.toFixed(0)} ${unit}`.padEnd(14)}${bound === null ? '' : `bound ${bound} ${unit}`.padEnd(18)}${isKept ? '' : 'EXCEEDED'}\n`,
  );
  if (!isKept) process.exitCode = 1;
}

for (const size of SIZES) {
  const at = mkdtempSync(join(tmpdir(), 'bench-find-'));
  const [cabinet, site] = [join(at, 'cabinet'), resolve('dist-bench')];
  writeLargeCabinet(cabinet, 'content', { pieces: size });
  await run(
    ['src/commands/build.ts', '--cabinet', cabinet, '--out', site, '--address', 'https://example.org/many/'],
    '.',
  );
  const { ready, sent, keys, slow } = await measure(site);
  for (const folder of [at, site]) rmSync(folder, { recursive: true, force: true });
  const most = BOUNDS.find(({ pieces }) => size <= pieces)?.most ?? null;
  tell(`${size} pieces: 95 of 100 keys are answered within`, keys.most, most, 'ms');
  tell(`${size} pieces: every key is answered within`, keys.longest, LONGEST, 'ms');
  tell(`${size} pieces: the same, the processor four times slower`, slow.most, LONGEST, 'ms');
  tell(`${size} pieces: the first key is answered within`, ready, READY, 'ms');
  tell(`${size} pieces: sent until then, packed`, sent / 1000, size <= 10_000 ? SENT / 1000 : null, 'kB');
}
