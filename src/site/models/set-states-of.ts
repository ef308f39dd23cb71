import { setStates } from '../../publish/set-states.ts';
import type { SetState } from '../../core/sets/set-state.ts';
import type { Cabinet } from '../cabinet.ts';

const counted = new WeakMap<Cabinet, readonly SetState[]>();

/** How far each set has come, counted once for a cabinet however many pages ask. */
export function setStatesOf(cabinet: Cabinet): readonly SetState[] {
  const known = counted.get(cabinet);
  if (known !== undefined) return known;
  const states = setStates(cabinet.lists, cabinet.listed);
  counted.set(cabinet, states);
  return states;
}
