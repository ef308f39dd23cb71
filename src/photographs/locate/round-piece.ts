import type { RoundFit } from './best-path.ts';
import { bestPath, evenFit, fitRound } from './best-path.ts';
import type { Centre } from './centres.ts';
import { centresIn, VOTES } from './centres.ts';
import { judgeRim } from './judge-rim.ts';
import type { Outline } from './outline.ts';
import { COARSE_RAYS, meanRadius } from './outline.ts';
import type { Pixels } from './pixels.ts';
import type { Evidence } from './rim-evidence.ts';
import { rimEvidence } from './rim-evidence.ts';
import type { Signs, Sureness } from './sureness.ts';
import { SURE_ENOUGH, VERY_SURE } from './sureness.ts';

/** A nearly round piece: its rim, how far the true rim may stray from it, as parts of the radius, and what speaks for it. */
export type RoundPiece = {
  readonly outline: Outline;
  readonly slack: number;
  readonly signs: Signs;
  readonly sure: number;
};

/** How many centres are looked at when one piece is sought; a weaker one than this part of the best is not, of one or of many. */
const CENTRES = 4;
const WEAK = { one: 0.4, many: 0.25 };
/** How many weaker ones are looked at beside a piece that is found, of about its size and apart from it: a second piece is no less one for being pale. */
const BESIDE = { most: 2, asked: 16, alike: 0.6 };
/** Where the rim is sought round a centre, each time nearer, in parts of the radius; and places to a radius. */
const NEARER = [
  { from: 0.6, to: 1.45 },
  { from: 0.75, to: 1.3 },
  { from: 0.88, to: 1.14 },
] as const;
const PLACES = 64;
/** Where the rim within a shadow is sought, in parts of the radius, and how far in a rim tells that an edge is a shadow's. */
const WITHIN_SHADOW = [
  { from: 0.68, to: 1.14 },
  { from: 0.82, to: 1.2 },
] as const;
const SHADED = 0.3;
const IN_SHADOW = 0.5;
/** Where the rim of a piece in a ring is sought, in parts of the ring's radius; what is found at the end of that is the ring's own. */
const IN_RING = { from: 0.45, to: 0.9, least: 0.015 };
/** How much smaller the rim within a shadow is at most: less is the core of a piece of two metals. */
export const LEAST_WITHIN = 0.84;
/** How far apart two rims are one, in parts of the radius. */
const SAME_RIM = 0.03;
/** Where none is sure the outermost rim is sought too, from so much further out; and how many places off another rim is beyond it. */
const OUTER = 1.15;
const BEYOND = 5;
/** What a place in or out costs the path. */
const BEND = 0.25;

/** Which rim round a centre is followed: the best, the outermost, or the one that votes were given for. */
type Which = 'best' | 'outermost' | 'near';

/** The nearly round things in a picture that most speaks for, best first. */
export function roundPieces(look: Pixels, most: number, by: Sureness): readonly RoundPiece[] {
  const side = most === 1 ? VOTES.forOne : VOTES.forMany;
  const centres = centresIn(look, most === 1 ? BESIDE.asked : 3 * most, side);
  const least = (most === 1 ? WEAK.one : WEAK.many) * (centres[0]?.votes ?? 0);
  const first = (most === 1 ? centres.slice(0, CENTRES) : centres).filter(({ votes }) => votes >= least);
  const found: RoundPiece[] = [];
  for (const centre of first) addNew(found, look, centre, by);
  const [best] = bestFirst(found);
  if (most !== 1 || best === undefined) return bestFirst(found);
  const [voted] = first;
  if (voted !== undefined && isFarWithin(best.outline, voted)) addNew(found, look, voted, by, 'near');
  if (best.sure < SURE_ENOUGH)
    for (const { radius, ...centre } of [asCentre(best), ...first.slice(0, 1)])
      addNew(found, look, { ...centre, radius: OUTER * radius }, by, 'outermost');
  const beside = centres.filter((centre) => !first.includes(centre) && isBeside(centre, best.outline));
  for (const centre of beside.slice(0, BESIDE.most)) addNew(found, look, centre, by);
  return bestFirst(found);
}

