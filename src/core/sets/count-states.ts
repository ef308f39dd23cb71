import type { Count, PlaceState } from './set-state.ts';

/** Low: places filled for certain. High: with those possibly filled, as the pieces stand. Fillers are in neither. */
export function countStates(states: readonly PlaceState['state'][]): Count {
  const low = states.filter((state) => state === 'filled').length;
  return { low, high: low + states.filter((state) => state === 'possible').length };
}
