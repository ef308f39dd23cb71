import { yearsOf } from '../../core/dating/interval.ts';
import { LONGEST_MASK, matchMask } from '../../core/legends/match-mask.ts';
import { weightSpan } from '../../core/measures/parse-weight.ts';
import { sizeSpan } from '../../core/measures/parse-size.ts';
import { notAsStruck } from '../../core/metal/fine-metal.ts';
import { metalsAgree } from '../../core/metal/metals-agree.ts';
import { parseReferences } from '../../core/references/parse-reference.ts';
import type { CitedWork } from '../../core/references/reference.ts';
import { concord } from '../../core/types/concordance.ts';
import { parseShown } from '../../core/types/key/character.ts';
import { canMeasure, singlesOf } from '../../core/types/key/worn-measure.ts';
import { NOT_APPLICABLE, NOT_KNOWN } from '../../core/types/series.ts';
import type { SeriesType } from '../../core/types/series.ts';
import type { FiledPiece } from '../records.ts';
import { isBlank, known } from '../schema/fields.ts';
import type { PieceFields } from '../schema/piece.ts';
import { factsFor, isCopy, openFacts } from './inherit-facts.ts';
import type { TypeSeries } from './series.ts';
import type { TypeFacts } from './type-facts.ts';
import { areOnOneLine, seriesNamed, typeNamed, typeOfKey } from './types-of.ts';
import type { TypeName, Types } from './types-of.ts';

/** Something that cannot all be right, and is nobody's slip for certain: a piece against its type, a book against a book. */
export type TypeRemark = { readonly file: string; readonly line: number | null; readonly says: string };

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
  return named?.ok !== true ? [] : saidOtherwise(fields, named.value, types).map(({ field, own, theirs }) => ({
    file,
    line: null,
    says: `${field}: this piece says ${own}, its type ${named.value.id} says ${theirs}. Change one, or leave it to the type.`,
  }));
} // prettier-ignore

/** Whether a piece can be of this type: nothing it states without doubt is otherwise there. */
export function canBeOf(fields: PieceFields, type: TypeName, types: Types): boolean {
  const doubted: Readonly<Record<string, string | undefined>> = fields.sure ?? {};
  return saidOtherwise(fields, type, types).every(({ field }) => (doubted[field] ?? 'certain') !== 'certain');
}

type SaidOtherwise = {
  readonly field: (typeof SINGLE)[number] | 'date';
  readonly own: string;
  readonly theirs: string;
};

/** What a piece states and a type states otherwise; what narrower types leave open is not. */
function saidOtherwise(fields: PieceFields, type: TypeName, types: Types): readonly SaidOtherwise[] {
  const series = seriesNamed(types, type.series);
  if (series === undefined) return [];
  const facts = factsFor(fields, series, type.id);
  const open = openFacts(series, type.id);
  const single = SINGLE.flatMap((field) => {
    const [own, theirs] = [words(fields[field]), words(facts[field])];
    return own === null || theirs === null || open.has(field) || isSame(field, own, theirs, fields)
      ? []
      : [{ field, own, theirs }];
  });
  return [...single, ...(open.has('date') ? [] : dateAgainst(fields, facts))];
}

/** Half of a penny is called a halfpenny and is of a type of the penny. */
const CUT = /\bcut\b|halved|quartered/iu;

function isSame(field: (typeof SINGLE)[number], own: string, theirs: string, fields: PieceFields): boolean {
  if (own.toLowerCase() === theirs.toLowerCase()) return true;
  if (field === 'metal') return metalsAgree(own, theirs);
  const isCut = CUT.test([fields.shape, ...(fields.treatments ?? [])].join(' '));
  return isCut && (field === 'denomination' || field === 'shape');
}

function words(value: string | readonly string[] | undefined): string | null {
  return value === undefined || value === 'unknown' ? null : [value].flat().join(', ');
}

function dateAgainst(fields: PieceFields, facts: TypeFacts): readonly SaidOtherwise[] {
  const [own, theirs] = [fields.date, facts.date].map((date) => (isBlank(date) ? null : known(date)));
  if (own == null || theirs == null) return [];
  const [mine, type] = [yearsOf(own), yearsOf(theirs)];
  return mine.low <= type.high && type.low <= mine.high ? [] : [{ field: 'date', own: own.text, theirs: theirs.text }];
}

/**
 * What speaks against the type a piece names without being a fact of both: a number of a book that belongs to another type of
 * the series, a weight or a diameter no such piece can have, letters that are in no legend of the type, and dies its chart lacks.
 */
export function unlikely(
  { file, fields }: Pick<FiledPiece, 'file' | 'fields'>,
  works: readonly CitedWork[],
  types: Types,
): readonly TypeRemark[] {
  const named = fields.type === undefined ? null : typeNamed(types, fields.type);
  const series = named?.ok === true ? seriesNamed(types, named.value.series) : undefined;
  const type = named?.ok === true ? series?.types.get(named.value.id) : undefined;
  if (series === undefined || type === undefined) return [];
  return [
    ...otherNumbers(fields, series, type, works, types),
    ...otherMeasures(fields, series, type),
    ...otherLegends(fields, series, type),
    ...diesNotInChart(fields, series, isOnOneLine(series, type.id)),
  ].map((says) => ({ file, line: null, says }));
}

/** Whether a type is the same as another, above it or below it, and both can be true of one piece. */
function isOnOneLine(series: TypeSeries, type: string): (other: string) => boolean {
  return (other) => areOnOneLine(series, type, other);
}

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
  const struck = notAsStruck({ ...fields, metal: fields.metal });
  // What a copy weighs is its own, and so is what a mount or a skin of another metal was weighed with.
  if (isCopy(fields) || struck.plated || struck.mounted) return [];
  const isWhole = fields.altered === undefined && (fields.treatments ?? []).length === 0 && !struck.lost;
  return (['weight', 'diameter'] as const).flatMap((name) => {
    const character = series.characters.find(({ id, kind }) => id.toLowerCase() === name && kind !== 'states');
    const said = character === undefined ? undefined : type.says.get(name);
    const read = character === undefined || said === undefined ? null : parseShown(said.text, character);
    const own = ownMeasure(fields, name);
    if (character === undefined || read?.ok !== true || read.value.shows !== 'measure' || own === null) return [];
    const { low, high } = singlesOf(read.value, character);
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
