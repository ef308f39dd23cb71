import { good } from '../outcome.ts';
import type { Outcome } from '../outcome.ts';
import { arrange, standsAt } from './arrange.ts';
import { placesOf } from './places.ts';
import type { SetPiece } from './set-piece.ts';
import type { Lists, SetRule } from './set-rule.ts';
import type { SetState, Count, Upgrade, PlaceState, Wanted } from './set-state.ts';
import type { Arrangement } from './arrange.ts';
import { seatOf, compareStanding, firstDifference, scoreOf } from './assign.ts';
import { growingMatching } from './heaviest-matching.ts';
import type { Edge } from './heaviest-matching.ts';
import { compareGrades } from '../grade/compare-grades.ts';
import type { Verdict, Graded } from '../grade/compare-grades.ts';
import type { Standing, ScorePart } from './assign.ts';
import type { SetPlace } from './places.ts';
import { gradedAs, gradeInWords, namesOf, nameOf } from './set-piece.ts';

const STATES = { certain: 'filled', possible: 'possible', filler: 'filler' } as const;

/** Every place with its state, the piece in it, the others that could stand there, and why it is so. */
export function explainPlaces(arrangement: Arrangement): readonly PlaceState[] {
  const elsewhere = standsAt(arrangement);
  return arrangement.places.map((place, at): PlaceState => {
    const { id, label, excused } = place;
    if (excused !== undefined) return { id, label, state: 'excused', because: excused };
    const fitting = arrangement.fitting[at] ?? [];
    const holder = arrangement.holders[at] ?? null;
    const others = fitting
      .filter(({ piece }) => piece.id !== holder?.piece.id)
      .toSorted((a, b) => compareStanding(b, a));
    const listed = others.length === 0 ? {} : { others: others.map(({ piece }) => piece.id) };
    if (holder === null || holder.fit.level === 'no') {
      return { id, label, state: 'wanted', ...listed, because: whyEmpty(others, elsewhere) };
    }
    const because = [holder.fit.because, whyHere(holder, others, elsewhere)].filter((part) => part !== '').join(' ');
    return { id, label, state: STATES[holder.fit.level], piece: holder.piece.id, ...listed, because };
  });
}

/** The reasons where there is nothing to weigh. */
export const NO_PIECE = 'Nothing in the cabinet fits.';
export const ONLY_PIECE = 'The only piece that fits.';

function whyEmpty([best]: readonly Standing[], elsewhere: ReadonlyMap<string, SetPlace>): string {
  if (best === undefined) return NO_PIECE;
  const stands = elsewhere.get(best.piece.id);
  const would =
    best.fit.level === 'possible' ? 'may fit' : best.fit.level === 'filler' ? 'could be a filler' : 'would fit';
  return `${nameOf(best.piece)} ${would}, and is needed for ${stands?.label ?? 'another place'}.`;
}

function whyHere(holder: Standing, [best]: readonly Standing[], elsewhere: ReadonlyMap<string, SetPlace>): string {
  if (best === undefined) return ONLY_PIECE;
  const stands = elsewhere.get(best.piece.id);
  if (compareStanding(holder, best) < 0 && stands)
    return `${namesOf(best.piece, holder.piece)[0]} would be better here, and is needed for ${stands.label}.`;
  const why = whyBetter(holder, best);
  const [other] = namesOf(best.piece, holder.piece);
  return 'better' in why
    ? `Chosen before ${other}, because this one ${why.better}.`
    : `Chosen before ${other}: ${why.said}.`;
}

/** Pieces that fit a place and are in none, each with the place it fits best and what stands there instead. */
export function sparesOf(arrangement: Arrangement): SetState['spares'] {
  const standing = standsAt(arrangement);
  const spares = new Map<string, { at: number; places: number }>();
  for (const [at, fitting] of arrangement.fitting.entries()) {
    for (const one of fitting) {
      if (standing.has(one.piece.id)) continue;
      const known = spares.get(one.piece.id);
      const before = known && arrangement.fitting[known.at]?.find(({ piece }) => piece.id === one.piece.id);
      const better = before === undefined || compareStanding(one, before) > 0;
      spares.set(one.piece.id, { at: better ? at : (known?.at ?? at), places: (known?.places ?? 0) + 1 });
    }
  }
  return [...spares]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([piece, { at, places }]) => ({
      piece,
      label: arrangement.places[at]?.label ?? '',
      because: whySpare(arrangement, piece, at, places),
    }));
}

