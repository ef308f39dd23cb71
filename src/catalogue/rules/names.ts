import type { Rule } from '../check-records.ts';
import type { Problem } from '../problem.ts';
import { problem } from '../problem.ts';
import type { Filed } from '../records.ts';
import { isBlank } from '../schema/fields.ts';

/** A ruler, mint or denomination that a piece names has a file. */
export const checkNames: Rule = (records, place) => {
  const ids = (filed: readonly Filed<unknown>[]): readonly string[] => filed.map(({ id }) => id);
  const rulers = ids(records.rulers);
  const mints = ids(records.mints);
  const denominations = ids(records.denominations);
  return records.pieces.flatMap(({ file, fields }): readonly Problem[] => {
    const named = (field: string, value: string | readonly string[] | undefined, known: readonly string[], folder: string) =>
      value === undefined || isBlank(value)
        ? []
        : [value].flat().flatMap((name) =>
            known.includes(name) ? [] : [problem('name-unknown', place(file, [field]), name, folder, known)],
          );
    return [
      ...named('ruler', fields.ruler, rulers, 'rulers'),
      ...named('struck-for', fields['struck-for'], rulers, 'rulers'),
      ...named('mint', fields.mint, mints, 'mints'),
      ...named('denomination', fields.denomination, denominations, 'denominations'),
    ];
  });
};
