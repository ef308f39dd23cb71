import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { findPiece } from '../../src/photographs/find-piece.ts';

/** Scenes drawn with a known piece: its middle and radius, in parts of a picture 320 pixels wide. */
const SCENES = [
  { name: 'a silver piece on a grey board', board: '#8f9294', piece: '#c9cbcd', x: 0.5, y: 0.5, r: 0.4 },
  { name: 'off centre', board: '#8f9294', piece: '#c9cbcd', x: 0.35, y: 0.6, r: 0.25 },
  { name: 'a dark piece on a dark board', board: '#3a3c3e', piece: '#5a4a38', x: 0.5, y: 0.5, r: 0.38 },
  { name: 'gold on white', board: '#f4f4f2', piece: '#c8a24a', x: 0.5, y: 0.5, r: 0.42 },
  { name: 'small in a large board', board: '#8f9294', piece: '#7a5a3a', x: 0.62, y: 0.44, r: 0.12 },
  { name: 'copper on a board lit from one side', board: 'slope', piece: '#8a5a3c', x: 0.5, y: 0.5, r: 0.36 },
  { name: 'with a soft shadow', board: '#a9acad', piece: '#e3e4e4', x: 0.5, y: 0.5, r: 0.36, shadow: true },
] as const;

const W = 320;

async function scene({
  board,
  piece,
  x,
  y,
  r,
  ...rest
}: (typeof SCENES)[number]): Promise<Parameters<typeof findPiece>[0]> {
  const ground =
    board === 'slope'
      ? '<rect width="320" height="320" fill="url(#s)"/>'
      : `<rect width="320" height="320" fill="${board}"/>`;
  const shadow =
    'shadow' in rest
      ? `<circle cx="${x * W + 5}" cy="${y * W + 5}" r="${r * W}" fill="#000" opacity="0.25" filter="url(#b)"/>`
      : '';
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="320" height="320"><defs><linearGradient id="s"><stop stop-color="#b5b8ba"/><stop offset="1" stop-color="#7d8082"/></linearGradient><filter id="b"><feGaussianBlur stdDeviation="6"/></filter></defs>${ground}${shadow}<circle cx="${x * W}" cy="${y * W}" r="${r * W}" fill="${piece}"/></svg>`;
  const { data, info } = await sharp(Buffer.from(svg)).removeAlpha().raw().toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, rgb: new Uint8Array(data) };
}

describe('the piece in a photograph', () => {
  test.for(SCENES)('is found: $name', async (drawn) => {
    const found = findPiece(await scene(drawn));
    const box = found?.box ?? { left: 0, top: 0, width: 0, height: 0 };
    const tolerance = 2 + 0.03 * drawn.r * W;
    expect(Math.abs(box.left + box.width / 2 - drawn.x * W)).toBeLessThan(tolerance);
    expect(Math.abs(box.top + box.height / 2 - drawn.y * W)).toBeLessThan(tolerance);
    expect(Math.abs(box.width / 2 - drawn.r * W)).toBeLessThan(tolerance);
  });

  test('is not found on an empty board', async () => {
    const { data, info } = await sharp({ create: { width: 100, height: 100, channels: 3, background: '#8f9294' } })
      .raw()
      .toBuffer({ resolveWithObject: true });
    expect(findPiece({ width: info.width, height: info.height, rgb: new Uint8Array(data) })).toBeNull();
  });
});
