import type { Within } from '../sets/set-rule.ts';
import { periodYears } from './era-scheme.ts';
import type { EraPeriod, EraScheme, Interval } from './era-scheme.ts';
import { areasAround, folded } from '../sets/facts.ts';

/** Where a piece was made and where it was found, as far as that is recorded; null where it is not. */
export type Whereabouts = {
  readonly made: {
    /** The mint's own name in the lists: `york`. */
    readonly mint: string;
    /** The area as the list of mints has it: `Yorkshire, England`. */
    readonly area: string | null;
    readonly sure: 'certain' | 'probable' | 'possible';
  } | null;
  /** The area a find was made in. */
  readonly found: string | null;
  /** Whom it was certainly struck for; empty where that is not sure. */
  readonly rulers?: readonly string[];
};

/**
 * Whether a scheme applies to a piece: its mint or its find lies in one of the places named. `perhaps` when neither is known to,
 * and one of the two, at least, may. What is not recorded of a find is no doubt where the mint is known to lie elsewhere:
 * most pieces were never found by anybody.
 */
export function schemeApplies(
  places: readonly string[],
  { made, found }: Whereabouts,
  within: readonly Within[] = [],
): 'yes' | 'perhaps' | 'no' {
  const wanted = foldedPlaces(places);
  const isIn = (names: readonly string[]) =>
    names.flatMap((name) => areasAround(name, within)).some((name) => wanted.has(folded(name)));
  const isMadeIn = made !== null && isIn([made.mint, ...(made.area === null ? [] : [made.area])]);
  if ((isMadeIn && made.sure !== 'possible') || (found !== null && isIn([found]))) return 'yes';
  const isMadeElsewhere = made !== null && made.area !== null && made.sure !== 'possible';
  return isMadeElsewhere ? 'no' : 'perhaps';
}

/** The places of a scheme, made ready once: every piece is asked of. */
function foldedPlaces(places: readonly string[]): ReadonlySet<string> {
  const wanted = WANTED.get(places) ?? new Set(places.map(folded));
  WANTED.set(places, wanted);
  return wanted;
}

const WANTED = new WeakMap<readonly string[], ReadonlySet<string>>();

export type PeriodShare = {
  readonly id: string;
  readonly name: string;
  /** The part of the piece's years that falls in this period, from 0 to 1; null when its years have no end to measure by. */
  readonly share: number | null;
};

/**
 * Where a piece falls under a scheme.
 * `within`: one period at least holds all its years (others may hold some of them, where a scheme overlaps itself).
 * `straddles`: its years run over a boundary of the scheme, or out of it. `outside`: no period touches them.
 * `unknown`: the piece is undated. `not applicable`: neither its mint nor its find lies where the scheme applies.
 * `periods` holds every period touched, in the order of the scheme; none is preferred.
 */
export type EraPlacing = {
  readonly state: 'within' | 'straddles' | 'outside' | 'unknown' | 'not applicable';
  readonly periods: readonly PeriodShare[];
  /** Said where its ruler decided, and not its years. */
  readonly by?: 'ruler';
  /** `perhaps` when nothing recorded tells whether the scheme applies; the periods are those it would have. */
  readonly applies?: 'perhaps';
};

/** Where a piece falls under a scheme that may apply to some places alone. */
export function placePiece(
  interval: Interval | null,
  where: Whereabouts,
  scheme: EraScheme,
  within: readonly Within[] = [],
): EraPlacing {
  const applies = scheme.appliesTo === undefined ? 'yes' : schemeApplies(scheme.appliesTo, where, within);
  if (applies === 'no') return { state: 'not applicable', periods: [] };
  const placing = placeInScheme(interval, scheme, where.rulers);
  const isSettled = applies === 'yes' || placing.periods.length === 0;
  return isSettled || isLikelyHis(where, scheme, placing, within) ? placing : { ...placing, applies };
}

