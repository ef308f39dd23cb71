import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { isLevel0, parseImageServiceRequest } from '@iiif/parser/image-3';
import sharp from 'sharp';
import { beforeAll, describe, expect, test } from 'vitest';
import { segmentsOf } from '../../../src/privacy/picture-segments.ts';
import { linkTiles, tilesOf } from '../../../src/photographs/render/make-tiles.ts';
import { imageInfo } from '../../../src/publish/iiif.ts';

/** Sizes of pictures: one tile, a little more, the largest there is, odd ones, thin ones. */
const SIZES = [[160, 150], [512, 512], [513, 100], [832, 831], [1279, 993], [1280, 1280], [1001, 3]] as const; // prettier-ignore

let folder: string;
const faceOf = (width: number, height: number) => {
  const file = `obverse-${width}x${height}.0123456789.webp`;
  return { webp: [{ file, width, height }], jpeg: { file: 'none.jpg', width: 1, height: 1 } };
};

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'tiles-'));
  await mkdir(join(folder, 'made/penny'), { recursive: true });
  // Red grows to the right and green downwards, so that every part of a picture tells where it is from.
  for (const [width, height] of SIZES) {
    const bytes = Buffer.alloc(width * height * 3);
    for (let y = 0; y < height; y += 1)
      for (let x = 0; x < width; x += 1)
        bytes.set([Math.round((255 * x) / width), Math.round((255 * y) / height), 90], (y * width + x) * 3);
    const picture = sharp(bytes, { raw: { width, height, channels: 3 } }).webp({ lossless: true });
    await picture.toFile(join(folder, 'made/penny', faceOf(width, height).webp[0]?.file ?? ''));
  }
  const faces = SIZES.map(([width, height]) => faceOf(width, height));
  await writeFile(join(folder, 'made/manifest.json'), JSON.stringify({ penny: faces, hidden: faces }));
  await linkAll();
}, 60_000);

const linkAll = (pieces = ['penny']) =>
  linkTiles(pieces, { made: join(folder, 'made'), store: join(folder, 'store'), built: join(folder, 'built') });

type Asked = { readonly path: string; readonly region: readonly number[]; readonly size: readonly [number, number] };

/**
 * Every request that a viewer may make of these tiles: IIIF Image API 3.0, implementation notes, "Tile Region Parameter
 * Calculation" (iiif.io/api/image/3.0/implementation), with sizes and a whole region as §4.7 has them in the canonical form.
 */
function requestsOf({ width, height, side, scales }: ReturnType<typeof tilesOf>): readonly Asked[] {
  return scales.flatMap((scale) => {
    const reach = side * scale;
    const steps = (length: number) => Array.from({ length: Math.ceil(length / reach) }, (_, at) => at * reach);
    return steps(height).flatMap((y) =>
      steps(width).map((x): Asked => {
        const [w, h] = [Math.min(reach, width - x), Math.min(reach, height - y)];
        const size = [Math.ceil(w / scale), Math.ceil(h / scale)] as const;
        const region = w === width && h === height ? 'full' : [x, y, w, h].join();
        return { path: `${region}/${size.join()}/0/default.jpg`, region: [x, y, w, h], size };
      }),
    );
  });
}

describe.for(SIZES)('a picture of %i × %i', ([width, height]) => {
  const tiled = tilesOf(faceOf(width, height));
  const at = (path: string): string => join(folder, 'built/photographs/penny', tiled.file, path);

  test('has every tile that its own words promise, of the right size, from the right place', async () => {
    const asked = requestsOf(tiled);
    for (const { path, region, size } of asked) {
      const { data, info } = await sharp(at(path)).raw().toBuffer({ resolveWithObject: true });
      expect([path, info.width, info.height]).toEqual([path, ...size]);
      const [x = 0, y = 0, w = 0, h = 0] = region;
      const middle = ((info.height >> 1) * info.width + (info.width >> 1)) * info.channels;
      // The middle of the tile has the colours of the middle of its region, as near as JPEG and a pixel's width leave them.
      const off = 6 + 255 / Math.min(size[0], size[1]);
      expect(Math.abs((data[middle] ?? 0) - (255 * (x + w / 2)) / width)).toBeLessThan(off);
      expect(Math.abs((data[middle + 1] ?? 0) - (255 * (y + h / 2)) / height)).toBeLessThan(off);
      expect(segmentsOf(await readFile(at(path)))).toEqual([]);
    }
    expect(asked.length).toBeLessThan(15);
  });

  // IIIF Image API 3.0, compliance, level 0: region full, size max, rotation 0, quality default, format jpg, and info.json.
  test('is there whole', async () => {
    expect(await sharp(at('full/max/0/default.jpg')).metadata()).toMatchObject({ width, height, format: 'jpeg' });
  });

  test('is asked for by addresses that a reader of IIIF understands', () => {
    const service = `https://example.org/photographs/penny/${tiled.file}`;
    for (const { path, region } of requestsOf(tiled)) {
      const read = parseImageServiceRequest(`${service}/${path}`, 'photographs/penny');
      const [x, y, w, h] = region;
      expect(read).toMatchObject({ type: 'image', identifier: tiled.file, quality: 'default', format: 'jpg' });
      expect(read).toMatchObject({ region: path.startsWith('full') ? { full: true } : { x, y, w, h } });
    }
  });
});

test('what a service says of itself has all that the Image API asks (§5.2), at level 0', () => {
  const id = 'https://example.org/photographs/penny/obverse';
  const info = imageInfo(id, tilesOf(faceOf(1280, 993)));
  expect(info).toEqual({
    '@context': 'http://iiif.io/api/image/3/context.json',
    id,
    type: 'ImageService3',
    protocol: 'http://iiif.io/api/image',
    profile: 'level0',
    width: 1280,
    height: 993,
    tiles: [{ width: 512, scaleFactors: [1, 2, 4] }],
  });
  expect(isLevel0(info as never)).toBe(true);
});

test('tiles are of the pieces named alone, are cut once, and go when their picture goes', async () => {
  expect(await readdir(join(folder, 'built/photographs'))).toEqual(['penny']);
  const store = join(folder, 'store/penny');
  expect(await readdir(store)).toHaveLength(SIZES.length);
  const [first = ''] = await readdir(store);
  await writeFile(join(store, first, 'mark'), '');
  await linkAll();
  expect(await readdir(join(store, first))).toContain('mark');
  await rm(join(folder, 'made/manifest.json'));
  await linkAll();
  expect(await readdir(store)).toEqual([]);
});
