import type { Outline } from './outline.ts';
import { meanRadius, RAYS, turns, withRays } from './outline.ts';
import type { Pixels } from './pixels.ts';
import type { Evidence } from './rim-evidence.ts';
import { rimEvidence } from './rim-evidence.ts';

/**
 * The closed path round an outline with the most evidence on it, one place a ray, at most one place further in or out than
 * on the ray before: dynamic programming (R. Bellman, 1957) over two turns, of which the middle is taken, so that it closes.
 * `bend` is what a step in or out costs.
 */
export function bestPath({ at, places }: Evidence, bend: number): Int16Array {
  const rays = at.length / places;
  const length = 2 * rays;
  const came = new Int8Array(length * places);
  let sums = new Float32Array(places);
  let next = new Float32Array(places);
  for (let turn = 0; turn < length; turn += 1) {
    stepOn(sums, next, at, (turn % rays) * places, came, turn * places, bend);
    [sums, next] = [next, sums];
  }
  let place = 0;
  for (let other = 1; other < places; other += 1) if ((sums[other] ?? 0) > (sums[place] ?? 0)) place = other;
  const path = new Int16Array(rays);
  for (let turn = length - 1; turn >= 0; turn -= 1) {
    if (turn >= rays / 2 && turn < rays / 2 + rays) path[turn % rays] = place;
    place += came[turn * places + place] ?? 0;
  }
  return path;
}

/** The best sums one ray further, and from where each of them came. */
function stepOn(
  sums: Float32Array,
  next: Float32Array,
  evidence: Float32Array,
  from: number,
  came: Int8Array,
  start: number,
  bend: number,
): void {
  const last = sums.length - 1;
  for (let place = 0; place <= last; place += 1) {
    let best = sums[place] ?? 0;
    let turn = 0;
    const inner = place > 0 ? (sums[place - 1] ?? 0) - bend : -Infinity;
    const outer = place < last ? (sums[place + 1] ?? 0) - bend : -Infinity;
    if (inner > best) {
      best = inner;
      turn = -1;
    }
    if (outer > best) {
      best = outer;
      turn = 1;
    }
    next[place] = best + (evidence[from + place] ?? 0);
    came[start + place] = turn;
  }
}

/** A nearly round rim: how far its middle lies from where it was looked at, its mean radius, and how far it is from a circle. */
export type RoundFit = {
  readonly x: number;
  readonly y: number;
  readonly mean: number;
  /** Half of what its longer radius has more than its shorter, as a part of the mean. */
  readonly oval: number;
  readonly radii: Float64Array;
  /** The usual distance of the given radii from it, in the same unit. */
  readonly astray: number;
  /** The share of the given radii that lie on it, and have any weight: where nothing speaks for a rim a path is even too. */
  readonly onIt: number;
};

const TERMS = 5;
/** The terms from here on make it oval. */
const OVAL_TERMS = 3;
const ROUNDS = 6;
/** What holds an oval back: pieces are rounder than the noise along a rim, and the last look at it allows for the rest. */
const ROUNDER = 0.1;
/** Beyond so many times the usual distance, and so much of the radius, a ray is not heard. */
const UNHEARD = { times: 3.5, part: 0.006 };
/** How near to the curve a ray lies on it, as a part of the mean: under one place of a path. */
const ON_IT = 0.012;
/** The weight of a ray from which something speaks for it. */
const SPEAKS = 0.15;
/** The least that the radii of an outline are exact to, in pixels. */
const COARSE_STEP = 0.6;

/**
 * The nearly round curve through most of these radii: mean, middle and one oval, as the first terms of a Fourier series,
 * by least squares in which what lies far off is not heard (A. Beaton and J. Tukey, Technometrics 16, 1974). `step` is what
 * the radii are exact to.
 */
export function fitRound(radii: Float64Array, weights: Float64Array, step = 0): RoundFit {
  const rays = radii.length;
  const terms = termsOf(rays);
  const fitted = new Float64Array(rays);
  let heard = Float64Array.from(weights);
  let found = new Float64Array(TERMS);
  let astray = 0;
  for (let round = 0; round < ROUNDS; round += 1) {
    found = leastSquares(terms, radii, heard);
    for (let ray = 0; ray < rays; ray += 1) {
      let sum = 0;
      for (let term = 0; term < TERMS; term += 1) sum += (found[term] ?? 0) * (terms[term]?.[ray] ?? 0);
      fitted[ray] = sum;
    }
    const off = radii.map((radius, ray) => Math.abs(radius - (fitted[ray] ?? 0)));
    astray = off.toSorted()[rays >> 1] ?? 0;
    const reach = UNHEARD.times * astray + UNHEARD.part * (found[0] ?? 0);
    heard = weights.map((weight, ray) => weight * Math.max(0, 1 - ((off[ray] ?? 0) / reach) ** 2) ** 2);
  }
  const [mean = 0, x = 0, y = 0, along = 0, across = 0] = found;
  const near = Math.max(ON_IT * mean, step);
  const on = radii.filter(
    (radius, ray) => (weights[ray] ?? 0) > SPEAKS && Math.abs(radius - (fitted[ray] ?? 0)) < near,
  );
  const oval = Math.hypot(along, across) / mean;
  return { x, y, mean, oval, radii: fitted, astray, onIt: on.length / rays };
}

