import sharp from 'sharp';
import { findPiece, LOOK_AT } from '../photographs/locate/find-piece.ts';
import { reduced } from '../photographs/locate/pixels.ts';
import type { Box, Pixels } from '../photographs/locate/pixels.ts';

/** What is said where nothing will be cut out. */
export const DOUBTS = {
  unsure: 'The rim of the piece is not sure, so the whole picture is shown. Say where the piece is under Crop.',
  'cut by the frame': 'The frame of the picture cuts the piece, so the whole picture is shown.',
  several: 'Several things could be the piece, so the whole picture is shown. Say where it is under Crop.',
  covered: 'Something lies on the rim of the piece, as a finger does, so the whole picture is shown.',
  'in a holder': 'The piece lies in a holder or a capsule, so the whole picture is shown. Say where it is under Crop.',
} as const;

export type Doubt = keyof typeof DOUBTS;
/** Where a piece was found, in pixels of the picture; and why it will not be cut out, where it will not. */
export type FoundPiece = { readonly box: Box | null; readonly doubt: Doubt | null };
/** The same in a file, with the size of its picture seen upright. */
export type FoundInFile = FoundPiece & { readonly wide: number; readonly high: number };

/** Finds the piece in a picture as the site's step does. */
export function findInPixels(pixels: Pixels): FoundPiece {
  const look = reduced(pixels, LOOK_AT);
  const { piece, doubt } = findPiece(look);
  if (doubt !== null || piece === null) return { box: null, doubt };
  const scale = pixels.width / look.width;
  const { left, top, width, height } = piece.box;
  return { box: { left: left * scale, top: top * scale, width: width * scale, height: height * scale }, doubt };
}

/** Finds the piece in the photograph of a file, seen upright; in hundredths of its width and height. Null when it cannot be read. */
export async function findInFile(file: string): Promise<FoundInFile | null> {
  const small = sharp(file)
    .rotate()
    .resize({ width: LOOK_AT, withoutEnlargement: true })
    .removeAlpha()
    .toColourspace('srgb');
  const read = await small
    .raw()
    .toBuffer({ resolveWithObject: true })
    .catch(() => null);
  if (read === null) return null;
  const { width, height } = read.info;
  const whole = await sharp(file).metadata();
  const wide = Math.max(width, Math.round((width / Math.max(width, height)) * Math.max(whole.width, whole.height)));
  const high = Math.round((wide / width) * height);
  const { box, doubt } = findInPixels({ width, height, rgb: read.data });
  if (box === null) return { box, doubt, wide, high };
  const share = (part: number, of: number): number => Math.round((part / of) * 1000) / 10;
  return {
    doubt,
    wide,
    high,
    box: {
      left: share(box.left, width),
      top: share(box.top, height),
      width: share(box.width, width),
      height: share(box.height, height),
    },
  };
}
