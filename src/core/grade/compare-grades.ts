import { PROBLEM_NOT_SAID } from './grade.ts';
import type { Grade } from './grade.ts';

export type Verdict = 'certainly better' | 'possibly better' | 'not better' | 'cannot be compared';
/** As much of a grade as can be compared. */
export type Graded = Pick<Grade, 'words' | 'low' | 'high' | 'mappings' | 'problem' | 'proof' | 'notGraded'>;
export type Comparison = { readonly verdict: Verdict; readonly because: string };

/**
 * Is `a` better than `b`? Certainly only when the lowest that `a` may be is above the highest that `b` may be, and no
 * problem stands in the way: a details piece is never certainly better than a straight one, nor one problem than another.
 * Certainty is transitive.
 */
export function compareGrades(a: Graded, b: Graded): Comparison {
  const barred = whyNotCompared(a, b);
  if (barred !== null) return { verdict: 'cannot be compared', because: barred };
  const [lowA, highA, lowB, highB] = [a.low ?? 0, a.high ?? 0, b.low ?? 0, b.high ?? 0];
  const between = `${span(a)} against ${span(b)}`;
  if (lowA > highB) {
    const obstacle = problemInTheWay(a, b);
    if (obstacle !== null) return { verdict: 'possibly better', because: `${between}: higher, but ${obstacle}.` };
    return {
      verdict: 'certainly better',
      because: `${between}: the lowest of the first is above the highest of the second.`,
    };
  }
  if (highA > lowB) {
    const tables = inEveryTable(a, b) ? ', though every table that has both puts the first above' : '';
    return { verdict: 'possibly better', because: `${between}: the two overlap${tables}.` };
  }
  if (highA === lowB && a.problem === undefined && b.problem !== undefined) {
    return {
      verdict: 'possibly better',
      because: `${between}: no higher, but the second has a problem (${b.problem}).`,
    };
  }
  return {
    verdict: 'not better',
    because: `${between}: the highest of the first is not above the lowest of the second.`,
  };
}

function whyNotCompared(a: Graded, b: Graded): string | null {
  const ungraded = [a, b].find(({ notGraded }) => notGraded !== undefined);
  if (ungraded?.notGraded !== undefined)
    return `One of them was not graded (${ungraded.notGraded}), which is not a poor grade.`;
  if ([a, b].some(({ low, high }) => low === null || high === null))
    return 'No table here puts one of them on the numeric scale.';
  if ((a.proof ?? false) !== (b.proof ?? false))
    return 'One is a proof and one is not; a proof is a way of striking and not a grade.';
  return null;
}

function problemInTheWay(a: Graded, b: Graded): string | null {
  if (a.problem === undefined) return null;
  if (b.problem === undefined) return `the first has a problem (${a.problem}) and the second has none`;
  if (a.problem === PROBLEM_NOT_SAID && b.problem === a.problem) return 'neither problem is named';
  return a.problem === b.problem ? null : `their problems differ (${a.problem}; ${b.problem})`;
}

/** True when the two have tables in common, and each of those puts the first wholly above the second. */
function inEveryTable(a: Graded, b: Graded): boolean {
  const pairs = a.mappings.flatMap((mine) =>
    b.mappings.filter(({ source }) => source === mine.source).map((theirs) => [mine, theirs] as const),
  );
  return pairs.length > 0 && pairs.every(([mine, theirs]) => mine.low > theirs.high);
}

function span({ words, low, high }: Graded): string {
  return low === high ? `${words} (${low ?? ''})` : `${words} (${low ?? ''}–${high ?? ''})`;
}
