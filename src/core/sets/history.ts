import type { Arrangement } from './arrange.ts';
import { assign } from './assign.ts';
import { countStates } from './count-states.ts';
import type { SetPiece } from './set-piece.ts';
import type { SetRule } from './set-rule.ts';
import type { Count, SetState } from './set-state.ts';

/**
 * The count as it would have stood at the end of each year, with the pieces that are here now and were here then. Pieces without
 * a year of acquisition come in at the end, under the year null.
 */
export function historyOf(arrangement: Arrangement, rule: SetRule): SetState['history'] {
  const pieces = arrangement.fitting.flat().map(({ piece }) => piece);
  const years = new Set(pieces.flatMap(({ acquired }) => (typeof acquired === 'number' ? [acquired] : [])));
  const history: { year: number | null; filled: Count }[] = [];
  const add = (year: number | null, filled: Count): void => {
    const last = history.at(-1)?.filled ?? { low: 0, high: 0 };
    if (filled.low !== last.low || filled.high !== last.high) history.push({ year, filled });
  };
  for (const year of [...years].sort((a, b) => a - b)) {
    add(
      year,
      countWith(arrangement, rule, ({ acquired }) => typeof acquired === 'number' && acquired <= year),
    );
  }
  add(
    null,
    countWith(arrangement, rule, () => true),
  );
  return history;
}

function countWith({ places, fitting }: Arrangement, rule: SetRule, here: (piece: SetPiece) => boolean): Count {
  const then = fitting.map((standings) => standings.filter(({ piece }) => here(piece)));
  const levels = assign(places, then, rule).map((holder) => holder?.fit.level);
  return countStates(
    levels.map((level) => (level === 'certain' ? 'filled' : level === 'possible' ? 'possible' : 'wanted')),
  );
}
