import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import Papa from 'papaparse';
import type { CutOut } from '../../../src/photographs/render/cut-out.ts';
import type { Box } from '../../../src/photographs/locate/pixels.ts';
import { decodePhotograph } from '../../../src/photographs/render/open-photograph.ts';
import type { Photograph } from '../../../src/photographs/render/open-photograph.ts';
import type { Coin, Taken } from './variants.ts';

type Row = Readonly<Record<'file' | 'centre_x' | 'centre_y' | 'radius_x' | 'radius_y' | 'source_photograph', string>>;

/** The photographs of a folder with a `truth.csv`, each with the picture of many coins that it was cut from. */
export async function readTaken(
  folder: string,
): Promise<readonly (Taken & Photograph & { file: string; source: string })[]> {
  const rows = Papa.parse<Row>(readFileSync(join(folder, 'truth.csv'), 'utf8').trim(), { header: true }).data;
  return Promise.all(
    rows.map(async ({ file, centre_x, centre_y, radius_x, radius_y, source_photograph }) => {
      const [x = 0, y = 0, rx = 0, ry = 0] = [centre_x, centre_y, radius_x, radius_y].map(Number);
      return {
        ...(await decodePhotograph(join(folder, file))),
        file,
        source: source_photograph,
        coin: { x, y, rx, ry },
      };
    }),
  );
}

/** How far a cut-out is from the coin, 1 being the most that is right: proportions 5 per cent, radius 6, middle 8 of the radius, and as full as a disc. */
export function off({ box, bytes, width, height }: CutOut, { x, y, rx, ry }: Coin): number {
  let [left, top, right, bottom, solid] = [width, height, -1, -1, 0];
  for (let row = 0; row < height; row += 1)
    for (let column = 0; column < width; column += 1) {
      if ((bytes[(row * width + column) * 4 + 3] ?? 0) < 128) continue;
      solid += 1;
      [left, right, top, bottom] = [Math.min(left, column), Math.max(right, column), Math.min(top, row), Math.max(bottom, row)]; // prettier-ignore
    }
  const [wide, high, radius] = [right - left + 1, bottom - top + 1, (rx + ry) / 2];
  return Math.max(
    Math.abs(wide / high / (rx / ry) - 1) / 0.05,
    Math.abs(solid / (wide * high) - Math.PI / 4) / 0.03,
    Math.abs((box.width + box.height) / 4 / radius - 1) / 0.06,
    Math.hypot(box.left + box.width / 2 - x, box.top + box.height / 2 - y) / radius / 0.08,
  );
}

/** The same of a rim as it was first found, in a copy with one pixel for so many of the photograph's. */
export function offBy({ left, top, width, height }: Box, times: number, { x, y, rx, ry }: Coin): number {
  const radius = (rx + ry) / 2;
  return Math.max(
    Math.abs(width / height / (rx / ry) - 1) / 0.05,
    Math.abs(((width + height) * times) / 4 / radius - 1) / 0.06,
    Math.hypot((left + width / 2) * times - x, (top + height / 2) * times - y) / radius / 0.08,
  );
}
