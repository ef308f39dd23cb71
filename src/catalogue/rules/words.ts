import { whyNotGraded } from '../../core/grade/grade.ts';
import { parseReference } from '../../core/references/parse-reference.ts';
import type { Rule } from '../check-records.ts';
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
