import { compareGrades } from '../grade/compare-grades.ts';
import type { Verdict } from '../grade/compare-grades.ts';
import type { Arrangement } from './arrange.ts';
import { standsAt } from './arrange.ts';
import type { Standing } from './assign.ts';
import type { SetPlace } from './places.ts';
import type { Upgrade } from './set-state.ts';
import { gradedAs, gradeInWords, namesOf } from './set-piece.ts';

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
