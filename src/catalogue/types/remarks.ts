import { yearsOf } from '../../core/dating/interval.ts';
import { dieStates } from '../../core/dies/states.ts';
import { LONGEST_MASK, matchMask } from '../../core/legends/match-mask.ts';
import { weightSpan } from '../../core/measures/parse-weight.ts';
import { sizeSpan } from '../../core/measures/parse-size.ts';
import { parseReferences } from '../../core/references/parse-reference.ts';
import type { CitedWork } from '../../core/references/reference.ts';
import { concord } from '../../core/types/concordance.ts';
import type { Disagreement } from '../../core/types/concordance.ts';
import { parseShown } from '../../core/types/key/character.ts';
import { canMeasure } from '../../core/types/key/worn-measure.ts';
import { NOT_APPLICABLE, NOT_KNOWN } from '../../core/types/series.ts';
import type { SeriesType } from '../../core/types/series.ts';
import type { FiledPiece, Records } from '../records.ts';
import { isBlank, known } from '../schema/fields.ts';
import type { PieceFields } from '../schema/piece.ts';
import { citedWorks } from './cited-works.ts';
import { factsFor, openFacts } from './inherit-facts.ts';
import type { ConcordanceLine } from './read-lines.ts';
import type { SeriesTable } from './series-tables.ts';
import type { TypeSeries } from './series.ts';
import type { TypeFacts } from './type-facts.ts';
import { areOnOneLine, exclusiveTypes, readTypes, seriesNamed, typeNamed, typeOfKey, typesCited } from './types-of.ts';
import type { Types } from './types-of.ts';

/** Something that cannot all be right, and is nobody's slip for certain: a piece against its type, a book against a book. */
export type TypeRemark = { readonly file: string; readonly line: number | null; readonly says: string };

