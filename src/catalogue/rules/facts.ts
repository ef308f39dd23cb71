import { whyNotGraded } from '../../core/grade/grade.ts';
import { knownWork } from '../../core/references/cited-work.ts';
import { parseReferences } from '../../core/references/parse-reference.ts';
import type { Reference } from '../../core/references/reference.ts';
import { PHOTOGRAPHED, UNSURE_FIELDS } from '../fields/piece-fields.ts';
import { gradeOf } from '../grade-of.ts';
import type { Problem } from '../problem.ts';
import { problem } from '../problem.ts';
import { citedWorks } from '../types/cited-works.ts';
import { inheritFacts } from '../types/inherit-facts.ts';
import { readTypes } from '../types/types-of.ts';
import type { Rule } from './rule.ts';

/** What is said of the faces agrees with how many there are and with the photographs beside the file. */
export const checkFaces: Rule = (records, place) =>
  records.pieces.flatMap(({ file, fields, pictures }): readonly Problem[] => {
    const found: Problem[] = [];
    const { axis } = fields;
    if (fields.faces === 'uniface' && axis !== undefined && axis.hours !== null)
      found.push(problem('axis-on-uniface', place(file, ['axis']), axis.hours));
    if (fields.faces === 'uniface' && fields.reverse?.legend !== undefined)
      found.push(problem('reverse-on-uniface', place(file, ['reverse'])));
    for (const face of PHOTOGRAPHED)
      if (fields.photographs?.[face] !== undefined && !pictures.some((picture) => picture.face === face))
        found.push(problem('photograph-missing', place(file, ['photographs', face]), face));
    const faces = pictures.map(({ face }) => face);
    for (const { face, file: path } of pictures)
      if (faces.indexOf(face) !== faces.lastIndexOf(face) && pictures.find((one) => one.face === face)?.file !== path)
        found.push(problem('photograph-twice', { file: path }, face));
    return found;
  });

/** A doubt is about something that is said, by the piece or by its type. */
export const checkDoubts: Rule = (records, place) =>
  records.pieces
    .filter(({ fields }) => fields.sure !== undefined)
    .flatMap((piece) => {
      const { fields } = piece.fields.type === undefined ? piece : inheritFacts(piece, readTypes(records).types);
      return UNSURE_FIELDS.filter(
        (field) => piece.fields.sure?.[field] !== undefined && fields[field] === undefined,
      ).map((field) => problem('doubt-about-nothing', place(piece.file, ['sure', field]), field));
    });

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
