import { formatGrade } from '../../../core/grade/grade.ts';
import { SCALES } from '../../../core/grade/scales.ts';
import type { Grade } from '../../../core/grade/grade.ts';
import { ownMapping } from '../../../core/grade/sources.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { capital } from '../../words/capital.ts';
import { pieceWords } from '../../words/piece.ts';
import type { ChartTable } from '../charts/chart.ts';

/** A bar on the numeric scale, by a published table or, with no source, by all of them together. */
export type GradeBar = {
  readonly source: string | null;
  readonly low: number;
  readonly high: number;
  /** The table of the grade's own country, or all together where it has none. */
  readonly isMain: boolean;
};

/** Where a grade may stand on the numeric scale, drawn; and the figures behind the drawing. */
export type GradeChart = { readonly says: string; readonly bars: readonly GradeBar[]; readonly table: ChartTable };

/** The condition of a piece: the words as given, and where they may stand on the numeric scale. */
export type Condition = {
  /** The grade in the words of its scale; null when it was not graded. */
  readonly given: string | null;
  readonly says: readonly string[];
  readonly chart: GradeChart | null;
};

export function conditionOf({ grade, gradedBy, problem }: PublicPiece): Condition {
  if (grade === null) return { given: null, says: [pieceWords.noGrade], chart: null };
  if (grade.notGraded !== undefined) {
    return { given: null, says: [pieceWords.notGraded(grade.notGraded)], chart: null };
  }
  return {
    given:
      problem === null ? capital(formatGrade(grade)) : pieceWords.wear(capital(formatGrade(withoutProblem(grade)))),
    says: [meaningOf(grade), problem === null ? '' : pieceWords.problem(problem), byWhom(gradedBy)].filter(
      (part) => part !== '',
    ),
    chart: chartOf(grade),
  };
}

/** The short words of a grade in full, and of which scale they are: `Good Very Fine, on the British scale.` Numbers have none. */
function meaningOf({ words, scale, alsoOn = [] }: Grade): string {
  const { title, words: known } = SCALES[scale];
  if (scale === 'numeric' || alsoOn.length > 0) return '';
  const full = words.replace(/[\p{L}+]+/gu, (one) => known.find(({ word }) => word === one)?.means ?? one);
  return pieceWords.gradeMeans(full === words ? '' : capital(full), title);
}

/** The wear alone: what is wrong besides is said beside it. */
function withoutProblem(grade: Grade): Grade {
  const wear = { ...grade };
  delete wear.problem;
  return wear;
}

function byWhom(gradedBy: PublicPiece['gradedBy']): string {
  return gradedBy === null ? '' : `${capital(pieceWords.gradedBy[gradedBy])}.`;
}

function chartOf(grade: Grade): GradeChart | null {
  const { low, high, mappings } = grade;
  if (low === null || high === null) return null;
  const { bar } = pieceWords;
  const own = ownMapping(grade);
  const others = mappings.filter((one) => one !== own);
  // What its keeper meant first, and then what the word is elsewhere; without a table of its own country, all of them together.
  const main: GradeBar = { ...(own ?? { source: null, low, high }), isMain: true };
  const beside = own === null && mappings.length < 2 ? [] : others.map((one): GradeBar => ({ ...one, isMain: false }));
  const bars = [
    mappings.length === 1 && mappings[0] !== undefined ? { ...mappings[0], isMain: true } : main,
    ...beside,
  ];
  return {
    says: pieceWords.barSays(
      grade.words,
      main,
      own !== null && others.length > 0 ? { low, high } : null,
      mappings.length,
    ),
    bars,
    table: {
      columns: [bar.table, bar.from, bar.to],
      rows: bars.map((one) => [one.source ?? bar.union, String(one.low), String(one.high)]),
    },
  };
}
