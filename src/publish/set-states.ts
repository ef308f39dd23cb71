import type { Catalogue, CollectingSet } from '../catalogue/catalogue.ts';
import { setListsOf, setRuleOf } from '../catalogue/for-core/set-rule.ts';
import { countSet } from '../core/sets/count-set.ts';
import { gridOf } from '../core/sets/grid.ts';
import type { SetGrid } from '../core/sets/grid.ts';
import type { Lists } from '../core/sets/set-rule.ts';
import type { SetState } from '../core/sets/set-state.ts';
import type { PublicPiece } from './public-piece.ts';
import { setPieceOf } from './set-piece.ts';

type Listed = Omit<Catalogue, 'pieces'>;

/** How far each set has come, counted over the listed pieces alone: what is hidden or unlisted is in no count. */
export function setStates(lists: Listed, pieces: readonly PublicPiece[]): readonly SetState[] {
  const counted = pieces.filter(({ listed }) => listed).map(setPieceOf);
  const from = setLists(lists);
  return lists.sets.map((set) => {
    const state = countSet(setRuleOf(set), counted, from);
    // The check has refused every set that cannot be counted before anything is built.
    if (!state.ok) throw new Error(state.problem);
    return state.value;
  });
}

/** The pieces that fit a set, by the two facts its file names; null where it names none. */
export function setGrid(
  lists: Listed,
  pieces: readonly PublicPiece[],
  set: CollectingSet,
  state: SetState,
): SetGrid | null {
  const sides = set.fields.grid;
  if (sides === undefined) return null;
  const fitting = new Set([
    ...state.places.flatMap(({ piece, others = [] }) => (piece === undefined ? others : [piece, ...others])),
    ...state.spares.map(({ piece }) => piece),
  ]);
  const shown = pieces.filter(({ id, listed }) => listed && fitting.has(id)).map(setPieceOf);
  return gridOf(setRuleOf(set), sides, shown, setLists(lists), (fact, value) => {
    const list = { ruler: lists.rulers, mint: lists.mints, denomination: lists.denominations }[fact as string];
    return list?.[value]?.fields.name ?? value;
  });
}

function setLists(lists: Listed): Lists {
  return setListsOf(
    { rulers: Object.values(lists.rulers), mints: Object.values(lists.mints), works: Object.values(lists.works) },
    lists.cabinet,
    lists.types,
  );
}
