import { mkdtemp, readdir, readFile, rm, stat, utimes, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeEach, describe, expect, test } from 'vitest';
import { parseCrop } from '../../src/catalogue/crop.ts';
import { parseSize } from '../../src/core/measures/parse-size.ts';
import { checkPictures } from '../../src/photographs/verify/check-pictures.ts';
import { readIndex } from '../../src/photographs/cache/picture-cache.ts';
import type { PhotographManifest } from '../../src/photographs/cache/manifest.ts';
import { makePhotographs } from '../../src/photographs/render/make-photographs.ts';
import { formatRemarks } from '../../src/photographs/verify/remarks.ts';
import { drawn, made, piece } from './small-cabinet.ts';

let cabinet = '';
let out = '';
beforeEach(async () => {
  cabinet = await mkdtemp(join(tmpdir(), 'cabinet-'));
  out = await mkdtemp(join(tmpdir(), 'pictures-'));
});

async function manifest(): Promise<PhotographManifest> {
  return JSON.parse(await readFile(join(out, 'manifest.json'), 'utf8')) as PhotographManifest;
}

describe('the scale', () => {
  test('the share of the picture that the piece fills is known to one per cent', async () => {
    await drawn().toFile(join(cabinet, 'obverse.png'));
    await makePhotographs([piece('one', 'obverse.png')], cabinet, out);
    const face = (await manifest())['one']?.[0];
    const span = face?.span ?? { width: 0, height: 0 };
    const largest = face?.webp.at(-1) ?? { width: 0, height: 0 };
    // The disc was drawn 440 pixels across, and is not enlarged.
    expect(Math.abs((span.width * largest.width) / 440 - 1)).toBeLessThan(0.01);
    expect(Math.abs((span.height * largest.height) / 440 - 1)).toBeLessThan(0.01);
    expect(face?.seen.photograph).toEqual({ width: 900, height: 600 });
  });
});

describe('what has been made is kept', () => {
  test('a second run makes nothing and does not open the photograph', async () => {
    const file = join(cabinet, 'obverse.jpg');
    await drawn().toFile(file);
    await utimes(file, 1_600_000_000, 1_600_000_000);
    expect(await makePhotographs([piece('one', 'obverse.jpg')], cabinet, out)).toMatchObject({ pictures: 1, made: 1 });
    const before = await stat(file);
    // Other bytes of the same length and the same day: a run that opened them would fail.
    await writeFile(file, Buffer.alloc(before.size));
    await utimes(file, 1_600_000_000, 1_600_000_000);
    expect(await makePhotographs([piece('one', 'obverse.jpg')], cabinet, out)).toEqual({
      pictures: 1,
      made: 0,
      problems: [],
      remarks: [],
    });
  });

  test('a changed photograph is made anew, and the old pictures are removed', async () => {
    const file = join(cabinet, 'obverse.png');
    await drawn().toFile(file);
    await makePhotographs([piece('one', 'obverse.png')], cabinet, out);
    const before = await made(out, 'one');
    await drawn().negate({ alpha: false }).toFile(file);
    expect(await makePhotographs([piece('one', 'obverse.png')], cabinet, out)).toMatchObject({ pictures: 1, made: 1 });
    const after = await made(out, 'one');
    expect(after.filter((path) => before.includes(path))).toEqual([]);
  });

  test("a new crop in the piece's file makes its pictures anew, under other names", async () => {
    await drawn().toFile(join(cabinet, 'obverse.png'));
    await makePhotographs([piece('one', 'obverse.png')], cabinet, out);
    const before = await made(out, 'one');
    const crop = parseCrop('420 110 60 60 px');
    if (!crop.ok) throw new Error(crop.problem);
    const cropped = piece('one', 'obverse.png', { photographs: { obverse: { crop: crop.value } } });
    expect(await makePhotographs([cropped], cabinet, out)).toMatchObject({ made: 1 });
    expect((await made(out, 'one')).filter((path) => before.includes(path))).toEqual([]);
    const now = (await manifest())['one']?.[0];
    expect(now?.placed).toBe('crop');
    // To two pixels: the rim of what was drawn there is taken, not the crop's own.
    expect(Math.abs((now?.seen.piece.width ?? 0) - 60)).toBeLessThanOrEqual(2);
    expect(await makePhotographs([cropped], cabinet, out)).toMatchObject({ made: 0 });
  });

  test('a picture that went missing is made again, and what a run left half-written is removed', async () => {
    await drawn().toFile(join(cabinet, 'obverse.jpg'));
    await makePhotographs([piece('one', 'obverse.jpg')], cabinet, out);
    const before = await made(out, 'one');
    await writeFile(join(out, 'one', 'left-over.unfinished'), 'half');
    await writeFile(join(out, 'index.json.4194305.unfinished'), 'half');
    await rm(before[0] ?? '');
    await makePhotographs([piece('one', 'obverse.jpg')], cabinet, out);
    expect(await made(out, 'one')).toEqual(before);
    expect((await readdir(out)).sort()).toEqual(['index.json', 'manifest.json', 'one']);
  });

  test('nothing is made of a piece that is not published, and what had been is removed', async () => {
    await drawn().toFile(join(cabinet, 'obverse.jpg'));
    await makePhotographs([piece('one', 'obverse.jpg')], cabinet, out);
    await makePhotographs([piece('one', 'obverse.jpg', { publish: 'no' })], cabinet, out);
    expect((await readdir(out)).sort()).toEqual(['index.json', 'manifest.json']);
    expect(await readFile(join(out, 'index.json'), 'utf8')).toBe('{}');
  });
});

