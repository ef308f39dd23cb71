import { PROBLEM_NOT_SAID } from '../../core/grade/grade.ts';
import type { Grade, ScaleId } from '../../core/grade/grade.ts';
import { parseGrade } from '../../core/grade/parse-grade.ts';
import { SCALE_IDS } from '../../core/grade/grade.ts';
import type { Cell, Said } from './cell-result.ts';
import { fact, unread } from './cell-result.ts';

/** Scales at home in a language, for words such as SPL that are at home in two. */
const AT_HOME: Readonly<Record<string, ScaleId>> = { en: 'uk', fr: 'fr', de: 'de', it: 'it', es: 'es', nl: 'nl' };

/**
 * `VF-30 cleaned`: the grade as it was given, the scale where only one has it (or the sheet's language tells), and
 * what ails the piece. A scale that the column or the keeper names for all rows goes first.
 */
export function readGrade({ text }: Cell, language: string, scale: string | undefined): readonly Said[] {
  const named = SCALE_IDS.find((id) => id === scale);
  const onNamed = named === undefined ? null : parseGrade(text, { scale: named });
  const read = onNamed?.ok === true ? onNamed : parseGrade(text);
  if (!read.ok) return unread('grade', read.problem);
  const grade = read.value;
  const problem = grade.problem === PROBLEM_NOT_SAID ? undefined : grade.problem;
  const alone = problem === undefined ? null : withoutProblem(text, problem, grade);
  return [
    ...fact('grade', alone ?? text),
    ...scaleOf(grade, language),
    ...(alone === null || problem === undefined ? [] : fact('problem', problem)),
  ];
}

function scaleOf(grade: Grade, language: string): readonly Said[] {
  if (grade.notGraded !== undefined) return [];
  const home = AT_HOME[language];
  const several = grade.alsoOn ?? [];
  if (several.length === 0) return fact('grade-scale', grade.scale);
  // English words stand on several English scales: which of them, only the keeper knows.
  const tells = home !== undefined && home !== 'uk' && [grade.scale, ...several].includes(home);
  return tells ? fact('grade-scale', home) : [];
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