function bestFirst(found: readonly RoundPiece[]): readonly RoundPiece[] {
  return found.toSorted((one, other) => other.sure - one.sure);
}

/** Adds the rim that is found round a centre, unless it is found already. */
function addNew(found: RoundPiece[], look: Pixels, centre: Centre, by: Sureness, which: Which = 'best'): void {
  const isKnown = (other: Centre): boolean =>
    found.some(({ outline }) => isSame(outline, outline.radii[0] ?? 0, other));
  // What lies within a rim that is very sure is its motif.
  const isMotif = found.some(({ outline, sure }) => sure >= VERY_SURE && liesWithin(centre, outline));
  if (which === 'best' && (isMotif || isKnown(centre))) return;
  const piece = followRim(look, centre, by, which);
  if (piece !== null && !(isKnown(asCentre(piece)) && which !== 'outermost')) found.push(piece);
}

/** Whether a centre is that of a thing apart from this one and of about its size. */
function isBeside({ x, y, radius }: Centre, outline: Outline): boolean {
  const mean = meanRadius(outline);
  const isAlike = Math.min(mean, radius) >= BESIDE.alike * Math.max(mean, radius);
  return isAlike && Math.hypot(x - outline.x, y - outline.y) > 0.85 * (mean + radius);
}

/** Whether a rim lies so far within the circle most voted for that another must lie there: the core of two metals is round too. */
function isFarWithin(outline: Outline, { x, y, radius }: Centre): boolean {
  return Math.hypot(x - outline.x, y - outline.y) < 0.15 * radius && meanRadius(outline) < LEAST_WITHIN * radius;
}

function liesWithin({ x, y, radius }: Centre, outline: Outline): boolean {
  return Math.hypot(x - outline.x, y - outline.y) + radius < meanRadius(outline);
}

function asCentre({ outline: { x, y, radii } }: RoundPiece): Centre {
  return { x, y, radius: radii[0] ?? 0, votes: 0 };
}

function isSame({ x, y }: Outline, radius: number, other: Centre): boolean {
  return Math.hypot(x - other.x, y - other.y) < 0.12 * radius && Math.abs(Math.log(radius / other.radius)) < 0.12;
}

/** Follows the rim round a centre: the best closed path, then the nearly round curve through it, three times, each nearer. */
export function followRim(
  look: Pixels,
  { x, y, radius }: Pick<Centre, 'x' | 'y' | 'radius'>,
  by: Sureness,
  which: Which = 'best',
): RoundPiece | null {
  let around = { x, y, radius };
  for (const [turn, { from, to }] of NEARER.entries()) {
    if (which === 'near' && turn === 0) continue;
    const evidence = roundEvidence(look, around, { from, to }, turn === NEARER.length - 1);
    if (which === 'outermost') forOutermost(evidence);
    const fit = fitted(evidence, around.radius);
    if (!(fit.mean > 3) || fit.mean > 2 * Math.max(look.width, look.height)) return null;
    if (turn < NEARER.length - 1) {
      around = { x: around.x + fit.x, y: around.y + fit.y, radius: fit.mean };
      continue;
    }
    const outline = { x: around.x, y: around.y, radii: fit.radii };
    return judged(look, outline, fit, by);
  }
  return null;
}

/**
 * The rim of a piece within the edge of its shadow, when a round one is found there for which more speaks once the edges of
 * shadows are passed over; else the piece as it is.
 */
