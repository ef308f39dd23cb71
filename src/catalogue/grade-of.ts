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
  return readOnce(fields.grade, scale, fields.problem);
}

/** Grades that were read before: a cabinet of thousands has a few dozen, and several rules ask for each. */
const READ_BEFORE = new Map<string, Outcome<Grade>>();
const KEPT = 10_000;

function readOnce(words: string, scale: ScaleId | undefined, problem: string | undefined): Outcome<Grade> {
  const key = JSON.stringify([words, scale, problem]);
  const before = READ_BEFORE.get(key);
  if (before !== undefined) return before;
  const read = parseGrade(words, {
    ...(scale === undefined ? {} : { scale }),
    ...(problem === undefined ? {} : { problem }),
  });
  if (READ_BEFORE.size >= KEPT) READ_BEFORE.clear();
  READ_BEFORE.set(key, read);
  return read;
}
