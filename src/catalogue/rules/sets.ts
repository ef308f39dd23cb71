import { placesOf } from '../../core/sets/places.ts';
import type { Rule } from './place.ts';
import type { Problem } from '../problem.ts';
import { problem } from '../problem.ts';
import { readTypes } from '../types/types-of.ts';
import { nameOf } from './names.ts';
import { wordsOf } from './set-words.ts';
import { aimOf, setListsOf, setRuleOf } from '../set-rule.ts';

/** A set's rule names what has a file, yields places that something can fill, and aims at a grade that is one. */
export const checkSets: Rule = (records, place) => {
  const lists = setListsOf(records, records.cabinet?.fields, readTypes(records).types);
  // A list file that could not be read is told of itself; its absence is no fault of a rule.
  const isWhole =
    records.rulers.length === records.named.rulers.length && records.mints.length === records.named.mints.length;
  return records.sets.flatMap((set): readonly Problem[] => {
    const { file, fields } = set;
    const wheres = [
      { path: ['where'], where: fields.where },
      ...(fields.places ?? []).map((one, index) => ({
        path: ['places', index, 'where'],
        where: 'where' in one ? one.where : undefined,
      })),
    ];
    const barred = wheres.map(({ path, where }) => ({ path: [...path, 'not'], where: where?.not }));
    const unknown = [...wheres, ...barred].flatMap(({ path, where }) => [
      ...nameOf('ruler', where?.ruler, records, (field) => place(file, [...path, field])),
      ...nameOf('struck-for', where?.['struck-for'], records, (field) => place(file, [...path, field])),
      ...nameOf('mint', where?.mint, records, (field) => place(file, [...path, field])),
      ...nameOf('denomination', where?.denomination, records, (field) => place(file, [...path, field])),
      ...wordsOf(where, records, (field) => place(file, [...path, field])),
    ]);
    const places = placesOf(setRuleOf(set), lists);
    const aim = aimOf(fields);
    return [
      ...unknown,
      ...(places.ok || unknown.length > 0 || !isWhole
        ? []
        : [problem('set-rule', place(file, ['places']), places.problem)]),
      ...(aim === null || aim.ok ? [] : [problem('aim-unreadable', place(file, ['aim']), aim.problem)]),
    ];
  });
};
