import { LEAST_POINTS } from '../../core/cases/label-checks.ts';
import type { Problem } from '../problem.ts';
import { problem } from '../problem.ts';
import type { Rule } from './rule.ts';

/** An exhibit shows pieces that are published, each once, names works and sets that have a file, in type that can be read. */
export const checkExhibits: Rule = (records, place) => {
  const pieces = new Map(records.pieces.map((piece) => [piece.id, piece]));
  const { works, sets } = records.named;
  return records.exhibits.flatMap(({ file, fields }): readonly Problem[] => {
    const shown = new Set<string>();
    const found: Problem[] = [];
    fields.cases.forEach((one, c) =>
      one.groups.forEach((group, g) =>
        group.pieces.forEach((entry, p) => {
          const spot = place(file, ['cases', c, 'groups', g, 'pieces', p]);
          const piece = pieces.get(entry.piece);
          if (!records.named.pieces.includes(entry.piece))
            found.push(problem('exhibit-piece-unknown', spot, entry.piece, records.named.pieces));
          if (piece === undefined) return;
          if (piece.fields.publish !== 'yes') found.push(problem('exhibit-piece-unpublished', spot, entry.piece));
          else if (!['kept', 'lent'].includes(piece.fields.status))
            found.push(problem('exhibit-piece-gone', spot, entry.piece, piece.fields.status));
          if (shown.has(entry.piece)) found.push(problem('exhibit-piece-twice', spot, entry.piece));
          shown.add(entry.piece);
        }),
      ),
    );
    for (const list of ['bibliography', 'further-reading'] as const)
      fields[list].forEach((work, index) => {
        if (!works.includes(work)) found.push(problem('work-unknown', place(file, [list, index]), work, works));
      });
    fields.sets.forEach((set, index) => {
      if (!sets.includes(set)) found.push(problem('name-unknown', place(file, ['sets', index]), set, 'sets', sets));
    });
    const { text: points } = fields.label;
    if (points !== undefined && points < LEAST_POINTS)
      found.push(problem('exhibit-type-small', place(file, ['label', 'text']), points, LEAST_POINTS));
    return found;
  });
};
