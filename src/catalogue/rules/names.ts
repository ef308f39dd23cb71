import type { Rule } from './rule.ts';
import type { Problem, Spot } from '../problem.ts';
import { problem } from '../problem.ts';
import type { Records } from '../records.ts';
import { isBlank } from '../schema/fields.ts';

const FOLDERS = {
  ruler: 'rulers',
  'struck-for': 'rulers',
  'host-ruler': 'rulers',
  mint: 'mints',
  denomination: 'denominations',
} as const;

/** The names in a field that have no file in the folder they belong to. */
export function nameOf(
  field: keyof typeof FOLDERS,
  value: string | readonly string[] | undefined,
  { named }: Records,
  spot: (field: string) => Spot,
): readonly Problem[] {
  if (value === undefined || isBlank(value)) return [];
  const known = named[FOLDERS[field]];
  return [value]
    .flat()
    .filter((name) => !known.includes(name))
    .map((name) => problem('name-unknown', spot(field), name, FOLDERS[field], known));
}

/** A ruler, mint or denomination that a piece names has a file. */
export const checkNames: Rule = (records, place) =>
  records.pieces.flatMap(({ file, fields }): readonly Problem[] => [
    ...nameOf('ruler', fields.ruler, records, (field) => place(file, [field])),
    ...nameOf('struck-for', fields['struck-for'], records, (field) => place(file, [field])),
    ...nameOf('mint', fields.mint, records, (field) => place(file, [field])),
    ...nameOf('denomination', fields.denomination, records, (field) => place(file, [field])),
    ...nameOf('host-ruler', fields.altered?.['host-ruler'], records, (field) => place(file, ['altered', field])),
  ]);
