import { Buffer } from 'node:buffer';
import { expect, test } from 'vitest';
import { segmentsOf } from '../../src/privacy/picture-segments.ts';

/**
 * Pictures written byte by byte. Sources: ITU-T T.81 Annex B (markers and the length of a segment, which counts its own two bytes),
 * JFIF 1.02 (its head of fourteen bytes ends in the size of a thumbnail), the WebP container specification (chunks of RIFF, filled
 * to an even size), PNG, third edition, §5 (length, name, data, sum) and §11 (the chunks), TIFF 6.0, section 2 (tables of twelve
 * bytes an entry), CIPA DC-008 §4.6 (the tags).
 */
const text = (letters: string): readonly number[] => [...Buffer.from(letters, 'latin1')];
const zeros = (count: number): readonly number[] => Array.from({ length: count }, () => 0);
const big = (value: number, bytes: number) => Array.from({ length: bytes }, (_, at) => (value >>> (8 * (bytes - 1 - at))) & 255); // prettier-ignore
const little = (value: number, bytes: number) => big(value, bytes).reverse();

const SOI = [0xff, 0xd8];
const EOI = [0xff, 0xd9];
const segment = (marker: number, body: readonly number[] = []) => [0xff, marker, ...big(body.length + 2, 2), ...body];
const jpeg = (...parts: readonly (readonly number[])[]) => [...SOI, ...parts.flat(), ...EOI];
const app = (marker: number, label: string, more: readonly number[] = []) => segment(marker, [...text(label), ...more]);
/** A head of JFIF: version, density, and a thumbnail of so many by so many pixels. */
const jfif = (width = 0, height = 0, more: readonly number[] = [], label = 'JFIF\0') => app(0xe0, label, [1, 2, 0, 0, 1, 0, 1, width, height, ...more]); // prettier-ignore
const scan = (...pixels: readonly number[]) => [...segment(0xda, [1, 1, 0, 0, 63, 0]), 7, ...pixels];

const riff = (chunks: readonly number[], form = 'WEBP') => [...text('RIFF'), ...little(chunks.length + 4, 4), ...text(form), ...chunks]; // prettier-ignore
const chunk = (name: string, body: readonly number[]) => [...text(name), ...little(body.length, 4), ...body, ...zeros(body.length % 2)]; // prettier-ignore
const VP8 = chunk('VP8 ', [1, 2, 3, 4]);

const part = (name: string, body: readonly number[] = []) => [...big(body.length, 4), ...text(name), ...body, ...zeros(4)]; // prettier-ignore
const png = (...parts: readonly (readonly number[])[]) => [0x89, ...text('PNG\r\n'), 0x1a, 0x0a, ...part('IHDR', zeros(13)), ...parts.flat(), ...part('IEND')]; // prettier-ignore

type Entry = readonly [tag: number, value: number, count?: number];
/** A block of tables, one behind the other from its eighth byte on, in the order of Intel or of Motorola; `next` leads on. */
const tiff = (order: 'II' | 'MM', ...tables: readonly { readonly entries: readonly Entry[]; readonly next?: number }[]) => {
  const put = order === 'II' ? little : big;
  const table = ({ entries, next = 0 }: (typeof tables)[number]) => [
    ...put(entries.length, 2),
    ...entries.flatMap(([tag, value, count = 1]) => [...put(tag, 2), ...put(4, 2), ...put(count, 4), ...put(value, 4)]),
    ...put(next, 4),
  ];
  return [...text(order), ...put(42, 2), ...put(8, 4), ...tables.flatMap(table)];
}; // prettier-ignore
/** Where the table behind one of so many entries begins. */
const behind = (from: number, entries: number): number => from + 2 + 12 * entries + 4;
const [GPS, MAKER, THUMB, SERIAL, EXIF_IFD, INTEROP, WIDTH] = [0x8825, 0x927c, 0x0201, 0xa431, 0x8769, 0xa005, 0x0100];
const PLACE = 'EXIF with the place it was taken (GPS)';
const gps = tiff('II', { entries: [[GPS, 0]] });
const exif = (block: readonly number[]) => jpeg(app(0xe1, 'Exif\0\0', block));
const AFTER = 'more after the end of the picture';

