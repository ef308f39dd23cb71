import { formatMoney } from '../../core/money/money.ts';
import type { Offer } from '../../core/plan/offer.ts';
import type { Wanted } from '../../core/sets/set-state.ts';
import type { SetsPlan } from './plan-sets.ts';

/** A plan as a page of Markdown: what to buy in which year, what that comes to, and what was left out and why. */
export function formatPlan(planned: SetsPlan, madeOn: string): string {
  const { plan } = planned;
  const bought = plan.years.some(({ purchases }) => purchases.length > 0);
  const parts = [
    `# Buying plan of ${madeOn}`,
    'Private: it is in private/ and is published nowhere. The next plan is written over it. ' +
      'Prices are those of your own guide, at its dear end: not an offer, not an appraisal.',
    `${inWords(planned)} ${bought ? resultOf(planned) : 'Nothing is to be bought.'}`,
    ...(plan.proven
      ? []
      : ['There are too many ways to try them all: this is the best plan found, and there may be a better one.']),
    ...setsOf(planned),
    ...yearsOf(planned),
    ...section('Left out', plan.leftOut.map((one) => placeLine(planned, one))),
    ...section('Wanted, and not priced', planned.unpriced.map((one) => placeLine(planned, one))),
    ...section('Old prices', planned.old),
    ...section('Rows of the guide that are not used', planned.unread),
  ]; // prettier-ignore
  return `${parts.join('\n\n')}\n`;
}

/** The same for a terminal: headings without their marks. */
export function plainPlan(markdown: string): string {
  return markdown.replace(/^#+ /gm, '');
}

function inWords({ request, sets }: SetsPlan): string {
  const { budget, purchases, years } = request.purse;
  const money = formatMoney({ minor: budget, currency: request.currency });
  const number = purchases === null ? 'as many purchases as it pays for' : `at most ${counted(purchases, 'purchase')}`;
  const how = request.fewerAndBetter ? ', fewer and better: nothing below the aim' : '';
  const several =
    sets.length > 1
      ? ' A piece bought for one set may serve another too; the plan does not count on it.'
      : sets.length === 0
        ? ' The guide prices no set.'
        : '';
  return `${counted(years, 'year')} with ${money} and ${number} each year${how}.${several}`;
}

function resultOf({ plan, request: { currency } }: SetsPlan): string {
  const bought = plan.years.flatMap(({ purchases }) => purchases);
  const bettered = bought.filter(({ fills }) => !fills).length;
  const does = [
    ...(plan.filled > 0 ? [`fills ${counted(plan.filled, 'place')}`] : []),
    ...(bettered > 0 ? [`betters ${counted(bettered, 'piece')}`] : []),
  ].join(' and ');
  return `The plan ${does} for ${span(plan.cost, currency)}.`;
}

/** How far each set is, and how far the plan brings it. */
function setsOf({ sets, plan }: SetsPlan): readonly string[] {
  const fills = plan.years.flatMap(({ purchases }) => purchases).filter((offer) => offer.fills);
  const lines = sets.map(({ id, title, of, filled }) => {
    const more = fills.filter(({ place }) => place.startsWith(`${id}/`)).length;
    const to = more === 0 ? '' : `, ${String(filled.low + more)} with this plan`;
    return `${title}: ${String(filled.low)} of ${String(of)} filled for certain${to}.`;
  });
  return section('Sets', lines);
}

function yearsOf({ plan, wanted, request: { currency } }: SetsPlan): readonly string[] {
  const money = (minor: number): string => formatMoney({ minor, currency });
  const line = (offer: Offer): string => {
    const want = wanted.get(offer.place)?.want;
    return `${offer.label} in ${offer.grade}: ${span(offer.price, currency)}. ${doesWhat(offer, want)} (${offer.source})`;
  };
  return plan.years.flatMap(({ purchases, spent, left }, at) => {
    if (purchases.length === 0) return at === 0 ? [] : [`## Year ${String(at + 1)}`, 'Nothing is to be bought.'];
    const heading = `## Year ${String(at + 1)}`;
    return [heading, `At most ${money(spent)}; ${money(left)} left.`, list(purchases.toSorted(firstThings).map(line))];
  });
}

function doesWhat({ fills, improvement }: Offer, want: Wanted | undefined): string {
  if (!fills) return `Betters what stands there by at least ${counted(improvement, 'step')} of the numeric scale.`;
  if (want?.why === 'filler') return 'Takes the place of a problem piece.';
  if (want?.why === 'possible') return 'Makes sure of a place that is only possibly filled.';
  return 'Fills an empty place.';
}

/** What fills before what betters, the cheaper first. */
function firstThings(a: Offer, b: Offer): number {
  return Number(b.fills) - Number(a.fills) || a.price.high - b.price.high || (a.place < b.place ? -1 : 1);
}

function placeLine({ wanted, sets }: SetsPlan, { place, because }: { place: string; because: string }): string {
  const found = wanted.get(place);
  const of = sets.length > 1 && found !== undefined ? ` (${found.set.title})` : '';
  return `${found?.want.label ?? place}${of}: ${because}`;
}

function section(heading: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : [`## ${heading}`, list(lines)];
}

function list(lines: readonly string[]): string {
  return lines.map((line) => `- ${line}`).join('\n');
}

function span({ low, high }: { low: number; high: number }, currency: string): string {
  const money = (minor: number): string => formatMoney({ minor, currency });
  return low === high ? money(high) : `${money(low)} to ${money(high)}`;
}

function counted(count: number, noun: string): string {
  return `${String(count)} ${noun}${count === 1 ? '' : 's'}`;
}
