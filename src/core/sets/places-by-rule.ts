import { yearsInWords } from '../eras/years-in-words.ts';
import type { Interval } from '../eras/era-scheme.ts';
import { good, refuse } from '../outcome.ts';
import type { Outcome } from '../outcome.ts';
import { folded } from './facts.ts';
import { rulerWhere, yearPlace } from './set-place.ts';
import type { SetPlace } from './set-place.ts';
import type { Lists, SetRule } from './set-rule.ts';

/** More years than any series of dated coins has; beyond it a rule is a slip of the pen. */
const MOST_YEARS = 1000;

/** Every place a rule yields from the list files: rulers by first reign, mints and areas by name, years in order. */
export function placesByRule(rule: SetRule, lists: Lists): Outcome<readonly SetPlace[]> {
  switch (rule['one-per']) {
    case 'ruler':
      return some(rulers(rule, lists), rule, 'no ruler in rulers/');
    case 'mint': {
      const silent = silentMints(rule, lists);
      return (
        silent ??
        some(
          mints(rule, lists).map(({ id, name }) => ({ id, label: name, where: { mint: [id] } })),
          rule,
          'no mint in mints/',
        )
      );
    }
    case 'area': {
      const silent = silentMints(rule, lists);
      return silent ?? some(areas(rule, lists), rule, 'no area of a mint in mints/');
    }
    case 'date':
      return years(rule);
    case 'reference':
    case 'die':
    case 'listed':
      return refuse(
        `“${rule.title}” is one per ${rule['one-per']}, which no list file can yield. Write its places out under places:.`,
      );
  }
}

function some(places: readonly SetPlace[], rule: SetRule, lacking: string): Outcome<readonly SetPlace[]> {
  if (places.length > 0) return good(places);
  return refuse(
    `The rule of “${rule.title}” yields no place: ${lacking} answers it. Widen where:, or write the places out under places:.`,
  );
}

function rulers({ where, ...rule }: SetRule, lists: Lists): readonly SetPlace[] {
  const named = where.ruler ?? where['struck-for'];
  const barred = where.not?.ruler ?? where.not?.['struck-for'];
  return lists.rulers
    .filter((ruler) => named === undefined || named.includes(ruler.id))
    .filter((ruler) => barred?.includes(ruler.id) !== true)
    .filter((ruler) => among(ruler.realm, where.realm) && !(where.not?.realm && among(ruler.realm, where.not.realm)))
    .map((ruler) => ({ ...ruler, reigns: ruler.reigns.filter(({ coins }) => coins !== false) }))
    .filter((ruler) => ruler.reigns.some((reign) => meets(reign, where.date)))
    .map((ruler) => ({ ...ruler, first: Math.min(...ruler.reigns.map(({ low }) => low)) }))
    .sort((a, b) => (a.first === b.first ? inOrder(a.name, b.name) : a.first - b.first))
    .map(({ id, name }) => ({ id, label: name, where: rulerWhere(id, { ...rule, where }) }));
}

function mints({ where }: SetRule, lists: Lists): Lists['mints'] {
  return lists.mints
    .filter((mint) => where.mint === undefined || where.mint.includes(mint.id))
    .filter((mint) => where.not?.mint?.includes(mint.id) !== true)
    .filter((mint) => where.area === undefined || (mint.area !== undefined && among(mint.area, where.area)))
    .filter(
      (mint) =>
        where.date === undefined || mint.struck === undefined || mint.struck.some((span) => meets(span, where.date)),
    )
    .toSorted((a, b) => inOrder(a.name, b.name));
}

function areas(rule: SetRule, lists: Lists): readonly SetPlace[] {
  const names = mints(rule, lists).flatMap(({ area }) => (area === undefined ? [] : [area]));
  const first = names.filter((area, at) => names.findIndex((other) => folded(other) === folded(area)) === at);
  return first.toSorted(inOrder).map((area) => ({ id: folded(area), label: area, where: { area: [area] } }));
}

/** A rule with a date cannot tell whether a mint belongs when its file does not say when it struck: it asks. */
function silentMints(rule: SetRule, lists: Lists): Outcome<never> | null {
  if (rule.where.date === undefined || rule.where.mint !== undefined) return null;
  const silent = mints(rule, lists).filter(({ struck }) => struck === undefined);
  if (silent.length === 0) return null;
  const named = silent
    .slice(0, 3)
    .map(({ id }) => id)
    .join(', ');
  const more = silent.length > 3 ? ` and ${String(silent.length - 3)} more` : '';
  return refuse(
    `“${rule.title}” wants every mint that struck in ${yearsInWords(rule.where.date)}, and the files of ${named}${more} do not say when they struck. ` +
      'Add struck: to them, or write the places out under places:.',
  );
}

function years({ title, where }: SetRule): Outcome<readonly SetPlace[]> {
  const { low, high } = where.date ?? { low: -Infinity, high: Infinity };
  if (!Number.isFinite(high - low))
    return refuse(`“${title}” is one per date. Say from when to when: where: { date: 1838/1901 }.`);
  if (high - low >= MOST_YEARS)
    return refuse(
      `“${title}” would have ${String(high - low + 1)} places, one a year. Narrow its date, or write the places out.`,
    );
  return good(Array.from({ length: high - low + 1 }, (_, at) => yearPlace(low + at)));
}

function among(value: string | undefined, values: readonly string[] | undefined): boolean {
  return values === undefined || (value !== undefined && values.map(folded).includes(folded(value)));
}

function meets(span: Interval, date: Interval | undefined): boolean {
  return date === undefined || (span.low <= date.high && date.low <= span.high);
}

/** By letters alone, the same on every machine. */
function inOrder(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
