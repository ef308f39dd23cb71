import type { Slack } from './best-path.ts';
import { evenFit, refineRim } from './best-path.ts';
import type { EdgeShape } from './edge-shapes.ts';
import { edgeShapes, maskOutline } from './edge-shapes.ts';
import { isPaper, isPieceIn, isStraight, isStraightAbout, pieceInRing } from './rings-and-paper.ts';
import { chanceAround, judgeRim, shareCovered } from './judge-rim.ts';
import type { Outline } from './outline.ts';
import { COARSE_RAYS, meanRadius, outlineBox } from './outline.ts';
import type { Box, Extent, Pixels } from './pixels.ts';
import type { RoundPiece } from './round-piece.ts';
import { followRim, LEAST_WITHIN, roundPieces, withoutShadow } from './round-piece.ts';
import type { Signs, Sureness } from './sureness.ts';
import { SURE_ENOUGH, sureness, VERY_SURE } from './sureness.ts';

/** A piece in a picture: where it is in that picture's pixels, its rim, and how sure that is, 0 to 1. */
export type FoundPiece = {
  readonly box: Box;
  readonly rim: FoundRim;
  readonly sure: number;
  readonly signs: Signs | null;
};

/** A rim seen whole from its middle, and how far the true one may stray from it; or a silhouette of the picture's size. */
export type FoundRim =
  | { readonly kind: 'outline'; readonly outline: Outline; readonly slack: Slack }
  | { readonly kind: 'silhouette'; readonly mask: Uint8Array; readonly size: Extent };

/**
 * Why nothing is cut out of a picture: nothing stands out enough, or the frame cuts the piece, or several could be meant, or
 * something lies on it as a finger does, or it lies in a holder, a slab or the ring of a capsule, or it looks like a label.
 */
export type Doubt = 'unsure' | 'cut by the frame' | 'several' | 'covered' | 'in a holder' | 'a label';

/** What the record of a piece says of its outline. */
export type Recorded = 'nothing' | 'round' | 'not round';

/** What was found, as far as anything was, and why it is not to be cut out; null when it is. */
export type Finding = { readonly piece: FoundPiece | null; readonly doubt: Doubt | null };

/** The longest side, in pixels, of the copy in which a piece is sought. */
export const LOOK_AT = 320;
/** From here on a second piece beside the one is taken for one: a pale one is no less there. */
const ALSO = 0.15;
/** From when on a round thing that the frame cuts is the piece, and what is round within it its core: so unlike are both sides of it. */
const CUT_UNLIKE = 0.8;
/** How much of what is enough serves where the keeper says the piece is. */
const SAID = 0.8;

/** No piece that is recorded with one diameter is more oval than this: a third longer than broad. */
const ROUNDISH = 0.15;

/** A rim that may stray less than this from a round one, or that most of its path lies on, is drawn evenly, and strays so much at most. */
const EVEN = { from: 0.03, onIt: 0.7, astray: 0.018 };

/** How far the true rim may stray from a silhouette, which lies a little outside of it, or in a soft shadow. */
const BY_EDGES: Slack = { inwards: 0.13, outwards: 0.02 };
const BESIDE_OUTLINE: Slack = { inwards: 0.03, outwards: 0.03 };
/** Of a plain board chance gives less than this; there an unbroken silhouette may be uneven, and no more than this is held against it; nothing against one whose shape is recorded or has corners. */
const PLAIN = 0.25;
const ANY_SHAPE = { oval: 0, onIt: 1 };
const UNEVEN = { oval: 0.02, onIt: 0.75 };
/** A second piece is at least so large beside the first: less is a label, a scale, or something that lies next to the first. */
const ALIKE = 0.6;

