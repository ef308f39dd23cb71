import type { Outline } from './outline.ts';
import { turns } from './outline.ts';
import type { Pixels } from './pixels.ts';
import { channelsOf } from './pixels.ts';

/**
 * How much speaks for a rim at each place round an outline, 0 to 1: `places` of them on each ray, the first `from` pixels
 * beyond the outline (inside it when negative), each `step` further out. It holds until the next is asked for, which is
 * written over it.
 */
export type Evidence = {
  readonly from: number;
  readonly step: number;
  readonly places: number;
  readonly at: Float32Array;
};

/**
 * Where to look round an outline: from so far to so far beyond it, in pixels, in steps. The edges of shadows are passed over
 * only near a rim: further in, a legend looks like a rim and the rim like the edge of its shadow.
 */
export type Around = {
  readonly from: number;
  readonly to: number;
  readonly step: number;
  readonly passesShadows?: boolean;
};

/** Light is taken by its logarithm, above this dark of the sensor: a shadow then changes the light and leaves the colour. */
const DARK = 12;
const LOG = Float32Array.from({ length: 256 * 8 }, (_, value) => Math.log(value / 8 + DARK));

/** Places on either side that make a sharp step, and that make the broad difference of what lies within and without. */
const SHARP = 2;
const BROAD = 9;
/** Room read beyond the places that are judged. */
const ROOM = BROAD + 1;
/** Neighbouring rays a step is evened over: a rim runs along them, grain and cloth do not. */
const BESIDE = 2;
/** How many times the usual step of the same colour, and what of it no sensor is free of. */
const ABOVE_USUAL = 3;
const LEAST_USUAL = 0.015;
/** How much the broad difference speaks, beside the step; the variance in it that is only noise; and the most it says. */
const BROADLY = 0.15;
const NOISE = 0.004;
const MOST = 6;
/** A shadow is evened over so many of the rays on either side; from when on it is one-sided, and how much of it then goes. */
const AROUND = 0.05;
const ONE_SIDED = { least: 0.08, times: 3 };
/** From when on an edge is plainly a shadow's. */
const PLAINLY = 2.5;
/** How much sooner a step of colour tells than one of light; and how a rim is forgotten from place to place outwards. */
const HUE_TELLS = 4;
const FADES = 0.97;

/**
 * Weighs each place by the step of light and colour across it, against the steps that are usual round about (so cloth,
 * grain and relief count for little), and by how what lies within differs from what lies without, against how much each
 * differs in itself (R. Fisher, Annals of Eugenics 7, 1936).
 */
export function rimEvidence(pixels: Pixels, outline: Outline, around: Around): Evidence {
  const places = Math.max(1, Math.round((around.to - around.from) / around.step) + 1);
  const { step } = around;
  const wide = places + 2 * ROOM;
  const rays = outline.radii.length;
  const colours = unrolled(pixels, outline, around.from - ROOM * step, step, wide);
  const size = rays * places;
  const [at, steps, light, hue] = [roomFor('at', size), roomFor('steps', size), roomFor('light', size), roomFor('hue', size)]; // prettier-ignore
  at.fill(0);
  hue.fill(0);
  for (const [name, colour] of colours.entries()) {
    addDifferences(colour, rays, places, steps, at);
    addSteps(evenedSteps(steps, rays, places), at, name === 0 ? light : null, hue);
  }
  for (let place = 0; place < at.length; place += 1) {
    const sum = at[place] ?? 0;
    at[place] = sum / (1 + sum);
  }
  if (around.passesShadows === true) passShadows({ at, light, hue }, rays, places);
  return { from: around.from, step, places, at };
}

/** Light, red against green and blue against green along every ray of an outline; beyond the picture, what is at its side. */
function unrolled(
  pixels: Pixels,
  { x, y, radii }: Outline,
  from: number,
  step: number,
  count: number,
): readonly Float32Array[] {
  const { cos, sin } = turns(radii.length);
  const colours = [0, 1, 2].map((colour) => roomFor(colour, radii.length * count));
  const channels = channelsOf(pixels);
  for (let ray = 0; ray < radii.length; ray += 1) {
    const [across, down] = [cos[ray] ?? 0, sin[ray] ?? 0];
    const first = (radii[ray] ?? 0) + from;
    const start = { x: x + first * across - 0.5, y: y + first * down - 0.5 };
    walk(pixels, channels, start, across * step, down * step, ray * count, count, colours);
  }
  return colours;
}

