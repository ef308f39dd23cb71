import { PROBLEM_NOT_SAID } from './grade.ts';
import type { Grade } from './grade.ts';

/** The grade in the short words of its scale, to be read back on that scale: `good VF/F`, `EF details, cleaned`. */
export function formatGrade(grade: Grade): string {
  if (grade.notGraded !== undefined) return `not graded: ${grade.notGraded}`;
  const beside = [
    grade.colour,
    grade.strike === undefined ? undefined : `strike ${grade.strike}/5`,
    grade.surface === undefined ? undefined : `surface ${grade.surface}/5`,
    ...(grade.remarks ?? []),
  ].filter((each) => each !== undefined);
  const said = [grade.words, ...beside].join(', ');
  if (grade.problem === undefined) return said;
  const details = beside.length === 0 ? `${said} details` : `${said}, details`;
  return grade.problem === PROBLEM_NOT_SAID ? details : `${details}, ${grade.problem}`;
}