const JPEGS: readonly (readonly [what: string, bytes: readonly number[], names: readonly string[] | null])[] = [
  ['a head of JFIF, tables and a scan', jpeg(jfif(), segment(0xdb, [0]), segment(0xc0, [0]), segment(0xc4, [0]), scan(1, 2)), []],
  ['the first and the last kinds that are of pixels', jpeg(segment(0xc0), segment(0xcf), segment(0xdb), segment(0xdf)), []],
  ['the kinds beside them', jpeg(segment(0xbf), segment(0xc8), segment(0xd0), segment(0xf0), segment(0x02)), ['BF', 'C8', 'D0', 'F0', '2'].map((kind) => `a segment of the kind ${kind}`)],
  ['a thumbnail', jpeg(jfif(1, 1, [1, 2, 3])), ['a thumbnail (JFIF)']],
  ['a thumbnail of a width alone', jpeg(jfif(1, 0)), ['a thumbnail (JFIF)']],
  ['a thumbnail of a height alone', jpeg(jfif(0, 1)), ['a thumbnail (JFIF)']],
  ['more than the head', jpeg(jfif(0, 0, [0])), ['a thumbnail (JFIF)']],
  ['another head of that length', jpeg(jfif(0, 0, [], 'JFXX\0')), ['a thumbnail (JFIF)']],
  ['EXIF that says little', exif(tiff('II', { entries: [[WIDTH, 3]] })), ['EXIF']],
  ['XMP', jpeg(app(0xe1, 'http://ns.adobe.com/xap/1.0/\0<x/>')), ['XMP']],
  ['more XMP', jpeg(app(0xe1, 'http://ns.adobe.com/xmp/extension/\0')), ['XMP']],
  ['a profile', jpeg(app(0xe2, 'ICC_PROFILE\0')), ['a colour profile']],
  ['IPTC', jpeg(app(0xed, 'Photoshop 3.0\0')), ['IPTC']],
  ['a second picture', jpeg(app(0xe2, 'MPF\0')), ['a second picture (MPF)']],
  ['what a program notes for itself', jpeg(app(0xee, 'Adobe')), ['application segment 14']],
  ['the last of these', jpeg(app(0xef, 'x')), ['application segment 15']],
  ['a comment between fill bytes', [...SOI, 0xff, 0xff, ...segment(0xfe, text('home')), ...EOI], ['a comment']],
  ['pixels that look like markers', jpeg(scan(0xff, 0, 0xff, 0xd0, 1, 0xff, 0xd7, 2)), []],
  ['a table between two scans', jpeg(scan(1), segment(0xc4, [0]), scan(2)), []],
  ['a comment between two scans', jpeg(scan(1), segment(0xfe, text('x')), scan(2)), ['a comment']],
  ['another beginning behind a scan', jpeg(scan(1), segment(0xd8)), ['a segment of the kind D8']],
  ['something behind its end', [...jpeg(segment(0xfe)), 1], ['a comment', AFTER]],
  ['a first marker that is none', [0xff, 0xd7, ...EOI], null],
  ['a beginning that is none', [0x00, 0xd8, ...EOI], null],
  ['a scan without an end', [...SOI, ...scan(1, 0xff, 0)], null],
  ['no end', [...SOI, ...segment(0xdb, [0])], null],
  ['a length that cannot be', [...SOI, 0xff, 0xdb, 0, 1, ...EOI], null],
  ['the least length', [...SOI, 0xff, 0xdb, 0, 2, ...EOI], []],
  ['a length that goes on', [...SOI, 0xff, 0xdb, 0, 5, ...EOI], null],
  ['a length to the last byte', [...SOI, 0xff, 0xdb, 0, 4, ...EOI], null],
  ['no marker where one must be', [...SOI, 0x7f, 0xd9], null],
]; // prettier-ignore
const WEBPS: typeof JPEGS = [
  ['pixels', riff(VP8), []],
  ['all that is of pixels', riff([...chunk('VP8X', zeros(10)), ...chunk('ALPH', [1]), ...chunk('VP8L', [1, 2])]), []],
  ['more than its size', riff([...chunk('VP8X', zeros(12)), ...VP8]), ['more than its size (VP8X)']],
  ['chunks by their names', riff([...chunk('ICCP', [1]), ...chunk('XMP ', [1]), ...chunk('ANIM', [1]), ...chunk('ANMF', [1]), ...chunk('abc ', [1])]), ['a colour profile', 'XMP', 'an animation', 'a frame of an animation', 'a chunk abc']],
  ['EXIF', riff([...VP8, ...chunk('EXIF', gps)]), [PLACE]],
  ['EXIF with the head of a JPEG', riff(chunk('EXIF', [...text('Exif\0\0'), ...gps])), [PLACE]],
  ['a chunk of an odd size', riff([...chunk('ALPH', [1, 2, 3]), ...chunk('XMP ', [])]), ['XMP']],
  ['something behind its end', [...riff(chunk('XMP ', [])), 1], ['XMP', AFTER]],
  ['another kind of RIFF', riff(VP8, 'WAVE'), null],
  ['its name in another wrapping', [...text('FORM'), ...riff(VP8).slice(4)], null],
  ['a chunk that goes on', riff([...VP8.slice(0, -1)]), null],
  ['the head of a chunk broken off', riff([...VP8, ...text('VP8 '), 0, 0]), null],
  ['a whole that goes on', riff(VP8).slice(0, -1), null],
  ['a head alone', text('RIFF\x04\0\0\0WEBP'), []],
  ['less than a head', text('RIFF\x04\0\0\0WEB'), null],
]; // prettier-ignore
const PIXELS = { PLTE: 768, tRNS: 256, sRGB: 1, gAMA: 4, cHRM: 32, pHYs: 9, bKGD: 6, sBIT: 4 };
const PNGS: typeof JPEGS = [
  ['pixels', png(part('IDAT', zeros(2000))), []],
  ...Object.entries(PIXELS).flatMap(([name, most]) => [
    [`${name} of its size`, png(part(name, zeros(most))), []] as const,
    [`${name} and more`, png(part(name, zeros(most + 1))), [`a chunk ${name} of ${most + 1} bytes`]] as const,
  ]),
  ['a head of another size', [...png().slice(0, 8), ...part('IHDR', zeros(14)), ...part('IEND')], ['a chunk IHDR of 14 bytes']],
  ['an end with something in it', [...png().slice(0, -12), ...part('IEND', [1])], ['a chunk IEND of 1 bytes']],
  ['chunks by their names', png(part('iCCP'), part('tEXt'), part('zTXt'), part('iTXt'), part('tIME'), part('acTL'), part('abCd')), ['a colour profile', 'a comment', 'a comment', 'a comment or XMP', 'the time it was last changed', 'an animation', 'a chunk abCd']],
  ['EXIF', png(part('eXIf', gps)), [PLACE]],
  ['something behind its end', [...png(part('tEXt')), 1], ['a comment', AFTER]],
  ['no end', png().slice(0, -12), null],
  ['a chunk that goes on', png(part('IDAT', zeros(9))).slice(0, -13), null],
]; // prettier-ignore

