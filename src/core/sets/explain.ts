import { compareGrades } from '../grade/compare-grades.ts';
import type { Graded } from '../grade/compare-grades.ts';
import type { Arrangement } from './arrange.ts';
import { standsAt } from './arrange.ts';
import { compareStanding, firstDifference, scoreOf } from './assign.ts';
import type { ScorePart, Standing } from './assign.ts';
import type { SetPlace } from './places.ts';
import { gradedAs, nameOf, namesOf } from './set-piece.ts';
import type { SetPiece } from './set-piece.ts';
import type { PlaceState, SetState, Wanted } from './set-state.ts';

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

function whyEmpty([best]: readonly Standing[], elsewhere: ReadonlyMap<string, SetPlace>): string {
  if (best === undefined) return 'Nothing in the cabinet fits.';
  const stands = elsewhere.get(best.piece.id);
  const would =
    best.fit.level === 'possible' ? 'may fit' : best.fit.level === 'filler' ? 'could be a filler' : 'would fit';
  return `${nameOf(best.piece)} ${would}, and is needed for ${stands?.label ?? 'another place'}.`;
}

function whyHere(holder: Standing, [best]: readonly Standing[], elsewhere: ReadonlyMap<string, SetPlace>): string {
  if (best === undefined) return 'The only piece that fits.';
  const stands = elsewhere.get(best.piece.id);
  if (compareStanding(holder, best) < 0 && stands)
    return `${namesOf(best.piece, holder.piece)[0]} would be better here, and is needed for ${stands.label}.`;
  return `Chosen before ${namesOf(best.piece, holder.piece)[0]}: ${whyBetter(holder, best)}.`;
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
    .map(([piece, { at, places }]) => ({ piece, because: whySpare(arrangement, piece, at, places) }));
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
  const why = compareStanding(holder, spare) > 0 ? whyBetter(holder, spare) : `${name} can stand nowhere else`;
  return `${may} ${label}, where ${name} stands: ${why}.${more}`;
}

/** Why the first, which stands better, does: a clause that names whom it speaks of. */
export function whyBetter(one: Standing, other: Standing): string {
  const [better, lesser] = namesOf(one.piece, other.piece);
  if (other.fit.level === 'filler' && one.fit.level !== 'filler') return `${lesser} has a problem`;
  const part = firstDifference(scoreOf(one), scoreOf(other));
  if (part === null) return `${better} and ${lesser} are equal here, and the keeper has not said which is preferred`;
  const clear = one.piece.grade !== null && other.piece.grade !== null && isSurelyBetter(one.piece, other.piece);
  const byGrade = other.piece.grade === null ? `${better} is graded, and ${lesser} is not` : `${better} has the better grade`;
  const atLow = clear || other.piece.grade === null ? byGrade : `${byGrade} at the lower end`;
  const reasons: Readonly<Record<ScorePart, string>> = {
    certain: `${lesser} fits only possibly`,
    possible: `${lesser} does not fill the place`,
    filler: `${lesser} cannot be a filler`,
    sureFiller: `${lesser} is only possibly a filler`,
    sound: `${lesser} has a problem`,
    gradeLow: atLow,
    gradeHigh: `the grade of ${better} may reach higher`,
    labelLow: byGrade,
    labelHigh: `the grade of ${better} may reach higher`,
    preferred: `the keeper prefers ${better}`,
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
