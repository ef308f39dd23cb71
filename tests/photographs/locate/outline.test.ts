import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { findPiece } from '../../../src/photographs/locate/find-piece.ts';
import { solidityOf } from '../../../src/photographs/render/fade.ts';
import { maskOutline } from '../../../src/photographs/locate/edge-shapes.ts';
import { inFiner } from '../../../src/photographs/locate/outline.ts';
import { refineRim } from '../../../src/photographs/locate/best-path.ts';

const FINE = 900;
const LOOK = 320;

/** Shapes drawn with lettering inside and a soft shadow outside; `rim` is the true distance from the middle in a direction. */
const SHAPES = [
  {
    name: 'a round piece',
    svg: '<circle cx="450" cy="450" r="330" fill="#c4c6c8"/>',
    rim: () => 330,
  },
  {
    name: 'an oval flan',
    svg: '<ellipse cx="450" cy="450" rx="350" ry="290" fill="#c4c6c8"/>',
    rim: (angle: number) => (350 * 290) / Math.hypot(290 * Math.cos(angle), 350 * Math.sin(angle)),
  },
] as const;

async function picture(shape: string, size: number) {
  const letters =
    '<circle cx="450" cy="450" r="255" fill="none" stroke="#77797b" stroke-width="26" stroke-dasharray="30 22"/>';
  const shadow = `<g transform="translate(5 7)" opacity="0.4" filter="url(#b)">${shape.replace(/fill="[^"]*"/, 'fill="#000"')}</g>`;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="900" height="900"><defs><filter id="b"><feGaussianBlur stdDeviation="6"/></filter></defs><rect width="900" height="900" fill="#8f9294"/>${shadow}${shape}${letters}</svg>`;
  const { data, info } = await sharp(Buffer.from(svg))
    .resize(size, size)
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, rgb: new Uint8Array(data) };
}

describe('the rim of a piece', () => {
  test.for(SHAPES)('is traced to within two pixels of nine hundred: $name', async ({ svg, rim }) => {
    const look = await picture(svg, LOOK);
    const found = findPiece(look).piece?.rim;
    if (found?.kind !== 'outline') throw new Error('The piece was not found.');
    const outline = refineRim(await picture(svg, FINE), inFiner(found.outline, 0, 0, FINE / LOOK), found.slack);
    const solid = solidityOf(outline, { width: FINE, height: FINE });
    for (let degrees = 0; degrees < 360; degrees += 3) {
      const angle = (degrees * Math.PI) / 180;
      const at = (reach: number): number =>
        (solid[Math.floor(450 + reach * Math.sin(angle)) * FINE + Math.floor(450 + reach * Math.cos(angle))] ?? 0) /
        255;
      // Drawn in by less than a pixel, faded over less than two, and looked up in the pixel it falls in.
      expect(at(rim(angle) - 4.2), `inside at ${degrees}°`).toBe(1);
      expect(at(rim(angle) + 2.7), `outside at ${degrees}°`).toBe(0);
    }
  });

  test('of a ring seen from a middle that is not in it is left untraced', () => {
    const mask = new Uint8Array(LOOK * LOOK);
    for (let y = 0; y < LOOK; y += 1)
      for (let x = 0; x < LOOK; x += 1) {
        const reach = Math.hypot(x - 160, y - 160);
        mask[y * LOOK + x] = reach > 90 && reach < 120 ? 1 : 0;
      }
    expect(
      maskOutline({ mask, box: { left: 40, top: 40, width: 240, height: 240 } }, { width: LOOK, height: LOOK }),
    ).toBeNull();
  });
});
