import { summariseGrades } from '../../../core/grade/compare-grades.ts';
import type { ScaleSummary } from '../../../core/grade/compare-grades.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { capital } from '../../words/capital.ts';
import { measuresWords } from '../../words/measures.ts';
import { shareAlong, widthAlong } from '../charts/number-scale.ts';

/** A grade, how many have it, and where it may stand from 1 to 70; lengths across are per cent. */
export type GradeRow = {
  readonly words: string;
  readonly count: number;
  /** Of the commonest grade of all. */
  readonly share: number;
  readonly x: number;
  readonly width: number;
  /** The part of it that the table of the scale's own country covers. */
  readonly own: { readonly x: number; readonly width: number } | null;
  readonly span: string;
  /** Count and range in words, for those who listen. */
  readonly says: string;
};

export type GradesShown = {
  /** The numeric scale by tens. */
  readonly ticks: readonly { readonly x: number; readonly says: string }[];
  readonly scales: readonly {
    readonly title: string;
    readonly hasProblem: boolean;
    readonly rows: readonly GradeRow[];
  }[];
  readonly notGraded: readonly { readonly reason: string; readonly count: number }[];
  readonly unrecorded: number;
};

const NUMERIC = { low: 1, high: 70 };
const TICKS = [1, 20, 40, 60, 70];

export function gradesShown(pieces: readonly PublicPiece[]): GradesShown {
  const grades = pieces.flatMap(({ grade }) => (grade === null ? [] : [grade]));
  const { scales, details, notGraded } = summariseGrades(grades);
  const most = Math.max(1, ...[...scales, ...details].flatMap(({ rows }) => rows.map(({ count }) => count)));
  const drawn = ({ rows }: ScaleSummary): readonly GradeRow[] =>
    rows.map(({ words, count, low, high, own }) => {
      return {
        words: capital(words),
        count,
        share: shareAlong({ low: 0, high: most }, count),
        x: shareAlong(NUMERIC, low),
        width: widthAlong(NUMERIC, { low, high }),
        own: own === null ? null : { x: shareAlong(NUMERIC, own.low), width: widthAlong(NUMERIC, own) },
        span: measuresWords.grades.span(own ?? { low, high }, { low, high }),
        says: measuresWords.grades.says(count, own ?? { low, high }, { low, high }),
      };
    });
  return {
    ticks: TICKS.map((step) => ({ x: shareAlong(NUMERIC, step), says: String(step) })),
    scales: [
      ...scales.map((scale) => ({ title: scale.title, hasProblem: false, rows: drawn(scale) })),
      ...details.map((scale) => ({
        title: measuresWords.grades.details(scale.title),
        hasProblem: true,
        rows: drawn(scale),
      })),
    ],
    notGraded,
    unrecorded: pieces.length - grades.length,
  };
}
