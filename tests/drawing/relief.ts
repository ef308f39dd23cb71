import sharp from 'sharp';
import { blank, blurred, depthWithin, RADIUS, SIDE } from './field.ts';
import type { Field } from './field.ts';

/** One thing cut into a die: what, how high it stands on the piece (in pixels of the work), how round its edge is. */
export type Layer = {
  readonly draw: string;
  readonly height: number;
  /** How far in from its edge it still rises, in the die's units. Small is sharp, large is a dome. */
  readonly round?: number;
  /** Without any edge of its own: a swelling or a hollow, as of a cheek. `round` is then how far it spreads. */
  readonly soft?: boolean;
  /** `sink` cuts into what is there; `over` first clears what lies under it. */
  readonly mode?: 'raise' | 'sink' | 'over';
};

/** Where a die met the flan: moved (in the die's units), turned (degrees), larger or smaller than the flan. */
export type Strike = { readonly x: number; readonly y: number; readonly turn: number; readonly scale: number };

/** A drawing as a mask from 0 to 1. */
export async function masked(draw: string, { x, y, turn, scale }: Strike): Promise<Field> {
  const unit = (RADIUS / 500) * scale;
  const transform = `translate(${SIDE / 2 + (x * RADIUS) / 500} ${SIDE / 2 + (y * RADIUS) / 500}) rotate(${turn}) scale(${unit})`;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${SIDE}" height="${SIDE}"><rect width="${SIDE}" height="${SIDE}" fill="#000"/><g fill="#fff" transform="${transform}">${draw}</g></svg>`;
  const { data } = await sharp(Buffer.from(svg)).extractChannel(0).raw().toBuffer({ resolveWithObject: true });
  const mask = blank();
  for (let at = 0; at < mask.length; at += 1) mask[at] = (data[at] ?? 0) / 255;
  return mask;
}

/** From 0 at the edge of a mask to 1 where it is `round` pixels deep, curved like a quarter circle. */
function domed(mask: Field, round: number): Field {
  const depth = depthWithin(mask);
  const out = blank();
  for (let at = 0; at < out.length; at += 1) {
    const part = Math.min(1, (depth[at] ?? 0) / round);
    out[at] = Math.sqrt(1 - (1 - part) * (1 - part));
  }
  if (round < 14) return out;
  // A wide dome shows the ridges of its skeleton; smooth those, but keep the edge.
  const smooth = blurred(out, round * 0.16);
  for (let at = 0; at < out.length; at += 1) {
    const edge = Math.min(1, (depth[at] ?? 0) / 7);
    out[at] = (smooth[at] ?? 0) * Math.sqrt(1 - (1 - edge) * (1 - edge));
  }
  return out;
}

/** The relief a die leaves on a perfect flan. */
export async function struck(layers: readonly Layer[], strike: Strike): Promise<Field> {
  const relief = blank();
  for (const layer of layers) {
    const mask = await masked(layer.draw, strike);
    const round = ((layer.round ?? 7) * RADIUS) / 500;
    const dome = layer.soft === true ? blurred(mask, round * strike.scale * 0.5) : domed(mask, round * strike.scale);
    const clear = layer.mode === 'over' ? blurred(mask, 1.5) : null;
    const height = layer.mode === 'sink' ? -layer.height : layer.height;
    for (let at = 0; at < relief.length; at += 1) {
      const below = (relief[at] ?? 0) * (clear === null ? 1 : 1 - (clear[at] ?? 0));
      relief[at] = below + height * (dome[at] ?? 0);
    }
  }
  // A punch has no perfectly sharp corner, and a pixel's own corners must not show.
  return blurred(relief, 0.9);
}
