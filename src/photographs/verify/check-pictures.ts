import { join } from 'node:path';
import type { Crop } from '../../catalogue/crop.ts';
import type { Problem } from '../../catalogue/problem.ts';
import { problem } from '../../catalogue/problem.ts';
import type { FiledPiece } from '../../catalogue/records.ts';
import { seenOf } from '../cache/picture-cache.ts';
import type { Index, Known } from '../cache/picture-cache.ts';
import { MOST_PIXELS, uprightSize } from '../render/open-photograph.ts';
import type { Extent } from '../locate/pixels.ts';
import { requestFor } from '../render/picture-request.ts';
import { open } from 'node:fs/promises';

/** The shortest side a photograph may have, in pixels: under this a piece is a smudge on any screen. */
export const LEAST_SIDE = 200;

/**
 * Says which photographs cannot be used, by their heads; pixels are not decoded here. One that the step has opened before,
 * and that lies there as it did, is not opened.
 */
export async function checkPictures(
  pieces: readonly FiledPiece[],
  cabinet: string,
  opened: Index = {},
): Promise<readonly Problem[]> {
  const problems: Problem[] = [];
  for (const piece of pieces) {
    for (const { face, file } of piece.pictures) {
      const found = await checkPicture(join(cabinet, file), { file }, opened[file]);
      if ('kind' in found) problems.push(found);
      else if (isOutside(requestFor(piece, face).crop, found))
        problems.push(
          problem('crop-outside', { file: piece.file, field: `photographs.${face}.crop` }, found.width, found.height),
        );
    }
  }
  return problems;
}

/** The size of a photograph that can be used, or what is wrong with it. */
async function checkPicture(path: string, spot: { file: string }, opened?: Known): Promise<Extent | Problem> {
  try {
    const isOpened = opened?.seen === seenOf(path);
    const size = isOpened ? opened.pictures.seen.photograph : await uprightSize(path);
    const { width, height } = size;
    if (width * height > MOST_PIXELS) return problem('picture-too-large', spot, width, height, MOST_PIXELS / 1_000_000);
    if (Math.min(width, height) < LEAST_SIDE) return problem('picture-too-small', spot, width, height, LEAST_SIDE);
    return isOpened || (await goesToItsEnd(path)) ? size : problem('picture-broken', spot);
  } catch {
    return problem('picture-unreadable', spot);
  }
}

/** Whether a crop has its middle beyond the photograph: of what only reaches over its side, the part within is taken. */
function isOutside(crop: Crop | null, { width, height }: Extent): boolean {
  return crop?.unit === 'px' && (crop.left + crop.width / 2 > width || crop.top + crop.height / 2 > height);
}

/** How far from its end a JPEG is searched for its last marker: cameras may put something of theirs after it. */
const TAIL = 65_536;

/**
 * Whether the file of a picture goes on to its end, as far as that shows without decoding it: the last marker of a JPEG
 * (ITU-T T.81 B.1.1.3), the last chunk of a PNG (W3C PNG §5), the length a WebP (RIFF), the boxes an AVIF (ISO/IEC
 * 14496-12 §4.2) or the places a TIFF gives.
 */
export async function goesToItsEnd(file: string): Promise<boolean> {
  const handle = await open(file);
  try {
    const { size } = await handle.stat();
    const part = async (at: number, length: number): Promise<Buffer> => {
      const { buffer, bytesRead } = await handle.read(Buffer.alloc(length), 0, length, at);
      return buffer.subarray(0, bytesRead);
    };
    const head = await part(0, 16);
    if (head.readUInt16BE(0) === 0xffd8) return (await part(Math.max(2, size - TAIL), TAIL)).includes(EOI);
    if (head.toString('latin1', 1, 4) === 'PNG') return (await part(Math.max(8, size - TAIL), TAIL)).includes('IEND');
    if (head.toString('latin1', 8, 12) === 'WEBP') return head.readUInt32LE(4) + 8 <= size;
    if (head.toString('latin1', 4, 8) !== 'ftyp') return await holdsItsPixels(size, part);
    for (let at = 0; at < size;) {
      const box = await part(at, 16);
      if (box.length < 8) return false;
      const short = box.readUInt32BE(0);
      const length =
        short === 0 ? size - at : short === 1 && box.length === 16 ? Number(box.readBigUInt64BE(8)) : short;
      if (length < 8 || at + length > size) return false;
      at += length;
    }
    return true;
  } finally {
    await handle.close();
  }
}

const EOI = Buffer.from([0xff, 0xd9]);

/** Reads so many bytes of a file from a place on; fewer where it ends. */
export type PartOf = (at: number, length: number) => Promise<Buffer>;

/** The tags that say where the strips or tiles of a picture lie, each with the one that says how long they are. */
const PIXELS = [
  { at: 273, long: 279 },
  { at: 324, long: 325 },
] as const;
/** The bytes of a number of each type that such a tag may have: 3 is SHORT, 4 is LONG. */
const WIDTHS: ReadonlyMap<number, 2 | 4> = new Map([[3, 2], [4, 4]]); // prettier-ignore

/**
 * Whether all pixels that the first directory of a TIFF points at lie within the file (TIFF 6.0, 1992, §2 and §15). A
 * file of the larger kind, with a 43 in its head, is not judged.
 */
export async function holdsItsPixels(size: number, part: PartOf): Promise<boolean> {
  const head = await part(0, 8);
  const isLittle = head.toString('latin1', 0, 2) === 'II';
  const read = (bytes: Buffer, at: number, width: 2 | 4): number =>
    isLittle ? bytes.readUIntLE(at, width) : bytes.readUIntBE(at, width);
  if (head.length < 8) return false;
  if (read(head, 2, 2) !== 42) return true;

  const directory = read(head, 4, 4);
  const counted = await part(directory, 2);
  if (counted.length < 2) return false;
  const entries = await part(directory + 2, read(counted, 0, 2) * 12);
  if (entries.length < read(counted, 0, 2) * 12) return false;
  const numbersOf = async (tag: number): Promise<readonly number[] | null> => {
    for (let entry = 0; entry < entries.length; entry += 12) {
      if (read(entries, entry, 2) !== tag) continue;
      const width = WIDTHS.get(read(entries, entry + 2, 2));
      const count = read(entries, entry + 4, 4);
      if (width === undefined || count * width > size) return null;
      const isHere = count * width <= 4;
      const held = isHere ? entries.subarray(entry + 8, entry + 12) : await part(read(entries, entry + 8, 4), count * width); // prettier-ignore
      if (held.length < count * width) return null;
      return Array.from({ length: count }, (_, at) => read(held, at * width, width));
    }
    return [];
  };
  for (const { at, long } of PIXELS) {
    const [places, lengths] = [await numbersOf(at), await numbersOf(long)];
    if (places === null || lengths === null) return false;
    if (places.some((place, index) => place + (lengths[index] ?? 0) > size)) return false;
  }
  return true;
}
