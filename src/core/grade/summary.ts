import { SCALE_IDS } from './grade.ts';
import type { Grade, ScaleId } from './grade.ts';
import { SCALES } from './scales.ts';

/** One grade of a scale and how many pieces have it. */
export type GradeCount = {
  readonly words: string;
  readonly count: number;
  readonly low: number;
  readonly high: number;
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
      return one === undefined ? [] : [{ words, count, low: one.low ?? 0, high: one.high ?? 0 }];
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
