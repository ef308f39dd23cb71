import { heaviestMatching } from './heaviest-matching.ts';
import type { Edge, Weight } from './heaviest-matching.ts';
import type { Fit } from './fits.ts';
import type { SetPlace } from './set-place.ts';
import type { SetPiece } from './set-piece.ts';
import { ACCEPT } from './set-rule.ts';
import type { SetRule } from './set-rule.ts';

/** A piece that could stand in a place. */
export type Standing = { readonly piece: SetPiece; readonly fit: Fit };

/**
 * The best piece for each place, null for none, given everything that fits each (`fitting`, one list a place).
 * Best: most places filled for certain; then most possibly; then most fillers; then, summed over the places, sound pieces before
 * problem pieces, the highest lower end of grade, the highest upper end, the keeper's own preference, the first by id, and
 * of places that are equal to a piece the first.
 * A piece fills one place, unless the rule lets it fill any or those of all its joint rulers.
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
    standings.flatMap(({ piece, fit }): Edge[] => {
      const place = places[at];
      if (place === undefined || fit.level === 'no') return [];
      const order = rank.get(piece.id) ?? 0;
      return [{ column: columnOf(place, at, piece), weight: [...worth(piece, fit), -order, -at, at * order] }];
    }),
  );
  return heaviestMatching(rows, columns.size, PARTS).map((column, at) => {
    const place = places[at];
    if (column === null || place === undefined) return null;
    return fitting[at]?.find(({ piece, fit }) => fit.level !== 'no' && columnOf(place, at, piece) === column) ?? null;
  });
}

const PARTS = 11;

/** What a piece is worth in a place, apart from its id: compared part by part. */
export function worth(piece: SetPiece, fit: Fit): Weight {
  return [
    fit.level === 'certain' ? 1 : 0,
    fit.level === 'possible' ? 1 : 0,
    fit.level === 'filler' ? 1 : 0,
    fit.level === 'filler' && fit.sure ? 1 : 0,
    piece.details ? 0 : 1,
    piece.grade?.low ?? 0,
    piece.grade?.high ?? 0,
    piece.prefer === undefined ? 0 : Math.max(1, 1000 - piece.prefer),
  ];
}

/** Which of its seats a piece takes in a place: it has one, one for each joint ruler, or one in every place. */
export function seatOf(place: SetPlace, at: number, piece: SetPiece, rule: SetRule): string {
  const accept = { ...ACCEPT, ...rule.accept };
  if (accept['one-piece'] === 'any-places') return String(at);
  if (rule['one-per'] !== 'ruler' || accept['joint-reign'] === 'one') return '';
  const asked = place.where['struck-for'] ?? place.where.ruler ?? [];
  return [...piece.rulers, ...piece.struckFor].find((ruler) => asked.includes(ruler)) ?? '';
}
