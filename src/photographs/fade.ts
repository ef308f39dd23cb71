import sharp from 'sharp';
import type { FoundPiece, Pixels } from './find-piece.ts';
import { outlineOf, solidity } from './outline.ts';

type Size = { readonly width: number; readonly height: number };

// A silhouette found by its edges is ragged and lies a little outside the piece. Where its rim cannot be traced it is
// smoothed, drawn in by half of that, and faded. Parts of the piece's lesser side, but for the level of the blur at which
// the outline is drawn (a half would leave it where it was) and the steepness of the fall there.
const SMOOTH = 0.014;
const SOFT = 0.003;
const INWARD = 0.72;
const STEEP = 4;

/** How wide the rim fades where it was traced, in pixels of the finer picture. */
const RIM = 1.6;

/**
 * How solid each pixel of a photograph is, one byte a pixel at its full size: the piece whole, the board faded out.
 * `found` is in pixels of `look`; `fine` is a larger copy in which the rim is traced.
 */
export async function solidityOf(found: FoundPiece, look: Size, fine: Pixels, full: Size): Promise<Buffer> {
  const outline = outlineOf(fine, found, look);
  if (outline === null) return enlarged(await smoothed(found, look), look, full);
  const solid = Buffer.alloc(fine.width * fine.height);
  for (let y = 0; y < fine.height; y += 1) {
    for (let x = 0; x < fine.width; x += 1) {
      solid[y * fine.width + x] = Math.round(255 * solidity(outline, x + 0.5, y + 0.5, RIM));
    }
  }
  return enlarged(solid, fine, full);
}

function smoothed({ box, mask }: FoundPiece, look: Size): Promise<Buffer> {
  const across = Math.min(box.width, box.height);
  return sharp(Buffer.from(mask.map((on) => (on === 1 ? 255 : 0))), { raw: { ...look, channels: 1 } })
    .blur(Math.max(0.8, across * SMOOTH))
    .linear(STEEP, -255 * (STEEP * INWARD - 0.5))
    .blur(Math.max(0.5, across * SOFT))
    .toColourspace('b-w')
    .raw()
    .toBuffer();
}

function enlarged(solid: Buffer, { width, height }: Size, full: Size): Promise<Buffer> {
  return sharp(solid, { raw: { width, height, channels: 1 } })
    .resize(full.width, full.height, { fit: 'fill', kernel: 'cubic' })
    .toColourspace('b-w')
    .raw()
    .toBuffer();
}