/** The piece in a picture. A label is not taken for it, nor what has straight sides for a piece that is recorded as round. */
export function findPiece(look: Pixels, recorded: Recorded = 'nothing', by = sureness): Finding {
  const finding = findAny(look, recorded === 'not round', by);
  const { piece, doubt } = finding;
  if (doubt !== null || piece?.rim.kind !== 'outline' || recorded === 'not round') return finding;
  const { outline } = piece.rim;
  const isLabel =
    recorded === 'round'
      ? isStraight(outline) || (piece.signs?.oval ?? 0) > ROUNDISH
      : isStraight(outline) && isPaper(look, outline);
  return isLabel ? { piece, doubt: 'a label' } : finding;
}

function findAny(look: Pixels, straight: boolean, by: Sureness): Finding {
  const rounds = straight ? [] : meantFirst(roundPieces(look, 1, by), look);
  const [first, ...others] = rounds;
  const round = first === undefined ? undefined : withoutShadow(look, first, by);
  const held = round === undefined ? null : pieceInRing(look, round, by);
  if (held !== null) return { piece: asFound(held), doubt: 'in a holder' };
  if (round !== undefined && round.sure >= VERY_SURE) return settled(asFound(round), look, [round, ...others]);
  const [shape] = edgeShapes(look, 1);
  const byEdges = shape === undefined ? null : shapeFound(shape, look, straight, by);
  if (round === undefined) return settled(byEdges, look, []);
  if (byEdges === null) return settled(asFound(round), look, [round, ...others]);
  if (shape?.isWhole === true && agree(byEdges, round)) {
    const sure = Math.max(SURE_ENOUGH, round.sure, byEdges.sure);
    return settled({ ...(round.sure >= SURE_ENOUGH ? asFound(round) : byEdges), sure }, look, [round, ...others]);
  }
  const { rim } = byEdges;
  const isHeld = rim.kind === 'outline' && byEdges.sure >= SURE_ENOUGH && isStraightAbout(rim.outline, round);
  if (isHeld && isPieceIn(byEdges.box, round)) return { piece: asFound(round), doubt: 'in a holder' };
  // What is round within an unbroken silhouette that is sure enough, and is not very sure itself, is a motif.
  const isMotif = shape?.isWhole === true && rim.kind === 'outline' && isAbout(rim, round);
  const isSurer = byEdges.sure > round.sure && round.sure < SURE_ENOUGH;
  const isOther = isHeld || isSurer || (isMotif && byEdges.sure >= SURE_ENOUGH);
  return isOther ? settled(byEdges, look, []) : settled(asFound(round), look, [round, ...others]);
}

/**
 * The surest first; one beside it that is whole, where the frame cuts that; or a likely one about it: the core of a piece of
 * two metals is round too.
 */
function meantFirst(rounds: readonly RoundPiece[], look: Extent): readonly RoundPiece[] {
  const [surest] = rounds;
  if (surest === undefined) return [];
  const sure = rounds.filter((one) => one.sure >= SURE_ENOUGH);
  const whole = isCutOff(surest, look) ? sure.find((one) => isBeside(one, surest) && !isCutOff(one, look)) : undefined;
  const best = whole ?? surest;
  const isMeant = (one: RoundPiece): boolean =>
    one.sure >= SURE_ENOUGH || (isCutOff(one, look) && one.signs.unlike >= CUT_UNLIKE);
  const first = rounds.find((one) => isMeant(one) && isAbout(one, best)) ?? best;
  return [first, ...rounds.filter((one) => one !== first)];
}

function isCutOff({ outline }: RoundPiece, look: Extent): boolean {
  return touchesFrame(outlineBox(outline), look);
}

/** Whether two round things are two pieces: apart, and of about one size. */
function isBeside(one: RoundPiece, other: RoundPiece): boolean {
  const [a, b] = [meanRadius(one.outline), meanRadius(other.outline)];
  return areApart(one, other) && Math.min(a, b) >= ALIKE * Math.max(a, b);
}

