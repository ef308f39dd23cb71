import { SCALE_IDS } from '../core/grade/grade.ts';
import type { Grade, ScaleId } from '../core/grade/grade.ts';
import { parseGrade } from '../core/grade/parse-grade.ts';
import { isScaleId } from '../core/grade/scales.ts';
import type { Outcome } from '../core/outcome.ts';
import { refuse } from '../core/outcome.ts';
import type { PieceFields } from './schema/piece.ts';

/** The facts of a piece, its grade on the scale of the cabinet where it names none and is one of that scale's. */
export function onScaleOf(scale: ScaleId | undefined, fields: PieceFields): PieceFields {
  if (scale === undefined || fields.grade === undefined || fields['grade-scale'] !== undefined) return fields;
  const read = parseGrade(fields.grade, { scale });
  return read.ok && read.value.notGraded === undefined ? { ...fields, 'grade-scale': scale } : fields;
}

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
