import { assign } from './assign.ts';
import type { Standing } from './assign.ts';
import { candidatesOf, fitOf, openPlace } from './fits.ts';
import type { Candidate, OpenPlace } from './fits.ts';
import { isRuledOut } from './facts.ts';
import type { SetPiece } from './set-piece.ts';
import type { SetPlace } from './places.ts';
import type { ListedType, Lists, SetRule } from './set-rule.ts';
import type { SetState } from './set-state.ts';

/** The places of a set, what fits each, and what is in each. */
export type Arrangement = {
  readonly places: readonly SetPlace[];
  /** Everything that fits, one list a place, by id. */
  readonly fitting: readonly (readonly Standing[])[];
  readonly holders: readonly (Standing | null)[];
  readonly leftOut: SetState['leftOut'];
};

export function arrange(
  rule: SetRule,
  places: readonly SetPlace[],
  pieces: readonly SetPiece[],
  lists: Lists,
): Arrangement {
  const inOrder = pieces.toSorted((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
  const candidates = candidatesOf(inOrder, rule, lists).filter(({ toSet }) => toSet.verdict !== 'no');
  const barred = new Map<string, string>();
  const fitted = new Set<string>();
  const asking = askingOf(candidates);
  const fitting = places
    .map((place) => openPlace(place, rule, lists))
    .map((open) =>
      asking(open).flatMap((candidate) => {
        const fit = fitOf(candidate, open, rule);
        if (fit.level !== 'no') fitted.add(candidate.piece.id);
        else if (fit.barred && !barred.has(candidate.piece.id)) barred.set(candidate.piece.id, fit.because);
        return fit.level === 'no' ? [] : [{ piece: candidate.piece, fit }];
      }),
    );
  const types = typesAsked(rule, places, lists);
  const cannotBe = new Set(
    candidates.filter(({ facts }) => types !== null && isRuledOut(facts, types)).map(({ piece }) => piece.id),
  );
  const leftOut = [...barred]
    .filter(([piece]) => !fitted.has(piece) && !cannotBe.has(piece))
    .sort(([a], [b]) => (a < b ? -1 : 1));
  return {
    places,
    fitting,
    holders: assign(places, fitting, rule),
    leftOut: leftOut.map(([piece, because]) => ({ piece, because })),
  };
}

/** The types of which a piece must be one to fill any place of a set; null where some place asks for no type. */
function typesAsked(rule: SetRule, places: readonly SetPlace[], { types = [] }: Lists): readonly ListedType[] | null {
  if (rule['one-per'] === 'type' && rule.series !== undefined) {
    return types.filter(({ series }) => series === rule.series);
  }
  const asked = places.filter(({ excused }) => excused === undefined).map(({ where }) => where.type);
  if (asked.length === 0 || asked.some((names) => names === undefined)) return null;
  const wanted = new Set(asked.flat());
  return types.filter(({ names }) => names.some((name) => wanted.has(name)));
}

/**
 * Which pieces are worth trying in a place: of one that asks for one type, mint or ruler, those that state it or may be of it,
 * and those that state nothing of the kind. The answer of these is the same to every such place, so it is asked once.
 */
function askingOf(candidates: readonly Candidate[]): (open: OpenPlace) => readonly Candidate[] {
  const indexes = new Map<StatedFact, Indexed>();
  const asked = new Set<StatedFact>();
  return ({ asked: { facts, not, date }, place }) => {
    const condition = facts.find((one) => isStated(one.fact));
    if (place.excused !== undefined) return [];
    if (condition === undefined || !isStated(condition.fact)) return candidates;
    const { fact, values } = condition;
    const index = indexes.get(fact) ?? indexed(candidates, fact);
    indexes.set(fact, index);
    const isAlone = facts.length === 1 && not.length === 0 && date === undefined && place.where.kind === undefined;
    const silent = isAlone && asked.has(fact) ? [] : index.silent;
    if (isAlone) asked.add(fact);
    const found = new Set([...values.flatMap((value) => index.by.get(value) ?? []), ...silent]);
    return [...found].sort((a, b) => a - b).flatMap((at) => candidates[at] ?? []);
  };
}

type StatedFact = keyof Candidate['facts']['stated'];
/** Candidates by their place in the list: those that state a value or may be of it, and those that state none. */
type Indexed = { readonly by: ReadonlyMap<string, readonly number[]>; readonly silent: readonly number[] };

function isStated(fact: string): fact is StatedFact {
  return fact !== 'references' && fact !== 'die';
}

function indexed(candidates: readonly Candidate[], fact: StatedFact): Indexed {
  const by = new Map<string, number[]>();
  const silent: number[] = [];
  for (const [at, { facts }] of candidates.entries()) {
    const { values, maybe } = facts.stated[fact];
    if (values.size === 0) silent.push(at);
    for (const value of new Set([...values, ...(maybe ?? [])])) {
      const held = by.get(value);
      if (held === undefined) by.set(value, [at]);
      else held.push(at);
    }
  }
  return { by, silent };
}

/** Where each piece stands that stands somewhere, by its id. */
export function standsAt({ places, holders }: Arrangement): ReadonlyMap<string, SetPlace> {
  const at = new Map<string, SetPlace>();
  for (const [index, place] of places.entries()) {
    const holder = holders[index];
    if (holder) at.set(holder.piece.id, place);
  }
  return at;
}
