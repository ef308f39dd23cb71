import type { FoundPiece, Pixels } from './find-piece.ts';

/** The rim of a piece as seen from its middle: how far it is in each direction, in pixels of the picture it was traced in. */
export type Outline = { readonly x: number; readonly y: number; readonly radii: Float64Array };

/** Directions looked in. */
const RAYS = 1080;
/** How far inside the found silhouette the rim is sought, as a part of the usual way to it, and how far outside in pixels. */
const INSIDE = 0.075;
const OUTSIDE = 2;
/** How sharp a step must be beside the sharpest on its ray to be the rim, when it lies further out. */
const SHARP_ENOUGH = 0.5;
/** Rays on either side that a ray is held against; and that it is then evened with. */
const NEIGHBOURS = 9;
const EVENED = 3;
/** Drawn in by so much, in pixels, so that no hair of the board comes along. */
const INWARD = 0.8;
/** The most, as a part of the silhouette, that may differ when it is seen from its middle; more is no shape for this. */
const MOST_ODD = 0.04;

/**
 * Traces the rim of a found piece in a finer picture than it was found in: along each ray the outermost sharp step of
 * colour near the silhouette (a shadow's is soft), held against its neighbours so that no letter or speck pulls it in.
 * Null when the piece is not a shape whose whole rim can be seen from its middle.
 */
export function outlineOf(
  fine: Pixels,
  found: FoundPiece,
  look: { readonly width: number; readonly height: number },
): Outline | null {
  const times = fine.width / look.width;
  const middle = middleOf(found.mask, look.width);
  const coarse = Float64Array.from(
    { length: RAYS },
    (_, ray) => reachOf(found.mask, look, middle, angleOf(ray)) * times,
  );
  if (oddness(coarse, found.mask, times) > MOST_ODD) return null;
  const [x, y] = [(middle.x + 0.5) * times, (middle.y + 0.5) * times];
  const usual = coarse.toSorted()[RAYS / 2] ?? 0;
  const traced = coarse.map((reach, ray) => rimOn(fine, { x, y }, angleOf(ray), reach - INSIDE * usual, reach));
  return { x, y, radii: evened(held(traced)).map((radius) => radius - INWARD) };
}

/** How solid a point is, 0 to 1: the piece whole, the rim over the width of `soft`. In pixels of the traced picture. */
export function solidity({ x, y, radii }: Outline, px: number, py: number, soft: number): number {
  const [dx, dy] = [px - x, py - y];
  const turn = ((Math.atan2(dy, dx) / (2 * Math.PI) + 1) % 1) * RAYS;
  const ray = Math.floor(turn);
  const [one, next] = [radii[ray % RAYS] ?? 0, radii[(ray + 1) % RAYS] ?? 0];
  const rim = one + (next - one) * (turn - ray);
  return Math.min(1, Math.max(0, (rim - Math.hypot(dx, dy)) / soft + 0.5));
}

function angleOf(ray: number): number {
  return (2 * Math.PI * ray) / RAYS;
}

function middleOf(mask: Uint8Array, width: number): { x: number; y: number } {
  let [x, y, count] = [0, 0, 0];
  for (const [at, on] of mask.entries()) {
    if (on !== 1) continue;
    x += at % width;
    y += Math.floor(at / width);
    count += 1;
  }
  return { x: x / count, y: y / count };
}

/** How far the silhouette reaches on a ray, in its own pixels. */
function reachOf(
  mask: Uint8Array,
  look: { width: number; height: number },
  from: { x: number; y: number },
  angle: number,
): number {
  const longest = Math.hypot(look.width, look.height);
  let last = 0;
  for (let reach = 0; reach < longest; reach += 0.5) {
    const x = Math.round(from.x + reach * Math.cos(angle));
    const y = Math.round(from.y + reach * Math.sin(angle));
    if (x < 0 || y < 0 || x >= look.width || y >= look.height) break;
    if (mask[y * look.width + x] === 1) last = reach;
  }
  return last;
}

/** How much larger the silhouette is when everything between its middle and its farthest rim is taken into it. */
function oddness(reaches: Float64Array, mask: Uint8Array, times: number): number {
  const seen = reaches.reduce((sum, reach) => sum + (Math.PI / RAYS) * (reach / times + 0.25) ** 2, 0);
  const whole = mask.reduce((sum, on) => sum + on, 0);
  return Math.abs(seen - whole) / whole;
}

/** The outermost sharp step on a ray, from `inner` to a little outside `outer`. */
function rimOn(fine: Pixels, from: { x: number; y: number }, angle: number, inner: number, outer: number): number {
  const steps: { at: number; step: number }[] = [];
  for (let at = inner; at <= outer + OUTSIDE; at += 0.5) steps.push({ at, step: stepAt(fine, from, angle, at) });
  const sharpest = Math.max(...steps.map(({ step }) => step));
  const sharp = steps.findLastIndex(({ step }) => step >= SHARP_ENOUGH * sharpest);
  // The top of the outermost step, not its foot.
  let top = sharp;
  while (top > 0 && (steps[top - 1]?.step ?? 0) > (steps[top]?.step ?? 0)) top -= 1;
  return steps[top]?.at ?? outer;
}

/** How much the colour changes across a point of a ray. */
function stepAt({ width, height, rgb }: Pixels, from: { x: number; y: number }, angle: number, at: number): number {
  const colour = (reach: number, channel: number): number => {
    const x = Math.min(width - 1, Math.max(0, Math.round(from.x + reach * Math.cos(angle))));
    const y = Math.min(height - 1, Math.max(0, Math.round(from.y + reach * Math.sin(angle))));
    return rgb[(y * width + x) * 3 + channel] ?? 0;
  };
  const across = (channel: number): number =>
    Math.abs(colour(at + 1, channel) + colour(at + 2, channel) - colour(at - 1, channel) - colour(at - 2, channel));
  return Math.max(across(0), across(1), across(2));
}

/** Each radius replaced by the middle one of its neighbours. */
function held(radii: Float64Array): Float64Array {
  return radii.map((_, ray) => {
    const around = Array.from(
      { length: 2 * NEIGHBOURS + 1 },
      (__, at) => radii[(ray + at - NEIGHBOURS + RAYS) % RAYS] ?? 0,
    );
    return around.sort((a, b) => a - b)[NEIGHBOURS] ?? 0;
  });
}

function evened(radii: Float64Array): Float64Array {
  return radii.map((_, ray) => {
    let sum = 0;
    for (let at = -EVENED; at <= EVENED; at += 1) sum += radii[(ray + at + RAYS) % RAYS] ?? 0;
    return sum / (2 * EVENED + 1);
  });
}
