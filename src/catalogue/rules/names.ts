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

/** A word in a title that leaves open what stands there. */
const OPEN =
  /\?|\b(?:probabl[ey]|possibl[ey]|perhaps|maybe|likely|attributed|uncertain|doubtful|unknown|near|like|or)\b/iu;

/** Titles that name as certain a ruler, a mint or a maker of which the field says that it is only probable or possible. */
export function titleRemarks({ pieces, rulers, mints }: Pick<Records, 'pieces' | 'rulers' | 'mints'>): readonly string[] {
  const named = (lists: readonly { id: string; fields: { name: string } }[], ids: string | readonly string[] | undefined) =>
    lists.flatMap(({ id, fields }) => ([ids ?? []].flat().includes(id) ? [fields.name] : []));
  return pieces.flatMap(({ file, fields }) => {
    const { title, sure = {}, ruler, mint, makers } = fields;
    if (OPEN.test(title)) return [];
    const facts = [
      ['ruler', named(rulers, ruler)],
      ['mint', named(mints, mint)],
      ['makers', (makers ?? []).map(({ name }) => name)],
    ] as const;
    return facts.flatMap(([fact, names]) => {
      const doubt = sure[fact] ?? 'certain';
      const name = names.find((one) => title.includes(one));
      return doubt === 'certain' || name === undefined
        ? []
        : [`${file}: the title names ${name} as certain, and sure: says ${fact}: ${doubt}. Write “${doubt === 'probable' ? 'probably' : 'possibly'} ${name}” in the title, or take the doubt out.`];
    });
  });
} // prettier-ignore
