import { boxFill } from './edge-shapes.ts';
import { shareOfOneLight, unevenness } from './judge-rim.ts';
import type { Outline } from './outline.ts';
import { meanRadius } from './outline.ts';
import type { Box, Pixels } from './pixels.ts';
import type { RoundPiece } from './round-piece.ts';
import { rimWithin } from './round-piece.ts';
import type { Sureness } from './sureness.ts';
import { SURE_ENOUGH } from './sureness.ts';

/** How much of the box about it a thing with straight sides fills. */
const STRAIGHT = 0.9;
/** A round thing in one with straight sides is a piece in a holder when it is so likely, so unlike what is about it, and so large in it: a motif on a square piece is of one metal with it. */
const HELD = { sure: 0.5, unlike: 0.5, least: 0.25 };
/**
 * A ring is the foam of a capsule or a slab, and no metal, when its light is even, and evener than that of what lies in it: the
 * ring of a piece of two metals has letters or stars. By how much, as a part of that, the rim within it need be how sure.
 */
const RING = { step: 0.065, spread: 0.2 };
const EVENER = [
  { by: 0.4, sure: 0.85 },
  { by: 0.75, sure: 0.99 },
];
/** Where both are looked at: in the ring as parts of its breadth, and in the piece as parts of the radius. */
const ACROSS = [0.3, 0.375, 0.45, 0.525, 0.6, 0.675, 0.75];
const IN_PIECE = [0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9];

/** The piece in a ring of foam, when that ring was taken for it; null where there is none. */
export function pieceInRing(look: Pixels, ring: RoundPiece, by: Sureness): RoundPiece | null {
  if (ring.sure < SURE_ENOUGH) return null;
  const piece = rimWithin(look, ring, by);
  if (piece === null || piece.sure < SURE_ENOUGH) return null;
  const broad = meanRadius(ring.outline) / meanRadius(piece.outline) - 1;
  const about = unevenness(
    look,
    piece.outline,
    ACROSS.map((part) => 1 + part * broad),
  );
  if (about.spread > RING.spread || about.step > RING.step) return null;
  const { step } = unevenness(look, piece.outline, IN_PIECE);
  return EVENER.some(({ by: part, sure }) => about.step < part * step && piece.sure >= sure) ? piece : null;
}

/** Whether an outline has straight sides. */
export function isStraight(outline: Outline): boolean {
  return boxFill(outline) >= STRAIGHT;
}

/** Paper is of one light but for what is printed on it, and light: how much of it, and above what logarithm of 255. */
const PAPER = { even: 0.7, light: 5 };
const ON_PAPER = [0.15, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.88];

/** Whether what lies within an outline looks like paper, as a label is: metal has a sheen, and relief. */
export function isPaper(look: Pixels, outline: Outline): boolean {
  const { share, light } = shareOfOneLight(look, outline, ON_PAPER);
  return share > PAPER.even && light > PAPER.light;
}

/** Whether a thing has straight sides and the round one lies within it: a round on a square piece, and not a shadow's. */
export function isStraightAbout(outline: Outline, { outline: inner }: RoundPiece): boolean {
  const apart = Math.hypot(outline.x - inner.x, outline.y - inner.y);
  return isStraight(outline) && apart < meanRadius(outline) - 0.8 * meanRadius(inner);
}

/** Whether a round thing within one with straight sides, of which this is the box, is a piece of its own, in a holder. */
export function isPieceIn(box: Box, { outline, sure, signs }: RoundPiece): boolean {
  const isLarge = meanRadius(outline) >= HELD.least * Math.min(box.width, box.height);
  return sure >= HELD.sure && signs.unlike >= HELD.unlike && isLarge;
}
