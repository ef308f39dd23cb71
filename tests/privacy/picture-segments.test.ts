import { execFileSync } from 'node:child_process';
import { mkdtemp, readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { beforeAll, describe, expect, test } from 'vitest';
import { segmentsOf } from '../../src/privacy/picture-segments.ts';
import { drawn } from '../photographs/small-cabinet.ts';

const KINDS = ['jpg', 'webp', 'png'] as const;
type Kind = (typeof KINDS)[number];

let folder = '';
const clean: Record<Kind, Buffer> = { jpg: Buffer.of(), webp: Buffer.of(), png: Buffer.of() };
const laden: Record<string, Buffer> = {};

/** What exiftool, an outside program, plants: in which kinds, and the name it must be told by. */
const PLANTED = [
  { what: 'exif', words: ['-ImageDescription=home'], kinds: KINDS, name: 'EXIF' },
  { what: 'gps', words: ['-GPSLatitude=54', '-GPSLatitudeRef=N'], kinds: KINDS, name: 'the place it was taken (GPS)' },
  { what: 'serial', words: ['-ExifIFD:SerialNumber=4711'], kinds: KINDS, name: 'the serial number of the camera' },
  { what: 'xmp', words: ['-XMP:Creator=me'], kinds: ['jpg', 'webp'], name: 'XMP' },
  { what: 'xmp-png', words: ['-XMP:Creator=me'], kinds: ['png'], name: 'a comment or XMP' },
  { what: 'iptc', words: ['-IPTC:City=home'], kinds: ['jpg'], name: 'IPTC' },
  { what: 'comment', words: ['-Comment=home'], kinds: ['jpg', 'png'], name: 'a comment' },
  { what: 'profile', words: ['-ICC_Profile<=PROFILE'], kinds: KINDS, name: 'a colour profile' },
  { what: 'thumbnail', words: ['-ThumbnailImage<=THUMBNAIL'], kinds: ['jpg', 'webp'], name: 'a thumbnail' },
  { what: 'changed', words: ['-PNG:ModifyDate=2001:02:03 04:05:06'], kinds: ['png'], name: 'the time it was last changed' },
] as const satisfies readonly { what: string; words: readonly string[]; kinds: readonly Kind[]; name: string }[]; // prettier-ignore

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'planted-'));
  const small = drawn().resize(90);
  for (const kind of KINDS)
    clean[kind] = await small
      .clone()
      .toFormat(kind === 'jpg' ? 'jpeg' : kind)
      .toBuffer();
  const { icc } = await sharp(await small.clone().withIccProfile('p3').png().toBuffer()).metadata();
  await writeFile(join(folder, 'profile.icc'), icc ?? '');
  await writeFile(join(folder, 'thumbnail.thm'), clean.jpg);
  // All in one run of the program: each set of words, then -execute.
  const words: string[] = [];
  for (const { what, kinds, words: planted } of PLANTED) {
    for (const kind of kinds) {
      const file = join(folder, `${what}.${kind}`);
      await writeFile(file, clean[kind]);
      const full = planted.map((word) => word.replace('PROFILE', join(folder, 'profile.icc')).replace('THUMBNAIL', join(folder, 'thumbnail.thm'))); // prettier-ignore
      words.push('-q', '-m', '-overwrite_original', ...full, file, '-execute');
    }
  }
  execFileSync('exiftool', words, { stdio: ['ignore', 'ignore', 'pipe'] });
  for (const { what, kinds } of PLANTED)
    for (const kind of kinds) laden[`${what}.${kind}`] = await readFile(join(folder, `${what}.${kind}`));
});

const names = (bytes: Uint8Array): readonly string[] | undefined => segmentsOf(bytes)?.map(({ name }) => name);

describe('what a picture carries is told by its name', () => {
  for (const { what, kinds, name } of PLANTED)
    test.for(kinds)(`${what} in a %s: ${name}`, (kind) => {
      expect(names(clean[kind])).toEqual([]);
      expect(names(laden[`${what}.${kind}`] ?? Buffer.of())?.join('; ')).toContain(name);
    });

  test('a maker note, which exiftool plants in no new block', () => {
    // One table of one entry in the order of Intel: MakerNote (927C), undefined, four bytes.
    const tiff = [0x49, 0x49, 42, 0, 8, 0, 0, 0, 1, 0, 0x7c, 0x92, 7, 0, 4, 0, 0, 0, 1, 2, 3, 4, 0, 0, 0, 0];
    const segment = Buffer.from([0xff, 0xe1, 0, tiff.length + 8, ...Buffer.from('Exif\0\0', 'latin1'), ...tiff]);
    const bytes = Buffer.concat([clean.jpg.subarray(0, 2), segment, clean.jpg.subarray(2)]);
    expect(names(bytes)).toEqual(["EXIF with the camera's own note (maker note)"]);
  });

  test('a comment between two scans of a JPEG', async () => {
    const progressive = await drawn().resize(90).jpeg({ progressive: true }).toBuffer();
    expect(names(progressive)).toEqual([]);
    const second = progressive.indexOf(Buffer.from([0xff, 0xda]), progressive.indexOf(Buffer.from([0xff, 0xda])) + 2);
    const comment = Buffer.from([0xff, 0xfe, 0, 6, ...Buffer.from('home')]);
    expect(names(Buffer.concat([progressive.subarray(0, second), comment, progressive.subarray(second)]))).toEqual(['a comment']); // prettier-ignore
  });

  test.for(KINDS)('a second picture or a note after the end of a %s', (kind) => {
    expect(names(Buffer.concat([clean[kind], Buffer.from('home')]))).toEqual(['more after the end of the picture']);
    expect(names(Buffer.concat([clean[kind], clean.jpg]))).toEqual(['more after the end of the picture']);
  });

  test.for(KINDS)('a %s that breaks off anywhere is not taken to be clean', (kind) => {
    for (let part = 0.05; part < 1; part += 0.05)
      expect(segmentsOf(clean[kind].subarray(0, Math.floor(clean[kind].length * part)))).toBeNull();
  });

  test('what is none of the three is not taken to be clean', async () => {
    expect(segmentsOf(await drawn().resize(90).avif({ effort: 0 }).toBuffer())).toBeNull();
    expect(segmentsOf(await drawn().resize(90).tiff().toBuffer())).toBeNull();
    expect(segmentsOf(Buffer.from('<svg/>'))).toBeNull();
  });
});
