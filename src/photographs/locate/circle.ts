import { COS, SIN } from './rays.ts';

/** A circle: its middle and radius, in pixels. */
export type Circle = { readonly x: number; readonly y: number; readonly r: number };

/** Crests of one ray: its number, and how far from the middle of the rays each lies. */
export type Crests = { readonly ray: number; readonly at: readonly number[] };

/** How near a crest must be to a circle to speak for it, as a part of its radius. */
const NEAR = 0.009;
/** The least part of the rays that must speak for a circle. */
const ENOUGH = 0.5;
/** How much more a circle is worth that is larger: a piece has circles within its rim, and none without. */
const LARGER = 1.5;
/** How many times more than chance would give. */
const MORE_THAN_CHANCE = 2.5;
const TRIALS = 300;

/**
 * The circle that most rays speak for, the larger one of equals, or null when there is none: M. Fischler and R. Bolles,
 * Random Sample Consensus (Communications of the ACM 24, 1981), with draws that are the same each time. The rays start
 * at (0, 0); `usual` is about how far the rim is, and crests were sought over a `reach` of that, as a part of it.
 */
export function circleThrough(crests: readonly Crests[], usual: number, reach: number): Circle | null {
  const speaking = crests.filter(({ at }) => at.length > 0);
  if (speaking.length < ENOUGH * crests.length) return null;
  // Among many crests, as grain has them, any circle finds some: then it must find more.
  const many = crests.reduce((sum, { at }) => sum + at.length, 0) / crests.length;
  const enough = Math.max(ENOUGH, MORE_THAN_CHANCE * (1 - Math.exp((-many * 2 * NEAR) / reach)));
  const draw = drawing();
  let best: { circle: Circle; worth: number } | null = null;
  for (let trial = 0; trial < TRIALS; trial += 1) {
    const circle = through(point(speaking, draw), point(speaking, draw), point(speaking, draw));
    if (circle === null || circle.r < 0.6 * usual || circle.r > 1.3 * usual) continue;
    if (Math.hypot(circle.x, circle.y) > 0.25 * usual) continue;
    const share = speakersFor(circle, speaking) / crests.length;
    const worth = share + LARGER * (circle.r / usual);
    if (share >= enough && (best === null || worth > best.worth)) best = { circle, worth };
  }
  return best === null ? null : settled(best.circle, speaking);
}

/** How far a circle is from (0, 0) in a direction. */
export function reachOfCircle({ x, y, r }: Circle, ray: number): number {
  const along = x * (COS[ray] ?? 0) + y * (SIN[ray] ?? 0);
  return along + Math.sqrt(Math.max(0, along * along - x * x - y * y + r * r));
}

/** The crest nearest to a circle, when it is near enough to speak for it. */
function nearestCrest(circle: Circle, { ray, at }: Crests): number | null {
  const reach = reachOfCircle(circle, ray);
  let best: number | null = null;
  for (const one of at) if (best === null || Math.abs(one - reach) < Math.abs(best - reach)) best = one;
  return best !== null && Math.abs(best - reach) <= NEAR * circle.r ? best : null;
}

function speakersFor(circle: Circle, crests: readonly Crests[]): number {
  let sum = 0;
  for (const one of crests) if (nearestCrest(circle, one) !== null) sum += 1;
  return sum;
}

/** The circle evened over all crests that speak for it, by least squares (I. Kåsa, IEEE Transactions 25, 1976), twice. */
function settled(first: Circle, crests: readonly Crests[]): Circle {
  let circle = first;
  for (let turn = 0; turn < 2; turn += 1) {
    let [n, sx, sy, sxx, syy, sxy, sz, sxz, syz] = [0, 0, 0, 0, 0, 0, 0, 0, 0];
    for (const one of crests) {
      const reach = nearestCrest(circle, one);
      if (reach === null) continue;
      const x = reach * (COS[one.ray] ?? 0);
      const y = reach * (SIN[one.ray] ?? 0);
      const z = x * x + y * y;
      n += 1;
      sx += x;
      sy += y;
      sxx += x * x;
      syy += y * y;
      sxy += x * y;
      sz += z;
      sxz += x * z;
      syz += y * z;
    }
    const [a, b, c] = [sxx - (sx * sx) / n, sxy - (sx * sy) / n, syy - (sy * sy) / n];
    const [d, e] = [(sxz - (sx * sz) / n) / 2, (syz - (sy * sz) / n) / 2];
    const whole = a * c - b * b;
    if (n < 3 || Math.abs(whole) < 1e-9) return circle;
    const [x, y] = [(d * c - b * e) / whole, (a * e - b * d) / whole];
    circle = { x, y, r: Math.sqrt(Math.max(0, (sz - 2 * x * sx - 2 * y * sy) / n + x * x + y * y)) };
  }
  return circle;
}

type Point = { readonly x: number; readonly y: number };

function point(crests: readonly Crests[], draw: () => number): Point {
  const one = crests[Math.floor(draw() * crests.length)];
  // The outer crests are drawn more often: the rim is one of them.
  const from = one === undefined ? 0 : one.at.length - 1 - Math.floor(draw() ** 2 * one.at.length);
  const reach = one?.at[from] ?? 0;
  return { x: reach * (COS[one?.ray ?? 0] ?? 0), y: reach * (SIN[one?.ray ?? 0] ?? 0) };
}

/** The circle through three points; null when they lie nearly in a line. */
function through(a: Point, b: Point, c: Point): Circle | null {
  const [bx, by, cx, cy] = [b.x - a.x, b.y - a.y, c.x - a.x, c.y - a.y];
  const twice = 2 * (bx * cy - by * cx);
  if (Math.abs(twice) < 1) return null;
  const [b2, c2] = [bx * bx + by * by, cx * cx + cy * cy];
  const [x, y] = [(cy * b2 - by * c2) / twice, (bx * c2 - cx * b2) / twice];
  return { x: x + a.x, y: y + a.y, r: Math.hypot(x, y) };
}

/** Draws between 0 and 1 of a small generator (D. Lehmer, 1951): the same in every run. */
function drawing(): () => number {
  let state = 16_807;
  return () => (state = (state * 48_271) % 2_147_483_647) / 2_147_483_647;
}
