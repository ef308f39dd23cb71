import type { Circle } from './circle.ts';
import { circleThrough, reachOfCircle } from './circle.ts';
import type { FoundPiece } from './find-piece.ts';
import type { Box, Pixels } from './pixels.ts';
import { count } from './regions.ts';
import { COS, crests, outermost, profileReader, RAYS, SIN } from './rays.ts';

/** The rim of a piece as seen from its middle: how far it is in each direction, in pixels of the picture it was traced in. */
export type Outline = { readonly x: number; readonly y: number; readonly radii: Float64Array };

/** Where a finer picture lies in the one a piece was found in: its corner, and how many of its pixels go on one of the other's. */
export type Finer = { readonly left: number; readonly top: number; readonly times: number };

/** How far inside the found silhouette the rim is sought, as a part of the usual way to it, of what is nearly round and of what is not; and how far outside, in pixels. */
const INSIDE = { round: 0.075, other: 0.14 };
const OUTSIDE = 2;
/** How sharp a step must be beside the sharpest on its ray to be the rim, when it lies further out. */
const SHARP_ENOUGH = 0.5;
/** Every so many rays are looked at for a circle; how far inside and outside the silhouette, and from which step on. */
const EVERY = 6;
const CIRCLE_INSIDE = 0.25;
const CIRCLE_OUTSIDE = 0.25;
const LEAST_CREST = 16;
/** A circle much smaller than the silhouette, by its radius, is none of the piece's rim. */
const LEAST_SHARE = 0.85;
/** A silhouette falls short when its radius is less than this part of the circle's, and is drawn out when its middle is so far from the circle's and so far beside what it has more. */
const SHORT = 0.97;
const DRAWN_OUT = { offset: 0.038, beside: 0.5 };
/** How far a rim may stray from the circle and still be it, inwards and outwards; further in than the last, it is broken or cut there. */
const STRAY = { inwards: 0.025, outwards: 0.045 };
const BROKEN = 0.04;
/** Rays on either side that a ray is held against; and that it is then evened with. */
const NEIGHBOURS = 6;
const EVENED = 2;
/** Drawn in by so much, in pixels, so that no hair of the board comes along. */
const INWARD = 0.8;
/** The most, as a part of the silhouette, that may differ when it is seen from its middle; more is no shape for this. */
const MOST_ODD = 0.04;

/**
 * Traces the rim of a found piece in a finer picture than it was found in: along each ray the outermost sharp step near
 * the silhouette (a soft shadow has none), held against its neighbours so that no letter or speck pulls it in. Where a shadow
 * or a neighbour has drawn the silhouette out, or it falls short, the rim is sought near the circle that most rays agree on.
 * Null when the whole rim cannot be seen from the middle.
 */
export function outlineOf(fine: Pixels, found: FoundPiece, { left, top, times }: Finer): Outline | null {
  const middle = middleOf(found);
  const coarse = Float64Array.from({ length: RAYS }, (_, ray) => reachOf(found, middle, ray) * times);
  const from = { x: (middle.x + 0.5 - left) * times, y: (middle.y + 0.5 - top) * times };
  const usual = coarse.toSorted()[RAYS / 2] ?? 0;
  const read = profileReader(fine, from, usual * (CIRCLE_INSIDE + CIRCLE_OUTSIDE));
  const circle = circleOf(usual, read);
  const whole = Math.sqrt(count(found.mask) / Math.PI) * times;
  const isRound = circle !== null && circle.r >= LEAST_SHARE * whole;
  if (!isRound && oddness(coarse, found.mask, times) > MOST_ODD) return null;
  const inside = usual * (isRound ? INSIDE.round : INSIDE.other);
  const near = (ray: number): number => {
    const reach = coarse[ray] ?? 0;
    return outermost(read(ray, reach - inside, reach + OUTSIDE), SHARP_ENOUGH, 0) ?? reach;
  };
  const radii =
    isRound && misleads(circle, whole) ? roundRadii(circle, coarse, read, near) : coarse.map((_, ray) => near(ray));
  return { ...from, radii: evened(held(radii)).map((radius) => radius - INWARD) };
}

type Reader = ReturnType<typeof profileReader>;

/** The circle that most rays agree on. */
function circleOf(usual: number, read: Reader): Circle | null {
  const seen = Array.from({ length: RAYS / EVERY }, (_, at) => {
    const ray = at * EVERY;
    return { ray, at: crests(read(ray, usual * (1 - CIRCLE_INSIDE), usual * (1 + CIRCLE_OUTSIDE)), LEAST_CREST) };
  });
  return circleThrough(seen, usual, CIRCLE_INSIDE + CIRCLE_OUTSIDE);
}

/** Whether a silhouette, of this radius were it round, falls short of a circle or is drawn out of it to one side. */
function misleads({ x, y, r }: Circle, whole: number): boolean {
  const offset = Math.hypot(x, y) / r;
  const more = (whole / r) ** 2 - 1;
  return whole < SHORT * r || (offset > DRAWN_OUT.offset && offset > DRAWN_OUT.beside * more);
}