/** The same through an outline, every ray of it heard alike. */
export function evenFit({ radii }: Pick<Outline, 'radii'>): RoundFit {
  return fitRound(radii, new Float64Array(radii.length).fill(1), COARSE_STEP);
}

function termsOf(rays: number): readonly Float64Array[] {
  const { cos, sin } = turns(rays);
  const twice = (of: Float64Array): Float64Array => of.map((_, ray) => of[(2 * ray) % rays] ?? 0);
  return [new Float64Array(rays).fill(1), cos, sin, twice(cos), twice(sin)];
}

/** Solves the normal equations by elimination; five of them, and well behaved. */
function leastSquares(
  terms: readonly Float64Array[],
  radii: Float64Array,
  weights: Float64Array,
): Float64Array<ArrayBuffer> {
  const dot = (one: Float64Array, other: Float64Array): number => {
    let sum = 0;
    for (let ray = 0; ray < one.length; ray += 1) sum += (weights[ray] ?? 0) * (one[ray] ?? 0) * (other[ray] ?? 0);
    return sum;
  };
  const all = dot(terms[0] ?? weights, terms[0] ?? weights);
  const held = (term: number): number => (term < OVAL_TERMS ? 1e-6 : ROUNDER * all);
  const rows = terms.map((one, at) =>
    Float64Array.from([
      ...terms.map((other, beside) => dot(one, other) + (at === beside ? held(at) : 0)),
      dot(one, radii),
    ]),
  );
  for (const [at, row] of rows.entries())
    for (const other of rows) {
      if (other === row) continue;
      const times = (other[at] ?? 0) / (row[at] ?? 1);
      for (let column = at; column < row.length; column += 1)
        other[column] = (other[column] ?? 0) - times * (row[column] ?? 0);
    }
  return Float64Array.from(rows, (row, at) => (row[TERMS] ?? 0) / (row[at] ?? 1));
}

/** How far the true rim may lie from one found in a smaller picture, inwards and outwards, as parts of its mean radius. */
export type Slack = {
  readonly inwards: number;
  readonly outwards: number;
  /** Whether the piece is so nearly round that its rim is drawn as an even curve: no bite, no bump. */
  readonly isEven?: boolean;
};

/** Places looked at across the slack, at most; a place is a pixel where that is enough. */
const PLACES = 60;
const BEND = 0.25;
/** Rays on either side that the rim is evened with, twice. */
const EVENED = 6;
/** How many times as many when the piece is nearly round. */
const EVENLY = 6;

/** The rim of a piece in a finer picture than it was found in: the best closed path near it, evened, not drawn in yet. */
export function refineRim(fine: Pixels, near: Outline, { inwards, outwards, isEven }: Slack, rays = RAYS): Outline {
  const coarse = withRays(near, rays);
  const mean = meanRadius(coarse);
  const [from, to] = [-Math.max(2, inwards * mean), Math.max(2, outwards * mean)];
  const step = Math.max(0.5, (to - from) / PLACES);
  const evidence = rimEvidence(fine, coarse, { from, to, step, passesShadows: true });
  const off = Float64Array.from(bestPath(evidence, BEND), (place) => evidence.from + place * step);
  const reach = Math.round((EVENED * (isEven === true ? EVENLY : 1) * rays) / RAYS);
  const even = evened(evened(held(off, reach), reach), reach);
  return { ...coarse, radii: coarse.radii.map((radius, ray) => Math.max(0, radius + (even[ray] ?? 0))) };
}

function evened(values: Float64Array, reach: number): Float64Array {
  return values.map((_, ray) => {
    let sum = 0;
    for (let beside = -reach; beside <= reach; beside += 1)
      sum += values[(ray + beside + values.length) % values.length] ?? 0;
    return sum / (2 * reach + 1);
  });
}

/** Each value replaced by the middle one of those about it: a kink of a letter or a speck is no rim. */
function held(values: Float64Array, reach: number): Float64Array {
  const around = new Float64Array(2 * reach + 1);
  return values.map((_, ray) => {
    for (let at = 0; at < around.length; at += 1)
      around[at] = values[(ray + at - reach + values.length) % values.length] ?? 0;
    return around.sort()[reach] ?? 0;
  });
}
