import { good } from '../outcome.ts';
import type { Outcome } from '../outcome.ts';
import { arrange } from './arrange.ts';
import { explainPlaces, sparesOf, wantedOf } from './explain.ts';
import { filledNow, historyOf } from './history.ts';
import { placesOf } from './places.ts';
import type { SetPiece } from './set-piece.ts';
import type { Lists, SetRule } from './set-rule.ts';
import type { SetState } from './set-state.ts';
import { upgradesOf } from './upgrades.ts';

/**
 * How far a set has come with these pieces. Refuses a rule that yields no place, names one twice, or asks of a place what the
 * set shuts out. The answer does not depend on the order of the pieces.
 */
export function countSet(rule: SetRule, pieces: readonly SetPiece[], lists: Lists): Outcome<SetState> {
  const places = placesOf(rule, lists);
  if (!places.ok) return places;
  const arrangement = arrange(rule, places.value, pieces, lists);
  const states = explainPlaces(arrangement);
  const excused = states.filter(({ state }) => state === 'excused').length;
  const history = historyOf(arrangement, rule);
  return good({
    id: rule.id,
    title: rule.title,
    of: states.length - excused,
    filled: filledNow(history),
    excused,
    places: states,
    spares: sparesOf(arrangement),
    upgrades: upgradesOf(arrangement),
    leftOut: arrangement.leftOut,
    wanted: wantedOf(arrangement, states, rule.aim ?? null),
    history,
  });
}
