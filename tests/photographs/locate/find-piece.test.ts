import { describe, expect, test } from 'vitest';
import { parseCrop } from '../../../src/catalogue/crop.ts';
import { cutOut } from '../../../src/photographs/render/cut-out.ts';
import { findPieces } from '../../../src/photographs/locate/find-piece.ts';
import type { Photograph } from '../../../src/photographs/render/open-photograph.ts';
import type { Box } from '../../../src/photographs/locate/pixels.ts';
import { placePiece } from '../../../src/photographs/locate/place-piece.ts';
import type { Wish } from '../../../src/photographs/render/picture-request.ts';
import { boxIn, photographOf, SCENES } from './scenes.ts';

const ROUND: Wish = { crop: null, shows: 'round face', ratio: 1 };

/** How far a found box is from the drawn one: its middle and its sides, in parts of the drawn piece's radius and sides. */
function astray(found: Box | undefined, drawn: Box): number {
  if (found === undefined) return Infinity;
  const radius = Math.min(drawn.width, drawn.height) / 2;
  const x = found.left + found.width / 2 - drawn.left - drawn.width / 2;
  const y = found.top + found.height / 2 - drawn.top - drawn.height / 2;
  const sides = [found.width / drawn.width - 1, found.height / drawn.height - 1].map(Math.abs);
  return Math.max(Math.hypot(x, y) / radius, ...sides);
}

async function found(photograph: Photograph, wish: Wish): Promise<{ how: string; box: Box }> {
  const placed = await placePiece(photograph, wish);
  return { how: placed.how, box: (await cutOut(photograph, placed, 1280)).box };
}

/** A board with nothing on it. */
function empty(width: number, height: number): Photograph {
  return { width, height, rgb: new Uint8Array(width * height * 3).fill(143), full: { width, height } };
}

describe('the piece in a photograph', () => {
  test(
    'middle and size are found within 2 per cent in 95 of 100 scenes, and never far off',
    { timeout: 90_000 },
    async () => {
      const off: { name: string; by: number }[] = [];
      let pieces = 0;
      for (const scene of SCENES) {
        const photograph = await photographOf(scene);
        const boxes =
          scene.pieces.length === 1
            ? [(await found(photograph, ROUND)).box]
            : findPieces(photograph, scene.pieces.length).map(({ box }) => box);
        for (const [at, piece] of scene.pieces.entries()) {
          pieces += 1;
          const by = astray(boxes[at], boxIn(piece));
          if (by > 0.02) off.push({ name: scene.name, by });
        }
      }
      expect(pieces).toBeGreaterThanOrEqual(40);
      expect(off.length / pieces, JSON.stringify(off)).toBeLessThanOrEqual(0.05);
      expect(off.filter(({ by }) => by > 0.06)).toEqual([]);
    },
  );

  test('is not made up: on an empty board the middle is taken, as large as the piece is long and wide', async () => {
    expect(findPieces(empty(300, 200), 1)).toEqual([]);
    expect(await found(empty(300, 200), ROUND)).toEqual({
      how: 'middle',
      box: { left: 50, top: 0, width: 200, height: 200 },
    });
    expect(await found(empty(300, 200), { crop: null, shows: 'oblong face', ratio: 2 })).toEqual({
      how: 'middle',
      box: { left: 0, top: 25, width: 300, height: 150 },
    });
  });

  test('is one, where the other thing is a small scale', async () => {
    const scene = { name: '', board: 'grey', pieces: [{ x: 300, y: 360, r: 220 }, { x: 800, y: 360, r: 60 }] } as const; // prettier-ignore
    expect(findPieces(await photographOf(scene), 2)).toHaveLength(1);
  });

  test('is not sought in a detail, nor the middle taken of an edge', async () => {
    const photograph = await photographOf(SCENES[0] ?? fail());
    expect((await found(photograph, { ...ROUND, shows: 'detail' })).how).toBe('whole');
    expect((await found(empty(300, 200), { ...ROUND, shows: 'edge' })).how).toBe('whole');
  });
});

describe("the keeper's crop", () => {
  const wish = (text: string): Wish => {
    const crop = parseCrop(text);
    return crop.ok ? { ...ROUND, crop: crop.value } : fail();
  };
  const two = { name: '', board: 'grey', pieces: [{ x: 260, y: 360, r: 180 }, { x: 700, y: 360, r: 180 }] } as const; // prettier-ignore

  test('chooses between two, and its rim is found though the crop was drawn by hand', async () => {
    const { how, box } = await found(await photographOf(two), wish('505 170 400 390 px'));
    expect(how).toBe('crop');
    expect(astray(box, boxIn(two.pieces[1]))).toBeLessThan(0.02);
  });

  test('is the piece, to the pixel, where nothing can be found', async () => {
    const { how, box } = await found(empty(400, 300), wish('25 10 50 60 %'));
    expect(how).toBe('crop');
    expect(box).toEqual({ left: 100, top: 30, width: 200, height: 180 });
  });

  test('cuts out what is round as a round, and leaves the board out of its corners', async () => {
    const board = empty(400, 400);
    const cut = await cutOut(board, await placePiece(board, wish('100 100 200 200 px')), 1280);
    const solid = (x: number, y: number) => cut.bytes[(Math.round(y * cut.height) * cut.width + Math.round(x * cut.width)) * 4 + 3]; // prettier-ignore
    expect(solid(0.5, 0.5)).toBe(255);
    expect(solid(0.15, 0.15)).toBe(0);
    expect(cut.span.width).toBeCloseTo(1 / 1.14, 1);
  });

  test('counts in the pixels of the photograph itself, however large it is held', async () => {
    const held = { ...empty(400, 300), full: { width: 8000, height: 6000 } };
    expect((await found(held, wish('2000 600 4000 3600 px'))).box).toEqual({ left: 100, top: 30, width: 200, height: 180 }); // prettier-ignore
  });
});

function fail(): never {
  throw new Error('A scene or a crop of this test is not as it was.');
}
