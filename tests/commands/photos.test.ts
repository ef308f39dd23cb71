import { cp, mkdir, mkdtemp, readdir, readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import type { Exif } from 'sharp';
import { beforeEach, expect, test } from 'vitest';
import { openAny } from '../../src/photographs/bring/open-any.ts';
import { segmentsOf } from '../../src/privacy/picture-segments.ts';
import { runHere } from './run-here.ts';
import type { Ran } from './run-here.ts';

let cabinet = '';
let pictures = '';
beforeEach(async () => {
  const folder = await mkdtemp(join(tmpdir(), 'photos-'));
  cabinet = join(folder, 'cabinet');
  pictures = join(folder, 'from the phone');
  await cp('tests/cabinets/marked', cabinet, { recursive: true });
  await mkdir(pictures);
});

const photos = (...words: readonly string[]): Promise<Ran> => runHere('photos', '--cabinet', cabinet, ...words);

/** A dark disc on a pale board, or two of them side by side, the left one with a light spot. */
async function picture(file: string, discs: 1 | 2, exif?: Exif): Promise<void> {
  const width = discs * 500;
  const at = Array.from({ length: discs }, (_, index) => {
    const spot = index === 0 ? '<circle cx="250" cy="250" r="40" fill="#eee"/>' : '';
    return `<g transform="translate(${index * 500} 0)"><circle cx="250" cy="250" r="180" fill="#543"/>${spot}</g>`;
  });
  const drawn = sharp(
    Buffer.from(
      `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="500"><rect width="${width}" height="500" fill="#d7dbdc"/>${at.join('')}</svg>`,
    ),
  );
  await (exif === undefined ? drawn : drawn.withExif(exif)).jpeg().toFile(file);
}
const GPS = {
  IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '53/1 57/1 0/1', GPSLongitudeRef: 'W', GPSLongitude: '1/1 4/1 0/1' },
};
const held = async (piece: string): Promise<readonly string[]> =>
  (await readdir(join(cabinet, 'pieces', piece))).filter((file) => file !== 'piece.md').sort();

test('what would be done is said, and nothing is copied until it is asked for', async () => {
  await picture(join(pictures, '0001-obv.jpg'), 1, GPS);
  const { status, stdout } = await photos(pictures);
  expect(status).toBe(0);
  expect(stdout).toContain('0001-obv.jpg  →  pieces/plain-penny/obverse.jpg');
  expect(stdout).toContain('Nothing was copied. Write --yes');
  expect(await held('plain-penny')).toEqual([]);
});

test('copies are upright JPEGs with nothing in them but pixels, a place is told of, and undo takes them away', async () => {
  await picture(join(pictures, '0001-obv.jpg'), 1, GPS);
  await picture(join(pictures, '0001-rev.jpg'), 1, { IFD0: { Make: 'A camera' } });
  const before = await readFile(join(pictures, '0001-obv.jpg'));
  const { status, stdout } = await photos(pictures, '--yes');
  expect({ status, stdout }).toMatchObject({ status: 0 });
  expect(stdout).toContain('0001-obv.jpg said where it was taken. The copy does not.');
  expect(stdout).not.toContain('0001-rev.jpg said where');
  expect(await held('plain-penny')).toEqual(['obverse.jpg', 'reverse.jpg']);
  for (const file of ['obverse.jpg', 'reverse.jpg'])
    expect(segmentsOf(await readFile(join(cabinet, 'pieces/plain-penny', file)))).toEqual([]);
  expect(await readFile(join(pictures, '0001-obv.jpg'))).toEqual(before);

  await writeFile(join(cabinet, 'pieces/plain-penny/reverse.jpg'), 'mine now');
  const undone = await photos('--undo');
  expect(undone.stdout).toContain('pieces/plain-penny/reverse.jpg has been changed since, and was kept.');
  expect(undone.stdout).toContain('1 file taken away again.');
  expect(await held('plain-penny')).toEqual(['reverse.jpg']);
  expect((await photos('--undo')).stderr).toContain('The last npm run photos has been undone already');
});

test('one picture of both faces is split, obverse at the left', async () => {
  await picture(join(pictures, 'plain-penny.jpg'), 2);
  const { status, stdout, stderr } = await photos(pictures, '--yes');
  expect({ status, stdout, stderr }).toMatchObject({ status: 0 });
  expect(await held('plain-penny')).toEqual(['obverse.jpg', 'reverse.jpg']);
  const middle = async (file: string): Promise<number> => {
    const { data, info } = await sharp(join(cabinet, 'pieces/plain-penny', file))
      .raw()
      .toBuffer({ resolveWithObject: true });
    expect(Math.abs(info.width - info.height)).toBeLessThan(0.05 * info.height);
    expect(info.width).toBeGreaterThan(360);
    return data[(Math.floor(info.height / 2) * info.width + Math.floor(info.width / 2)) * info.channels] ?? 0;
  };
  expect(await middle('obverse.jpg')).toBeGreaterThan(200);
  expect(await middle('reverse.jpg')).toBeLessThan(120);
});

test('nothing is written over, and what cannot be matched or opened is told', async () => {
  await writeFile(join(cabinet, 'pieces/plain-penny/obverse.jpg'), 'the keeper’s own');
  await picture(join(pictures, '0001o.jpg'), 1);
  await picture(join(pictures, 'IMG_0001.jpg'), 1);
  await writeFile(join(pictures, '0002-obv.jpg'), 'This is no picture.');
  const { status, stdout } = await photos(pictures, '--yes');
  expect(status).toBe(1);
  expect(stdout).toContain('pieces/plain-penny/obverse.jpg is there already, and nothing is written over.');
  expect(stdout).toContain('This is a name a camera gave');
  expect(stdout).toMatch(/0002-obv\.jpg was not copied\.\n {2}This cannot be opened as a picture/);
  expect(await readFile(join(cabinet, 'pieces/plain-penny/obverse.jpg'), 'utf8')).toBe('the keeper’s own');
});

// tests/published/photographs/phone.heic: a drawing of the demo, 320 × 300, with an invented place, encoded by libheif's heif-enc 1.15.
test('a picture from a phone that makes HEIC is opened, and its place told of', async () => {
  const opened = await openAny('tests/published/photographs/phone.heic');
  expect(opened).toMatchObject({ ok: true, value: { hadPlace: true, pixels: { width: 320, height: 300 } } });
});

test('without the package for HEIC the keeper is told what to do', async () => {
  const opened = await openAny('tests/published/photographs/phone.heic', () => Promise.resolve(null));
  expect(opened).toMatchObject({ ok: false });
  expect(opened.ok ? '' : opened.problem).toContain('npm install heic-decode');
});
