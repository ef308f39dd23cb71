import { nearestName } from '../../catalogue/nearest.ts';
import { parseMoney } from '../../core/money/money.ts';
import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';
import type { Purse } from '../../core/plan/offer.ts';

/** What the keeper asks of a plan. */
export type PlanRequest = {
  /** Purchases are null when any number may be made. */
  readonly purse: Omit<Purse, 'purchases'> & { readonly purchases: number | null };
  readonly currency: string;
  /** The sets to plan for; null for every set that the guide prices. */
  readonly sets: readonly string[] | null;
  readonly fewerAndBetter: boolean;
};

/** The flags as they stand on the command line; `words` are those that belong to no flag. */
export type PlanFlags = {
  readonly budget?: string | undefined;
  readonly purchases?: string | undefined;
  readonly years?: string | undefined;
  readonly set?: readonly string[] | undefined;
  readonly 'fewer-and-better'?: boolean | undefined;
  readonly words: readonly string[];
};

const EXAMPLE = 'npm run plan -- --budget "600 GBP" --purchases 6 --years 3';
const MOST_PURCHASES = 1000;
/** Further ahead no guide price means anything. */
const MOST_YEARS = 50;

export function readPlanRequest(flags: PlanFlags, knownSets: readonly string[]): Outcome<PlanRequest> {
  const { budget: written, words, set: sets = [] } = flags;
  const stray = words[0];
  if (stray !== undefined)
    return refuse(`"${stray}" belongs to no flag. Put what has a space in it in quotation marks: --budget "600 GBP".`);
  if (written === undefined) return refuse(`A plan needs to know what a year may cost. Write ${EXAMPLE}.`);
  const budget = parseMoney(written);
  if (!budget.ok) return refuse(`The budget cannot be read. ${budget.problem}`);
  if (budget.value.minor === 0) return refuse(`With a budget of nothing there is nothing to plan. Write ${EXAMPLE}.`);
  const purchases =
    flags.purchases === undefined ? good(null) : readCount('purchases', flags.purchases, MOST_PURCHASES, 6);
  if (!purchases.ok) return purchases;
  const years = readCount('years', flags.years ?? '1', MOST_YEARS, 3);
  if (!years.ok) return years;
  const unknown = sets.find((id) => !knownSets.includes(id));
  if (unknown !== undefined) {
    const nearest = nearestName(unknown, knownSets);
    const known = knownSets.length === 0 ? 'This cabinet has no sets.' : `The sets are ${knownSets.join(', ')}.`;
    return refuse(`There is no set "${unknown}". ${nearest === null ? known : `Write --set ${nearest}.`}`);
  }
  return good({
    purse: { budget: Math.floor(budget.value.minor), purchases: purchases.value, years: years.value },
    currency: budget.value.currency,
    sets: sets.length === 0 ? null : [...new Set(sets)],
    fewerAndBetter: flags['fewer-and-better'] ?? false,
  });
}

function readCount(flag: string, written: string, most: number, example: number): Outcome<number> {
  const count = /^\d{1,6}$/.test(written) ? Number(written) : 0;
  if (count >= 1 && count <= most) return good(count);
  return refuse(
    `--${flag} takes a whole number from 1 to ${most}; this says "${written}". Write --${flag} ${example}.`,
  );
}
