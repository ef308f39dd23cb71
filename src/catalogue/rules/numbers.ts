import type { Rule } from './place.ts';
import { problem } from '../problem.ts';

/** An inventory number belongs to one piece. */
export const checkNumbers: Rule = (records, place) => {
  const first = new Map<string, string>();
  return records.pieces.flatMap(({ id, file, fields }) => {
    const holder = first.get(fields.number);
    if (holder !== undefined) return [problem('number-twice', place(file, ['number']), fields.number, holder)];
    first.set(fields.number, id);
    return [];
  });
};
