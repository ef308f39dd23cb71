import { PROBLEM_NOT_SAID } from './grade.ts';
import type { Grade } from './grade.ts';

/** The grade in the short words of its scale, to be read back on that scale: `good VF/F`, `EF details, cleaned`. */
export function formatGrade(grade: Grade): string {
  if (grade.notGraded !== undefined) return `not graded: ${grade.notGraded}`;
  const { words, problem } = grade;
  if (problem !== undefined) return problem === PROBLEM_NOT_SAID ? `${words} details` : `${words} details, ${problem}`;
  const beside = [
    grade.colour,
    grade.strike === undefined ? undefined : `strike ${grade.strike}/5`,
    grade.surface === undefined ? undefined : `surface ${grade.surface}/5`,
    ...(grade.remarks ?? []),
  ];
  return [words, ...beside.filter((each) => each !== undefined)].join(', ');
}
