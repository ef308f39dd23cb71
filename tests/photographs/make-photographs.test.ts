import { execFileSync } from 'node:child_process';
import { mkdir, mkdtemp, readdir, readFile, stat, utimes, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import type { Sharp } from 'sharp';
import { beforeEach, describe, expect, test } from 'vitest';
import { readFolder } from '../../src/catalogue/files.ts';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import type { FiledPiece } from '../../src/catalogue/records.ts';
import { checkPictures } from '../../src/photographs/check-pictures.ts';
import { segmentsOf } from '../../src/photographs/inspect-picture.ts';
import type { PhotographManifest } from '../../src/photographs/manifest.ts';
import { makePhotographs } from '../../src/photographs/make-photographs.ts';

const FORMATS = ['jpg', 'png', 'tif', 'webp', 'avif'] as const;
/** A place in the North Sea; an invented camera. */
const EXIF = {
  IFD0: { Make: 'INVENTED CAMERA', ImageDescription: 'taken at home' },
  IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '54/1 0/1 0/1', GPSLongitudeRef: 'E', GPSLongitude: '3/1 0/1 0/1' },
};

/** A gold disc on a grey board, wider than high, with a red mark at its top. */
function drawn(): Sharp {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="900" height="600"><rect width="900" height="600" fill="#8f9294"/><circle cx="450" cy="300" r="220" fill="#c8a24a"/><rect x="420" y="110" width="60" height="60" fill="#c03020"/></svg>`;
  return sharp(Buffer.from(svg));
}

function piece(id: string, file: string, publish: 'yes' | 'no' = 'yes'): FiledPiece {
  return {
    id,
    file: '',
    story: '',
    fields: { publish } as FiledPiece['fields'],
    pictures: [{ face: 'obverse', file }],
  };
}

async function made(folder: string, id: string): Promise<readonly string[]> {
  return (await readdir(join(folder, id))).map((name) => join(folder, id, name));
}

let cabinet = '';
let out = '';
beforeEach(async () => {
  cabinet = await mkdtemp(join(tmpdir(), 'cabinet-'));
  out = await mkdtemp(join(tmpdir(), 'pictures-'));
});

describe('nothing a photograph carries besides its pixels is kept', () => {
  test.for(FORMATS)('from a %s with a place, a camera, XMP and a turned head', async (format) => {
    const file = `obverse.${format}`;
    const xmp =
      '<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description xmlns:dc="http://purl.org/dc/elements/1.1/" dc:creator="SECRET"/></rdf:RDF></x:xmpmeta>';
    const turned = drawn().rotate(90);
    await turned.withExif(EXIF).withXmp(xmp).withMetadata({ orientation: 8 }).toFile(join(cabinet, file));
    await makePhotographs([piece('one', file)], cabinet, out);
    const files = await made(out, 'one');
    expect(files.length).toBeGreaterThanOrEqual(3);
    for (const path of files) {
      expect(segmentsOf(await readFile(path)), path).toEqual([]);
      // exiftool as an outside witness: no tag beyond what the pixels themselves need.
      const seen = execFileSync('exiftool', ['-j', '-G1', '-a', '-u', path], { encoding: 'utf8' });
      expect(seen).not.toMatch(/GPS|EXIF|IFD0|XMP|IPTC|Photoshop|ICC_Profile|Comment|INVENTED|SECRET|Thumbnail/);
    }
    const [share] = files.filter((path) => path.endsWith('.jpg'));
    const { data, info } = await sharp(share).raw().toBuffer({ resolveWithObject: true });
    // Upright: the red mark is in the upper half, above the middle.
    const at = (Math.round(info.height * 0.18) * info.width + Math.round(info.width / 2)) * info.channels;
    expect(data[at] ?? 0).toBeGreaterThan(150);
    expect(data[at + 1] ?? 255).toBeLessThan(100);
  });
});

describe('the scale', () => {
  test('the share of the picture that the piece fills is known to one per cent', async () => {
    await drawn().toFile(join(cabinet, 'obverse.png'));
    await makePhotographs([piece('one', 'obverse.png')], cabinet, out);
    const manifest = JSON.parse(await readFile(join(out, 'manifest.json'), 'utf8')) as PhotographManifest;
    const { span, jpeg } = manifest['one']?.[0] ?? { span: { width: 0, height: 0 }, jpeg: { width: 0, height: 0 } };
    // The disc was drawn 440 pixels across.
    expect(Math.abs((span.width * jpeg.width) / 440 - 1)).toBeLessThan(0.01);
    expect(Math.abs((span.height * jpeg.height) / 440 - 1)).toBeLessThan(0.01);
  });
});

describe('what has been made is kept', () => {
  test('a second run makes nothing and does not open the photograph', async () => {
    const file = join(cabinet, 'obverse.jpg');
    await drawn().toFile(file);
    await utimes(file, 1_600_000_000, 1_600_000_000);
    expect(await makePhotographs([piece('one', 'obverse.jpg')], cabinet, out)).toEqual({ pictures: 1, made: 1 });
    const before = await stat(file);
    // Other bytes of the same length and the same day: a run that opened them would fail.
    await writeFile(file, Buffer.alloc(before.size));
    await utimes(file, 1_600_000_000, 1_600_000_000);
    expect(await makePhotographs([piece('one', 'obverse.jpg')], cabinet, out)).toEqual({ pictures: 1, made: 0 });
  });

  test('a changed photograph is made anew, and the old pictures are removed', async () => {
    const file = join(cabinet, 'obverse.png');
    await drawn().toFile(file);
    await makePhotographs([piece('one', 'obverse.png')], cabinet, out);
    const before = await made(out, 'one');
    await drawn().negate({ alpha: false }).toFile(file);
    expect(await makePhotographs([piece('one', 'obverse.png')], cabinet, out)).toEqual({ pictures: 1, made: 1 });
    const after = await made(out, 'one');
    expect(after.filter((path) => before.includes(path))).toEqual([]);
  });

  test('a picture that went missing is made again', async () => {
    await drawn().toFile(join(cabinet, 'obverse.jpg'));
    await makePhotographs([piece('one', 'obverse.jpg')], cabinet, out);
    const before = await made(out, 'one');
    await writeFile(join(out, 'one', 'left-over.unfinished'), 'half');
    const { rm } = await import('node:fs/promises');
    await rm(before[0] ?? '');
    await makePhotographs([piece('one', 'obverse.jpg')], cabinet, out);
    expect([...(await made(out, 'one'))].sort()).toEqual([...before].sort());
  });

  test('nothing is made of a piece that is not published, and what had been is removed', async () => {
    await drawn().toFile(join(cabinet, 'obverse.jpg'));
    await makePhotographs([piece('one', 'obverse.jpg')], cabinet, out);
    await makePhotographs([piece('one', 'obverse.jpg', 'no')], cabinet, out);
    expect((await readdir(out)).sort()).toEqual(['index.json', 'manifest.json']);
    expect(await readFile(join(out, 'index.json'), 'utf8')).toBe('{}');
  });
});

describe('a photograph that cannot be used', () => {
  test('is named with what to do', async () => {
    await mkdir(join(cabinet, 'pieces/one'), { recursive: true });
    await writeFile(join(cabinet, 'text.jpg'), 'This is no picture.');
    await sharp({ create: { width: 1, height: 1, channels: 3, background: 'red' } })
      .jpeg()
      .toFile(join(cabinet, 'tiny.jpg'));
    const whole = await drawn().jpeg().toBuffer();
    await writeFile(join(cabinet, 'cut.jpg'), whole.subarray(0, 300));
    const found = await checkPictures([piece('a', 'text.jpg'), piece('b', 'tiny.jpg'), piece('c', 'cut.jpg')], cabinet);
    expect(found.map(({ kind, file }) => `${kind} ${file}`)).toEqual([
      'picture-unreadable text.jpg',
      'picture-too-small tiny.jpg',
      'picture-unreadable cut.jpg',
    ]);
    expect(found[1]?.says).toBe(
      'This photograph is 1 × 1 pixels, too small to show a piece. Use one of at least 200 pixels each way.',
    );
  });
});

test('a photograph beside a piece is found by its name', async () => {
  const folder = await readFolder('tests/cabinets/marked');
  if (folder === null) throw new Error('tests/cabinets/marked is not there.');
  const files = [...folder.files, { file: 'pieces/plain-penny/obverse.jpg', text: null }];
  const { records } = readCabinet({ ...folder, files });
  expect(records.pieces.find(({ id }) => id === 'plain-penny')?.pictures).toEqual([
    { face: 'obverse', file: 'pieces/plain-penny/obverse.jpg' },
  ]);
});
