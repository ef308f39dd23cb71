import type { Arrangement } from './arrange.ts';
import { seatOf } from './assign.ts';
import { growingMatching } from './heaviest-matching.ts';
import type { Edge } from './heaviest-matching.ts';
import type { SetRule } from './set-rule.ts';
import type { Count, SetState } from './set-state.ts';

/** A piece in one of its seats, with the places it fills from there for certain, and those it fills if it is what it may be. */
type Seat = { readonly acquired: number; readonly certain: number[]; readonly possible: number[] };

/**
 * The count as it would have stood at the end of each year, with the pieces that are here now and were here then; pieces without
 * a year of acquisition come in at the end, under the year null. Low is the most places that can be filled for certain; high the
 * most that any arrangement could fill if every doubtful piece were what it may be, so the two are matchings of their own.
 */
export function historyOf(arrangement: Arrangement, rule: SetRule): SetState['history'] {
  const seats = seatsOf(arrangement, rule).toSorted((a, b) => a.acquired - b.acquired);
  const places = arrangement.places.length;
  const low = mostPlaces(seats.map(({ certain }) => certain), places);
  const high = mostPlaces(seats.map(({ possible }) => possible), places);
  const history: { year: number | null; filled: Count }[] = [];
  for (const [at, { acquired }] of seats.entries()) {
    // Only the last piece of a year closes it.
    if (seats[at + 1]?.acquired === acquired) continue;
    const filled = { low: low[at] ?? 0, high: high[at] ?? 0 };
    const before = history.at(-1)?.filled ?? { low: 0, high: 0 };
    if (filled.low !== before.low || filled.high !== before.high)
      history.push({ year: Number.isFinite(acquired) ? acquired : null, filled });
  }
  return history;
} // prettier-ignore

/** Where a set stands: the end of its history. */
export function filledNow(history: SetState['history']): Count {
  return history.at(-1)?.filled ?? { low: 0, high: 0 };
}

/** How many places the first seat can fill, the first two, and so on. */
function mostPlaces(seats: readonly (readonly number[])[], places: number): readonly number[] {
  const rows = seats.map((each) => each.map((column): Edge => ({ column, weight: [1] })));
  return Array.from(
    growingMatching(rows, places, 1),
    (matching) => matching.filter((column) => column !== null).length,
  );
}

/** Whoever fills a place for certain or possibly; fillers count in neither and are left out. */
function seatsOf({ places, fitting }: Arrangement, rule: SetRule): readonly Seat[] {
  const seats = new Map<string, Seat>();
  for (const [column, place] of places.entries()) {
    for (const { piece, fit } of fitting[column] ?? []) {
      if (fit.level !== 'certain' && fit.level !== 'possible') continue;
      const key = JSON.stringify([piece.id, seatOf(place, column, piece, rule)]);
      const seat = seats.get(key) ?? { acquired: piece.acquired ?? Infinity, certain: [], possible: [] };
      seat.possible.push(column);
      if (fit.level === 'certain') seat.certain.push(column);
      seats.set(key, seat);
    }
  }
  return [...seats.values()];
}
