import type { Interval } from '../eras/era-scheme.ts';
import type { Arrangement } from './arrange.ts';
import type { PlaceState, Wanted } from './set-state.ts';

/** What to look for: empty places, then places held by a filler or only possibly, then places below the aim. No prices. */
export function wantedOf(
  { holders }: Arrangement,
  states: readonly PlaceState[],
  aim: Interval | null,
): readonly Wanted[] {
  const wanted = states.flatMap((place, at): readonly Wanted[] => {
    const { id, label, state, because = '' } = place;
    if (state === 'wanted') return [{ place: id, label, why: 'empty', because }];
    if (state === 'filler') return [{ place: id, label, why: 'filler', because: 'A problem piece stands in.' }];
    if (state === 'possible') return [{ place: id, label, why: 'possible', because }];
    const grade = holders[at]?.piece.grade ?? null;
    if (state === 'excused' || aim === null || grade === null || grade.high >= aim.low) return [];
    const held = 'The piece that stands here is below the grade aimed at.';
    return [{ place: id, label, why: 'below the aim', because: held }];
  });
  return ORDER.flatMap((why) => wanted.filter((one) => one.why === why));
}

const ORDER = ['empty', 'filler', 'possible', 'below the aim'] as const;
