import { compare, heaviestMatching } from './heaviest-matching.ts';
import type { Edge, Weight } from './heaviest-matching.ts';
import type { Fit } from './fits.ts';
import type { SetPlace } from './places.ts';
import type { SetPiece } from './set-piece.ts';
import { ACCEPT } from './set-rule.ts';
import type { SetRule } from './set-rule.ts';

/** A piece that could be in a place. */
export type Standing = { readonly piece: SetPiece; readonly fit: Fit };

/**
 * What a piece is worth in a place, in falling order of importance: whether it fills the place for certain, or possibly, or
 * is in; whether it is in for certain; whether it has no problem; the keeper's own preference; and the ends of its
 * grade, on the numeric scale and then by the order of its labels. Scales overlap, and the keeper has the pieces in hand.
 */
export const SCORE_PARTS = [
  'certain', 'possible', 'filler', 'sureFiller', 'sound', 'preferred', 'gradeLow', 'gradeHigh', 'labelLow', 'labelHigh',
] as const; // prettier-ignore
export type ScorePart = (typeof SCORE_PARTS)[number];
export type Score = Readonly<Record<ScorePart, number>>;

/** Between arrangements of one score: the first pieces by id, then the first of equal places, then the two together. */
const TIE_PARTS = ['firstPiece', 'firstPlace', 'firstPieceFirst'] as const;

export function scoreOf({ piece, fit }: Standing): Score {
  const one = (is: boolean): number => (is ? 1 : 0);
  return {
    certain: one(fit.level === 'certain'),
    possible: one(fit.level === 'possible'),
    filler: one(fit.level === 'filler'),
    sureFiller: one(fit.level === 'filler' && fit.sure),
    sound: one(!piece.details),
    preferred: piece.prefer === undefined ? 0 : Math.max(1, 1000 - piece.prefer),
    gradeLow: piece.grade?.low ?? 0,
    gradeHigh: piece.grade?.high ?? 0,
    labelLow: piece.stated?.ranks?.[0]?.low ?? 0,
    labelHigh: piece.stated?.ranks?.[0]?.high ?? 0,
  };
}

/** The first part in which two differ; null when they are equal. */
export function firstDifference(one: Score, other: Score): ScorePart | null {
  return SCORE_PARTS.find((part) => one[part] !== other[part]) ?? null;
}

/** Positive when the first stands better in a place than the second; never 0 for two pieces. */
export function compareStanding(one: Standing, other: Standing): number {
  const difference = compare(weightOf(scoreOf(one)), weightOf(scoreOf(other)));
  if (difference !== 0) return difference;
  return one.piece.id < other.piece.id ? 1 : one.piece.id > other.piece.id ? -1 : 0;
}

function weightOf(score: Score): Weight {
  return SCORE_PARTS.map((part) => score[part]);
}

/**
 * The best piece for each place, null for none, given everything that fits each (`fitting`, one list a place): the arrangement
 * whose sum of scores is the greatest, part by part. A piece fills one place, unless the rule lets it fill any or those of all
 * its joint rulers.
 */
export function assign(
  places: readonly SetPlace[],
  fitting: readonly (readonly Standing[])[],
  rule: SetRule,
): readonly (Standing | null)[] {
  const pieces = [...new Map(fitting.flat().map(({ piece }) => [piece.id, piece])).keys()].sort();
  const rank = new Map(pieces.map((id, at) => [id, at]));
  const columns = new Map<string, number>();
  const columnOf = (place: SetPlace, at: number, piece: SetPiece): number => {
    const key = JSON.stringify([piece.id, seatOf(place, at, piece, rule)]);
    const column = columns.get(key) ?? columns.size;
    columns.set(key, column);
    return column;
  };
  const rows = fitting.map((standings, at) =>
    standings.flatMap((standing): Edge[] => {
      const place = places[at];
      if (place === undefined || standing.fit.level === 'no') return [];
      const order = rank.get(standing.piece.id) ?? 0;
      const ties: Readonly<Record<(typeof TIE_PARTS)[number], number>> = {
        firstPiece: -order,
        firstPlace: -at,
        firstPieceFirst: at * order,
      };
      const weight = [...weightOf(scoreOf(standing)), ...TIE_PARTS.map((part) => ties[part])];
      return [{ column: columnOf(place, at, standing.piece), weight }];
    }),
  );
  const parts = SCORE_PARTS.length + TIE_PARTS.length;
  return heaviestMatching(rows, columns.size, parts).map((column, at) => {
    const place = places[at];
    if (column === null || place === undefined) return null;
    return fitting[at]?.find(({ piece, fit }) => fit.level !== 'no' && columnOf(place, at, piece) === column) ?? null;
  });
}

/** Which of its seats a piece takes in a place: it has one, one for each joint ruler, or one in every place. */
export function seatOf(place: SetPlace, at: number, piece: SetPiece, rule: SetRule): string {
  const accept = { ...ACCEPT, ...rule.accept };
  if (accept['one-piece'] === 'any-places') return String(at);
  if (rule['one-per'] !== 'ruler' || accept['joint-reign'] === 'one') return '';
  const asked = place.where['struck-for'] ?? place.where.ruler ?? [];
  return [...piece.rulers, ...piece.struckFor].find((ruler) => asked.includes(ruler)) ?? '';
}
