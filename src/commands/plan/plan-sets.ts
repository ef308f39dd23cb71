import type { Catalogue } from '../../catalogue/catalogue.ts';
import { setRuleOf } from '../../catalogue/for-core/set-rule.ts';
import type { Graded } from '../../core/grade/compare-grades.ts';
import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';
import type { Offer } from '../../core/plan/offer.ts';
import { offersFromGuide } from '../../core/plan/offers-from-guide.ts';
import type { Shopping } from '../../core/plan/offers-from-guide.ts';
import { planPurchases } from '../../core/plan/plan-purchases.ts';
import type { Plan } from '../../core/plan/plan-purchases.ts';
import { gradedAs } from '../../core/sets/set-piece.ts';
import type { SetState, Wanted } from '../../core/sets/set-state.ts';
import { publicPieces } from '../../publish/public-piece.ts';
import type { PublicPiece } from '../../publish/public-piece.ts';
import { setPieceOf } from '../../publish/set-piece.ts';
import { setStates } from '../../publish/set-states.ts';
import type { ReadGuide } from './read-guide.ts';
import type { PlanRequest } from './read-plan-request.ts';
import type { Problem } from '../../catalogue/problem.ts';

export type SetsPlan = {
  readonly request: PlanRequest;
  readonly sets: readonly SetState[];
  /** Places are named as in `wanted`, so that two sets may each have a place called york. */
  readonly plan: Plan;
  readonly wanted: ReadonlyMap<string, { readonly set: SetState; readonly want: Wanted }>;
  readonly unpriced: Shopping['unpriced'];
  readonly old: readonly string[];
  readonly unread: readonly string[];
};

/**
 * One plan for all the chosen sets out of one purse. It is made for the keeper's eyes alone, so it counts pieces that are hidden
 * or unlisted too: else it would send the keeper out for what lies in the drawer.
 */
export function planSets(
  catalogue: Catalogue,
  guide: ReadGuide,
  request: PlanRequest,
  thisYear: number,
): Outcome<SetsPlan> {
  const pieces = everyPiece(catalogue);
  const chosen = catalogue.sets.filter(({ id }) => request.sets?.includes(id) ?? guide.prices.has(id));
  const states = setStates({ ...catalogue, sets: chosen }, pieces);
  const grades = new Map(
    pieces.map(setPieceOf).map((piece) => [piece.id, piece.grade === null ? null : gradedAs(piece)] as const),
  );
  const shopping: { state: SetState; found: Shopping }[] = [];
  for (const [at, state] of states.entries()) {
    const rule = chosen[at];
    const aim = rule === undefined ? null : (setRuleOf(rule).aim ?? null);
    if (request.fewerAndBetter && aim === null) return refuse(noAim(state));
    const notBelow = request.fewerAndBetter ? aim : null;
    const found = shop(state, grades, guide, request, { notBelow, thisYear });
    if (!found.ok) return found;
    shopping.push({ state, found: found.value });
  }
  const wanted = new Map(
    states.flatMap((set) => set.wanted.map((want) => [keyOf(set, want.place), { set, want }] as const)),
  );
  const offers = shopping.flatMap(({ state, found }) =>
    found.offers.map((offer): Offer => ({ ...offer, place: keyOf(state, offer.place) })),
  );
  const most = new Set(offers.map(({ place }) => place)).size;
  const purchases = Math.min(request.purse.purchases ?? most, most);
  const plan = planPurchases(offers, { ...request.purse, purchases });
  if (!plan.ok) return plan;
  const ids = chosen.map(({ id }) => id);
  return good({
    request,
    sets: states,
    plan: plan.value,
    wanted,
    unpriced: shopping.flatMap(({ state, found }) =>
      found.unpriced.map((one) => ({ ...one, place: keyOf(state, one.place) })),
    ),
    old: shopping.flatMap(({ found }) => found.old),
    unread: guide.unread.filter(({ set }) => set === '' || ids.includes(set)).map(({ says }) => says),
  });
}

function shop(
  state: SetState,
  grades: ReadonlyMap<string, Graded | null>,
  guide: ReadGuide,
  { currency }: PlanRequest,
  how: { readonly notBelow: Graded | null; readonly thisYear: number },
): Outcome<Shopping> {
  const found = offersFromGuide(state, grades, guide.prices.get(state.id) ?? [], how);
  if (!found.ok || found.value.currency === null || found.value.currency === currency) return found;
  const other = found.value.currency;
  return refuse(
    `The budget is in ${currency} and the guide prices “${state.title}” in ${other}, and no rate between them is given. Write the budget in ${other}.`,
  );
}

function noAim({ id, title }: SetState): string {
  return `“${title}” has no aim, so fewer and better has nothing to keep to. Write aim: VF in sets/${id}.yaml.`;
}

function keyOf({ id }: Pick<SetState, 'id'>, place: string): string {
  return `${id}/${place}`;
}

function everyPiece(catalogue: Catalogue): readonly PublicPiece[] {
  const pieces = catalogue.pieces.map((piece) => ({ ...piece, fields: { ...piece.fields, publish: 'yes' as const } }));
  return publicPieces({ ...catalogue, pieces });
}

/**
 * Whether a problem of the cabinet may change a plan. A missing photograph or a slip in an exhibit does not; a piece, a rule or
 * a price that cannot be read does.
 */
export function concernsPlan({ kind, file }: Problem): boolean {
  return !/^(photograph|picture)-/.test(kind) && !/^(exhibits|eras|works)\/|^private\/ledger\.csv$/.test(file);
}