describe('what could be better about a photograph', () => {
  test('that the piece could not be found, with a crop to begin from', async () => {
    await drawn().extract({ left: 0, top: 0, width: 220, height: 300 }).toFile(join(cabinet, 'obverse.png'));
    const { remarks, problems } = await makePhotographs([piece('one', 'obverse.png')], cabinet, out);
    expect(problems).toEqual([]);
    expect(remarks).toEqual([
      {
        file: 'obverse.png',
        says: 'It is not clear where the piece ends in this photograph. The whole photograph is shown, and marked as not to scale; whatever else is in it, a label or a number, a visitor can read. To have it cut out, write where the piece is, from the left, from the top, width and height, in piece.md: photographs: { obverse: { crop: 0 40 220 220 px } }.',
        good: 0,
      },
    ]);
  });

  test('that it is too small for its page, with how many pixels it has and how many its page can show', async () => {
    await drawn().toFile(join(cabinet, 'obverse.png'));
    const size = parseSize('41 mm');
    if (!size.ok) throw new Error(size.problem);
    const { remarks } = await makePhotographs([piece('one', 'obverse.png', { diameter: size.value })], cabinet, out);
    // 41 mm at 12 pixels a millimetre.
    expect(remarks.map(({ says }) => says.replace(/\d+ pixels/, 'N pixels'))).toEqual([
      'The obverse is N pixels across in this photograph, and its page shows it at 492, on a fine screen at twice that, so it looks soft. Photograph it from nearer, or send the picture from the camera at its full size.',
    ]);
    expect(Number(/(\d+) pixels/.exec(remarks[0]?.says ?? '')?.[1])).toBeCloseTo(440, -1);
    const small = parseSize('18 mm');
    if (!small.ok) throw new Error(small.problem);
    const fits = piece('one', 'obverse.png', { diameter: small.value });
    expect((await makePhotographs([fits], cabinet, out)).remarks).toEqual([]);
  });

  test('is told of the worst first, and of hundreds only as many as are read', () => {
    const remarks = Array.from({ length: 300 }, (_, at) => ({
      file: `${at}.jpg`,
      says: 'So it is.',
      good: 1 - at / 300,
    }));
    const told = formatRemarks(remarks, 'content', ' --cabinet ../mine');
    expect(told).toContain('content/299.jpg\n  So it is.\n\ncontent/298.jpg');
    expect(told.match(/So it is/g)).toHaveLength(8);
    expect(told).toContain('And 292 more. All of them: npm run check -- --every --cabinet ../mine\n');
    expect(formatRemarks(remarks, 'content', null).match(/So it is/g)).toHaveLength(300);
    expect(formatRemarks(remarks.slice(0, 8), 'content', '')).not.toContain('more');
  });
});

describe('the check of a cabinet', () => {
  test('opens no photograph that the step has opened, unless it has changed', async () => {
    const file = join(cabinet, 'obverse.jpg');
    await drawn().toFile(file);
    const first = new Date(1_600_000_000_000);
    await utimes(file, first, first);
    const pieces = [piece('one', 'obverse.jpg')];
    await makePhotographs(pieces, cabinet, out);
    const { size } = await stat(file);
    // Whoever opened it now would say that it is no picture.
    await writeFile(file, Buffer.alloc(size));
    await utimes(file, first, first);
    expect(await checkPictures(pieces, cabinet, await readIndex(out))).toEqual([]);
    await utimes(file, first, new Date(1_700_000_000_000));
    expect(await checkPictures(pieces, cabinet, await readIndex(out))).toMatchObject([{ kind: 'picture-unreadable' }]);
  });

  test('still says that a crop lies outside a photograph it does not open', async () => {
    await drawn().toFile(join(cabinet, 'obverse.jpg'));
    await makePhotographs([piece('one', 'obverse.jpg')], cabinet, out);
    const crop = parseCrop('5000 5000 60 60 px');
    if (!crop.ok) throw new Error(crop.problem);
    const cropped = [piece('one', 'obverse.jpg', { photographs: { obverse: { crop: crop.value } } })];
    expect(await checkPictures(cropped, cabinet, await readIndex(out))).toMatchObject([{ kind: 'crop-outside' }]);
  });
});
