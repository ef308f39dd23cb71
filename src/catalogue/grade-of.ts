import { SCALE_IDS } from '../core/grade/grade.ts';
import type { Grade } from '../core/grade/grade.ts';
import { parseGrade } from '../core/grade/parse-grade.ts';
import { isScaleId } from '../core/grade/scales.ts';
import type { Outcome } from '../core/outcome.ts';
import { refuse } from '../core/outcome.ts';
import type { PieceFields } from './schema/piece.ts';

/** The grade of a piece from its words, scale and problem; null when none is recorded. */
export function gradeOf(fields: PieceFields): Outcome<Grade> | null {
  const scale = fields['grade-scale'];
  if (fields.grade === undefined) return null;
  if (scale !== undefined && !isScaleId(scale))
    return refuse(
      `There is no grade scale called "${scale}". Write ${SCALE_IDS.slice(0, -1).join(', ')} or ${SCALE_IDS.at(-1) ?? ''}.`,
    );
  return parseGrade(fields.grade, {
    ...(scale === undefined ? {} : { scale }),
    ...(fields.problem === undefined ? {} : { problem: fields.problem }),
  });
}
