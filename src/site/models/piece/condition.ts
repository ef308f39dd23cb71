import { formatGrade } from '../../../core/grade/grade.ts';
import type { Grade } from '../../../core/grade/grade.ts';
import { SOURCES } from '../../../core/grade/sources.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { capital } from '../../words/capital.ts';
import { pieceWords } from '../../words/piece.ts';
import type { ChartTable } from '../charts/chart.ts';

/** A bar on the numeric scale, by a published table or, with no source, by all of them together. */
export type GradeBar = { readonly source: string | null; readonly low: number; readonly high: number };

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
    given: problem === null ? formatGrade(grade) : pieceWords.wear(formatGrade(withoutProblem(grade))),
    says: [problem === null ? '' : pieceWords.problem(problem), byWhom(gradedBy)].filter((part) => part !== ''),
    chart: chartOf(grade),
  };
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

const OWN_TABLES: Readonly<Record<string, keyof typeof SOURCES>> = {
  de: 'german', fr: 'french', uk: 'british', it: 'italian', es: 'spanish', numeric: 'numeric',
}; // prettier-ignore

function ownTable(scale: Grade['scale'] | null | undefined): string | undefined {
  const own = OWN_TABLES[scale ?? ''];
  return own && SOURCES[own];
}

function chartOf(grade: Grade): GradeChart | null {
  if (grade.low === null || grade.high === null) return null;
  // Where the tables of other lands differ, the one of the grade's own land is what its keeper meant.
  const own = grade.mappings.filter(({ source }) => source === ownTable(grade.scale));
  const mappings = own.length > 0 ? own : grade.mappings;
  const { low, high } = own[0] ?? { low: grade.low, high: grade.high };
  const { bar } = pieceWords;
  const together: GradeBar = { source: null, low, high };
  const bars = mappings.length > 1 ? [together, ...mappings] : mappings.length === 1 ? mappings : [together];
  return {
    says: pieceWords.barSays(grade.words, low, high, mappings.length),
    bars,
    table: {
      columns: [bar.table, bar.from, bar.to],
      rows: bars.map((one) => [one.source ?? bar.union, String(one.low), String(one.high)]),
    },
  };
}