/** Whether a round thing lies about another one, and is not the edge of its shadow. */
function isAbout({ outline }: Pick<RoundPiece, 'outline'>, { outline: inner }: RoundPiece): boolean {
  const [mean, within] = [meanRadius(outline), meanRadius(inner)];
  return within < LEAST_WITHIN * mean && Math.hypot(outline.x - inner.x, outline.y - inner.y) < 0.1 * mean;
}

/** Everything in a picture that could be the piece, with its signs: what the rule of the sureness is fitted to. */
export function candidatesIn(look: Pixels): readonly FoundPiece[] {
  const rounds = roundPieces(look, 1, sureness);
  const within = rounds.map((one) => withoutShadow(look, one, sureness)).filter((one) => !rounds.includes(one));
  const shapes = edgeShapes(look, 1).map((shape) => shapeFound(shape, look, false, sureness));
  return [...[...rounds, ...within].map((one) => asFound(one)), ...shapes];
}

/** The piece that has at least so much in common with a box drawn by the keeper; null when none is seen there. */
export function findNear(look: Pixels, box: Box, least: number, straight: boolean): FoundPiece | null {
  const { x, y } = middle(box);
  const round = straight ? null : followRim(look, { x, y, radius: (box.width + box.height) / 4 }, sureness);
  if (round !== null && round.sure >= SURE_ENOUGH * SAID && inCommon(outlineBox(round.outline), box) >= least)
    return asFound(round);
  const { piece } = findAny(look, straight, sureness);
  return piece !== null && piece.sure >= SURE_ENOUGH * SAID && inCommon(piece.box, box) >= least ? piece : null;
}

/** What two boxes have in common, as a part of what they cover together. */
export function inCommon(one: Box, other: Box): number {
  const along = (a: number, aLength: number, b: number, bLength: number): number =>
    Math.max(0, Math.min(a + aLength, b + bLength) - Math.max(a, b));
  const both =
    along(one.left, one.width, other.left, other.width) * along(one.top, one.height, other.top, other.height);
  return both / (one.width * one.height + other.width * other.height - both);
}

/** Finds up to so many pieces of one kind in one picture, from left to right; fewer, and none that is not sure, where there are not. */
export function findPieces(look: Pixels, wanted: number): readonly FoundPiece[] {
  const rounds: RoundPiece[] = [];
  const least = wanted > 2 ? ALSO : SURE_ENOUGH;
  for (const one of roundPieces(look, wanted, sureness))
    if (one.sure >= least && one.signs.outside === 0 && rounds.every((other) => areApart(one, other))) rounds.push(one);
  const most = Math.max(...rounds.map(({ outline }) => meanRadius(outline)));
  const alike = rounds.filter(({ outline }) => meanRadius(outline) >= 0.5 * most).map((one) => asFound(one));
  const shapes =
    alike.length >= wanted ? [] : edgeShapes(look, wanted).map((shape) => shapeFound(shape, look, false, sureness));
  const found = shapes.length > alike.length && shapes.every(({ sure }) => sure >= SURE_ENOUGH) ? shapes : alike;
  return found.slice(0, wanted).sort((one, other) => middle(one.box).x - middle(other.box).x);
}

function settled(piece: FoundPiece | null, look: Pixels, rounds: readonly RoundPiece[]): Finding {
  if (piece === null) return { piece, doubt: 'unsure' };
  if (touchesFrame(piece.box, look)) return { piece, doubt: 'cut by the frame' };
  if (piece.sure < SURE_ENOUGH) return { piece, doubt: 'unsure' };
  if (piece.rim.kind === 'outline' && shareCovered(look, piece.rim.outline) > 0) return { piece, doubt: 'covered' };
  const [first] = rounds;
  const others = rounds.filter(
    (one) => one.sure >= ALSO && !isCutOff(one, look) && first !== undefined && isBeside(one, first),
  );
  return { piece, doubt: others.length > 0 ? 'several' : null };
}