/** A mint that is only possible is no doubt about a coin of a ruler whom the scheme names, where it lies in the scheme's places. */
function isLikelyHis(
  where: Whereabouts,
  { appliesTo = [] }: EraScheme,
  { by }: EraPlacing,
  within: readonly Within[],
): boolean {
  if (by !== 'ruler' || where.made === null) return false;
  return schemeApplies(appliesTo, { ...where, made: { ...where.made, sure: 'certain' } }, within) === 'yes';
}

/**
 * Every year of the interval counts alike: nothing is known of which is likelier. A period that names all of the rulers has the
 * piece whole. What borders on it has none (Harold II fell in the year in which Norman England began, and is not Norman), and
 * neither has a period of other rulers: Æthelstan struck at York in the years of its Viking kings.
 */
export function placeInScheme(
  interval: Interval | null,
  scheme: EraScheme,
  rulers: readonly string[] = [],
): EraPlacing {
  const isUndated = interval === null || (interval.low === -Infinity && interval.high === Infinity);
  const own =
    rulers.length === 0
      ? []
      : scheme.periods.filter((period) => {
          const isTheirs = rulers.every((id) => period.rulers?.includes(id));
          return isTheirs && (isUndated || shareOf(interval, period, scheme) !== 0);
        });
  if (isUndated) {
    const periods = own.map(({ id, name }) => ({ id, name, share: null }));
    return own.length === 0 ? { state: 'unknown', periods } : { state: 'within', periods, by: 'ruler' };
  }
  const touched = scheme.periods.flatMap((period) => {
    if (own.includes(period)) return [{ id: period.id, name: period.name, share: 1, whole: true }];
    if (own.some((each) => period.rulers !== undefined || isNeighbour(each, period))) return [];
    const share = shareOf(interval, period, scheme);
    return share === 0 ? [] : [{ id: period.id, name: period.name, share, whole: holdsAll(interval, period, scheme) }];
  });
  const state = touched.length === 0 ? 'outside' : touched.some(({ whole }) => whole) ? 'within' : 'straddles';
  const periods = touched.map(({ id, name, share }) => ({ id, name, share }));
  return { state, periods, ...(own.length === 0 ? {} : { by: 'ruler' as const }) };
}

function isNeighbour(one: EraPeriod, other: EraPeriod): boolean {
  const [a, b] = [periodYears(one), periodYears(other)];
  const isNext = (low: number, high: number): boolean => low === high || low === high + 1;
  return isNext(a.low, b.high) || isNext(b.low, a.high);
}

function shareOf(interval: Interval, period: EraPeriod, scheme: EraScheme): number | null {
  const years = periodYears(period);
  const low = Math.max(interval.low, years.low);
  const high = Math.min(interval.high, years.high);
  if (low > high) return 0;
  if (holdsAll(interval, period, scheme)) return Number.isFinite(interval.high - interval.low) ? 1 : null;
  if (!Number.isFinite(interval.high - interval.low)) return null;
  const halves = sharedEnds(period, scheme).filter((year) => low <= year && year <= high).length;
  return (high - low + 1 - halves / 2) / (interval.high - interval.low + 1);
}

/** Whether every year of the interval belongs to the period and to it alone among its neighbours. */
function holdsAll(interval: Interval, period: EraPeriod, scheme: EraScheme): boolean {
  const years = periodYears(period);
  const inside = years.low <= interval.low && interval.high <= years.high;
  return inside && !sharedEnds(period, scheme).some((year) => interval.low <= year && year <= interval.high);
}

/** The first or last year of a period, where the scheme shares ends and a neighbour ends or begins in the same year. */
function sharedEnds(period: EraPeriod, scheme: EraScheme): readonly number[] {
  if (scheme.ends === 'inclusive') return [];
  const { low, high } = periodYears(period);
  const neighbours = scheme.periods.filter((other) => other !== period).map(periodYears);
  const ends: number[] = [];
  if (Number.isFinite(low) && neighbours.some((other) => other.high === low)) ends.push(low);
  if (high !== low && Number.isFinite(high) && neighbours.some((other) => other.low === high)) ends.push(high);
  return ends;
}
