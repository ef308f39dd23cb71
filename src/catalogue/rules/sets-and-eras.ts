import { periodYears } from '../../core/eras/era-scheme.ts';
import { folded, namesInArea } from '../../core/sets/facts.ts';
import { placesOf } from '../../core/sets/places.ts';
import { eraSchemeOf } from '../for-core/era-scheme.ts';
import type { Problem, Spot } from '../problem.ts';
import { problem } from '../problem.ts';
import { aimOf, setListsOf, setRuleOf } from '../for-core/set-rule.ts';
import { readTypes, typeNamed } from '../types/types-of.ts';
import { nearestName } from '../nearest.ts';
import { nameOf } from './names.ts';
import type { Records } from '../records.ts';
import type { EraFields } from '../schema/sets-and-eras.ts';
import type { Rule } from './rule.ts';
import { wordsOf } from './set-words.ts';

/** A set's rule names what has a file, yields places that something can fill, and aims at a grade that is one. */
export const checkSets: Rule = (records, place) => {
  const { types } = readTypes(records);
  const lists = setListsOf(records, records.cabinet?.fields, types);
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
      ...(where?.type ?? []).flatMap((type) => {
        const named = typeNamed(types, type);
        return named.ok ? [] : [problem('type-unknown', place(file, [...path, 'type']), named.problem)];
      }),
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

/** The periods of a scheme follow one another as the scheme says they do. */
export const checkEras: Rule = (records, place) =>
  records.eras.flatMap((era): readonly Problem[] => {
    const { periods, ends } = eraSchemeOf(era, records.rulers);
    const at = (index: number, field: string) => place(era.file, ['periods', index, field]);
    const step = ends === 'inclusive' ? 1 : 0;
    const places = placesNamed(records);
    const named = new Set(places.map(folded));
    const wanted = era.fields['applies-to'] ?? [];
    // A scheme may name places that nothing here comes from yet; a name that is nearly one of ours is a slip.
    const isIdle = wanted.length > 0 && places.length > 0 && !wanted.some((name) => named.has(folded(name)));
    const slips = wanted.flatMap((name, index) =>
      named.has(folded(name)) || !(isIdle || nearestName(name, places) !== null)
        ? []
        : [problem('era-place-unknown', place(era.file, ['applies-to', index]), name, places)],
    );
    const bounds = periods.flatMap((period, index): readonly Problem[] => {
      const found: Problem[] = [];
      const { low: from, high: to } = periodYears(period);
      if (from > to) found.push(problem('period-reversed', at(index, 'to'), period.name));
      const before = periods[index - 1];
      if (before === undefined || era.fields.gaps === 'yes') return found;
      const wanted = periodYears(before).high + step;
      if (from < wanted) found.push(problem('periods-overlap', at(index, 'from'), before.name, period.name, wanted));
      if (from > wanted) found.push(problem('periods-gap', at(index, 'from'), before.name, period.name, wanted));
      return found;
    });
    const rulers = era.fields.periods.flatMap((period, index) => {
      const slipped = (period.rulers ?? []).filter((name) => isSlip(name, records.rulers));
      return nameOf('ruler', slipped, records, () => at(index, 'rulers'));
    });
    return [...slips, ...rulers, ...gatheredSlips(era.fields, records, at), ...bounds];
  });

/** A realm or dynasty that no ruler here has is no fault, for he may be still to come; nearly the name of one is a slip. */
function gatheredSlips(
  { periods }: EraFields,
  { rulers }: Records,
  at: (index: number, field: string) => Spot,
): readonly Problem[] {
  const of = (values: readonly (string | undefined)[]): readonly string[] => [
    ...new Set(values.flatMap((value) => value ?? [])),
  ];
  const lists = [
    ['realms', 'No ruler has the realm', of(rulers.map(({ fields }) => fields.realm))],
    ['dynasties', 'No ruler has the dynasty', of(rulers.map(({ fields }) => fields.dynasty))],
  ] as const;
  return periods.flatMap((period, index) =>
    lists.flatMap(([field, none, known]) => {
      const isKnown = (value: string): boolean => known.some((one) => folded(one) === folded(value));
      const slipped = (period[field] ?? []).filter((value) => !isKnown(value) && nearestName(value, known) !== null);
      return slipped.map((value) => problem('set-word-unknown', at(index, field), none, value, known));
    }),
  );
}

/** In a name of so many letters one or two that differ are a slip. */
const LONG = 8;

/**
 * Whether the id of a ruler is that of one who has a file, but for a letter or two. A scheme may name rulers who have none;
 * another number of the same name is another ruler.
 */
function isSlip(id: string, rulers: Records['rulers']): boolean {
  const nameAlone = (whole: string): string => whole.replace(/-[ivx]+$/, '');
  const [name, names] = [nameAlone(id), rulers.map((ruler) => nameAlone(ruler.id))];
  // Edgar is near Edward, and another man.
  return name.length >= LONG && !names.includes(name) && nearestName(name, names) !== null;
}

/** Every mint and area that the cabinet names: of mints, of finds, and in its own list of areas. */
function placesNamed({ mints, pieces, cabinet }: Records): readonly string[] {
  const areas = [
    ...mints.map(({ fields }) => fields.area),
    ...pieces.map(({ fields }) => fields.found?.area),
    ...(cabinet?.fields.areas ?? []).flatMap((area) => [area.name, area.in]),
  ].flatMap((area) => (area === undefined ? [] : namesInArea(area)));
  return [...new Set([...areas, ...mints.map(({ id }) => id)])];
}
