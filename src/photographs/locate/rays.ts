import type { Pixels } from './pixels.ts';
import { channelsOf } from './pixels.ts';

/** Directions looked in from the middle of a piece. */
export const RAYS = 720;

export const COS = Float64Array.from({ length: RAYS }, (_, ray) => Math.cos((2 * Math.PI * ray) / RAYS));
export const SIN = Float64Array.from({ length: RAYS }, (_, ray) => Math.sin((2 * Math.PI * ray) / RAYS));

/** How far apart the points of a ray are looked at, in pixels. */
export const STRIDE = 0.5;

/** How much the colour changes at each point of a ray, in any colour; the first point is `from` away from the middle. */
export type Profile = { readonly from: number; readonly steps: Int16Array; readonly count: number };

/** Reads the profiles of rays from a middle. The profile read last is overwritten by the next. */
export function profileReader(pixels: Pixels, middle: { x: number; y: number }, longest: number) {
  const channels = channelsOf(pixels);
  // Two pixels more on either side than are judged.
  const most = Math.ceil(longest / STRIDE) + 1;
  const colours = new Int16Array((most + 8) * 3);
  const steps = new Int16Array(most);
  return (ray: number, from: number, to: number): Profile => {
    const [cos, sin] = [COS[ray] ?? 0, SIN[ray] ?? 0];
    const count = Math.min(most, Math.ceil((to - from) / STRIDE) + 1);
    const first = from - 4 * STRIDE;
    const [x, y] = [middle.x + first * cos, middle.y + first * sin];
    walk(pixels, channels, x, y, cos * STRIDE, sin * STRIDE, count + 8, colours);
    stepsAlong(colours, count, steps);
    return { from, steps, count };
  };
}

// Two functions of their own: what is called often is made fast.

/** The colours of so many points from (x, y) on, each so far across and down from the last; beyond the picture, those of its rim. */
function walk(
  { width, height, rgb }: Pixels,
  channels: number,
  x: number,
  y: number,
  across: number,
  down: number,
  count: number,
  colours: Int16Array,
): void {
  for (let at = 0; at < count; at += 1) {
    const column = Math.min(width - 1, Math.max(0, x + at * across)) | 0;
    const row = Math.min(height - 1, Math.max(0, y + at * down)) | 0;
    const pixel = (row * width + column) * channels;
    colours[at * 3] = rgb[pixel] ?? 0;
    colours[at * 3 + 1] = rgb[pixel + 1] ?? 0;
    colours[at * 3 + 2] = rgb[pixel + 2] ?? 0;
  }
}

/** At each point, what two points after it differ from two before it, in the colour in which they differ most. */
function stepsAlong(colours: Int16Array, count: number, steps: Int16Array): void {
  for (let at = 0; at < count; at += 1) {
    let largest = 0;
    for (let colour = at * 3; colour < at * 3 + 3; colour += 1) {
      const after = (colours[colour + 18] ?? 0) + (colours[colour + 24] ?? 0);
      const before = (colours[colour + 6] ?? 0) + (colours[colour] ?? 0);
      largest = Math.max(largest, Math.abs(after - before));
    }
    steps[at] = largest;
  }
}

/** The outermost step of a profile that is sharp beside its sharpest: how far it is from the middle. Null when none is so high as `least`. */
export function outermost({ from, steps, count }: Profile, sharpEnough: number, least: number): number | null {
  let sharpest = 0;
  for (let at = 0; at < count; at += 1) sharpest = Math.max(sharpest, steps[at] ?? 0);
  if (sharpest < least) return null;
  let top = count - 1;
  while (top > 0 && (steps[top] ?? 0) < sharpEnough * sharpest) top -= 1;
  // The top of the step, not its foot; a notch in it is grain.
  for (let at = top - 1; at >= Math.max(0, top - NOTCH); at -= 1) if ((steps[at] ?? 0) > (steps[top] ?? 0)) top = at;
  return from + top * STRIDE;
}

/** How wide a notch in a step is passed over, in points of a ray. */
const NOTCH = 4;

/** How much a crest must stand out: beside the sharpest step of its ray, and above its usual one, which is grain. */
const SHARE = 0.2;
const ABOVE_GRAIN = 3;

/** Every step of a profile that stands above both its neighbourhoods, is at least so high and no grain, from within outwards. */
export function crests({ from, steps, count }: Profile, least: number): readonly number[] {
  const some = new Int16Array(Math.floor(count / 4));
  let sharpest = 0;
  for (let at = 0; at < count; at += 1) sharpest = Math.max(sharpest, steps[at] ?? 0);
  for (let at = 0; at < some.length; at += 1) some[at] = steps[at * 4] ?? 0;
  const grain = some.sort()[some.length >> 1] ?? 0;
  const enough = Math.max(least, SHARE * sharpest, Math.min(ABOVE_GRAIN * grain, 0.9 * sharpest));
  const found: number[] = [];
  for (let at = 3; at < count - 3; at += 1) {
    const step = steps[at] ?? 0;
    if (step < enough) continue;
    let isCrest = true;
    for (let beside = at - 3; beside <= at + 3; beside += 1) {
      const other = steps[beside] ?? 0;
      if (other > step || (other === step && beside < at)) isCrest = false;
    }
    if (isCrest) found.push(from + at * STRIDE);
  }
  return found;
}
