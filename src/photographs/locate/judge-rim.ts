import type { Outline } from './outline.ts';
import { meanRadius, turns } from './outline.ts';
import { rimEvidence } from './rim-evidence.ts';
import type { Pixels } from './pixels.ts';
import { channelsOf } from './pixels.ts';

/** What speaks for and against a rim, each 0 to 1. */
export type RimJudgement = {
  /** How unlike the colours just within and just without are: 0 the same, 1 nothing in common. */
  readonly unlike: number;
  /** How much of it lies outside the picture. */
  readonly outside: number;
};

/** Colours are counted in steps of so much of their logarithm: light coarsely, hue finely. */
const LIGHT_STEP = 0.2;
const HUE_STEP = 0.085;
const DARK = 12;
const LOG = Float32Array.from({ length: 256 }, (_, value) => Math.log(value + DARK));
/** Where colours are read, in parts of the way to the rim. */
const WITHIN = [0.7, 0.75, 0.8, 0.85, 0.9, 0.95];
const WITHOUT = [1.06, 1.11, 1.16, 1.21, 1.26, 1.31];
const CHANCE = { from: 0.1, to: 0.4 };
/**
 * A part of the rim is covered when it shows less of a rim than the whole does, when both its sides are much nearer to each
 * other than is usual along this rim, and when what lies without is that far from the rest of the board. A bright piece lends
 * its colour to the shadow beside it: both sides must be the same, or within be no colour of the piece.
 */
const PARTS = 32;
const COVERED = { support: 0.8, alike: 0.5, apart: 0.35, least: 2.5, same: 1.2, other: 2.2 };
const SAME_HUE = 1.5;
/** How far apart two lights are one, as a logarithm: grain and shading of paper stay within it. */
const ONE_LIGHT = 0.07;
const JUST = { within: [0.87, 0.92], without: [1.09, 1.15] };

/** Judges an outline in the picture it was found in. */
export function judgeRim(pixels: Pixels, outline: Outline): RimJudgement {
  const unlike = unlikeness(coloursAt(pixels, outline, WITHIN), coloursAt(pixels, outline, WITHOUT));
  return { unlike, outside: shareOutside(pixels, outline) };
}

/** The mean evidence further out, where there is no rim: what cloth or grain would give by chance. */
export function chanceAround(pixels: Pixels, outline: Outline): number {
  const mean = meanRadius(outline);
  const step = Math.max(1, mean / 32);
  return average(rimEvidence(pixels, outline, { from: CHANCE.from * mean, to: CHANCE.to * mean, step }).at);
}

/** How much of a rim is covered by something that lies on the piece and beyond it, as a finger does: 0 to 1. */
export function shareCovered(pixels: Pixels, outline: Outline): number {
  const on = alongRim(pixels, outline);
  const support = average(on);
  const rays = on.length;
  const ends = Array.from({ length: PARTS + 1 }, (_, part) => Math.round((part * rays) / PARTS));
  const parts = Array.from({ length: PARTS }, (_, part) => {
    const [from, to] = [ends[part] ?? 0, ends[part + 1] ?? rays];
    return {
      within: meanColour(pixels, outline, JUST.within, from, to),
      without: meanColour(pixels, outline, JUST.without, from, to),
      shown: average(on.subarray(from, to)),
    };
  });
  const board = [0, 1, 2].map((colour) => middleOf(parts.map(({ without }) => without[colour] ?? 0)));
  const own = [0, 1, 2].map((colour) => middleOf(parts.map(({ within }) => within[colour] ?? 0)));
  const across = parts.map(({ within, without }) => apart(within, without));
  const usual = middleOf(across);
  const covered = parts.map(
    ({ within, without, shown }, part) =>
      shown < COVERED.support * support &&
      (across[part] ?? 0) < COVERED.alike * usual &&
      apart(without, board) > Math.max(COVERED.least, COVERED.apart * usual) &&
      !isShade(without, board) &&
      ((across[part] ?? 0) < COVERED.same || hueApart(within, own) > COVERED.other),
  );
  // One alone is chance.
  const many = covered.filter(
    (is, part) => is && (covered[(part + 1) % PARTS] === true || covered.at(part - 1) === true),
  );
  return many.length / PARTS;
}

/** Whether a colour is a darker one of the same hue: a shadow covers nothing. */
function isShade([light = 0, red = 0, blue = 0]: readonly number[], [lit = 0, ...hue]: readonly number[]): boolean {
  return light < lit && hueApart([light, red, blue], [lit, ...hue]) < SAME_HUE;
}

/** How far two colours are apart, in the steps colours are counted in. */
function apart(one: readonly number[], other: readonly number[]): number {
  const [light, red, blue] = [0, 1, 2].map((colour) => (one[colour] ?? 0) - (other[colour] ?? 0));
  return Math.hypot((light ?? 0) / LIGHT_STEP, (red ?? 0) / HUE_STEP, (blue ?? 0) / HUE_STEP);
}

function hueApart([, ...one]: readonly number[], [, ...other]: readonly number[]): number {
  return apart([0, ...one], [0, ...other]);
}

function middleOf(values: readonly number[]): number {
  return values.toSorted((one, other) => one - other)[values.length >> 1] ?? 0;
}

