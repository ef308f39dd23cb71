import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { chanceFrom } from '../chance.ts';
import { drawFace, PICTURE } from '../draw-face.ts';
import { legendsOf } from '../read-legend.ts';
import { RECIPES } from '../recipes/recipes.ts';
import { tries } from '../../tries.ts';
import { findPiece } from '../../../src/photographs/locate/find-piece.ts';

const PIECES = join(import.meta.dirname, '../../../content/pieces');
const pictures = Object.entries(RECIPES).flatMap(([id, faces]) =>
  Object.keys(faces).map((face) => join(PIECES, id, `${face}.jpg`)),
);

/** The faces that a piece's file says are photographed. */
function promised(id: string): string[] {
  const [, front = ''] = readFileSync(join(PIECES, id, 'piece.md'), 'utf8').split(/^---$/m);
  const { photographs = {} } = parse(front, { uniqueKeys: false }) as { photographs?: Record<string, unknown> };
  return Object.keys(photographs);
}

/** Whether the file of a piece says that its outline is no circle. */
function isNotRound(photograph: string): boolean {
  return /^shape: (?!round$)/m.test(readFileSync(join(photograph, '../piece.md'), 'utf8'));
}

describe('the drawn photographs of the demo cabinet', () => {
  test('every photograph that a piece promises has a recipe, and every recipe belongs to a piece', () => {
    const ids = readdirSync(PIECES).filter((id) => statSync(join(PIECES, id)).isDirectory());
    for (const id of ids)
      expect(
        promised(id).filter((face) => RECIPES[id]?.[face] === undefined),
        id,
      ).toEqual([]);
    expect(Object.keys(RECIPES).filter((id) => !ids.includes(id))).toEqual([]);
  });

  test('together they stay under 8 MB', () => {
    expect(pictures.reduce((sum, file) => sum + statSync(file).size, 0)).toBeLessThan(8_000_000);
  });

  test('each is a square JPEG that carries nothing but the picture', async () => {
    for (const file of pictures) {
      const { format, width, height, exif, icc, iptc, xmp } = await sharp(file).metadata();
      expect({ format, width, height, exif, icc, iptc, xmp }, file).toEqual({
        format: 'jpeg',
        width: PICTURE,
        height: PICTURE,
        exif: undefined,
        icc: undefined,
        iptc: undefined,
        xmp: undefined,
      });
    }
  });

  test('the piece can be told from its board, and fills about 82 per cent of the width or the height', async () => {
    // Every third, and each of them with `TRIES=full`: which ones moves with nothing, so that a failure comes again.
    const [some, step] = [tries(3, 1), 3];
    for (const file of pictures.filter((_, at) => at % step < some)) {
      const { data, info } = await sharp(file).resize(300).raw().toBuffer({ resolveWithObject: true });
      const look = { width: info.width, height: info.height, rgb: new Uint8Array(data) };
      const { piece: found } = findPiece(look, isNotRound(file) ? 'not round' : 'nothing');
      const span = Math.max(found?.box.width ?? 0, found?.box.height ?? 0) / info.width;
      expect(span, file).toBeGreaterThan(0.76);
      // A squarish flan turned to its reverse's upright stands on a corner.
      expect(span, file).toBeLessThan(0.92);
    }
  }, 60_000);

  test('the program draws again what lies in the cabinet, byte for byte twice over', async () => {
    const id = 'aethelred-styca';
    const legends = legendsOf(readFileSync(join(PIECES, id, 'piece.md'), 'utf8'));
    const recipe = RECIPES[id]?.['obverse'];
    if (recipe === undefined) throw new Error('no recipe');
    const draw = (): Promise<Buffer> =>
      drawFace(`${id} obverse`, recipe({ parts: legends['obverse'] ?? [], hand: chanceFrom(`${id} obverse hand`) }));
    const [once, again] = [await draw(), await draw()];
    expect(once.equals(again)).toBe(true);
    // Another processor may round the last bit of a pixel; it may not draw another picture.
    const [drawn, kept] = await Promise.all(
      [once, join(PIECES, id, 'obverse.jpg')].map((one) => sharp(one).raw().toBuffer()),
    );
    const apart = drawn?.reduce((sum, value, at) => sum + Math.abs(value - (kept?.[at] ?? 0)), 0) ?? Infinity;
    expect(apart / (drawn?.length ?? 1)).toBeLessThan(1);
  }, 60_000);
});

test('no font of the machine is used: the drawings hold no text', () => {
  const folder = join(import.meta.dirname, '..');
  for (const name of readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((file) =>
    /^[^.]*[.]ts$/.test(file),
  ))
    expect(/<text|font-family/.test(readFileSync(join(folder, name), 'utf8')), name).toBe(false);
});
