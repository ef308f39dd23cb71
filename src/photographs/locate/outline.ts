import type { Box } from './pixels.ts';

/** The rim of a piece as seen from its middle: how far it is in each direction, in pixels; evenly spread, the first to the right, then downwards. */
export type Outline = { readonly x: number; readonly y: number; readonly radii: Float64Array };

/** Directions in which a rim is drawn; those in which it is first sought are a quarter of them. */
export const RAYS = 720;
export const COARSE_RAYS = 180;

type Turns = { readonly cos: Float64Array; readonly sin: Float64Array };
const known = new Map<number, Turns>();

/** The cosine and sine of so many directions. */
export function turns(rays: number): Turns {
  const there = known.get(rays);
  if (there !== undefined) return there;
  const turn = (of: (angle: number) => number): Float64Array =>
    Float64Array.from({ length: rays }, (_, ray) => of((2 * Math.PI * ray) / rays));
  const made = { cos: turn(Math.cos), sin: turn(Math.sin) };
  known.set(rays, made);
  return made;
}

/** The points of an outline, in order. */
export function outlinePoints({ x, y, radii }: Outline): readonly { readonly x: number; readonly y: number }[] {
  const { cos, sin } = turns(radii.length);
  return Array.from(radii, (radius, ray) => ({ x: x + radius * (cos[ray] ?? 0), y: y + radius * (sin[ray] ?? 0) }));
}

/** The box an outline takes up. */
export function outlineBox(outline: Outline): Box {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of outlinePoints(outline)) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }
  return { left, top, width: right - left, height: bottom - top };
}

/** The rim of an ellipse or a rectangle that fills a box. */
export function drawnOutline({ left, top, width, height }: Box, shape: 'ellipse' | 'rectangle'): Outline {
  const [a, b] = [width / 2, height / 2];
  const { cos, sin } = turns(RAYS);
  const radii = Float64Array.from({ length: RAYS }, (_, ray) => {
    const [along, down] = [Math.abs(cos[ray] ?? 0), Math.abs(sin[ray] ?? 0)];
    return shape === 'ellipse' ? (a * b) / Math.hypot(b * along, a * down) : Math.min(a / along, b / down);
  });
  return { x: left + a, y: top + b, radii };
}

/** The mean distance of a rim from its middle. */
export function meanRadius({ radii }: Outline): number {
  return radii.reduce((sum, radius) => sum + radius, 0) / radii.length;
}

/** An outline in a picture whose corner lies elsewhere and that has so many pixels on one of the other's. */
export function inFiner({ x, y, radii }: Outline, left: number, top: number, times: number): Outline {
  return { x: (x - left) * times, y: (y - top) * times, radii: radii.map((radius) => radius * times) };
}

/** The same outline with so many directions. */
export function withRays({ x, y, radii }: Outline, rays: number): Outline {
  if (radii.length === rays) return { x, y, radii };
  const each = Float64Array.from({ length: rays }, (_, ray) => {
    const at = (ray * radii.length) / rays;
    const first = Math.floor(at);
    const one = radii[first] ?? 0;
    return one + ((radii[(first + 1) % radii.length] ?? 0) - one) * (at - first);
  });
  return { x, y, radii: each };
}