function touchesFrame({ left, top, width, height }: Box, size: Extent): boolean {
  return left < 1 || top < 1 || left + width > size.width - 1 || top + height > size.height - 1;
}

function areApart({ outline: one }: RoundPiece, { outline: other }: RoundPiece): boolean {
  return Math.hypot(one.x - other.x, one.y - other.y) > 0.85 * (meanRadius(one) + meanRadius(other));
}

function asFound({ outline, slack, sure, signs }: RoundPiece): FoundPiece {
  const isEven = slack <= EVEN.from || signs.onIt >= EVEN.onIt;
  const astray = isEven ? Math.min(slack, EVEN.astray) : slack;
  const rim = { kind: 'outline', outline, slack: { inwards: astray, outwards: astray, isEven } } as const;
  return { box: outlineBox(outline), rim, sure, signs };
}

/** A silhouette as a piece; `recorded` when the piece's record says that it is of such a shape. */
function shapeFound({ mask, box, isWhole }: EdgeShape, look: Pixels, recorded: boolean, by: Sureness): FoundPiece {
  const size = { width: look.width, height: look.height };
  const seen = maskOutline({ mask, box }, size);
  // The frame is told by the silhouette: the rim was drawn in from it.
  const isCut = touchesFrame(grownBy(box, 2), look);
  if (seen === null)
    return { box, rim: { kind: 'silhouette', mask, size }, sure: isWhole && !isCut ? SURE_ENOUGH : 0, signs: null }; // prettier-ignore
  const refined = refineRim(look, seen, BY_EDGES, COARSE_RAYS);
  const hasCorners = isStraight(refined);
  const outline = hasCorners ? refined : (asRound(refined) ?? refined);
  const { oval, onIt } = evenFit(refined);
  const signs = { ...judgeRim(look, outline), oval, onIt };
  const isPlain = isWhole && chanceAround(look, outline) < PLAIN;
  const allowed = hasCorners || isStraight(seen) || recorded ? ANY_SHAPE : isPlain ? UNEVEN : null;
  const sure = by(allowed === null ? signs : { ...signs, oval: Math.min(oval, allowed.oval), onIt: Math.max(onIt, allowed.onIt) }); // prettier-ignore
  return {
    box: isCut ? grownBy(box, 2) : outlineBox(outline),
    rim: { kind: 'outline', outline, slack: BESIDE_OUTLINE },
    sure: isPlain && (recorded || asRound(outline) !== null) ? Math.max(SURE_ENOUGH, sure) : sure,
    signs,
  };
}

/** The nearly round rim that most of an outline lies on, also where a shadow draws a part of it out; null when it is none. */
function asRound({ x, y, radii }: Outline): Outline | null {
  const fit = evenFit({ radii });
  const isRound = fit.astray < Math.max(0.008 * fit.mean, 0.6) && fit.oval < 0.03;
  // The fitted middle lies a little off: its radii are seen from where the outline's are.
  return isRound ? { x, y, radii: fit.radii } : null;
}

function grownBy({ left, top, width, height }: Box, by: number): Box {
  return { left: left - by, top: top - by, width: width + 2 * by, height: height + 2 * by };
}

/** Whether both ways found the same rim: as good as sure where the silhouette is unbroken, also of an uneven flan as grey as its board. */
function agree({ rim, box }: FoundPiece, { outline }: RoundPiece): boolean {
  if (rim.kind !== 'outline') return false;
  const round = outlineBox(outline);
  const [one, other] = [middle(box), middle(round)];
  const near = 0.04 * Math.max(round.width, round.height);
  return (
    Math.hypot(one.x - other.x, one.y - other.y) < near &&
    Math.abs(box.width - round.width) < 2 * near &&
    Math.abs(box.height - round.height) < 2 * near
  );
}

function middle({ left, top, width, height }: Box): { x: number; y: number } {
  return { x: left + width / 2, y: top + height / 2 };
}
