import { cp, mkdtemp, readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Crop } from '../../src/catalogue/crop.ts';
import { runsOf, undoRun } from '../../src/catalogue/keep/undo.ts';
import { findInFile } from '../../src/desk/look-at-photograph.ts';
import { turnedCrop } from '../../src/desk/pages/crop-pages.ts';
import { openTestDesk } from './open-desk.ts';
import type { TestDesk } from './open-desk.ts';
import { untouchedForm } from './read-form.ts';

let desk: TestDesk;
beforeAll(async () => {
  const cabinet = join(await mkdtemp(join(tmpdir(), 'crop-')), 'cabinet');
  await cp('tests/cabinets/marked', cabinet, { recursive: true });
  desk = await openTestDesk(cabinet);
  // Red on the left, blue on the right, and wider than high.
  const half = (background: string) =>
    sharp({ create: { width: 150, height: 200, channels: 3, background } })
      .png()
      .toBuffer();
  const both = sharp({ create: { width: 300, height: 200, channels: 3, background: 'blue' } }).composite([{ input: await half('red'), left: 0, top: 0 }]); // prettier-ignore
  await writeFile(join(desk.at, 'pieces/plain-penny/obverse.jpg'), await both.jpeg({ quality: 100 }).toBuffer());
  await desk.state.readAgain();
}, 120_000);
afterAll(() => desk.close(), 60_000);

const PAGE = '/pieces/plain-penny/photographs';
const FORM = '/pieces/plain-penny/crop';
async function send(words: Readonly<Record<string, string>>) {
  const form = untouchedForm((await desk.ask(PAGE)).text, FORM);
  for (const [name, value] of Object.entries(words)) form.set(name, value);
  return desk.ask(FORM, form);
}
/** A plain disc that is small in a large picture, where it was drawn. */
async function smallDisc(file: string): Promise<void> {
  const svg = '<svg xmlns="http://www.w3.org/2000/svg" width="2400" height="1800"><rect width="2400" height="1800" fill="#b9b2a6"/><circle cx="900" cy="700" r="110" fill="#6b4a2f"/></svg>'; // prettier-ignore
  await sharp(Buffer.from(svg)).removeAlpha().jpeg().toFile(file);
}
const facts = () => readFile(join(desk.at, 'pieces/plain-penny/piece.md'), 'utf8');
const picture = () => readFile(join(desk.at, 'pieces/plain-penny/obverse.jpg'));

test(
  'a box round the piece is written into its field, and what is no box is refused',
  { timeout: 60_000 },
  async () => {
    const before = await facts();
    const refused = await send({ do: 'crop', crop: '10 8 95 60 %' });
    expect([refused.status, refused.text.includes('reaches beyond the picture')]).toEqual([422, true]);
    expect(await facts()).toBe(before);
    expect((await send({ do: 'crop', crop: '10 20 30 40 %' })).status).toBe(303);
    expect(await facts()).toContain('crop: 10 20 30 40 %');
  },
);

test(
  'a sideways photograph is turned with the box on it, as one save that is undone as one',
  { timeout: 60_000 },
  async () => {
    const [before, facing] = [await facts(), await picture()];
    expect((await send({ do: 'turn' })).status).toBe(303);
    const { data, info } = await sharp(await picture())
      .raw()
      .toBuffer({ resolveWithObject: true });
    expect([info.width, info.height]).toEqual([200, 300]);
    // After a turn to the right what was left is above: red over blue.
    const [red = 0, , blue = 0] = data.subarray((20 * info.width + 100) * 3);
    expect([red > 200, blue < 60]).toEqual([true, true]);
    // From the top 20 and 40 high leave 40 on the right, which is from the left now.
    expect(await facts()).toContain('crop: 40 10 40 30 %');
    const [run] = await runsOf(desk.at);
    if (run === undefined) throw new Error('No run.');
    expect((await undoRun(desk.at, run)).ok).toBe(true);
    expect(await facts()).toBe(before);
    expect((await picture()).equals(facing)).toBe(true);
  },
);

test('four turns of a box come back to it', () => {
  const box = { left: 120, top: 80, width: 900, height: 600, unit: 'px' } as const;
  const [wide, high] = [1600, 1200];
  const turns = [high, wide, high, wide];
  expect(turns.reduce<Crop>((now, one) => turnedCrop(now, one), box)).toEqual(box);
});

test("the desk sees a piece where the site's step does, also one that is small in its photograph", async () => {
  const file = join(await mkdtemp(join(tmpdir(), 'small-')), 'small.jpg');
  await smallDisc(file);
  const found = await findInFile(file, { crop: null, shows: 'round face', ratio: 1 });
  expect([found?.wide, found?.high, found?.doubt]).toEqual([2400, 1800, null]);
  // In hundredths of the sides: from 790 and 590, 220 across, to two pixels.
  const drawn = { left: 32.9, top: 32.8, width: 9.2, height: 12.2 };
  for (const [name, is] of Object.entries(drawn)) expect(Math.abs((found?.box?.[name as 'left'] ?? 0) - is), name).toBeLessThan(0.15); // prettier-ignore
  // A detail is not cut out, so no box is shown.
  expect(await findInFile(file, { crop: null, shows: 'detail', ratio: 1 })).toMatchObject({ box: null, doubt: null });
  expect(await findInFile(`${file}.none`, { crop: null, shows: 'detail', ratio: 1 })).toBeNull();
});
