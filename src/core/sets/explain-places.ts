import type { Arrangement } from './arrange.ts';
import { standsAt } from './arrange.ts';
import type { Standing } from './assign.ts';
import { compareStanding, nameOf, whyBetter } from './why-better.ts';
import type { SetPlace } from './set-place.ts';
import type { PlaceState } from './set-state.ts';

const STATES = { certain: 'filled', possible: 'possible', filler: 'filler' } as const;

/** Every place with its state, the piece in it, the others that could stand there, and why it is so. */
export function explainPlaces(arrangement: Arrangement): readonly PlaceState[] {
  const elsewhere = standsAt(arrangement);
  return arrangement.places.map((place, at): PlaceState => {
    const { id, label, excused } = place;
    if (excused !== undefined) return { id, label, state: 'excused', because: excused };
    const fitting = arrangement.fitting[at] ?? [];
    const holder = arrangement.holders[at] ?? null;
    const others = fitting
      .filter(({ piece }) => piece.id !== holder?.piece.id)
      .toSorted((a, b) => compareStanding(b, a));
    const listed = others.length === 0 ? {} : { others: others.map(({ piece }) => piece.id) };
    if (holder === null || holder.fit.level === 'no') {
      return { id, label, state: 'wanted', ...listed, because: whyEmpty(others, elsewhere) };
    }
    const because = [holder.fit.because, whyHere(holder, others, elsewhere)].filter((part) => part !== '').join(' ');
    return { id, label, state: STATES[holder.fit.level], piece: holder.piece.id, ...listed, because };
  });
}

function whyEmpty([best]: readonly Standing[], elsewhere: ReadonlyMap<string, SetPlace>): string {
  if (best === undefined) return 'Nothing in the cabinet fits.';
  const stands = elsewhere.get(best.piece.id);
  return `${nameOf(best.piece)} would fit, and is needed for ${stands?.label ?? 'another place'}.`;
}

function whyHere(holder: Standing, [best]: readonly Standing[], elsewhere: ReadonlyMap<string, SetPlace>): string {
  if (best === undefined) return 'The only piece that fits.';
  const stands = elsewhere.get(best.piece.id);
  if (compareStanding(holder, best) < 0 && stands)
    return `${nameOf(best.piece)} would be better here, and is needed for ${stands.label}.`;
  return `Before ${nameOf(best.piece)}: ${whyBetter(holder, best)}.`;
}
