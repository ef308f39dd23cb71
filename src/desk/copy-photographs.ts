import sharp from 'sharp';
import { changeCabinet } from '../catalogue/keep/change-cabinet.ts';
import type { Outcome } from '../core/outcome.ts';
import { good } from '../core/outcome.ts';
import type { Pixels } from '../photographs/locate/pixels.ts';
import type { FileChange } from './cabinet-files.ts';
import { stage } from './write-changes.ts';

/** A picture turned clockwise by a quarter, a half or three quarters, in degrees. */
export async function turned(pixels: Pixels, by: number): Promise<Pixels> {
  if (by === 0) return pixels;
  const { width, height, rgb } = pixels;
  const { data, info } = await sharp(rgb, { raw: { width, height, channels: 3 } })
    .rotate(by)
    .raw()
    .toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, rgb: data };
}

type Copy = { readonly face: string; readonly bytes: Uint8Array };

/** Writes the copies as one stroke of the journal; what is replaced is in it. */
export async function copyAll(
  at: string,
  id: string,
  chosen: readonly Copy[],
  pictures: readonly { readonly face: string; readonly file: string }[],
  texts: readonly FileChange[] = [],
): Promise<Outcome<null>> {
  return changeCabinet(at, { command: 'the desk', kind: 'save', wait: 5000, tell: () => undefined }, async (stroke) => {
    for (const { face, bytes } of chosen) {
      const file = `pieces/${id}/${face}.jpg`;
      for (const old of pictures) if (old.face === face && old.file !== file) await stroke.remove(old.file);
      await stroke.put(file, bytes);
    }
    for (const change of texts) await stage(stroke, change);
    return good(null);
  });
}
