import type { Rule } from './place.ts';
import type { Problem } from '../problem.ts';
import { problem } from '../problem.ts';

/** An old id leads to one piece, and is the id of none. */
export const checkFormerly: Rule = (records, place) => {
  const now = new Set(records.pieces.map(({ id }) => id));
  const claimed = new Map<string, string>();
  return records.pieces.flatMap(({ id, file, fields }): readonly Problem[] =>
    (fields.formerly ?? []).flatMap((old, index) => {
      const spot = place(file, ['formerly', index]);
      if (old === id) return [problem('formerly-itself', spot, old)];
      if (now.has(old)) {
        const back = records.pieces.find((piece) => piece.id === old)?.fields.formerly?.includes(id) === true;
        return [problem(back ? 'formerly-circular' : 'formerly-in-use', spot, old, id)];
      }
      const other = claimed.get(old);
      if (other !== undefined) return [problem('formerly-twice', spot, old, other)];
      claimed.set(old, id);
      return [];
    }),
  );
};
