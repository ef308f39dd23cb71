import { bestPath, fitRound } from './best-path.ts';
import type { Centre } from './centres.ts';
import { centresIn } from './centres.ts';
import { judgeRim } from './judge-rim.ts';
import type { RimJudgement } from './judge-rim.ts';
import type { Outline } from './outline.ts';
import { COARSE_RAYS } from './outline.ts';
import type { Pixels } from './pixels.ts';
import { rimEvidence } from './rim-evidence.ts';

/** A nearly round piece: its rim, how far the true rim may stray from it, as parts of the radius, and what speaks for it. */
export type RoundPiece = {
  readonly outline: Outline;
  readonly slack: number;
  readonly judgement: RimJudgement;
  readonly sure: number;
};

/** How many centres are looked at when one piece is sought; a weaker one than this part of the best is not. */
const CENTRES = 4;
const WEAK = 0.4;
/** Where the rim is sought round a centre, each time nearer, in parts of the radius; and places to a radius. */
const NEARER = [
  { from: 0.6, to: 1.45 },
  { from: 0.75, to: 1.3 },
  { from: 0.88, to: 1.14 },
] as const;
const PLACES = 64;
/** What a place in or out costs the path. */
const BEND = 0.25;

/** The nearly round things in a picture that most speaks for, best first. */
export function roundPieces(look: Pixels, most: number): readonly RoundPiece[] {
  const centres = centresIn(look, most === 1 ? CENTRES : 3 * most);
  const strongest = centres[0]?.votes ?? 0;
  const found: RoundPiece[] = [];
  for (const centre of centres) {
    if (centre.votes < WEAK * strongest) continue;
    if (found.some((one) => isSame(one.outline, one.outline.radii[0] ?? 0, centre))) continue;
    const piece = followRim(look, centre);
    if (piece !== null && !found.some(({ outline }) => isSame(outline, outline.radii[0] ?? 0, asCentre(piece))))
      found.push(piece);
  }
  return found.sort((one, other) => other.sure - one.sure);
}

function asCentre({ outline: { x, y, radii } }: RoundPiece): Centre {
  return { x, y, radius: radii[0] ?? 0, votes: 0 };
}

function isSame({ x, y }: Outline, radius: number, other: Centre): boolean {
  return Math.hypot(x - other.x, y - other.y) < 0.12 * radius && Math.abs(Math.log(radius / other.radius)) < 0.12;
}

/** Follows the rim round a centre: the best closed path, then the nearly round curve through it, three times, each nearer. */
export function followRim(look: Pixels, { x, y, radius }: Pick<Centre, 'x' | 'y' | 'radius'>): RoundPiece | null {
  let around = { x, y, radius };
  for (const [turn, { from, to }] of NEARER.entries()) {
    const circle = { ...around, radii: new Float64Array(COARSE_RAYS).fill(around.radius) };
    const step = around.radius / PLACES;
    const evidence = rimEvidence(look, circle, {
      from: (from - 1) * around.radius,
      to: (to - 1) * around.radius,
      step,
    });
    const path = bestPath(evidence, BEND);
    const radii = Float64Array.from(path, (place) => around.radius + evidence.from + place * step);
    const weights = Float64Array.from(path, (place, ray) => 0.05 + (evidence.at[ray * evidence.places + place] ?? 0));
    const fit = fitRound(radii, weights);
    if (!(fit.mean > 3) || fit.mean > 2 * Math.max(look.width, look.height)) return null;
    if (turn < NEARER.length - 1) {
      around = { x: around.x + fit.x, y: around.y + fit.y, radius: fit.mean };
      continue;
    }
    const outline = { x: around.x, y: around.y, radii: fit.radii };
    return judged(look, outline, fit.oval, fit.astray / fit.mean);
  }
  return null;
}

function judged(look: Pixels, outline: Outline, oval: number, astray: number): RoundPiece {
  const judgement = judgeRim(look, outline);
  const slack = Math.min(0.1, Math.max(0.02, 0.01 + 2.5 * astray));
  return { outline, slack, judgement, sure: sureness(judgement, oval, astray) };
}

/** How sure a nearly round rim is. The weights are plain ones; the bound was set by photographs: see DEVELOPERS.md. */
function sureness({ support, covered, chance, unlike, outside }: RimJudgement, oval: number, astray: number): number {
  return support - chance + 0.4 * unlike - 5 * covered - outside - 3 * astray - 5 * Math.max(0, oval - 0.04);
}
