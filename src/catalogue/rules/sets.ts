import { placesOf } from '../../core/sets/places.ts';
import type { Rule } from '../check-records.ts';
import type { Problem } from '../problem.ts';
import { problem } from '../problem.ts';
import { nameOf } from './names.ts';
import { aimOf, setListsOf, setRuleOf } from '../set-rule.ts';

/** A set's rule names what has a file, yields places that something can fill, and aims at a grade that is one. */
export const checkSets: Rule = (records, place) => {
  const lists = setListsOf(records);
  return records.sets.flatMap((set): readonly Problem[] => {
    const { file, fields } = set;
    const wheres = [
      { path: ['where'], where: fields.where },
      ...(fields.places ?? []).map((one, index) => ({ path: ['places', index, 'where'], where: 'where' in one ? one.where : undefined })),
    ];
    const unknown = wheres.flatMap(({ path, where }) => [
      ...nameOf('ruler', where?.ruler, records.rulers, (field) => place(file, [...path, field])),
      ...nameOf('struck-for', where?.['struck-for'], records.rulers, (field) => place(file, [...path, field])),
      ...nameOf('mint', where?.mint, records.mints, (field) => place(file, [...path, field])),
      ...nameOf('denomination', where?.denomination, records.denominations, (field) => place(file, [...path, field])),
    ]);
    const places = placesOf(setRuleOf(set), lists);
    const aim = aimOf(fields);
    return [
      ...unknown,
      ...(places.ok || unknown.length > 0 ? [] : [problem('set-rule', place(file, ['places']), places.problem)]),
      ...(aim === null || aim.ok ? [] : [problem('aim-unreadable', place(file, ['aim']), aim.problem)]),
    ];
  });
};
