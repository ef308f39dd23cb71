import { whyNotGraded } from '../../core/grade/grade.ts';
import { knownWork } from '../../core/references/cited-work.ts';
import { parseReferences } from '../../core/references/parse-reference.ts';
import type { Reference } from '../../core/references/reference.ts';
import { citedWorks } from '../types/cited-works.ts';
import type { Rule } from './place.ts';
import { gradeOf } from '../grade-of.ts';
import type { Problem } from '../problem.ts';
import { problem } from '../problem.ts';

/** A grade stands on a scale that is known, and is one of its words. */
export const checkGrades: Rule = (records, place) =>
  records.pieces.flatMap(({ file, fields }): readonly Problem[] => {
    const grade = gradeOf(fields);
    if (grade === null) return [];
    if (!grade.ok) return [problem('grade-unreadable', place(file, ['grade']), grade.problem)];
    const reason = whyNotGraded({
      kind: fields.kind,
      altered: fields.altered !== undefined,
      treatments: fields.treatments ?? [],
    });
    return reason === null || grade.value.notGraded !== undefined
      ? []
      : [problem('grade-on-ungraded', place(file, ['grade']), reason)];
  });

/** A reference begins with the key or a name of a work that has a file; one text may hold several. */
export const checkReferences: Rule = (records, place) => {
  const keys = records.named.works;
  const known = citedWorks(records.works);
  // A file that could not be read is told of itself; its key may still be cited.
  const works = [...known, ...keys.filter((id) => !known.some((work) => work.id === id)).map((id) => ({ id }))];
  return records.pieces.flatMap(({ file, fields }) =>
    (fields.references ?? []).flatMap((text, index) => {
      const outcome = parseReferences(text, { works });
      if (outcome.ok) return [];
      const spot = place(file, ['references', index]);
      const loose = parseReferences(text);
      const unknown = ({ named }: Reference): boolean => knownWork(`${named} 1`, works) === null;
      const missing = loose.ok ? loose.value.find(unknown)?.work : undefined;
      return missing === undefined
        ? [problem('reference-unreadable', spot, outcome.problem)]
        : [problem('work-unknown', spot, missing, keys)];
    }),
  );
};
