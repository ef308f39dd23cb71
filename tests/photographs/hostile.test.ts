import { mkdir, mkdtemp, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { crc32, deflateSync } from 'node:zlib';
import sharp from 'sharp';
import type { Sharp } from 'sharp';
import { beforeEach, describe, expect, test } from 'vitest';
import { readFolder } from '../../src/catalogue/files.ts';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import { parseCrop } from '../../src/catalogue/crop.ts';
import { checkPictures } from '../../src/photographs/verify/check-pictures.ts';
import { makePhotographs } from '../../src/photographs/render/make-photographs.ts';
import { drawn, made, piece } from './small-cabinet.ts';

let cabinet = '';
let out = '';
beforeEach(async () => {
  cabinet = await mkdtemp(join(tmpdir(), 'cabinet-'));
  out = await mkdtemp(join(tmpdir(), 'pictures-'));
});

/** A PNG of one colour, one bit a pixel: a few kilobytes that unpack to as many pixels as one likes. */
function bomb(side: number): Buffer {
  const chunk = (name: string, bytes: Uint8Array): Buffer => {
    const named = Buffer.concat([Buffer.from(name, 'latin1'), bytes]);
    const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
    length.writeUInt32BE(bytes.length);
    sum.writeUInt32BE(crc32(named));
    return Buffer.concat([length, named, sum]);
  };
  const head = Buffer.alloc(13);
  head.writeUInt32BE(side, 0);
  head.writeUInt32BE(side, 4);
  head[8] = 1;
  const rows = deflateSync(Buffer.alloc(side * (Math.ceil(side / 8) + 1)), { level: 1 });
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([signature, chunk('IHDR', head), chunk('IDAT', rows), chunk('IEND', Buffer.alloc(0))]);
}

/**
 * A TIFF whose pixels are the last thing in it, as cameras write them: one strip without compression, in either order of
 * bytes (TIFF 6.0, §2, §6).
 */
async function pixelsLast(picture: Sharp, isLittle = true): Promise<Buffer> {
  const { data, info } = await picture.removeAlpha().raw().toBuffer({ resolveWithObject: true });
  const tags = [[256, 4, 1, info.width], [257, 4, 1, info.height], [258, 3, 3, 0], [259, 3, 1, 1], [262, 3, 1, 2], [273, 4, 1, 0], [277, 3, 1, 3], [278, 4, 1, info.height], [279, 4, 1, data.length]] as const; // prettier-ignore
  const head = Buffer.alloc(8 + 2 + tags.length * 12 + 4 + 6);
  const put = (value: number, at: number, width: 2 | 4): unknown =>
    isLittle ? head.writeUIntLE(value, at, width) : head.writeUIntBE(value, at, width);
  head.write(isLittle ? 'II' : 'MM', 'latin1');
  put(42, 2, 2);
  put(8, 4, 4);
  put(tags.length, 8, 2);
  for (const [index, [tag, type, count, value]] of tags.entries()) {
    const at = 10 + index * 12;
    put(tag, at, 2);
    put(type, at + 2, 2);
    put(count, at + 4, 4);
    // Three bits-a-sample stand behind the directory, and the pixels behind those.
    const far = tag === 258 ? head.length - 6 : tag === 273 ? head.length : value;
    put(far, at + 8, type === 3 && count === 1 ? 2 : 4);
  }
  for (const sample of [0, 1, 2]) put(8, head.length - 6 + sample * 2, 2);
  return Buffer.concat([head, data]);
}

const SCRIPT = '<svg xmlns="http://www.w3.org/2000/svg" width="600" height="600"><script>alert(1)</script><circle cx="300" cy="300" r="200"/></svg>'; // prettier-ignore

describe('a photograph that cannot be used', () => {
  test('is named with what to do', async () => {
    const whole = await drawn().jpeg().toBuffer();
    const files: Record<string, Uint8Array | string> = {
      'text.jpg': 'This is no picture.',
      'tiny.jpg': await sharp({ create: { width: 1, height: 1, channels: 3, background: 'red' } }).jpeg().toBuffer(), // prettier-ignore
      'head.jpg': whole.subarray(0, 300),
      'half.jpg': whole.subarray(0, whole.length >> 1),
      'half.png': (await drawn().png().toBuffer()).subarray(0, 4000),
      'half.webp': (await drawn().webp().toBuffer()).subarray(0, 2000),
      'half.avif': (await drawn().avif({ effort: 0 }).toBuffer()).subarray(0, 1500),
      'half.tif': (await pixelsLast(drawn())).subarray(0, 30_000),
      'script.jpg': SCRIPT,
      'bomb.png': bomb(20_000),
      'empty.jpg': '',
      'whole.jpg': whole,
      'whole.tif': await pixelsLast(drawn()),
      'tiles.tif': await drawn().tiff({ tile: true }).toBuffer(),
      'other-order.tif': await pixelsLast(drawn(), false),
    };
    for (const [name, bytes] of Object.entries(files)) await writeFile(join(cabinet, name), bytes);
    const pieces = Object.keys(files).map((name) => piece(name.replace('.', '-'), name));
    const found = await checkPictures(pieces, cabinet);
    expect(Object.fromEntries(found.map(({ kind, file }) => [file, kind]))).toEqual({
      'text.jpg': 'picture-unreadable',
      'tiny.jpg': 'picture-too-small',
      'head.jpg': 'picture-unreadable',
      'half.jpg': 'picture-broken',
      'half.png': 'picture-broken',
      'half.webp': 'picture-unreadable',
      'half.avif': 'picture-broken',
      'half.tif': 'picture-broken',
      'script.jpg': 'picture-unreadable',
      'bomb.png': 'picture-too-large',
      'empty.jpg': 'picture-unreadable',
    });
    const says = Object.fromEntries(found.map(({ file, says }) => [file, says]));
    expect(says['tiny.jpg']).toBe('This photograph is 1 × 1 pixels, too small to show a piece. Use one of at least 200 pixels each way.'); // prettier-ignore
    expect(says['bomb.png']).toBe('This photograph is 20000 × 20000 pixels, and one of more than 120 million is not opened. Save a smaller copy in its place.'); // prettier-ignore
    expect(says['half.jpg']).toBe('This photograph is damaged or breaks off before its end. Copy it again from the camera or the telephone, or remove it.'); // prettier-ignore

    // Should the step come to one all the same, it tells of it and makes the rest.
    const run = await makePhotographs(pieces, cabinet, out);
    expect(run.problems.map(({ file }) => file)).toEqual(
      Object.keys(files)
        .filter((name) => !/^whole|^tiles|^other/.test(name) && name !== 'tiny.jpg')
        .sort(),
    );
    // Four widths and a picture of the one face, and one of the piece to be shared.
    expect(await made(out, 'whole-jpg')).toHaveLength(6);
  });

  test('is told of when the damage is within, where its head and its end are whole', async () => {
    const bytes = await drawn().png().toBuffer();
    bytes.fill(0x55, bytes.length >> 1, (bytes.length >> 1) + 200);
    await writeFile(join(cabinet, 'obverse.png'), bytes);
    const { problems, made: count } = await makePhotographs([piece('one', 'obverse.png')], cabinet, out);
    expect(problems.map(({ kind, file }) => `${kind} ${file}`)).toEqual(['picture-broken obverse.png']);
    expect(count).toBe(0);
  });

  test('has a crop that lies outside it, and the field is named', async () => {
    await drawn().toFile(join(cabinet, 'obverse.png'));
    const crop = parseCrop('1200 80 400 400 px');
    if (!crop.ok) throw new Error(crop.problem);
    const found = await checkPictures([piece('one', 'obverse.png', { photographs: { obverse: { crop: crop.value } } })], cabinet); // prettier-ignore
    expect(found).toMatchObject([
      { kind: 'crop-outside', file: 'pieces/one/piece.md', field: 'photographs.obverse.crop' },
    ]);
    expect(found[0]?.says).toContain('which is 900 × 600 pixels upright');
  });
});

describe('names', () => {
  test.for(['obverse.svg', '🪙 front.jpg', 'my obverse.jpg', 'détail-é.jpg'.normalize('NFD')])(
    '%s is told of by its name, and the rest of the cabinet is read',
    async (name) => {
      const folder = await readFolder('tests/cabinets/marked');
      if (folder === null) throw new Error('tests/cabinets/marked is not there.');
      const files = [name, 'obverse.jpg'].map((one) => ({ file: `pieces/plain-penny/${one}`, text: null }));
      const { records, problems } = readCabinet({ ...folder, files: [...folder.files, ...files] });
      expect(problems.map(({ file }) => file)).toEqual([`pieces/plain-penny/${name}`]);
      expect(problems[0]?.says).toContain(`"${name}"`);
      expect(records.pieces.find(({ id }) => id === 'plain-penny')?.pictures).toEqual([
        { face: 'obverse', file: 'pieces/plain-penny/obverse.jpg' },
      ]);
    },
  );

  test('a cabinet may lie in a folder with spaces, an emoji and accents of two kinds', async () => {
    const folder = join(cabinet, 'ma collection 🪙 é', 'é'.normalize('NFD'));
    await mkdir(folder, { recursive: true });
    await drawn().toFile(join(folder, 'obverse.jpg'));
    expect(await checkPictures([piece('one', 'obverse.jpg')], folder)).toEqual([]);
    expect(await makePhotographs([piece('one', 'obverse.jpg')], folder, out)).toMatchObject({ made: 1, problems: [] });
  });
});
