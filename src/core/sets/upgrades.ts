import type { Interval } from '../eras/era-scheme.ts';
import { compareGrades } from '../grade/compare-grades.ts';
import type { Graded, Verdict } from '../grade/compare-grades.ts';
import { PROBLEM_NOT_SAID } from '../grade/grade.ts';
import type { Arrangement } from './arrange.ts';
import { standsAt } from './arrange.ts';
import type { Standing } from './assign.ts';
import type { SetPlace } from './set-place.ts';
import type { Upgrade } from './set-state.ts';
import type { SetPiece } from './set-piece.ts';
import { nameOf } from './why-better.ts';

/**
 * For every place, the spares its piece has displaced by being better (`made`), and the spares that may be better than its piece
 * (not made, and never certain: what is certainly better already stands there). A piece bought before the lesser one has not
 * displaced it.
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
  const name = nameOf(from.piece);
  const pair = { place: place.id, from: from.piece.id, to: to.piece.id, made: true };
  if (from.fit.level === 'filler' && to.fit.level === 'certain') {
    return [
      {
        ...pair,
        certain: true,
        because: `It fills the place where ${name}, which has a problem, could only stand in.`,
      },
    ];
  }
  const [lesser, better] = [from.piece.grade, to.piece.grade];
  if (!lesser || !better) return [];
  const verdict = verdictOn(to, from);
  if (verdict === 'cannot be compared') return [];
  if (verdict === 'certainly better') {
    const certain = to.fit.level !== 'possible';
    return [{ ...pair, certain, because: `Its grade, ${range(better)}, is above that of ${name}, ${range(lesser)}.` }];
  }
  const notWorse = better.low >= lesser.low && better.high >= lesser.high;
  if (!notWorse || (better.low === lesser.low && better.high === lesser.high)) return [];
  return [
    {
      ...pair,
      certain: false,
      because: `Its grade, ${range(better)}, may be above that of ${name}, ${range(lesser)}.`,
    },
  ];
}

function open(place: SetPlace, from: Standing, to: Standing): readonly Upgrade[] {
  const [present, offered] = [from.piece.grade, to.piece.grade];
  if (to.fit.level === 'filler' || !present || !offered || offered.high <= present.high) return [];
  if (verdictOn(to, from) === 'cannot be compared') return [];
  const may = to.fit.sure ? '' : ` if it belongs here (${to.fit.because.replace(/\.$/, '')})`;
  const because = `Its grade, ${range(offered)}, may be above that of ${nameOf(from.piece)}, ${range(present)}${may}.`;
  return [{ place: place.id, from: from.piece.id, to: to.piece.id, certain: false, made: false, because }];
}

/** Whether one is better than the other, by all that is known of both grades. */
function verdictOn(one: Standing, other: Standing): Verdict {
  return compareGrades(gradedAs(one.piece), gradedAs(other.piece)).verdict;
}

function gradedAs({ stated, grade, details }: SetPiece): Graded {
  const known: Graded = stated ?? { words: '', low: grade?.low ?? null, high: grade?.high ?? null, mappings: [] };
  return details ? { ...known, problem: known.problem ?? PROBLEM_NOT_SAID } : known;
}

function range({ low, high }: Interval): string {
  return low === high ? String(low) : `${String(low)}–${String(high)}`;
}
