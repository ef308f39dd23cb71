import { open } from 'node:fs/promises';
import { holdsItsPixels } from './whole-tiff.ts';

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
