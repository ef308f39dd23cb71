import type { PlaceState } from '../../core/sets/set-state.ts';

/** The marks of a place in a set, in words. */
export const placeWords: Readonly<Record<PlaceState['state'], string>> = {
  filled: 'filled',
  possible: 'possibly filled',
  filler: 'a filler for now',
  wanted: 'wanted',
  excused: 'excused',
};