function whySpare({ places, fitting, holders }: Arrangement, id: string, at: number, count: number): string {
  const label = places[at]?.label ?? '';
  const spare = fitting[at]?.find(({ piece }) => piece.id === id);
  const holder = holders[at];
  const more = count === 1 ? '' : ` Of the ${String(count)} places it fits, none is left for it.`;
  if (!spare || !holder) return `Fits ${label}.${more}`;
  const may =
    spare.fit.level === 'possible' ? 'May fit' : spare.fit.level === 'filler' ? 'Could be a filler for' : 'Fits';
  const [name] = namesOf(holder.piece, spare.piece);
  const why = compareStanding(holder, spare) > 0 ? whyBetter(holder, spare) : { better: 'can stand nowhere else' };
  const said = 'better' in why ? `, which ${why.better}` : `: ${why.said}`;
  return `${may} ${label}, where “${name}” stands${said}.${more}`;
}

/** A reason that is told of the better piece, as its predicate, or of both, as a clause. */
type Reason = { readonly better: string } | { readonly said: string };

/** Why the first, which stands better, does. */
function whyBetter(one: Standing, other: Standing): Reason {
  const [, lesser] = namesOf(one.piece, other.piece);
  if (other.fit.level === 'filler' && one.fit.level !== 'filler') return { said: `${lesser} has a problem` };
  const part = firstDifference(scoreOf(one), scoreOf(other));
  if (part === null) return { said: 'the two are equal here' };
  const clear = one.piece.grade !== null && other.piece.grade !== null && isSurelyBetter(one.piece, other.piece);
  const byGrade = other.piece.grade === null ? 'is graded, as the other is not' : 'has the better grade';
  const atLow = clear || other.piece.grade === null ? byGrade : `${byGrade} at the lower end`;
  const reasons: Readonly<Record<ScorePart, Reason>> = {
    certain: { said: `${lesser} fits only possibly` },
    possible: { said: `${lesser} does not fill the place` },
    filler: { said: `${lesser} cannot be a filler` },
    sureFiller: { said: `${lesser} is only possibly a filler` },
    sound: { said: `${lesser} has a problem` },
    gradeLow: { better: atLow },
    gradeHigh: { better: 'may reach a higher grade' },
    labelLow: { better: byGrade },
    labelHigh: { better: 'may reach a higher grade' },
    preferred: { better: 'is what the keeper prefers' },
  };
  return reasons[part];
} // prettier-ignore

function isSurelyBetter(one: SetPiece, other: SetPiece): boolean {
  return compareGrades(gradedAs(one), gradedAs(other)).verdict === 'certainly better';
}

/** What to look for: empty places, then places held by a filler or only possibly, then places surely below the aim. No prices. */
export function wantedOf(
  { holders }: Arrangement,
  states: readonly PlaceState[],
  aim: Graded | null,
): readonly Wanted[] {
  const wanted = states.flatMap((place, at): readonly Wanted[] => {
    const { id, label, state, because = '' } = place;
    if (state === 'wanted') return [{ place: id, label, why: 'empty', because }];
    if (state === 'filler') return [{ place: id, label, why: 'filler', because: 'A problem piece is a filler here.' }];
    if (state === 'possible') return [{ place: id, label, why: 'possible', because }];
    const piece = holders[at]?.piece;
    if (state === 'excused' || aim === null || piece?.grade == null) return [];
    if (compareGrades(aim, gradedAs(piece)).verdict !== 'certainly better') return [];
    const held = 'The piece that stands here is below the grade aimed at.';
    return [{ place: id, label, why: 'below the aim', because: held }];
  });
  return ORDER.flatMap((why) => wanted.filter((one) => one.why === why));
}

const ORDER = ['empty', 'filler', 'possible', 'below the aim'] as const;

/**
 * For every place, the spares its piece has displaced by being better (`made`), and the spares that may be better than its piece
 * (not made, and never certain: what is certainly better already stands there, unless the keeper prefers another, who is then
 * not urged). A piece bought before the lesser one has not displaced it.
 */
export function upgradesOf(arrangement: Arrangement): readonly Upgrade[] {
  const standing = standsAt(arrangement);
  return arrangement.places.flatMap((place, at) => {
    const holder = arrangement.holders[at];
    if (!holder) return [];
    const spares = (arrangement.fitting[at] ?? []).filter(({ piece }) => !standing.has(piece.id));
    return spares.flatMap((spare) => [...made(place, spare, holder), ...open(place, holder, spare)]);
  });
}

