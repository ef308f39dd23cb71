import { parseReference } from '../../core/references/parse-reference.ts';
import type { Rule } from '../check-records.ts';
import { gradeOf } from '../grade-of.ts';
import type { Problem } from '../problem.ts';
import { problem } from '../problem.ts';

/** Kinds of piece that have no grade: they are *not graded*, which is not the same as poor. */
const NEVER_GRADED = ['ingot', 'hacksilver', 'coin-weight'];

/** A grade stands on a scale that is known, and is one of its words. */
export const checkGrades: Rule = (records, place) =>
  records.pieces.flatMap(({ file, fields }): readonly Problem[] => {
    const grade = gradeOf(fields);
    if (grade === null) return [];
    if (!grade.ok) return [problem('grade-unreadable', place(file, ['grade']), grade.problem)];
    if (NEVER_GRADED.includes(fields.kind) && grade.value.notGraded === undefined)
      return [problem('grade-on-ungraded', place(file, ['grade']), fields.kind)];
    return [];
  });

/** A reference begins with the key of a work that has a file. */
export const checkReferences: Rule = (records, place) => {
  const keys = records.named.works;
  const shorts = new Map(records.works.map(({ id, fields }) => [id, fields.short]));
  const works = keys.map((id) => ({ id, names: [shorts.get(id)].filter((short) => short !== undefined) }));
  return records.pieces.flatMap(({ file, fields }) =>
    (fields.references ?? []).flatMap((text, index) => {
      const outcome = parseReference(text, works);
      if (outcome.ok) return [];
      const spot = place(file, ['references', index]);
      const key = text.replace(/^(cf\.|var\.|unlisted in)\s*/, '').split(' ')[0] ?? text;
      return keys.includes(key)
        ? [problem('reference-unreadable', spot, outcome.problem)]
        : [problem('work-unknown', spot, key, keys)];
    }),
  );
};
