import { setStates } from '../../../publish/set-states.ts';
import type { SetState } from '../../../core/sets/set-state.ts';
import type { Cabinet } from '../../cabinet.ts';
import { onceFor } from '../../once-for.ts';

/** How far each set has come. */
export const setStatesOf = onceFor((cabinet: Cabinet): readonly SetState[] => setStates(cabinet.lists, cabinet.listed));
