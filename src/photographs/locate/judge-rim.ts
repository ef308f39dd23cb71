import type { Outline } from './outline.ts';
import { meanRadius, turns } from './outline.ts';
import type { Evidence } from './rim-evidence.ts';
import { rimEvidence } from './rim-evidence.ts';
import type { Pixels } from './pixels.ts';
import { channelsOf } from './pixels.ts';

/** What speaks for and against a rim, each 0 to 1. */
export type RimJudgement = {
  /** The mean evidence along it. */
  readonly support: number;
  /** How much of it is covered, as by a finger: sixteenths in which no rim is seen, and both sides look alike and unlike the rest of the board. */
  readonly covered: number;
  /** The mean evidence further out, where there is no rim: what cloth or grain would give by chance. */
  readonly chance: number;
  /** How unlike the colours just within and just without are: 0 the same, 1 nothing in common. */
  readonly unlike: number;
  /** How much of it lies outside the picture. */
  readonly outside: number;
};

/** Colours are counted in steps of so much of their logarithm: light coarsely, hue finely. */
const LIGHT_STEP = 0.2;
const HUE_STEP = 0.085;
const DARK = 12;
/** Where colours are read, in parts of the way to the rim. */
const WITHIN = [0.7, 0.75, 0.8, 0.85, 0.9, 0.95];
const WITHOUT = [1.06, 1.11, 1.16, 1.21, 1.26, 1.31];
const CHANCE = { from: 0.1, to: 0.4 };
/** A sixteenth is covered when so much less than the mean speaks for it, its sides are so much less unlike, and what lies without is so unlike the rest. */
const PARTS = 16;
const COVERED = { support: 0.6, unlike: 0.8, rest: 0.6 };

/** Judges an outline in the picture it was found in. */
export function judgeRim(pixels: Pixels, outline: Outline): RimJudgement {
  const mean = meanRadius(outline);
  const step = Math.max(0.5, mean / 64);
  const on = alongRim(rimEvidence(pixels, outline, { from: -2 * step, to: 2 * step, step }));
  const out = rimEvidence(pixels, outline, { from: CHANCE.from * mean, to: CHANCE.to * mean, step: 2 * step });
  const support = average(on);
  const rays = on.length;
  const board = coloursAt(pixels, outline, WITHOUT, 0, rays);
  const unlike = unlikeness(coloursAt(pixels, outline, WITHIN, 0, rays), board);
  let covered = 0;
  for (let part = 0; part < PARTS; part += 1) {
    const [from, to] = [Math.round((part * rays) / PARTS), Math.round(((part + 1) * rays) / PARTS)];
    if (average(on.subarray(from, to)) >= COVERED.support * support) continue;
    const without = coloursAt(pixels, outline, WITHOUT, from, to);
    const isAlike = unlikeness(coloursAt(pixels, outline, WITHIN, from, to), without) < COVERED.unlike * unlike;
    if (isAlike && unlikeness(without, board) > COVERED.rest) covered += 1 / PARTS;
  }
  return { support, covered, chance: average(out.at), unlike, outside: shareOutside(pixels, outline) };
}

/** The most that speaks for a rim on each ray. */
export function alongRim({ at, places }: Evidence): Float32Array {
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

function coloursAt(
  pixels: Pixels,
  { x, y, radii }: Outline,
  parts: readonly number[],
  from: number,
  to: number,
): Colours {
  const { cos, sin } = turns(radii.length);
  const channels = channelsOf(pixels);
  const times = new Map<number, number>();
  let all = 0;
  for (const part of parts)
    for (let ray = from; ray < to; ray += 1) {
      const column = Math.floor(x + part * (radii[ray] ?? 0) * (cos[ray] ?? 0));
      const row = Math.floor(y + part * (radii[ray] ?? 0) * (sin[ray] ?? 0));
      if (column < 0 || row < 0 || column >= pixels.width || row >= pixels.height) continue;
      const pixel = (row * pixels.width + column) * channels;
      const [r, g, b] = [0, 1, 2].map((colour) => Math.log((pixels.rgb[pixel + colour] ?? 0) + DARK));
      const colour = colourName(r ?? 0, g ?? 0, b ?? 0);
      times.set(colour, (times.get(colour) ?? 0) + 1);
      all += 1;
    }
  return { times, all };
}

function colourName(r: number, g: number, b: number): number {
  const light = Math.round((r + g + b) / 3 / LIGHT_STEP);
  const red = Math.round((r - g) / HUE_STEP) + 50;
  const blue = Math.round((b - g) / HUE_STEP) + 50;
  return (light * 100 + red) * 100 + blue;
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
