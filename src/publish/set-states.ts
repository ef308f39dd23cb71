import type { Catalogue } from '../catalogue/catalogue.ts';
import { setListsOf, setRuleOf } from '../catalogue/set-rule.ts';
import { countSet } from '../core/sets/count-set.ts';
import type { SetState } from '../core/sets/set-state.ts';
import type { PublicPiece } from './public-piece.ts';
import { setPieceOf } from './set-piece.ts';

/** How far each set has come, counted over the listed pieces alone: what is hidden or unlisted is in no count. */
export function setStates(lists: Omit<Catalogue, 'pieces'>, pieces: readonly PublicPiece[]): readonly SetState[] {
  const counted = pieces.filter(({ listed }) => listed).map(setPieceOf);
  const from = setListsOf(
    { rulers: Object.values(lists.rulers), mints: Object.values(lists.mints), works: Object.values(lists.works) },
    lists.cabinet,
    lists.types,
  );
  return lists.sets.map((set) => {
    const state = countSet(setRuleOf(set), counted, from);
    // The check has refused every set that cannot be counted before anything is built.
    if (!state.ok) throw new Error(state.problem);
    return state.value;
  });
}
