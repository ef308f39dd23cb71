import { readFile } from 'node:fs/promises';
import process from 'node:process';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { serveFolder } from '../../src/commands/parts/serve-folder.ts';
import type { EnginePage } from './three-engines.ts';
import { ENGINES, openEngine } from './three-engines.ts';

const BUILT = process.env['BUILT'] ?? 'dist';
const PENNY = 'york-penny-3b';
const [SMALL, LARGE] = ['william-iii-sixpence', 'minster-medal-1829'] as const;

type Box = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

describe.each(ENGINES)('in %s', (name) => {
  let page: EnginePage;
  let address: string;
  let end: () => Promise<void>;

  beforeAll(async () => {
    const served = await serveFolder(BUILT, '/', 0);
    if (!served.ok) throw new Error(served.problem);
    address = served.value.address;
    page = await openEngine(name, { width: 1280, height: 900 });
    end = async () => {
      await page.close();
      await served.value.close();
    };
  });
  afterAll(async () => {
    await end();
  });

  const boxOf = (selector: string): Promise<Box> =>
    page.read(
      `(({ x, y, width, height }) => ({ x, y, width, height }))(document.querySelector(${JSON.stringify(selector)}).getBoundingClientRect())`,
    );
  const isTrue = (expression: string): Promise<void> =>
    expect.poll(() => page.read<boolean>(`Boolean(${expression})`), { interval: 50 }).toBe(true);
  /** A square about the middle of a thing, in grey, turned clockwise. */
  async function seen({ x, y, width, height }: Box, side: number, degrees = 0): Promise<Buffer> {
    const wide = Math.round(side * 1.5);
    const left = Math.round(x + width / 2 - wide / 2);
    const top = Math.round(y + height / 2 - wide / 2);
    const cut = await sharp(await page.picture())
      .extract({ left, top, width: wide, height: wide })
      .png()
      .toBuffer();
    const turned = await sharp(cut).rotate(degrees).png().toBuffer({ resolveWithObject: true });
    return sharp(turned.data)
      .extract({
        left: Math.round((turned.info.width - side) / 2),
        top: Math.round((turned.info.height - side) / 2),
        width: side,
        height: side,
      })
      .greyscale()
      .blur(1.5)
      .raw()
      .toBuffer();
  }

  test('a piece that is turned over lies in its place, reverse up, and no other reverse beside it', async () => {
    await page.open(`${address}pieces/${PENNY}/`);
    await isTrue(`document.querySelector('[data-turn-over]')`);
    await isTrue(`[...document.querySelectorAll('turn-over img')].every((img) => img.complete)`);
    const [front, beside] = [await boxOf('[data-face="obverse"] .turns'), await boxOf('[data-face="reverse"] .turns')];
    const height = await page.read<number>('document.documentElement.scrollHeight');
    const obverse = await seen(front, 120);
    // The keeper's axis of this penny is 6h: the reverse comes up upside down.
    const reverse = await seen(beside, 120, 180);
    await page.press('[data-turn-over]');
    await isTrue(`document.getAnimations().length === 0 && document.querySelector('.turned')`);
    const after = await boxOf('[data-face="obverse"] .behind');
    expect(after.x + after.width / 2).toBeCloseTo(front.x + front.width / 2, 0);
    expect(after.y + after.height / 2).toBeCloseTo(front.y + front.height / 2, 0);
    const turned = await seen(front, 120);
    expect(unlikeness(turned, reverse)).toBeLessThan(unlikeness(turned, obverse) / 2);
    const empty = await seen(beside, 120);
    expect(unlikeness(empty, await seen(beside, 120, 90)), 'only words where the reverse lay').toBeLessThan(40);
    expect(await page.read<string>(`getComputedStyle(document.querySelector('[data-face="reverse"] img')).visibility`)).toBe('hidden'); // prettier-ignore
    expect(await page.read<number>('document.documentElement.scrollHeight'), 'nothing moved').toBe(height);
    await page.press('[data-turn-over]');
    await isTrue(`document.getAnimations().length === 0 && !document.querySelector('.turned')`);
    expect(unlikeness(await seen(front, 120), obverse)).toBeLessThan(2);
  });

  test('the rule has a mark for every millimetre, evenly', async () => {
    await page.open(`${address}pieces/${PENNY}/`);
    const rule = await boxOf('.rule');
    const scale = (await boxOf('.rule li')).width / 10;
    const { data, info } = await sharp(await page.picture())
      .extract({ left: Math.round(rule.x), top: Math.round(rule.y) + 3, width: Math.floor(80.5 * scale), height: 1 })
      .greyscale()
      .raw()
      .toBuffer({ resolveWithObject: true });
    const ground = data[Math.round(scale / 2)] ?? 0;
    const dark = Array.from({ length: info.width }, (_, x) => x).filter((x) => ground - (data[x] ?? 0) > 40);
    const marks = dark.filter((x, at) => at === 0 || x - (dark[at - 1] ?? 0) > 1);
    expect(marks).toHaveLength(81);
    const gaps = marks.slice(1).map((x, at) => x - (marks[at] ?? 0));
    for (const gap of gaps) expect(Math.abs(gap - scale)).toBeLessThanOrEqual(1);
  });

  test('words that are typed find a piece', async () => {
    await page.open(`${address}pieces/`);
    await isTrue(`!document.querySelector('[data-waits]')`);
    await page.press('input[name="words"]');
    await page.type('wolsey');
    await isTrue(`document.querySelector('[data-board] li[data-piece]')?.textContent.includes('Wolsey')`);
    await isTrue(`location.search.includes('words=wolsey')`);
  });

  test('the glass opens, brings nearer and closes', async () => {
    await page.open(`${address}pieces/${PENNY}/`);
    await isTrue(`document.querySelector('.closer-opens')`);
    await page.press('a[data-look="obverse"]');
    await isTrue(`/obverse-8\\d\\d/.test(document.querySelector('look-closer img').currentSrc)`);
    const whole = await boxOf('look-closer img');
    await page.press('[data-part="nearer"]');
    await isTrue(`document.getAnimations().length === 0`);
    expect((await boxOf('look-closer img')).width / whole.width).toBeCloseTo(1.5, 1);
    await page.press('[data-part="close"]');
    await isTrue(`!document.querySelector('dialog[open]')`);
  });

  test('two pieces that are compared lie at one scale', async () => {
    const facts = JSON.parse(await readFile(`${BUILT}/data/pieces.json`, 'utf8')) as {
      id: string;
      diameter?: string;
    }[];
    const size = (id: string): number => Number.parseFloat(facts.find((one) => one.id === id)?.diameter ?? '');
    await page.open(`${address}compare/?pieces=${SMALL},${LARGE}`);
    await isTrue(`document.querySelectorAll('[data-part="laid"] > li').length === 2`);
    const wide = async (id: string): Promise<number> => (await boxOf(`[data-piece="${id}"] .face`)).width;
    expect((await wide(LARGE)) / (await wide(SMALL)) / (size(LARGE) / size(SMALL))).toBeCloseTo(1, 1);
  });
});

/** Mean difference in grey. */
function unlikeness(one: Buffer, other: Buffer): number {
  return one.reduce((sum, grey, at) => sum + Math.abs(grey - (other[at] ?? 0)), 0) / one.length;
}