/**
 * How uneven the light is at these parts of the way to a rim, all round: its usual step from one ray to the next but one,
 * and its usual departure from the mean, of its logarithm.
 */
export function unevenness(
  pixels: Pixels,
  outline: Outline,
  parts: readonly number[],
): { readonly step: number; readonly spread: number } {
  const lights: number[] = [];
  eachColour(pixels, outline, parts, 0, outline.radii.length, (light) => lights.push(light));
  const mean = lights.reduce((sum, light) => sum + light, 0) / lights.length;
  let [steps, squares] = [0, 0];
  for (const [at, light] of lights.entries()) {
    steps += Math.abs(light - (lights[at - 2] ?? light));
    squares += (light - mean) ** 2;
  }
  return { step: steps / lights.length, spread: Math.sqrt(squares / lights.length) };
}

/** The middle light at these parts of the way to a rim, as a logarithm, and the share that is nearly as light. */
export function shareOfOneLight(
  pixels: Pixels,
  outline: Outline,
  parts: readonly number[],
): { readonly share: number; readonly light: number } {
  const lights: number[] = [];
  eachColour(pixels, outline, parts, 0, outline.radii.length, (light) => lights.push(light));
  const light = middleOf(lights);
  const near = lights.filter((one) => Math.abs(one - light) < ONE_LIGHT);
  return { share: near.length / lights.length, light };
}

/** The most that speaks for a rim on each ray. */
function alongRim(pixels: Pixels, outline: Outline): Float32Array {
  const step = Math.max(0.5, meanRadius(outline) / 64);
  const { at, places } = rimEvidence(pixels, outline, { from: -2 * step, to: 2 * step, step });
  return Float32Array.from({ length: at.length / places }, (_, ray) =>
    Math.max(...at.subarray(ray * places, (ray + 1) * places)),
  );
}

function average(values: Float32Array): number {
  let sum = 0;
  for (const value of values) sum += value;
  return sum / values.length;
}

type Colours = { readonly times: ReadonlyMap<number, number>; readonly all: number };

/** One less the Bhattacharyya coefficient of two lots of colours (Bulletin of the Calcutta Mathematical Society 35, 1943). */
function unlikeness(one: Colours, other: Colours): number {
  if (one.all === 0 || other.all === 0) return 0;
  let common = 0;
  for (const [colour, times] of one.times)
    common += Math.sqrt((times / one.all) * ((other.times.get(colour) ?? 0) / other.all));
  return 1 - common;
}

/** Every colour at these parts of the way to the rim, on these rays: light, red against green, blue against green. */
function eachColour(
  pixels: Pixels,
  { x, y, radii }: Outline,
  parts: readonly number[],
  from: number,
  to: number,
  see: (light: number, red: number, blue: number) => void,
): void {
  const { cos, sin } = turns(radii.length);
  const channels = channelsOf(pixels);
  for (const part of parts)
    for (let ray = from; ray < to; ray += 1) {
      const column = Math.floor(x + part * (radii[ray] ?? 0) * (cos[ray] ?? 0));
      const row = Math.floor(y + part * (radii[ray] ?? 0) * (sin[ray] ?? 0));
      if (column < 0 || row < 0 || column >= pixels.width || row >= pixels.height) continue;
      const pixel = (row * pixels.width + column) * channels;
      const r = LOG[pixels.rgb[pixel] ?? 0] ?? 0;
      const g = LOG[pixels.rgb[pixel + 1] ?? 0] ?? 0;
      const b = LOG[pixels.rgb[pixel + 2] ?? 0] ?? 0;
      see((r + g + b) / 3, r - g, b - g);
    }
}

function meanColour(
  pixels: Pixels,
  outline: Outline,
  parts: readonly number[],
  from: number,
  to: number,
): readonly number[] {
  let [light, red, blue, all] = [0, 0, 0, 0];
  eachColour(pixels, outline, parts, from, to, (l, r, b) => {
    light += l;
    red += r;
    blue += b;
    all += 1;
  });
  return [light, red, blue].map((sum) => sum / Math.max(1, all));
}

function coloursAt(pixels: Pixels, outline: Outline, parts: readonly number[]): Colours {
  const times = new Map<number, number>();
  let all = 0;
  eachColour(pixels, outline, parts, 0, outline.radii.length, (light, red, blue) => {
    const colour =
      (Math.round(light / LIGHT_STEP) * 100 + Math.round(red / HUE_STEP) + 50) * 100 + Math.round(blue / HUE_STEP) + 50;
    times.set(colour, (times.get(colour) ?? 0) + 1);
    all += 1;
  });
  return { times, all };
}

function shareOutside({ width, height }: Pixels, { x, y, radii }: Outline): number {
  const { cos, sin } = turns(radii.length);
  let out = 0;
  for (let ray = 0; ray < radii.length; ray += 1) {
    const px = x + (radii[ray] ?? 0) * (cos[ray] ?? 0);
    const py = y + (radii[ray] ?? 0) * (sin[ray] ?? 0);
    if (px < 0.5 || py < 0.5 || px > width - 0.5 || py > height - 0.5) out += 1;
  }
  return out / radii.length;
}
