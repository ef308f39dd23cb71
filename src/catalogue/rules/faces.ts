import type { Rule } from './place.ts';
import type { Problem } from '../problem.ts';
import { problem } from '../problem.ts';
import { PHOTOGRAPHED, UNSURE_FIELDS } from '../fields/piece-fields.ts';

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

/** A doubt is about something that is said. */
export const checkDoubts: Rule = (records, place) =>
  records.pieces.flatMap(({ file, fields }) =>
    UNSURE_FIELDS.filter((field) => fields.sure?.[field] !== undefined && fields[field] === undefined).map((field) =>
      problem('doubt-about-nothing', place(file, ['sure', field]), field),
    ),
  );
