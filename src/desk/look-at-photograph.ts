import type { Doubt } from '../photographs/locate/find-piece.ts';
import { placePiece } from '../photographs/locate/place-piece.ts';
import type { Box, Pixels } from '../photographs/locate/pixels.ts';
import { release } from '../photographs/locate/pixels.ts';
import { decodePhotograph } from '../photographs/render/open-photograph.ts';
import type { PictureRequest } from '../photographs/render/picture-request.ts';

/** What is said where nothing will be cut out. */
export const DOUBTS: Readonly<Record<Doubt, string>> = {
  unsure: 'The rim of the piece is not sure, so the whole picture is shown. Say where the piece is under Crop.',
  'cut by the frame': 'The frame of the picture cuts the piece, so the whole picture is shown.',
  several: 'Several things could be the piece, so the whole picture is shown. Say where it is under Crop.',
  covered: 'Something lies on the rim of the piece, as a finger does, so the whole picture is shown.',
  'a label':
    'What stands out looks like a label or a holder, so the whole picture is shown. If the piece has straight sides, write its shape.',
  'in a holder': 'The piece lies in a holder or a capsule, so the whole picture is shown. Say where it is under Crop.',
};

/** Where a piece was found, in pixels of the picture; and why it will not be cut out, where it will not. */
export type FoundPiece = { readonly box: Box | null; readonly doubt: Doubt | null };
/** The same in a file, in hundredths of its width and height, with the size of its picture seen upright. */
export type FoundInFile = FoundPiece & { readonly wide: number; readonly high: number };

const ROUND: PictureRequest = { crop: null, shows: 'face', ratio: 1 };

/** Finds the piece in a picture by the site's own step; what the keeper's crop says is not asked. */
export async function findInPixels(pixels: Pixels, request = ROUND): Promise<FoundPiece> {
  const full = { width: pixels.width, height: pixels.height };
  const { how, box, doubt } = await placePiece({ ...pixels, full }, { ...request, crop: null });
  return { box: how === 'found' ? box : null, doubt };
}

/** Finds the piece in the photograph of a file, seen upright. Null when it cannot be read. */
export async function findInFile(file: string, request: PictureRequest): Promise<FoundInFile | null> {
  const photograph = await decodePhotograph(file).catch(() => null);
  if (photograph === null) return null;
  const { width, height, full } = photograph;
  const { box, doubt } = await findInPixels(photograph, request);
  release(photograph.rgb);
  const share = (part: number, of: number): number => Math.round((part / of) * 1000) / 10;
  const shares = box && {
    left: share(box.left, width),
    top: share(box.top, height),
    width: share(box.width, width),
    height: share(box.height, height),
  };
  return { box: shares, doubt, wide: full.width, high: full.height };
}
