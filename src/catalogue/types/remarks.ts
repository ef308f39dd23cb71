import { yearsOf } from '../../core/dating/interval.ts';
import { dieStates } from '../../core/dies/states.ts';
import { parseReferences } from '../../core/references/parse-reference.ts';
import type { CitedWork } from '../../core/references/reference.ts';
import type { Disagreement } from '../../core/types/concordance.ts';
import type { FiledPiece, Records } from '../records.ts';
import { known } from '../schema/fields.ts';
import { contradictions, unlikely } from './against-type.ts';
import type { TypeRemark } from './against-type.ts';
import { citedWorks } from './cited-works.ts';
import type { ConcordanceLine } from './read-lines.ts';
import type { SeriesTable } from './series-tables.ts';
import type { TypeSeries } from './series.ts';
import { exclusiveTypes, readTypes, seriesNamed, typeOfKey, typesCited } from './types-of.ts';
import type { Types } from './types-of.ts';

/** Where pieces and types, concordances and die states contradict each other or themselves. Nothing is changed by it. */
export function typeRemarks(records: Pick<Records, 'pieces' | 'series' | 'works' | 'rulers'>): readonly TypeRemark[] {
  const { types } = readTypes(records);
  const works = citedWorks(records.works);
  return [
    ...records.pieces.flatMap((piece) => [
      ...contradictions(piece, types),
      ...unlikely(piece, works, types),
      ...severalTypes(piece, works, types),
    ]),
    ...types.concordance.disagreements.flatMap((found) => disagreement(found, types)),
    ...types.series.flatMap((series) => [...stateFaults(series), ...incomplete(series)]),
  ];
}

/** References that are certain numbers of several types of which a piece can be only one. */
function severalTypes({ file, fields }: Pick<FiledPiece, 'file' | 'fields'>, works: readonly CitedWork[], types: Types): readonly TypeRemark[] {
  if (fields.type !== undefined || (fields.references ?? []).length === 0) return [];
  const references = (fields.references ?? []).flatMap((text) => {
    const read = parseReferences(text, { works });
    return read.ok ? read.value : [];
  });
  const clashing = exclusiveTypes(types, typesCited(types, references, fields.sure?.references ?? 'certain'));
  if (clashing.length === 0) return [];
  const ids = [...new Set(clashing.map(({ id }) => id))].join(' and ');
  return [{ file, line: null, says: `references: they are the numbers of ${ids}, and a piece is of one of them at most, so each is only possible. Correct a number, or write type.` }];
} // prettier-ignore

/** What a series leaves open: no types at all, characters nobody fills in, die states of dies no row names, dates outside a broader type's. */
function incomplete(series: TypeSeries): readonly TypeRemark[] {
  const { file, tables, types, characters, facts } = series;
  const at = (table: SeriesTable, line: number | null, says: string): TypeRemark => ({ file: tables[table]?.file ?? file, line, says });
  if (types.size === 0) return [{ file, line: null, says: 'This series has no types yet. Add them to types.csv, or take the folder out.' }];
  const dies = new Set(series.pairs.flatMap(({ obverse, reverse }) => [`obverse ${obverse}`, `reverse ${reverse}`, obverse, reverse]));
  const states = series.pairs.length === 0 ? [] : (tables['die-states']?.rows ?? []);
  const told = new Set<string>();
  return [
    ...characters
      .filter(({ id }) => ![...types.values()].some((type) => type.says.has(id.toLowerCase())))
      .map(({ id }) => at('types', null, `No type says anything of the character ${id}, so the key cannot ask for it. Add its column to types.csv.`)),
    ...states.flatMap(({ line, cells }) => {
      const die = cells['die'];
      if (die === undefined || dies.has(die) || told.has(die)) return [];
      told.add(die);
      return [at('die-states', line, `dies.csv has no die ${die}. Write it with its face, like obverse A1, as dies.csv names it.`)];
    }),
    ...[...types.values()].flatMap(({ id, broader }) => {
      const [own, above] = [id, broader ?? ''].map((one) => known(facts.get(one)?.date));
      if (own == null || above == null) return [];
      const [mine, its] = [yearsOf(own), yearsOf(above)];
      if (mine.low >= its.low && mine.high <= its.high) return [];
      const line = tables.types?.rows.find(({ cells }) => cells['id'] === id)?.line ?? null;
      return [at('types', line, `${id} is dated ${own.text}, and ${broader ?? ''}, which it is a part of, ${above.text}. Widen the one or narrow the other.`)];
    }),
  ];
} // prettier-ignore

function disagreement({ work, number, types: keys, rows, why }: Disagreement, types: Types): readonly TypeRemark[] {
  const first = types.concordance.rows[rows[0] ?? 0] as ConcordanceLine | undefined;
  const { series } = typeOfKey(keys[0] ?? '');
  const file = seriesNamed(types, series)?.tables.concordance?.file ?? `types/${series}`;
  const lines = rows.map((row) => (types.concordance.rows[row] as ConcordanceLine | undefined)?.line ?? 0).join(', ');
  const ids = keys.map((key) => typeOfKey(key).id).join(' and ');
  const says = {
    'several-types': `${ids} are each called the equal of ${work} ${number} (lines ${lines}). Two types of one series cannot be; nothing is concluded through that number.`,
    'several-numbers': `${ids} is called the equal of several numbers of ${work} (lines ${lines}). Write narrower for those that are a part of it; until then a piece of one of them is only possibly of the others.`,
    'two-relations': `${ids} is in two relations to ${work} ${number} (lines ${lines}). Take one of the lines out.`,
    'two-certainties': `${ids} has ${work} ${number} in several lines that are not equally sure (lines ${lines}). Take all but one of them out.`,
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
