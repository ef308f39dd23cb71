import { yearsOf } from '../../core/dating/interval.ts';
import { dieStates } from '../../core/dies/states.ts';
import type { Disagreement } from '../../core/types/concordance.ts';
import type { FiledPiece, Records } from '../records.ts';
import { isBlank, known } from '../schema/fields.ts';
import type { PieceFields } from '../schema/piece.ts';
import type { ConcordanceLine } from './read-lines.ts';
import type { TypeSeries } from './series.ts';
import type { TypeFacts } from './type-facts.ts';
import { readTypes, seriesNamed, typeNamed, typeOfKey } from './types-of.ts';
import type { Types } from './types-of.ts';

/** Something that cannot all be right, and is nobody's slip for certain: a piece against its type, a book against a book. */
export type TypeRemark = { readonly file: string; readonly line: number | null; readonly says: string };

/** Where pieces and types, concordances and die states contradict each other or themselves. Nothing is changed by it. */
export function typeRemarks(records: Pick<Records, 'pieces' | 'series' | 'works' | 'rulers'>): readonly TypeRemark[] {
  const { types } = readTypes(records);
  return [
    ...records.pieces.flatMap((piece) => contradictions(piece, types)),
    ...types.concordance.disagreements.flatMap((found) => disagreement(found, types)),
    ...types.series.flatMap(stateFaults),
  ];
}

/** The facts of which a piece and its type can state only one. */
const SINGLE = [
  'kind', 'ruler', 'struck-for', 'issuer', 'mint', 'denomination', 'metal', 'made', 'faces', 'shape',
] as const; // prettier-ignore

/** Where a piece says something else than the type it names. */
export function contradictions(
  { file, fields }: Pick<FiledPiece, 'file' | 'fields'>,
  types: Types,
): readonly TypeRemark[] {
  const named = fields.type === undefined ? null : typeNamed(types, fields.type);
  if (named?.ok !== true) return [];
  const facts = seriesNamed(types, named.value.series)?.facts.get(named.value.id) ?? {};
  const remark = (field: string, own: string, theirs: string): TypeRemark => ({
    file,
    line: null,
    says: `${field}: this piece says ${own}, its type ${named.value.id} says ${theirs}. Change one, or leave it to the type.`,
  });
  const single = SINGLE.flatMap((field) => {
    const [own, theirs] = [words(fields[field]), words(facts[field])];
    return own === null || theirs === null || own.toLowerCase() === theirs.toLowerCase()
      ? []
      : [remark(field, own, theirs)];
  });
  return [...single, ...dateAgainst(fields, facts, remark)];
}

function words(value: string | readonly string[] | undefined): string | null {
  return value === undefined || value === 'unknown' ? null : [value].flat().join(', ');
}

function dateAgainst(
  fields: PieceFields,
  facts: TypeFacts,
  remark: (field: string, own: string, theirs: string) => TypeRemark,
): readonly TypeRemark[] {
  const [own, theirs] = [fields.date, facts.date].map((date) => (isBlank(date) ? null : known(date)));
  if (own == null || theirs == null) return [];
  const [mine, type] = [yearsOf(own), yearsOf(theirs)];
  return mine.low <= type.high && type.low <= mine.high ? [] : [remark('date', own.text, theirs.text)];
}

function disagreement({ work, number, types: keys, rows, why }: Disagreement, types: Types): readonly TypeRemark[] {
  const first = types.concordance.rows[rows[0] ?? 0] as ConcordanceLine | undefined;
  const { series } = typeOfKey(keys[0] ?? '');
  const file = seriesNamed(types, series)?.tables.concordance?.file ?? `types/${series}`;
  const lines = rows.map((row) => (types.concordance.rows[row] as ConcordanceLine | undefined)?.line ?? 0).join(', ');
  const ids = keys.map((key) => typeOfKey(key).id).join(' and ');
  const says = {
    'several-types': `${ids} are each called the equal of ${work} ${number} (lines ${lines}). Two types of one series cannot be; nothing is concluded through that number.`,
    'several-numbers': `${ids} is called the equal of several numbers of ${work} (lines ${lines}). Write narrower for those that are a part of it.`,
    'two-relations': `${ids} is in two relations to ${work} ${number} (lines ${lines}). Take one of the lines out.`,
  }[why];
  return [{ file, line: first?.line ?? null, says }];
}

function stateFaults(series: TypeSeries): readonly TypeRemark[] {
  const rows = series.tables['die-states'];
  return dieStates(series.dieStates).faults.map((fault) => ({
    file: rows?.file ?? series.file,
    line: fault.fault === 'circle' ? null : (rows?.rows[fault.row]?.line ?? null),
    says:
      fault.fault === 'circle'
        ? `The states ${fault.states.join(', ')} of the die ${fault.die} come each after another in a circle, so none of them has a place in the order. Look at the coins again.`
        : `The state ${fault.state} of the die ${fault.die} comes after ${fault.after}, which has no row. Add one, or correct the name.`,
  }));
}
