import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import type { Sharp } from 'sharp';
import type { FiledPiece } from '../../src/catalogue/records.ts';

/** A gold disc on a grey board, wider than high, with a red mark at its top. */
export function drawn(): Sharp {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="900" height="600"><rect width="900" height="600" fill="#8f9294"/><circle cx="450" cy="300" r="220" fill="#c8a24a"/><rect x="420" y="110" width="60" height="60" fill="#c03020"/></svg>`;
  return sharp(Buffer.from(svg)).removeAlpha();
}

/** A piece with one photograph of its obverse, and what else its file says. */
export function piece(id: string, file: string, fields: Partial<FiledPiece['fields']> = {}): FiledPiece {
  return {
    id,
    file: `pieces/${id}/piece.md`,
    story: '',
    fields: { publish: 'yes', ...fields } as FiledPiece['fields'],
    pictures: [{ face: 'obverse', file }],
  };
}

/** The files made of a piece. */
export async function made(folder: string, id: string): Promise<readonly string[]> {
  return (await readdir(join(folder, id))).sort().map((name) => join(folder, id, name));
}
