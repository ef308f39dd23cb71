import { mkdtemp, readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { beforeAll, describe, expect, test } from 'vitest';
import { segmentsOf } from '../../src/privacy/picture-segments.ts';
import { makePhotographs } from '../../src/photographs/render/make-photographs.ts';
import { decodePhotograph } from '../../src/photographs/render/open-photograph.ts';
import { CARRIED, FORMATS, seenByExiftool, writeLaden, writeWide } from './laden.ts';
import { drawn, made, piece } from './small-cabinet.ts';

let cabinet = '';
let out = '';
beforeAll(async () => {
  cabinet = await mkdtemp(join(tmpdir(), 'cabinet-'));
  out = await mkdtemp(join(tmpdir(), 'pictures-'));
  const files = await writeLaden(drawn(), cabinet);
  const run = await makePhotographs(files.map((file) => piece(file.replace('.', '-'), file)), cabinet, out); // prettier-ignore
  expect(run).toMatchObject({ made: FORMATS.length, problems: [], remarks: [] });
});

describe('nothing a photograph carries besides its pixels is kept', () => {
  test('exiftool saw it before, and sees none of it after', () => {
    const before = seenByExiftool(FORMATS.map((format) => join(cabinet, `holiday.${format}`)));
    expect(before).toHaveLength(FORMATS.length);
    for (const { file, seen } of before) expect(seen, file).toMatch(/GPS.*SECRET|SECRET.*GPS/);
    expect(before.filter(({ seen }) => /Thumbnail/.test(seen)).length).toBeGreaterThanOrEqual(2);
    const after = seenByExiftool([out]).filter(({ file }) => !file.endsWith('.json'));
    expect(after.length).toBeGreaterThanOrEqual(4 * FORMATS.length);
    for (const { file, seen } of after) expect(seen, file).not.toMatch(CARRIED);
  });

  test.for(FORMATS)('from a %s: no segment is left, and no name of the file', async (format) => {
    for (const path of await made(out, `holiday-${format}`)) {
      const bytes = await readFile(path);
      expect(segmentsOf(bytes), path).toEqual([]);
      expect(bytes.includes('holiday'), path).toBe(false);
    }
  });

  test.for(FORMATS)('a %s that was taken on its side stands upright', async (format) => {
    const [share] = (await made(out, `holiday-${format}`)).filter((path) => path.endsWith('.jpg'));
    const { data, info } = await sharp(share).raw().toBuffer({ resolveWithObject: true });
    // The red mark is in the upper half, above the middle.
    const at = (Math.round(info.height * 0.18) * info.width + Math.round(info.width / 2)) * info.channels;
    expect(data[at] ?? 0).toBeGreaterThan(150);
    expect(data[at + 1] ?? 255).toBeLessThan(100);
  });
});

/** Display P3 as it is stored, within what sRGB can show. */
const PATCHES = [
  [180, 110, 70], [120, 140, 90], [90, 100, 130], [200, 180, 140], [128, 128, 128], [60, 50, 40],
] as const; // prettier-ignore

/** Display P3 to sRGB: the matrices and the curve of CSS Color Module Level 4, §10.3, §10.4 and its sample code. */
function fromDisplayP3(stored: readonly number[]): readonly number[] {
  const light = stored
    .map((one) => one / 255)
    .map((one) => (one <= 0.04045 ? one / 12.92 : ((one + 0.055) / 1.055) ** 2.4));
  const rows = [
    [1.2249401762805598, -0.22494017628055996, 0],
    [-0.042056954709688163, 1.0420569547096881, 0],
    [-0.019637554590334432, -0.078636045550631889, 1.0982736001409663],
  ];
  return rows
    .map((row) => row.reduce((sum, weight, at) => sum + weight * (light[at] ?? 0), 0))
    .map((one) => 255 * (one <= 0.0031308 ? one * 12.92 : 1.055 * one ** (1 / 2.4) - 0.055));
}

describe('colours', () => {
  test.for(FORMATS)('of a wide profile in a %s come out within 2 of the published conversion', async (format) => {
    const [width, height] = [900, 600];
    const pixels = Buffer.alloc(width * height * 3, 143);
    for (let y = 80; y < 520; y += 1)
      for (let x = 150; x < 750; x += 1) {
        const patch = PATCHES[Math.floor((x - 150) / 100)] ?? PATCHES[0];
        patch.forEach((value, colour) => (pixels[(y * width + x) * 3 + colour] = value));
      }
    const file = join(cabinet, `wide.${format}`);
    await writeWide(sharp(pixels, { raw: { width, height, channels: 3 } }), file);
    const photograph = await decodePhotograph(file);
    await makePhotographs([piece(`wide-${format}`, `wide.${format}`)], cabinet, out);
    const largest = (await made(out, `wide-${format}`)).filter((path) => /-6\d\d\./.test(path));
    const shown = await sharp(largest.at(-1)).removeAlpha().raw().toBuffer({ resolveWithObject: true });
    const [left, top] = [(shown.info.width - 600) / 2, (shown.info.height - 440) / 2];
    for (const [at, patch] of PATCHES.entries()) {
      const wanted = fromDisplayP3(patch);
      const x = 200 + at * 100;
      const read = (data: Uint8Array, column: number, row: number, across: number) =>
        wanted.map((_, colour) => data[(Math.round(row) * across + Math.round(column)) * 3 + colour] ?? 0);
      const near = (found: readonly number[]) => Math.max(...found.map((value, colour) => Math.abs(value - (wanted[colour] ?? 0)))); // prettier-ignore
      // A JPEG and an AVIF round what they store once more.
      const decoded = format === 'jpg' || format === 'avif' ? 2 : 1;
      expect(near(read(photograph.rgb, x, 300, width)), `${patch.join(' ')} decoded`).toBeLessThanOrEqual(decoded);
      expect(near(read(shown.data, left + x - 150, top + 220, shown.info.width)), `${patch.join(' ')} made`).toBeLessThanOrEqual(2); // prettier-ignore
    }
  });

  test.for([
    ['grey', drawn().greyscale().toColourspace('b-w').jpeg()],
    ['sixteen bits', drawn().toColourspace('rgb16').png()],
    ['four inks', drawn().toColourspace('cmyk').jpeg({ quality: 95 })],
    ['a palette', drawn().png({ palette: true })],
  ] as const)('of %s are read as those a page shows', async ([name, picture]) => {
    const file = join(cabinet, `${name.replace(' ', '-')}.picture`);
    await picture.toFile(file);
    const { rgb, width, height } = await decodePhotograph(file);
    expect(rgb.length).toBe(width * height * 3);
    const at = (300 * width + 450) * 3;
    const wanted = name === 'grey' ? [164, 164, 164] : [200, 162, 74];
    wanted.forEach((value, colour) => expect(Math.abs((rgb[at + colour] ?? 0) - value)).toBeLessThan(name === 'four inks' ? 24 : 6)); // prettier-ignore
  });

  test('that a PNG hides where it is clear do not come up', async () => {
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="400" height="400"><circle cx="200" cy="200" r="120" fill="#c8a24a"/></svg>`;
    const file = join(cabinet, 'clear.png');
    await sharp(Buffer.from(svg)).png().toFile(file);
    const { rgb } = await decodePhotograph(file);
    // The neutral board, not the black that stands behind.
    expect([...rgb.subarray(0, 3)]).toEqual([215, 219, 220]);
  });
});
