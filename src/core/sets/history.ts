import type { Arrangement } from './arrange.ts';
import { seatOf } from './assign.ts';
import { growingMatching } from './heaviest-matching.ts';
import type { Edge, Matching } from './heaviest-matching.ts';
import type { SetRule } from './set-rule.ts';
import type { Count, SetState } from './set-state.ts';

/** A piece in one of its seats, with the places it fits from there. */
type Seat = { readonly acquired: number; readonly edges: Edge[] };

/**
 * The count as it would have stood at the end of each year, with the pieces that are here now and were here then. Pieces without
 * a year of acquisition come in at the end, under the year null.
 */
export function historyOf(arrangement: Arrangement, rule: SetRule): SetState['history'] {
  const seats = seatsOf(arrangement, rule).toSorted((a, b) => a.acquired - b.acquired);
  const history: { year: number | null; filled: Count }[] = [];
  let before: Count = { low: 0, high: 0 };
  let at = 0;
  for (const matching of growingMatching(
    seats.map(({ edges }) => edges),
    arrangement.places.length,
    2,
  )) {
    const year = seats[at]?.acquired ?? Infinity;
    at += 1;
    // Only the last piece of a year closes it.
    if (seats[at]?.acquired === year) continue;
    const filled = countOf(seats, matching);
    if (filled.low !== before.low || filled.high !== before.high)
      history.push({ year: Number.isFinite(year) ? year : null, filled });
    before = filled;
  }
  return history;
}

/** Whoever fills a place for certain or possibly; fillers count in neither and are left out. */
function seatsOf({ places, fitting }: Arrangement, rule: SetRule): readonly Seat[] {
  const seats = new Map<string, Seat>();
  for (const [column, place] of places.entries()) {
    for (const { piece, fit } of fitting[column] ?? []) {
      if (fit.level !== 'certain' && fit.level !== 'possible') continue;
      const key = JSON.stringify([piece.id, seatOf(place, column, piece, rule)]);
      const seat = seats.get(key) ?? { acquired: piece.acquired ?? Infinity, edges: [] };
      seat.edges.push({ column, weight: fit.level === 'certain' ? CERTAIN : POSSIBLE });
      seats.set(key, seat);
    }
  }
  return [...seats.values()];
}

const CERTAIN = [1, 0] as const;
const POSSIBLE = [0, 1] as const;

function countOf(seats: readonly Seat[], matching: Matching): Count {
  const weights = matching.map(
    (column, row) => seats[row]?.edges.find((edge) => edge.column === column)?.weight ?? [0, 0],
  );
  const [low, possible] = [0, 1].map((part) => weights.reduce((sum, weight) => sum + (weight[part] ?? 0), 0));
  return { low: low ?? 0, high: (low ?? 0) + (possible ?? 0) };
}
