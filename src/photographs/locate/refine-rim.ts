import { bestPath } from './best-path.ts';
import type { Outline } from './outline.ts';
import { meanRadius, RAYS, withRays } from './outline.ts';
import type { Pixels } from './pixels.ts';
import { rimEvidence } from './rim-evidence.ts';

/** How far the true rim may lie from one found in a smaller picture, inwards and outwards, as parts of its mean radius. */
export type Slack = { readonly inwards: number; readonly outwards: number };

/** Places looked at across the slack, at most; a place is a pixel where that is enough. */
const PLACES = 60;
const BEND = 0.25;
/** Rays on either side that the rim is evened with, twice. */
const EVENED = 6;

/** The rim of a piece in a finer picture than it was found in: the best closed path near it, evened, not drawn in yet. */
export function refineRim(fine: Pixels, near: Outline, { inwards, outwards }: Slack, rays = RAYS): Outline {
  const coarse = withRays(near, rays);
  const mean = meanRadius(coarse);
  const [from, to] = [-Math.max(2, inwards * mean), Math.max(2, outwards * mean)];
  const step = Math.max(0.5, (to - from) / PLACES);
  const evidence = rimEvidence(fine, coarse, { from, to, step, passesShadows: true });
  const off = Float64Array.from(bestPath(evidence, BEND), (place) => evidence.from + place * step);
  const reach = Math.round((EVENED * rays) / RAYS);
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
