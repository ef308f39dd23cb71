import { PROBLEM_NOT_SAID, SCALE_IDS } from './grade.ts';
import type { Grade, Rank, ScaleId } from './grade.ts';
import { SCALES } from './scales.ts';
import { ownMapping } from './sources.ts';

export type Verdict = 'certainly better' | 'possibly better' | 'not better' | 'cannot be compared';
/** As much of a grade as can be compared. */
export type Graded = Pick<Grade, 'words' | 'low' | 'high' | 'mappings' | 'problem' | 'proof' | 'notGraded' | 'ranks'>;
export type Comparison = { readonly verdict: Verdict; readonly because: string };

/**
 * Is `a` better than `b`?
 *
 * Within one scale the order of its labels decides: VF above F is certain, VF above VF/F is not. Two grades given without
 * naming a scale, in words at home on the same ones, are taken to be on one scale. Across scales the intervals of the numeric
 * scale decide: certainly only when the lowest that `a` may be is above the highest that `b` may be; and the same word
 * on two scales (British F, American F-12) is never certainly better than itself.
 *
 * A details piece is never certainly better than a straight one, nor one problem than another. Certainty is transitive.
 */
export function compareGrades(a: Graded, b: Graded): Comparison {
  const barred = whyNotCompared(a, b);
  if (barred !== null) return { verdict: 'cannot be compared', because: barred };
  const { order, because: between } = orderOf(a, b);
  if (order === 'above') {
    const obstacle = problemInTheWay(a, b);
    if (obstacle !== null) return { verdict: 'possibly better', because: `${between}: higher, but ${obstacle}.` };
    return { verdict: 'certainly better', because: `${between}: the first is the higher.` };
  }
  if (order === 'overlapping') return { verdict: 'possibly better', because: `${between}: the two overlap.` };
  if (order === 'level' && a.problem === undefined && b.problem !== undefined) {
    return {
      verdict: 'possibly better',
      because: `${between}: no higher, but the second has a problem (${b.problem}).`,
    };
  }
  return { verdict: 'not better', because: `${between}: the first is not the higher.` };
}

/** Whether a grade may lie below another: by its lower end, on one scale by the order of the labels. */
export function mayBeBelow(grade: Graded, aim: Graded): boolean {
  const ranks = onOneScale(grade, aim);
  if (ranks !== null) return ranks.some(([mine, theirs]) => mine.low < theirs.low);
  return (grade.low ?? 0) < (aim.low ?? 0);
}

type Order = 'above' | 'overlapping' | 'level' | 'below';

function orderOf(a: Graded, b: Graded): { readonly order: Order; readonly because: string } {
  const ranks = onOneScale(a, b);
  if (ranks !== null) {
    const orders = ranks.map(([mine, theirs]) => orderOfSpans(mine, theirs));
    const [first = 'overlapping'] = orders;
    const order = orders.every((each) => each === first) ? first : 'overlapping';
    return { order, because: `${a.words} against ${b.words}, on one scale` };
  }
  const spans = [a, b].map(({ low, high }) => ({ low: low ?? 0, high: high ?? 0 }));
  const [mine, theirs] = [spans[0] ?? { low: 0, high: 0 }, spans[1] ?? { low: 0, high: 0 }];
  const order = orderOfSpans(mine, theirs);
  const worded = a.ranks !== undefined || b.ranks !== undefined;
  const alike = order === 'above' && worded && wordOf(a) !== '' && wordOf(a) === wordOf(b);
  return { order: alike ? 'overlapping' : order, because: `${inSteps(a)} against ${inSteps(b)}` };
}

function orderOfSpans(a: { low: number; high: number }, b: { low: number; high: number }): Order {
  if (a.low > b.high) return 'above';
  if (a.high > b.low) return 'overlapping';
  return a.high === b.low ? 'level' : 'below';
}

/** The ranks of two grades on every scale they were read on, where these are the same; else null. */
function onOneScale({ ranks: mine = [] }: Graded, { ranks: theirs = [] }: Graded): readonly (readonly [Rank, Rank])[] | null {
  if (mine.length === 0) return null;
  const pairs = mine.flatMap((one) => theirs.filter(({ scale }) => scale === one.scale).map((other) => [one, other] as const));
  const named = mine.length === 1 && theirs.length === 1;
  const unnamed = mine.length > 1 && theirs.length > 1;
  return pairs.length > 0 && (named || unnamed) ? pairs : null;
} // prettier-ignore

/** The word of a grade without its number: `F` of `F` and of `F-12`. */
function wordOf({ words }: Graded): string {
  return words.replace(/-\d.*$/, '').toLowerCase();
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

function inSteps({ words, low, high }: Graded): string {
  return low === high ? `${words} (${low ?? ''})` : `${words} (${low ?? ''}–${high ?? ''})`;
}

/** One grade of a scale and how many pieces have it. */
export type GradeCount = {
  readonly words: string;
  readonly count: number;
  readonly low: number;
  readonly high: number;
  /** Where the table of its own country puts it, if that has the word. */
  readonly own: { readonly low: number; readonly high: number } | null;
};

/** The grades of one scale, from poorest to best. No average is taken, least of all across scales. */
export type ScaleSummary = {
  /** Null for grades given without naming a scale, in words at home on several. */
  readonly scale: ScaleId | null;
  readonly title: string;
  readonly rows: readonly GradeCount[];
};

export type GradeSummary = {
  readonly scales: readonly ScaleSummary[];
  /** Details pieces, apart: their words speak of wear alone. */
  readonly details: readonly ScaleSummary[];
  readonly notGraded: readonly { readonly reason: string; readonly count: number }[];
};

/** Counts grades by scale, with details pieces and ungraded pieces apart. */
export function summariseGrades(grades: readonly Grade[]): GradeSummary {
  const graded = grades.filter(({ notGraded }) => notGraded === undefined);
  return {
    scales: byScale(graded.filter(({ problem }) => problem === undefined)),
    details: byScale(graded.filter(({ problem }) => problem !== undefined)),
    notGraded: tally(grades.map(({ notGraded }) => notGraded).filter((reason) => reason !== undefined)).map(
      ([reason, count]) => ({ reason, count }),
    ),
  };
}

function byScale(grades: readonly Grade[]): readonly ScaleSummary[] {
  return [...SCALE_IDS, null].flatMap((scale): ScaleSummary[] => {
    const here = grades.filter((grade) => (grade.alsoOn === undefined ? grade.scale : null) === scale);
    if (here.length === 0) return [];
    const rows = tally(here.map(({ words }) => words)).flatMap(([words, count]) => {
      const one = here.find((grade) => grade.words === words);
      return one === undefined ? [] : [{ words, count, low: one.low ?? 0, high: one.high ?? 0, own: ownMapping(one) }];
    });
    const ordered = rows.toSorted((a, b) => a.low - b.low || a.high - b.high || (a.words < b.words ? -1 : 1));
    return [{ scale, title: scale === null ? 'Scale not named' : SCALES[scale].title, rows: ordered }];
  });
}

function tally(words: readonly string[]): readonly (readonly [string, number])[] {
  const counts = new Map<string, number>();
  for (const word of words) counts.set(word, (counts.get(word) ?? 0) + 1);
  return [...counts];
}
