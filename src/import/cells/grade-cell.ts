import { PROBLEM_NOT_SAID } from '../../core/grade/grade.ts';
import type { Grade } from '../../core/grade/grade.ts';
import { parseGrade } from '../../core/grade/parse-grade.ts';
import { SCALE_IDS } from '../../core/grade/grade.ts';
import type { Cell, Said } from './cell-result.ts';
import { fact, unread } from './cell-result.ts';

/**
 * `VF-30 cleaned`: the grade as it was given, the scale where only one has it, and what ails the piece. A scale that the column or
 * the keeper names for all rows goes first; without one, a word of several scales keeps them all.
 */
export function readGrade({ text }: Cell, scale: string | undefined): readonly Said[] {
  const named = SCALE_IDS.find((id) => id === scale);
  const onNamed = named === undefined ? null : parseGrade(text, { scale: named });
  const read = onNamed?.ok === true ? onNamed : parseGrade(text);
  if (!read.ok) return unread('grade', read.problem);
  const grade = read.value;
  const problem = grade.problem === PROBLEM_NOT_SAID ? undefined : grade.problem;
  const alone = problem === undefined ? null : withoutProblem(text, problem, grade);
  return [
    ...fact('grade', alone ?? text),
    ...(grade.notGraded === undefined && grade.alsoOn === undefined ? fact('grade-scale', grade.scale) : []),
    ...(alone === null || problem === undefined ? [] : fact('problem', problem)),
  ];
}

/** The grade without its fault, where it stays the same grade; null when it does not. */
function withoutProblem(text: string, problem: string, grade: Grade): string | null {
  const at = text.toLowerCase().lastIndexOf(problem.toLowerCase());
  if (at < 1) return null;
  const rest = text.slice(at + problem.length).replace(/^[)\s]+/, '');
  const alone = text.slice(0, at).replace(/[\s,;:(-]+$/, '');
  const read = parseGrade(alone);
  return rest === '' && read.ok && read.value.words === grade.words && read.value.problem === undefined ? alone : null;
}
