import { join } from 'node:path';
import type { Problem } from '../catalogue/problem.ts';
import { problem } from '../catalogue/problem.ts';
import type { FiledPiece } from '../catalogue/records.ts';
import { openPhotograph } from './make-face.ts';

/** The shortest side a photograph may have, in pixels: under this a piece is a smudge on any screen. */
export const LEAST_SIDE = 200;

/** Opens the head of every photograph and says which cannot be used. Pixels are not decoded here. */
export async function checkPictures(pieces: readonly FiledPiece[], cabinet: string): Promise<readonly Problem[]> {
  const problems: Problem[] = [];
  for (const picture of pieces.flatMap(({ pictures }) => pictures)) {
    const spot = { file: picture.file };
    try {
      const { width, height } = await openPhotograph(join(cabinet, picture.file)).metadata();
      if (Math.min(width, height) < LEAST_SIDE)
        problems.push(problem('picture-too-small', spot, width, height, LEAST_SIDE));
    } catch {
      problems.push(problem('picture-unreadable', spot));
    }
  }
  return problems;
}