test.for([...JPEGS, ...WEBPS, ...PNGS])('%s', ([, bytes, names]) => {
  expect(segmentsOf(Uint8Array.from(bytes))?.map(({ name }) => name) ?? null).toEqual(names);
});

const block = (bytes: readonly number[]) => segmentsOf(Uint8Array.from(exif(bytes)))?.map(({ name }) => name);

test.for(['II', 'MM'] as const)('the tags of a block in the order of %s, in the tables it leads to as well', (order) => {
  expect(block(tiff(order, { entries: [[WIDTH, 1], [GPS, 0], [MAKER, 0], [SERIAL, 0]] }))).toEqual([
    "EXIF with the place it was taken (GPS), the camera's own note (maker note), the serial number of the camera",
  ]);
  for (const lead of [EXIF_IFD, INTEROP])
    expect(block(tiff(order, { entries: [[WIDTH, 1], [lead, behind(8, 2)]] }, { entries: [[SERIAL, 0]] }))).toEqual(['EXIF with the serial number of the camera']);
  // The table behind the first is the thumbnail's.
  expect(block(tiff(order, { entries: [[WIDTH, 1]], next: behind(8, 1) }, { entries: [[THUMB, 0]] }))).toEqual(['EXIF with a thumbnail']);
}); // prettier-ignore

test('a block that leads in circles, breaks off or says that it has more comes to an end', () => {
  expect(block(tiff('II', { entries: [[GPS, 0]], next: 8 }))).toEqual([PLACE]);
  expect(block(tiff('II', { entries: [[GPS, 0], [EXIF_IFD, 8]], next: 8 }))).toEqual([PLACE]);
  expect(block([...text('II'), 42, 0, ...little(8, 4), ...little(60_000, 2), ...little(GPS, 2)])).toEqual([PLACE]);
  expect(block([...text('II'), 42, 0, ...little(4000, 4)])).toEqual(['EXIF']);
  expect(block(text('II'))).toEqual(['EXIF']);
  // A table at 0 is none: what stands where its second entry would be is a count.
  expect(block(tiff('II', { entries: [[WIDTH, 1, GPS]] }))).toEqual(['EXIF']);
  // Sixteen tables behind each other are read.
  const last = Array.from({ length: 16 }, (_, at) => ({ entries: [[at === 15 ? GPS : WIDTH, 0]] as const, next: at === 15 ? 0 : behind(8 + 18 * at, 1) })); // prettier-ignore
  expect(block(tiff('MM', ...last))).toEqual([PLACE]);
}); // prettier-ignore
