import { yearsOf } from '../../core/dating/interval.ts';
import type { Problem } from '../problem.ts';
import { problem } from '../problem.ts';
import type { Rule } from './rule.ts';

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

/** A link in Markdown whose address begins at the root of the host. */
const ROOTED = /\]\((\/[^)\s]*)/;

/** A picture in Markdown: `![a mint](https://example.org/mint.jpg)`. */
const IMAGE = /!\[[^\]]*\]\s?[([]/;

/** A story shows no pictures: those of the piece are next to it, and what lies elsewhere would be fetched from there. */
export const checkImages: Rule = (records, place) =>
  [...records.pieces, ...records.exhibits].flatMap(({ file, story }): readonly Problem[] => {
    const image = IMAGE.exec(story)?.[0];
    return image === undefined ? [] : [problem('image-in-story', place(file, [], image))];
  });

/** A story's links hold also where the site is in a folder of its host. */
export const checkLinks: Rule = (records, place) =>
  [...records.pieces, ...records.exhibits].flatMap(({ file, story }): readonly Problem[] => {
    const address = ROOTED.exec(story)?.[1];
    return address === undefined ? [] : [problem('link-rooted', place(file, [], `](${address}`), address)];
  });

/** Reigns and standards run forwards, and co-rulers have files. */
export const checkLists: Rule = (records, place) => {
  const { rulers, works } = records.named;
  const reigns = records.rulers.flatMap(({ file, fields }) =>
    fields.reigns.flatMap((reign, index): readonly Problem[] => {
      const found: Problem[] = [];
      if (yearsOf(reign.from).low > yearsOf(reign.to).high)
        found.push(problem('range-reversed', place(file, ['reigns', index, 'to']), reign.from.text, reign.to.text));
      for (const id of reign.with ?? [])
        if (!rulers.includes(id))
          found.push(problem('name-unknown', place(file, ['reigns', index, 'with']), id, 'rulers', rulers));
      return found;
    }),
  );
  const standards = records.denominations.flatMap(({ file, fields }) =>
    fields.standards.flatMap((standard, index) =>
      yearsOf(standard.from).low > yearsOf(standard.to).high
        ? [problem('range-reversed', place(file, ['standards', index, 'to']), standard.from.text, standard.to.text)]
        : [],
    ),
  );
  const sources = records.sets.flatMap(({ file, fields }) => {
    return fields.source.flatMap(({ work }, index) =>
      works.includes(work) ? [] : [problem('work-unknown', place(file, ['source', index, 'work']), work, works)],
    );
  });
  return [...reigns, ...standards, ...sources];
};