/** Room for what is measured on the way, kept from call to call: it is large, and calls are many. What was in it is left there. */
const rooms = new Map<string | number, Float32Array>();
function roomFor(name: string | number, length: number): Float32Array {
  const there = rooms.get(name);
  if (there !== undefined && there.length >= length) return there.subarray(0, length);
  const made = new Float32Array(length);
  rooms.set(name, made);
  return made;
}

// Functions of a ray: what is called often is made fast, and what loops long is not. Lists taken apart within a loop are made
// anew each time, which cost a quarter of it.

function walk(
  { width, height, rgb }: Pixels,
  channels: number,
  start: { x: number; y: number },
  across: number,
  down: number,
  into: number,
  count: number,
  [light, red, blue]: readonly Float32Array[],
): void {
  if (light === undefined || red === undefined || blue === undefined) return;
  const line = width * channels;
  const [last, lowest] = [width - 1.001, height - 1.001];
  for (let at = 0; at < count; at += 1) {
    const x = Math.min(last, Math.max(0, start.x + at * across));
    const y = Math.min(lowest, Math.max(0, start.y + at * down));
    const column = Math.trunc(x);
    const row = Math.trunc(y);
    const pixel = row * line + column * channels;
    const right = (x - column) * 8;
    const below = (y - row) * 8;
    const one = (8 - right) * (8 - below);
    const two = right * (8 - below);
    const three = (8 - right) * below;
    const four = right * below;
    const r = between(rgb, pixel, channels, line, one, two, three, four);
    const g = between(rgb, pixel + 1, channels, line, one, two, three, four);
    const b = between(rgb, pixel + 2, channels, line, one, two, three, four);
    light[into + at] = (r + g + b) / 3;
    red[into + at] = r - g;
    blue[into + at] = b - g;
  }
}

/** The logarithm of a colour between four pixels, of which each counts so many parts of 64. */
function between(
  rgb: Uint8Array,
  at: number,
  across: number,
  line: number,
  one: number,
  two: number,
  three: number,
  four: number,
): number {
  const sum =
    (rgb[at] ?? 0) * one +
    (rgb[at + across] ?? 0) * two +
    (rgb[at + line] ?? 0) * three +
    (rgb[at + line + across] ?? 0) * four;
  return LOG[Math.trunc(sum / 8 + 0.5)] ?? 0;
}

/** Adds the broad difference at every place, and notes the sharp step there, outwards less inwards. */
function addDifferences(
  colour: Float32Array,
  rays: number,
  places: number,
  steps: Float32Array,
  sums: Float32Array,
): void {
  const wide = places + 2 * ROOM;
  const [upTo, squares] = [new Float64Array(wide + 1), new Float64Array(wide + 1)];
  for (let ray = 0; ray < rays; ray += 1) {
    for (let at = 0; at < wide; at += 1) {
      const value = colour[ray * wide + at] ?? 0;
      upTo[at + 1] = (upTo[at] ?? 0) + value;
      squares[at + 1] = (squares[at] ?? 0) + value * value;
    }
    differencesOn(upTo, squares, places, ray * places, steps, sums);
  }
}

function differencesOn(
  upTo: Float64Array,
  squares: Float64Array,
  places: number,
  into: number,
  steps: Float32Array,
  sums: Float32Array,
): void {
  for (let place = 0; place < places; place += 1) {
    const at = place + ROOM;
    const here = upTo[at] ?? 0;
    const next = upTo[at + 1] ?? 0;
    steps[into + place] = ((upTo[at + 1 + SHARP] ?? 0) - next - here + (upTo[at - SHARP] ?? 0)) / SHARP;
    const without = ((upTo[at + 1 + BROAD] ?? 0) - next) / BROAD;
    const within = (here - (upTo[at - BROAD] ?? 0)) / BROAD;
    const spread =
      ((squares[at + 1 + BROAD] ?? 0) - (squares[at + 1] ?? 0) + (squares[at] ?? 0) - (squares[at - BROAD] ?? 0)) /
        BROAD -
      without * without -
      within * within;
    const apart = (without - within) ** 2 / (Math.max(0, spread) + NOISE);
    sums[into + place] = (sums[into + place] ?? 0) + BROADLY * Math.min(MOST, apart);
  }
}