function made(place: SetPlace, from: Standing, to: Standing): readonly Upgrade[] {
  const later = (to.piece.acquired ?? Infinity) >= (from.piece.acquired ?? -Infinity);
  if (!later || from.fit.level === 'possible') return [];
  const [better, lesser] = namesOf(to.piece, from.piece);
  const pair = { place: place.id, from: from.piece.id, to: to.piece.id, made: true };
  if (from.fit.level === 'filler' && to.fit.level === 'certain') {
    const because = `${better} fills the place, in which ${lesser}, which has a problem, could only be a filler.`;
    return [{ ...pair, certain: true, because }];
  }
  const [less, more] = [from.piece.grade, to.piece.grade];
  if (!less || !more) return [];
  const verdict = verdictOn(to, from);
  if (verdict === 'cannot be compared') return [];
  const certain = verdict === 'certainly better' && to.fit.level !== 'possible';
  const isOrMay = verdict === 'certainly better' ? 'is' : 'may be';
  const because = `The grade of ${better}, ${gradeInWords(to.piece)}, ${isOrMay} above that of ${lesser}, ${gradeInWords(from.piece)}.`;
  if (verdict === 'certainly better') return [{ ...pair, certain, because }];
  const notWorse = more.low >= less.low && more.high >= less.high;
  if (!notWorse || (more.low === less.low && more.high === less.high)) return [];
  return [{ ...pair, certain: false, because }];
}

function open(place: SetPlace, from: Standing, to: Standing): readonly Upgrade[] {
  const [present, offered] = [from.piece.grade, to.piece.grade];
  if (to.fit.level === 'filler' || !present || !offered) return [];
  if ((from.piece.prefer ?? Infinity) < (to.piece.prefer ?? Infinity)) return [];
  const verdict = verdictOn(to, from);
  if (verdict === 'cannot be compared' || verdict === 'not better') return [];
  if (verdict !== 'certainly better' && offered.high <= present.high) return [];
  const [better, lesser] = namesOf(to.piece, from.piece);
  const may = to.fit.sure
    ? ''
    : `, if ${better} belongs here (${to.fit.because.replace(/\.$/, '').replace(/^The /, 'the ')})`;
  const because = `The grade of ${better}, ${gradeInWords(to.piece)}, may be above that of ${lesser}, ${gradeInWords(from.piece)}${may}.`;
  return [{ place: place.id, from: from.piece.id, to: to.piece.id, certain: false, made: false, because }];
}

/** Whether one is better than the other, by all that is known of both grades. */
function verdictOn(one: Standing, other: Standing): Verdict {
  return compareGrades(gradedAs(one.piece), gradedAs(other.piece)).verdict;
}

/** A piece in one of its seats, with the places it fills from there for certain, and those it fills if it is what it may be. */
type Seat = { readonly certain: number[]; readonly possible: number[] };

/** Filled for certain, and the most that any arrangement could fill if every doubtful piece were what it may be: two matchings. */
export function filledBy(arrangement: Arrangement, rule: SetRule): Count {
  const seats = seatsOf(arrangement, rule);
  const most = (level: 'certain' | 'possible'): number =>
    mostPlaces(
      seats.map((seat) => seat[level]),
      arrangement.places.length,
    );
  return { low: most('certain'), high: most('possible') };
}

/**
 * The places that have a piece, by the year in which that piece came; those whose year is not known come last, under null. It is
 * told of the arrangement shown, so that a year never counts a place otherwise than the board does.
 */
export function historyOf({ holders }: Arrangement, states: readonly PlaceState[]): SetState['history'] {
  const years = new Map<number | null, PlaceState['state'][]>();
  for (const [at, { state }] of states.entries()) {
    if (state === 'wanted' || state === 'excused') continue;
    const year = holders[at]?.piece.acquired ?? null;
    years.set(year, [...(years.get(year) ?? []), state]);
  }
  return [...years].map(([year, came]) => ({ year, came })).sort((a, b) => (a.year ?? Infinity) - (b.year ?? Infinity));
}

/** How many places seats can fill at once, each one of those it names. */
function mostPlaces(seats: readonly (readonly number[])[], places: number): number {
  const rows = seats.map((each) => each.map((column): Edge => ({ column, weight: [1] })));
  const matching = [...growingMatching(rows, places, 1)].at(-1) ?? [];
  return matching.filter((column) => column !== null).length;
}

/** Whoever fills a place for certain or possibly; fillers count in neither and are left out. */
function seatsOf({ places, fitting }: Arrangement, rule: SetRule): readonly Seat[] {
  const seats = new Map<string, Seat>();
  for (const [column, place] of places.entries()) {
    for (const { piece, fit } of fitting[column] ?? []) {
      if (fit.level !== 'certain' && fit.level !== 'possible') continue;
      const key = JSON.stringify([piece.id, seatOf(place, column, piece, rule)]);
      const seat = seats.get(key) ?? { certain: [], possible: [] };
      seat.possible.push(column);
      if (fit.level === 'certain') seat.certain.push(column);
      seats.set(key, seat);
    }
  }
  return [...seats.values()];
}

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
  return good({
    id: rule.id,
    title: rule.title,
    of: states.length - excused,
    filled: filledBy(arrangement, rule),
    excused,
    places: states,
    spares: sparesOf(arrangement),
    upgrades: upgradesOf(arrangement),
    leftOut: arrangement.leftOut,
    wanted: wantedOf(arrangement, states, rule.aim ?? null),
    history: historyOf(arrangement, states),
  });
}
