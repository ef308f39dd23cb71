import { summariseGrades } from '../../../core/grade/compare-grades.ts';
import type { ScaleSummary } from '../../../core/grade/compare-grades.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { gradeInWords } from '../../words/capital.ts';
import { countWords } from '../../words/counts.ts';
import { findWords } from '../../words/find.ts';
import type { FacetList } from '../find/facets.ts';
import { urls } from '../../urls.ts';
import { measuresWords } from '../../words/measures.ts';
import { shareAlong, widthAlong } from '../charts/number-scale.ts';

/** A grade, how many have it, and where it may stand from 1 to 70; lengths across are per cent. */
export type GradeRow = {
  readonly words: string;
  /** How many, in words. */
  readonly counted: string;
  /** The list of them; null where there is none. */
  readonly href: string | null;
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

/** `lists`: those of the grades, which lead to the pieces. */
export function gradesShown(pieces: readonly PublicPiece[], lists: readonly FacetList[]): GradesShown {
  const grades = pieces.flatMap(({ grade }) => (grade === null ? [] : [grade]));
  const { scales, details, notGraded } = summariseGrades(grades);
  const listOf = (title: string, label: string): string | null => {
    const list = lists.find((one) => one.facet === 'grade' && one.group === title && one.label === gradeInWords(label));
    return list === undefined ? null : urls.facet('grade', list.value);
  };
  const drawn = ({ title, rows }: ScaleSummary, isDetails: boolean): readonly GradeRow[] =>
    rows.map(({ words, count, low, high, own }) => {
      return {
        words: gradeInWords(words),
        counted: countWords.pieces(count),
        href: listOf(title, isDetails ? findWords.details(words) : words),
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
      ...scales.map((scale) => ({ title: scale.title, hasProblem: false, rows: drawn(scale, false) })),
      ...details.map((scale) => ({
        title: measuresWords.grades.details(scale.title),
        hasProblem: true,
        rows: drawn(scale, true),
      })),
    ],
    notGraded,
    unrecorded: pieces.length - grades.length,
  };
}