/** Where pieces and types, concordances and die states contradict each other or themselves. Nothing is changed by it. */
export function typeRemarks(records: Pick<Records, 'pieces' | 'series' | 'works' | 'rulers'>): readonly TypeRemark[] {
  const { types } = readTypes(records);
  const works = citedWorks(records.works);
  return [
    ...records.pieces.flatMap((piece) => [
      ...contradictions(piece, types),
      ...unlikely(piece, records, types),
      ...severalTypes(piece, works, types),
    ]),
    ...types.concordance.disagreements.flatMap((found) => disagreement(found, types)),
    ...types.series.flatMap((series) => [...stateFaults(series), ...incomplete(series)]),
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
  const series = seriesNamed(types, named.value.series);
  if (series === undefined) return [];
  const facts = factsFor(fields, series, named.value.id);
  const open = openFacts(series, named.value.id);
  const remark = (field: string, own: string, theirs: string): TypeRemark => ({
    file,
    line: null,
    says: `${field}: this piece says ${own}, its type ${named.value.id} says ${theirs}. Change one, or leave it to the type.`,
  });
  const single = SINGLE.flatMap((field) => {
    const [own, theirs] = [words(fields[field]), words(facts[field])];
    return own === null || theirs === null || open.has(field) || own.toLowerCase() === theirs.toLowerCase()
      ? []
      : [remark(field, own, theirs)];
  });
  return [...single, ...(open.has('date') ? [] : dateAgainst(fields, facts, remark))];
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

/**
 * What speaks against the type a piece names without being a fact of both: a number of a book that belongs to another type of
 * the series, a weight or a diameter no such piece can have, letters that are in no legend of the type, and dies its chart lacks.
 */
export function unlikely(
  { file, fields }: Pick<FiledPiece, 'file' | 'fields'>,
  { works }: Pick<Records, 'works'>,
  types: Types,
): readonly TypeRemark[] {
  const named = fields.type === undefined ? null : typeNamed(types, fields.type);
  const series = named?.ok === true ? seriesNamed(types, named.value.series) : undefined;
  const type = named?.ok === true ? series?.types.get(named.value.id) : undefined;
  if (series === undefined || type === undefined) return [];
  return [
    ...otherNumbers(fields, series, type, citedWorks(works), types),
    ...otherMeasures(fields, series, type),
    ...otherLegends(fields, series, type),
    ...diesNotInChart(fields, series, isOnOneLine(series, type.id)),
  ].map((says) => ({ file, line: null, says }));
}

/** Whether a type is the same as another, above it or below it, and both can be true of one piece. */
function isOnOneLine(series: TypeSeries, type: string): (other: string) => boolean {
  return (other) => areOnOneLine(series, type, other);
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

function otherNumbers(fields: PieceFields, series: TypeSeries, type: SeriesType, works: readonly CitedWork[], types: Types): readonly string[] {
  return (fields.references ?? []).flatMap((text) => {
    const read = parseReferences(text, { works });
    return (read.ok ? read.value : [])
      .filter(({ relation }) => relation === 'is' || relation === 'this coin')
      .flatMap((reference) => {
        const found = concord(reference, types.concordance).filter(({ through }) => through === null);
        const here = found.filter((one) => typeOfKey(one.type).series === series.id);
        const tells = here.every(({ relation, disputed }) => !disputed && (relation === 'equal' || relation === 'narrower'));
        const others = here.map((one) => typeOfKey(one.type).id);
        if (here.length === 0 || !tells || others.some(isOnOneLine(series, type.id))) return [];
        const doubt = here.every((one) => one.sure === 'certain') ? '' : 'probable ';
        return [`references: ${reference.text} is the ${doubt}number of ${others.join(' and ')}, and this piece says type ${type.id}. Change one of the two.`];
      });
  });
} // prettier-ignore

/** What a measure of a piece is held against: the character of its name, unless something was done to the piece. */
function otherMeasures(fields: PieceFields, series: TypeSeries, type: SeriesType): readonly string[] {
  const isWhole = fields.altered === undefined && (fields.treatments ?? []).length === 0;
  return (['weight', 'diameter'] as const).flatMap((name) => {
    const character = series.characters.find(({ id, kind }) => id.toLowerCase() === name && kind !== 'states');
    const said = character === undefined ? undefined : type.says.get(name);
    const read = character === undefined || said === undefined ? null : parseShown(said.text, character);
    const own = ownMeasure(fields, name);
    if (character === undefined || read?.ok !== true || read.value.shows !== 'measure' || own === null) return [];
    const { low, high } = read.value;
    const [middle, precision] = [(own.low + own.high) / 2, (own.high - own.low) / 2];
    if (canMeasure(middle, { low, high }, character.wear, precision)) return [];
    if (middle < low && !isWhole) return [];
    return [`${name}: this piece has ${own.text}, and its type ${type.id} ${said?.text ?? ''}. Weigh or measure it again, or look whether it is of another type.`];
  });
} // prettier-ignore

function ownMeasure({ weight, diameter }: PieceFields, name: 'weight' | 'diameter') {
  const [grams, size] = [known(weight), known(diameter)];
  if (name === 'weight') return grams == null ? null : { ...weightSpan(grams), text: grams.text };
  if (size == null) return null;
  const { width, height } = sizeSpan(size);
  return { low: Math.min(width, height), high: Math.max(width, height), text: size.text };
}

/** A legend as read that neither is in a legend of the type nor holds one; what is worn away speaks against nothing. */
function otherLegends(fields: PieceFields, { characters }: TypeSeries, type: SeriesType): readonly string[] {
  return (['obverse', 'reverse', 'edge'] as const).flatMap((side) => {
    const own = fields[side]?.legend?.text;
    const said = type.says.get(`${side} legend`)?.text;
    if (own === undefined || said === undefined || said === NOT_KNOWN || said === NOT_APPLICABLE) return [];
    // No worn stretch is asked for that is longer.
    if (own.length > LONGEST_MASK || said.length > LONGEST_MASK) return [];
    const isCharacter = characters.some(({ id }) => id.toLowerCase() === `${side} legend`);
    const legends = isCharacter ? said.split('/').map((each) => each.trim()) : [said];
    const fits = legends.some((legend) => matchMask(asMask(own), legend).matches || matchMask(asMask(legend), own).matches);
    return fits ? [] : [`${side} legend: this piece reads ${own}, and its type ${type.id} has ${legends.join(' or ')}. Read it again, or look whether it is of another type.`];
  });
} // prettier-ignore

/** Letters somebody restored may be wrong, and say no more than a run of letters; those that expand one never stood there. */
function asMask(legend: string): string {
  return legend.replaceAll(/\[[^\]]*\]/g, '*').replaceAll(/\([^)]*\)/g, '');
}

/** Dies that no row of the chart names, and a pair that it has of other types alone or not at all. */
function diesNotInChart({ dies }: PieceFields, { pairs, id }: TypeSeries, isOfType: (type: string) => boolean): readonly string[] {
  if (dies === undefined || pairs.length === 0) return [];
  const missing = (['obverse', 'reverse'] as const).flatMap((side) => {
    const die = dies[side];
    return die === undefined || pairs.some((pair) => pair[side] === die)
      ? []
      : [`dies: the ${side} die ${die} of this piece is not in dies.csv of ${id}, so the chart leaves the piece out. Add a row, or correct the name.`];
  });
  if (missing.length > 0 || dies.obverse === undefined || dies.reverse === undefined) return missing;
  const both = pairs.filter(({ obverse, reverse }) => obverse === dies.obverse && reverse === dies.reverse);
  const types = both.flatMap((pair) => pair.types);
  if (both.length === 0)
    return [`dies: dies.csv of ${id} has no row of the dies ${dies.obverse} and ${dies.reverse} together, as on this piece. Add one, or look at the dies again.`];
  if (both.some((pair) => pair.types.length === 0) || types.some(isOfType)) return [];
  return [`dies: dies.csv of ${id} gives the dies ${dies.obverse} and ${dies.reverse} to ${[...new Set(types)].join(' and ')}, and this piece is of another type. Look at the dies again, or add a row.`];
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