/** The steps of one colour, evened along the rim, as times of what is usual. */
function evenedSteps(steps: Float32Array, rays: number, places: number): Float32Array {
  const evened = roomFor('evened', steps.length);
  for (let ray = 0; ray < rays; ray += 1) {
    const one = (ray + rays - 2) % rays;
    const two = (ray + rays - 1) % rays;
    const four = (ray + 1) % rays;
    const five = (ray + 2) % rays;
    addRows(steps, one * places, two * places, ray * places, four * places, five * places, evened, places);
  }
  const some = roomFor('some', Math.ceil(steps.length / 7));
  for (let at = 0; at < some.length; at += 1) some[at] = Math.abs(evened[at * 7] ?? 0);
  const usual = (some.sort()[some.length >> 1] ?? 0) / (2 * BESIDE + 1) + LEAST_USUAL;
  const scale = 1 / (ABOVE_USUAL * usual * (2 * BESIDE + 1));
  for (let at = 0; at < evened.length; at += 1) evened[at] = (evened[at] ?? 0) * scale;
  return evened;
}

/** The sum of five rows, place by place. */
function addRows(
  from: Float32Array,
  one: number,
  two: number,
  three: number,
  four: number,
  five: number,
  into: Float32Array,
  count: number,
): void {
  for (let place = 0; place < count; place += 1) {
    const first = Math.fround((from[one + place] ?? 0) + (from[two + place] ?? 0));
    const second = Math.fround(Math.fround(first + (from[three + place] ?? 0)) + (from[four + place] ?? 0));
    into[three + place] = second + (from[five + place] ?? 0);
  }
}

/** Adds the squares of the steps of one colour to what speaks for a rim, and notes those of light, or adds up those of hue. */
function addSteps(even: Float32Array, at: Float32Array, light: Float32Array | null, hue: Float32Array): void {
  light?.set(even);
  for (let place = 0; place < at.length; place += 1) {
    const step = even[place] ?? 0;
    at[place] = (at[place] ?? 0) + step * step;
    if (light === null) hue[place] = (hue[place] ?? 0) + step * step;
  }
}

type Seen = { readonly [name in 'at' | 'light' | 'hue']: Float32Array };

/**
 * Takes away what speaks for the outer edge of a shadow: there it grows lighter outwards, and no other colour, and further
 * in it had grown darker, or of another colour, which is the rim. A shadow lies on one side: what is so all round is a lip.
 */
function passShadows(seen: Seen, rays: number, places: number): void {
  const shady = new Float32Array(rays);
  for (let ray = 0; ray < rays; ray += 1) shady[ray] = shadowOn(seen, ray * places, places, 0);
  const around = Math.round(rays * AROUND);
  const even = shady.map((_, ray) => {
    let sum = 0;
    for (let beside = -around; beside <= around; beside += 1) sum += shady[(ray + beside + rays) % rays] ?? 0;
    return sum / (2 * around + 1);
  });
  for (let ray = 0; ray < rays; ray += 1) {
    const oneSided = Math.max(0, (even[ray] ?? 0) - (even[(ray + (rays >> 1)) % rays] ?? 0));
    if (oneSided > ONE_SIDED.least) shadowOn(seen, ray * places, places, Math.min(1, oneSided * ONE_SIDED.times));
  }
}

/** The most that speaks for the edge of a shadow on a ray; so much of that is taken from what speaks for a rim. */
function shadowOn({ at, light, hue }: Seen, from: number, places: number, taken: number): number {
  let within = 0;
  let most = 0;
  for (let place = from; place < from + places; place += 1) {
    const here = at[place] ?? 0;
    const step = light[place] ?? 0;
    const other = hue[place] ?? 0;
    const square = step * step;
    if (step > 0) {
      const isEdge = within * (square / (square + HUE_TELLS * other + 0.05));
      most = Math.max(most, here * isEdge);
      at[place] = here * (1 - taken * Math.min(1, PLAINLY * isEdge));
    }
    const isRim = step < 0 ? here : here * (other / (other + square + 0.05));
    within = Math.max(within * FADES, isRim);
  }
  return most;
}
