import type { Arrangement } from './arrange.ts';
import { standsAt } from './arrange.ts';
import { compareStanding, nameOf, whyBetter } from './why-better.ts';
import type { SetState } from './set-state.ts';

/** Pieces that fit a place and stand in none, each with the place it fits best and what stands there instead. */
export function sparesOf(arrangement: Arrangement): SetState['spares'] {
  const standing = standsAt(arrangement);
  const spares = new Map<string, { at: number; places: number }>();
  for (const [at, fitting] of arrangement.fitting.entries()) {
    for (const one of fitting) {
      if (standing.has(one.piece.id)) continue;
      const known = spares.get(one.piece.id);
      const before = known && arrangement.fitting[known.at]?.find(({ piece }) => piece.id === one.piece.id);
      const better = before === undefined || compareStanding(one, before) > 0;
      spares.set(one.piece.id, { at: better ? at : (known?.at ?? at), places: (known?.places ?? 0) + 1 });
    }
  }
  return [...spares]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([piece, { at, places }]) => ({ piece, because: whySpare(arrangement, piece, at, places) }));
}

function whySpare({ places, fitting, holders }: Arrangement, id: string, at: number, count: number): string {
  const label = places[at]?.label ?? '';
  const spare = fitting[at]?.find(({ piece }) => piece.id === id);
  const holder = holders[at];
  const more = count === 1 ? '' : ` Of the ${String(count)} places it fits, none is left for it.`;
  if (!spare || !holder) return `Fits ${label}.${more}`;
  const may = spare.fit.level === 'possible' ? 'May fit' : spare.fit.level === 'filler' ? 'Could stand in for' : 'Fits';
  const why = compareStanding(holder, spare) > 0 ? whyBetter(holder, spare) : 'it can stand nowhere else';
  return `${may} ${label}, where ${nameOf(holder.piece)} stands: ${why}.${more}`;
}
