import { join } from 'node:path';
import type { Crop } from '../../catalogue/crop.ts';
import type { Problem } from '../../catalogue/problem.ts';
import { problem } from '../../catalogue/problem.ts';
import type { FiledPiece } from '../../catalogue/records.ts';
import { seenOf } from '../cache/picture-cache.ts';
import type { Index, Known } from '../cache/picture-cache.ts';
import { MOST_PIXELS, uprightSize } from '../render/open-photograph.ts';
import type { Extent } from '../locate/pixels.ts';
import { goesToItsEnd } from './whole-file.ts';
import { requestFor } from '../render/picture-request.ts';

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
