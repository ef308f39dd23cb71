import { formatGrade } from '../../../core/grade/format-grade.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { pieceWords } from '../../words/piece.ts';

/** The condition of a piece: the words as given, where they may stand on the numeric scale, and by which tables. */
export type ConditionShown = {
  readonly given: string;
  readonly scale: string;
  readonly span: { readonly low: number; readonly high: number } | null;
  readonly says: readonly string[];
  readonly mappings: readonly { readonly source: string; readonly says: string }[];
};

/** Null when no grade is recorded. */
export function conditionShown({ grade, gradedBy, problem }: PublicPiece): ConditionShown | null {
  if (grade === null) return null;
  if (grade.notGraded !== undefined)
    return { given: '', scale: '', span: null, says: [pieceWords.notGraded(grade.notGraded)], mappings: [] };
  const span = grade.low === null || grade.high === null ? null : { low: grade.low, high: grade.high };
  const by = gradedBy === null ? null : pieceWords.graded[gradedBy as keyof typeof pieceWords.graded];
  return {
    given: formatGrade(grade),
    scale: grade.scale,
    span,
    says: [
      [span === null ? null : pieceWords.scaleSays(span.low, span.high), by].filter((part) => part !== null).join('; '),
      problem === null ? '' : pieceWords.detailsSays(problem),
    ].filter((part) => part !== ''),
    mappings: grade.scale === 'numeric' ? [] : grade.mappings.map(({ source, low, high }) => ({ source, says: low === high ? `${low}` : `${low}–${high}` })),
  };
}