/** The rim near a circle; the circle itself where nothing is seen of it; the silhouette where the piece is broken. */
function roundRadii(circle: Circle, coarse: Float64Array, read: Reader, near: (ray: number) => number): Float64Array {
  const seen = coarse.map((_, ray) => {
    const round = reachOfCircle(circle, ray);
    const profile = read(ray, round * (1 - STRAY.inwards), round * (1 + STRAY.outwards));
    return outermost(profile, SHARP_ENOUGH, LEAST_CREST) ?? NaN;
  });
  // A silhouette that falls short of the circle where the rim is seen tells nothing of where it is not.
  const shares = coarse.map((reach, ray) => reach / reachOfCircle(circle, ray));
  const whereSeen = shares.filter((_, ray) => !Number.isNaN(seen[ray] ?? NaN)).sort();
  const tells = (whereSeen[whereSeen.length >> 1] ?? 0) > 1 - BROKEN;
  return seen.map((rim, ray) => {
    if (!Number.isNaN(rim)) return rim;
    return tells && (shares[ray] ?? 1) < 1 - BROKEN ? near(ray) : reachOfCircle(circle, ray);
  });
}

/** The box an outline takes up. */
export function outlineBox({ x, y, radii }: Outline): Box {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let ray = 0; ray < RAYS; ray += 1) {
    const px = x + (radii[ray] ?? 0) * (COS[ray] ?? 0);
    const py = y + (radii[ray] ?? 0) * (SIN[ray] ?? 0);
    left = Math.min(left, px);
    right = Math.max(right, px);
    top = Math.min(top, py);
    bottom = Math.max(bottom, py);
  }
  return { left, top, width: right - left, height: bottom - top };
}

/** The rim of an ellipse or a rectangle that fills a box. */
export function drawnOutline({ left, top, width, height }: Box, shape: 'ellipse' | 'rectangle'): Outline {
  const [a, b] = [width / 2, height / 2];
  const radii = Float64Array.from({ length: RAYS }, (_, ray) => {
    const [cos, sin] = [Math.abs(COS[ray] ?? 0), Math.abs(SIN[ray] ?? 0)];
    return shape === 'ellipse' ? (a * b) / Math.hypot(b * cos, a * sin) : Math.min(a / cos, b / sin);
  });
  return { x: left + a, y: top + b, radii };
}

function middleOf({ mask, size: { width, height } }: FoundPiece): { x: number; y: number } {
  let [sumX, sumY, sum] = [0, 0, 0];
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      if (mask[y * width + x] !== 1) continue;
      sumX += x;
      sumY += y;
      sum += 1;
    }
  }
  return { x: sumX / sum, y: sumY / sum };
}

/** How far the silhouette reaches on a ray, in its own pixels. */
function reachOf({ mask, box, size }: FoundPiece, from: { x: number; y: number }, ray: number): number {
  const [cos, sin] = [COS[ray] ?? 0, SIN[ray] ?? 0];
  const [across, down] = [
    Math.max(from.x - box.left, box.left + box.width - from.x),
    Math.max(from.y - box.top, box.top + box.height - from.y),
  ];
  const farthest = Math.ceil(Math.min(across / Math.abs(cos), down / Math.abs(sin))) + 1;
  for (let reach = farthest; reach > 0; reach -= 0.5) {
    const x = Math.round(from.x + reach * cos);
    const y = Math.round(from.y + reach * sin);
    if (x >= 0 && y >= 0 && x < size.width && y < size.height && mask[y * size.width + x] === 1) return reach;
  }
  return 0;
}

/** How much larger the silhouette is when everything between its middle and its farthest rim is taken into it. */
function oddness(reaches: Float64Array, mask: Uint8Array, times: number): number {
  let [seen, whole] = [0, 0];
  for (const reach of reaches) seen += (Math.PI / RAYS) * (reach / times + 0.25) ** 2;
  for (let at = 0; at < mask.length; at += 1) whole += mask[at] ?? 0;
  return Math.abs(seen - whole) / whole;
}

/** Each radius replaced by the middle one of its neighbours. */
function held(radii: Float64Array): Float64Array {
  const around = new Float64Array(2 * NEIGHBOURS + 1);
  return radii.map((_, ray) => {
    for (let at = 0; at < around.length; at += 1) around[at] = radii[(ray + at - NEIGHBOURS + RAYS) % RAYS] ?? 0;
    return around.sort()[NEIGHBOURS] ?? 0;
  });
}

function evened(radii: Float64Array): Float64Array {
  return radii.map((_, ray) => {
    let sum = 0;
    for (let at = -EVENED; at <= EVENED; at += 1) sum += radii[(ray + at + RAYS) % RAYS] ?? 0;
    return sum / (2 * EVENED + 1);
  });
}
