import { join } from 'node:path';
import process from 'node:process';
import { checkCabinet, today } from '../catalogue/check-cabinet.ts';
import { recoverCabinet } from '../catalogue/keep/change-cabinet.ts';
import { PRIVATE_FILE, writeWhole } from '../catalogue/keep/flush.ts';
import { readFolder } from '../catalogue/files.ts';
import { linkRecords } from '../catalogue/link.ts';
import { formatProblem } from '../catalogue/problem.ts';
import { isScaleId } from '../core/grade/scales.ts';
import { endWith, readWords } from './parts/command-line.ts';
import { concernsPlan, planSets } from './plan/plan-sets.ts';
import { GUIDE, readGuide } from './plan/read-guide.ts';
import { readPlanRequest } from './plan/read-plan-request.ts';
import { PRIVACY } from '../privacy/privacy.ts';
import { formatMoney } from '../core/money/money.ts';
import type { Offer } from '../core/plan/offer.ts';
import type { Wanted } from '../core/sets/set-state.ts';
import type { SetsPlan } from './plan/plan-sets.ts';

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

const HELP = `npm run plan -- --budget "600 GBP"      what to buy next for the sets of the cabinet in content/

  --budget "600 GBP"      what a year may cost, with its currency; what is left of a year does not pass to the next
  --purchases 6           how many pieces a year at most; without it, as many as the budget pays for
  --years 3               how many years ahead; without it, one
  --set mints-of-1279     one set (several: repeat it); without it, every set that private/guide.csv prices
  --fewer-and-better      nothing below the set's aim
  --cabinet DIR           another cabinet

Fills as many places as it can, then improves as much as it can, then costs as little as it can, never over a year's budget
even if every piece goes for the high end of its price. Prices come from private/guide.csv and from nowhere else.
The plan is printed here and written to private/plan.md in the cabinet. It is private and is published nowhere.
`;

const { values, positionals, cabinet } = readWords(HELP, {
  budget: { type: 'string' },
  purchases: { type: 'string' },
  years: { type: 'string' },
  set: { type: 'string', multiple: true },
  'fewer-and-better': { type: 'boolean' },
  cabinet: { type: 'string' },
});
await recoverCabinet(cabinet.at);
const { records, problems } = await checkCabinet(cabinet.at, PRIVACY);
const missing = problems.find(({ kind }) => kind === 'cabinet-missing');
if (missing !== undefined) endWith(missing.says);
const request = readPlanRequest({ ...values, words: positionals }, records.named.sets);
if (!request.ok) endWith(request.problem);
const first = problems.filter(concernsPlan);
if (first.length > 0) {
  const inFull = first.map((found) => formatProblem(found, cabinet.shown)).join('\n\n');
  const count = first.length === 1 ? 'the problem' : `the ${first.length} problems`;
  endWith(`${inFull}\n\nNothing was planned: fix ${count} above first.`);
}
const folder = await readFolder(cabinet.at);
const text = folder?.files.find(({ file }) => file === GUIDE)?.text ?? null;
if (text === null)
  endWith(
    `There is no ${GUIDE} in ${cabinet.shown}, and a plan needs prices. Write one that begins with the line set,place,grade,low,high,currency,source,date.`,
  );
const scales = new Map(records.sets.map(({ id, fields }) => [id, fields['aim-scale'] ?? 'uk']));
const guide = readGuide(text, (set) => {
  const scale = scales.get(set);
  return scale !== undefined && isScaleId(scale) ? scale : undefined;
});
const day = today();
const planned = planSets(linkRecords(records), guide, request.value, Number(day.slice(0, 4)));
if (!planned.ok) endWith(planned.problem);
const markdown = formatPlan(planned.value, day);
const file = join(cabinet.at, 'private', 'plan.md');
await writeWhole(file, markdown, PRIVATE_FILE);
process.stdout.write(`${plainPlan(markdown)}\nWritten to ${join(cabinet.shown, 'private', 'plan.md')}\n`);
