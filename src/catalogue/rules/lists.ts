import { yearsOf } from '../../core/dating/interval.ts';
import type { Rule } from './place.ts';
import type { Problem } from '../problem.ts';
import { problem } from '../problem.ts';

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
