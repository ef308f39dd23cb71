import sharp from 'sharp';
import type { Box, Extent } from './pixels.ts';

/** A silhouette of one byte a pixel, and its box. */
type Silhouette = { readonly mask: Uint8Array; readonly size: Extent; readonly box: Box };
/** Where a finer picture lies in the one a piece was found in: its corner, and how many of its pixels go on one of the other's. */
type Finer = { readonly left: number; readonly top: number; readonly times: number };

// A silhouette found by its edges is ragged and lies a little outside the piece. Where its rim cannot be traced it is
// smoothed, drawn in by half of that, and faded. Parts of the piece's lesser side, but for the level of the blur at which
// the outline is drawn (a half would leave it where it was) and the steepness of the fall there.
const SMOOTH = 0.014;
const SOFT = 0.003;
const INWARD = 0.72;
const STEEP = 4;

/** How solid each pixel of a finer picture is by the found silhouette alone, one byte a pixel. */
export async function smoothed({ mask, box, size }: Silhouette, finer: Finer, fine: Extent): Promise<Uint8Array> {
  const across = Math.min(box.width, box.height);
  const silhouette = Buffer.alloc(mask.length);
  for (let at = 0; at < mask.length; at += 1) silhouette[at] = mask[at] === 1 ? 255 : 0;
  const soft = await sharp(silhouette, { raw: { ...size, channels: 1 } })
    .blur(Math.max(0.8, across * SMOOTH))
    .linear(STEEP, -255 * (STEEP * INWARD - 0.5))
    .blur(Math.max(0.5, across * SOFT))
    .resize(Math.round(size.width * finer.times), Math.round(size.height * finer.times), {
      fit: 'fill',
      kernel: 'cubic',
    })
    .toColourspace('b-w')
    .raw()
    .toBuffer({ resolveWithObject: true });
  const solid = new Uint8Array(fine.width * fine.height);
  const [left, top] = [Math.round(finer.left * finer.times), Math.round(finer.top * finer.times)];
  for (let y = 0; y < fine.height; y += 1) {
    const row = y + top;
    if (row < 0 || row >= soft.info.height) continue;
    const from = Math.max(0, -left);
    const to = Math.min(fine.width, soft.info.width - left);
    for (let x = from; x < to; x += 1) solid[y * fine.width + x] = soft.data[row * soft.info.width + x + left] ?? 0;
  }
  return solid;
}
