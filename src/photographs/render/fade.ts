import sharp from 'sharp';
import type { Outline } from '../locate/outline.ts';
import { RAYS } from '../locate/outline.ts';
import type { Box, Extent } from '../locate/pixels.ts';

/** How wide the rim fades, in pixels. */
const RIM = 1.6;

/**
 * How solid each pixel of a picture is, one byte a pixel: the piece whole, the board gone, the rim between them.
 * The outline is in the picture's own pixels.
 */
export function solidityOf({ x, y, radii }: Outline, { width, height }: Extent): Uint8Array {
  const solid = new Uint8Array(width * height);
  // A ray beyond the last is the first again.
  const around = Float64Array.from({ length: RAYS + 2 }, (_, ray) => radii[ray % RAYS] ?? 0);
  let [least, most] = [Infinity, 0];
  for (const radius of radii) [least, most] = [Math.min(least, radius), Math.max(most, radius)];
  const [whole, none] = [Math.max(0, least - RIM), most + RIM];
  for (let row = 0; row < height; row += 1) {
    const dy = row + 0.5 - y;
    if (Math.abs(dy) >= none) continue;
    const outer = Math.sqrt(none * none - dy * dy);
    const inner = Math.abs(dy) < whole ? Math.sqrt(whole * whole - dy * dy) : 0;
    const [from, to] = [Math.max(0, Math.floor(x - outer)), Math.min(width, Math.ceil(x + outer))];
    const [solidFrom, solidTo] = [Math.max(from, Math.ceil(x - inner)), Math.min(to, Math.floor(x + inner))];
    const start = row * width;
    if (solidTo > solidFrom) {
      fadeRow(solid, start, from, solidFrom, x, dy, around);
      solid.fill(255, start + solidFrom, start + solidTo);
      fadeRow(solid, start, solidTo, to, x, dy, around);
    } else fadeRow(solid, start, from, to, x, dy, around);
  }
  return solid;
}

/** The rim in a part of one row: a function of its own, for what is called often is made fast, and what loops long is not. */
function fadeRow(
  solid: Uint8Array,
  start: number,
  from: number,
  to: number,
  x: number,
  dy: number,
  around: Float64Array,
): void {
  for (let column = from; column < to; column += 1) {
    const dx = column + 0.5 - x;
    const turn = turnOf(dx, dy);
    const ray = Math.floor(turn);
    const one = around[ray] ?? 0;
    const rim = one + ((around[ray + 1] ?? 0) - one) * (turn - ray);
    const share = (rim - Math.sqrt(dx * dx + dy * dy)) / RIM + 0.5;
    solid[start + column] = share >= 1 ? 255 : share <= 0 ? 0 : Math.round(255 * share);
  }
}

/** Rays from the first to each slope between nothing and one, so finely that the next ray is never taken for it. */
const SLOPES = 4096;
const TURNS = Float64Array.from(
  { length: SLOPES + 1 },
  (_, slope) => (Math.atan(slope / SLOPES) / (2 * Math.PI)) * RAYS,
);

/** The direction of a point seen from the middle, in rays: 0 to the right, a quarter of them downwards. Looked up: this is asked of every pixel of the rim. */
function turnOf(dx: number, dy: number): number {
  const [wide, high] = [Math.abs(dx), Math.abs(dy)];
  const isSteep = high > wide;
  const slope = wide === high ? 1 : isSteep ? wide / high : high / wide;
  const near = TURNS[Math.round(slope * SLOPES)] ?? 0;
  const quarter = isSteep ? RAYS / 4 - near : near;
  const half = dx < 0 ? RAYS / 2 - quarter : quarter;
  return dy < 0 ? RAYS - half : half;
}

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
