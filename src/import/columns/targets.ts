import { SCALE_IDS } from '../../core/grade/grade.ts';
import { PIECE_ROWS } from '../../catalogue/fields/piece-fields.ts';
import type { PieceRows } from '../../catalogue/fields/piece-fields.ts';

type Targets = {
  [Name in keyof PieceRows]: PieceRows[Name] extends { readonly targets: readonly (infer Target)[] } ? Target : never;
}[keyof PieceRows];

/** What a column can be read into: the targets of the table of a piece's fields, its folder, and the story. */
export type Field = 'id' | 'story' | Targets;

/** By the names a keeper writes in a mapping file. */
export const FIELDS: readonly Field[] = [
  'id',
  ...Object.values(PIECE_ROWS).flatMap((row): readonly Field[] => ('targets' in row ? row.targets : [])),
  'story',
];

/** Fields whose schema knows `unknown` and `none`. */
export const WITH_BLANKS: ReadonlySet<string> = new Set(
  Object.entries(PIECE_ROWS).flatMap(([name, row]) => ('blanks' in row ? [name] : [])),
);

/** Units, or the scale of grades, that a heading may settle for every cell below it. */
export const UNITS: Readonly<Partial<Record<Field, readonly string[]>>> = {
  weight: ['g', 'gr', 'dwt', 'oz t', 'oz av', 'mg'],
  diameter: ['mm', 'cm', 'in'],
  height: ['mm', 'cm', 'in'],
  width: ['mm', 'cm', 'in'],
  thickness: ['mm', 'cm', 'in'],
  axis: ['h', '°'],
  fineness: ['thousandths', '%', 'ct'],
  grade: SCALE_IDS,
};

export function isField(name: string): name is Field {
  return FIELDS.some((field) => field === name);
}