export function withoutShadow(look: Pixels, piece: RoundPiece, by: Sureness): RoundPiece {
  let around = { x: piece.outline.x, y: piece.outline.y, radius: meanRadius(piece.outline) };
  let inner: Outline | null = null;
  let bent: RoundFit | null = null;
  for (const { from, to } of WITHIN_SHADOW) {
    const evidence = roundEvidence(look, around, { from, to }, true);
    const fit = fitted(evidence, around.radius);
    const { x, y, mean, radii } = fit;
    if (!(mean > 3) || mean > 1.05 * meanRadius(piece.outline)) return piece;
    inner = { x: around.x, y: around.y, radii };
    bent = fit;
    around = { x: around.x + x, y: around.y + y, radius: mean };
  }
  if (inner === null || bent === null || isNear(around, piece.outline)) return piece;
  if (around.radius < LEAST_WITHIN * meanRadius(piece.outline)) return piece;
  if (passedSupport(look, inner) <= passedSupport(look, piece.outline)) return piece;
  const better = judged(look, inner, bent, by);
  // A true rim is no worse a rim than the edge of its shadow.
  return better.sure >= Math.max(IN_SHADOW, piece.sure) ? better : piece;
}

/** The round rim within a rim, as of a coin in the foam of its capsule, where there is one. */
export function rimWithin(look: Pixels, { outline }: RoundPiece, by: Sureness): RoundPiece | null {
  const { x, y, mean: radius } = evenFit(outline);
  const around = { x: outline.x + x, y: outline.y + y, radius };
  const fit = fitted(roundEvidence(look, around, IN_RING, false), radius);
  if (!(fit.mean > 3) || fit.mean > (IN_RING.to - IN_RING.least) * radius) return null;
  return judged(look, { x: around.x, y: around.y, radii: fit.radii }, fit, by);
}

function isNear({ x, y, radius }: { x: number; y: number; radius: number }, outline: Outline): boolean {
  const { x: dx, y: dy, mean } = evenFit(outline);
  return Math.hypot(outline.x + dx - x, outline.y + dy - y) + Math.abs(mean - radius) < SAME_RIM * radius;
}

/** What speaks for an outline when the edges of shadows are passed over. */
function passedSupport(look: Pixels, outline: Outline): number {
  const mean = meanRadius(outline);
  const step = mean / PLACES;
  const { at, places } = rimEvidence(look, outline, { from: -SHADED * mean, to: 4 * step, step, passesShadows: true });
  let sum = 0;
  for (let end = places; end <= at.length; end += places) sum += Math.max(...at.subarray(end - 7, end - 2));
  return (sum * places) / at.length;
}

function roundEvidence(
  look: Pixels,
  { x, y, radius }: { x: number; y: number; radius: number },
  { from, to }: { from: number; to: number },
  passesShadows: boolean,
): Evidence {
  const circle = { x, y, radii: new Float64Array(COARSE_RAYS).fill(radius) };
  const step = radius / PLACES;
  return rimEvidence(look, circle, { from: (from - 1) * radius, to: (to - 1) * radius, step, passesShadows });
}

/** The nearly round curve through the best path round a circle of this radius. */
function fitted(evidence: Evidence, radius: number): RoundFit {
  const path = bestPath(evidence, BEND);
  const radii = Float64Array.from(path, (place) => radius + evidence.from + place * evidence.step);
  const weights = Float64Array.from(path, (place, ray) => 0.05 + (evidence.at[ray * evidence.places + place] ?? 0));
  return fitRound(radii, weights);
}

/** Lets speak for a rim only what little lies beyond: of a pale piece a ring of letters is seen better than the rim about it. */
function forOutermost({ at, places }: Evidence): void {
  for (let end = at.length; end > 0; end -= places) {
    let beyond = 0;
    for (let place = end - 1; place >= end - places; place -= 1) {
      const here = at[place] ?? 0;
      at[place] = here * (1 - beyond);
      beyond = Math.max(beyond, place + BEYOND < end ? (at[place + BEYOND] ?? 0) : 0);
    }
  }
}

function judged(look: Pixels, outline: Outline, { oval, onIt, astray, mean }: RoundFit, by: Sureness): RoundPiece {
  const signs = { ...judgeRim(look, outline), oval, onIt };
  return { outline, slack: Math.min(0.1, Math.max(0.02, 0.01 + (2.5 * astray) / mean)), signs, sure: by(signs) };
}
