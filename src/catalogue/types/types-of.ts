import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';
import type { Reference } from '../../core/references/reference.ts';
import { concord, concordanceOf, equalsOf, numberKey, seriesOf } from '../../core/types/concordance.ts';
import type { Concordance, TypeRelation } from '../../core/types/concordance.ts';
import { noSurer } from '../../core/types/inherit.ts';
import { leavesBelow, lineOf } from '../../core/types/series.ts';
import { nearestName } from '../nearest.ts';
import type { Records } from '../records.ts';
import { reignsOf } from '../for-core/reigns.ts';
import { isBlank } from '../schema/fields.ts';
import type { Certainty } from '../schema/fields.ts';
import { citedWorks } from './cited-works.ts';
import type { ConcordanceLine } from './read-lines.ts';
import { readSeries } from './series.ts';
import type { TypeSeries } from './series.ts';
import type { SeriesSlip } from './read-tables.ts';

/** Every series of a cabinet, with all their concordances as one. */
export type Types = {
  readonly series: readonly TypeSeries[];
  readonly concordance: Concordance;
  /** The series that have a type of this id, by the id. */
  readonly holders: ReadonlyMap<string, readonly string[]>;
};

/** A type by its series and its own id. */
export type TypeName = { readonly series: string; readonly id: string };

/** How it is known that a piece is of a type: its file says so, its reference does, or it follows from another type. */
export type PieceType = TypeName & { readonly how: 'said' | 'reference' | 'equal'; readonly sure: Certainty };

export type ReadTypes = {
  readonly types: Types;
  readonly slips: readonly (SeriesSlip & { readonly series: TypeSeries })[];
};

/** The series of a cabinet as they can be asked, and what could not be read in them. */
export function readTypes(records: Pick<Records, 'series' | 'works' | 'rulers'>): ReadTypes {
  const before = READ.get(records.series);
  if (before !== undefined) return before;
  const read = readAll(records);
  READ.set(records.series, read);
  return read;
}

// Several rules ask for the types of one cabinet; they are read once.
const READ = new WeakMap<Records['series'], ReadTypes>();

function readAll(records: Pick<Records, 'series' | 'works' | 'rulers'>): ReadTypes {
  const works = citedWorks(records.works);
  const reigns = records.rulers.flatMap(reignsOf);
  const read = records.series.map((series) => readSeries(series, works, reigns));
  const holders = new Map<string, readonly string[]>();
  for (const { series } of read)
    for (const id of series.types.keys()) holders.set(id, [...(holders.get(id) ?? []), series.id]);
  return {
    types: {
      series: read.map(({ series }) => series),
      concordance: concordanceOf(read.flatMap(({ series }) => series.numbers)),
      holders,
    },
    slips: read.flatMap(({ series, slips }) => slips.map((slip) => ({ ...slip, series }))),
  };
}

export function seriesNamed(types: Types, id: string): TypeSeries | undefined {
  return types.series.find((series) => series.id === id);
}

/** One name for a type in the whole cabinet: `series/id`. */
export function typeKey({ series, id }: TypeName): string {
  return `${series}/${id}`;
}

export function typeOfKey(key: string): TypeName {
  const at = key.indexOf('/');
  return { series: key.slice(0, at), id: key.slice(at + 1) };
}

/** The type a keeper means: by its id, or `series/id` where two series have it. */
export function typeNamed(types: Types, written: string): Outcome<TypeName> {
  const name = written.trim().toLowerCase();
  if (name.includes('/')) {
    const { series, id } = typeOfKey(name);
    const found = seriesNamed(types, series);
    if (found?.types.has(id) === true) return good({ series, id });
    if (found === undefined)
      return refuse(
        `There is no series ${series}. ${near(
          series,
          types.series.map((one) => one.id),
          'Write one of the folders in types/',
        )}`,
      );
    return refuse(
      `The series ${series} has no type ${id}. ${near(id, [...found.types.keys()], 'Write an id of its types.csv')}`,
    );
  }
  const holders = types.holders.get(name) ?? [];
  const [series, second] = holders;
  if (series === undefined) {
    const labelled = labelledSo(types, name);
    const write =
      labelled.length === 0
        ? near(name, [...types.holders.keys()], 'Write an id of a types.csv')
        : `Write ${labelled.join(' or ')}.`;
    return refuse(`There is no type "${written}" in types/. ${write}`);
  }
  if (second !== undefined)
    return refuse(`${name} is in ${holders.join(' and in ')}. Write ${series}/${name} or ${second}/${name}.`);
  return good({ series, id: name });
}

/** The types that bear this text as their label, as they would be written. */
function labelledSo({ series, holders }: Types, label: string): readonly string[] {
  return series.flatMap((one) =>
    [...one.types.values()]
      .filter((type) => type.label.toLowerCase() === label)
      .map(({ id }) => ((holders.get(id) ?? []).length > 1 ? `${one.id}/${id}` : id)),
  );
}

function near(found: string, known: readonly string[], otherwise: string): string {
  const nearest = nearestName(found, known);
  return nearest === null ? `${otherwise}.` : `Write ${nearest}.`;
}

/**
 * What a piece is a specimen of: the type its file names, or else those its references are the numbers of; and the types
 * of other series that are their equals. A number that several types claim says nothing; `unknown` and `none` say that there is none.
 */
export function pieceTypes(
  types: Types,
  said: string | undefined,
  sure: Certainty,
  references: readonly Reference[],
  sureOfReferences: Certainty,
): readonly PieceType[] {
  const first: PieceType[] = [];
  if (isBlank(said)) return first;
  const named = said === undefined ? null : typeNamed(types, said);
  if (named?.ok === true) first.push({ ...named.value, how: 'said', sure });
  else if (said === undefined) first.push(...byReference(types, references, sureOfReferences));
  const equals = first.flatMap((one) =>
    equalsOf(typeKey(one), types.concordance).map((equal): PieceType => ({
      ...typeOfKey(equal.type),
      how: 'equal',
      sure: noSurer(one.sure, equal.sure),
    })),
  );
  const seen = new Set<string>();
  return [...first, ...equals].filter((one) => !seen.has(typeKey(one)) && seen.add(typeKey(one)));
}

/** The types whose numbers are cited, each as near as it is known; of those of which a piece can be only one, each is only possible. */
function byReference(types: Types, references: readonly Reference[], sure: Certainty): readonly PieceType[] {
  const cited = nearestTypes(types, typesCited(types, references, sure));
  const clashing = new Set(exclusiveTypes(types, cited));
  return cited.map((one) => (clashing.has(one) ? { ...one, sure: 'possible' } : one));
}

/** Without a type that another, as sure or surer, is under: to be of the one is to be of the other. */
export function nearestTypes<T extends PieceType>(types: Types, cited: readonly T[]): readonly T[] {
  const isUnder = (one: T, other: T): boolean =>
    one !== other && one.series === other.series && one.id !== other.id && noSurer(one.sure, other.sure) === other.sure &&
    lineOf(seriesNamed(types, one.series)?.types ?? new Map(), one.id).some(({ id }) => id === other.id);
  return cited.filter((other) => !cited.some((one) => isUnder(one, other)));
} // prettier-ignore

/**
 * Each by itself: the types whose numbers are cited, or of which what is cited is a part. One of several numbers that a type
 * claims is only possibly its.
 */
export function typesCited(types: Types, references: readonly Reference[], sure: Certainty): readonly PieceType[] {
  return references
    .filter(({ relation }) => relation === 'is' || relation === 'this coin')
    .flatMap((reference) => {
      const found = concord(reference, types.concordance).filter(
        ({ relation, through }) => through === null && (relation === 'equal' || relation === 'narrower'),
      );
      const claims = (type: string): number => found.filter((one) => seriesOf(one.type) === seriesOf(type)).length;
      return found
        .filter(({ type, disputed }) => !disputed || claims(type) === 1)
        .map(({ type, sure: each, disputed }): PieceType => ({
          ...typeOfKey(type),
          how: 'reference',
          sure: noSurer(noSurer(sure, each), reference.doubtful === true || disputed ? 'possible' : 'certain'),
        }));
    });
} // prettier-ignore

/** Of the types found for one piece, those as sure as another of their series that excludes them. */
export function exclusiveTypes(types: Types, found: readonly PieceType[]): readonly PieceType[] {
  return found.filter((one) => {
    const series = seriesNamed(types, one.series);
    return found.some(
      (other) =>
        other.series === one.series &&
        other.sure === one.sure &&
        series !== undefined &&
        !areOnOneLine(series, one.id, other.id),
    );
  });
}

/** Whether both types can be true of one piece: they are the same, or one is under the other. */
export function areOnOneLine({ types }: TypeSeries, one: string, other: string): boolean {
  const isUnder = (id: string, above: string): boolean => lineOf(types, id).some((each) => each.id === above);
  return isUnder(one, other) || isUnder(other, one);
}

/** A number that follows from a type: `mayBe` where the type is not known so near, `disputed` where another claim stands against it. */
export type TypeNumber = Reference & { readonly mayBe?: true; readonly disputed?: true };

const NO_NAMES = { is: [], maybe: [], numbers: [] };

/**
 * For sets: what a piece is for certain of a type's name, what it may be besides (`canBe`: as far as its own facts go), each by
 * id and by `series/id`; and their numbers.
 */
export function typeNames(
  types: Types,
  of: readonly PieceType[],
  canBe: (type: TypeName) => boolean = () => true,
): { readonly is: readonly string[]; readonly maybe: readonly string[]; readonly numbers: readonly TypeNumber[] } {
  if (of.length === 0) return NO_NAMES;
  const both = (series: string, ids: readonly string[]): readonly string[] =>
    ids.flatMap((id) => [id, `${series}/${id}`]);
  const all = of.map((type) => {
    const series = seriesNamed(types, type.series);
    const line = lineOf(series?.types ?? new Map(), type.id).map((one) => one.id);
    return { type, line, below: below(series, type.id, canBe) };
  });
  return {
    is: all.flatMap(({ type, line }) => both(type.series, line)),
    maybe: all.flatMap(({ type, below: ids }) => both(type.series, ids)),
    numbers: all.flatMap(({ type, line, below: ids }) => [
      ...line.flatMap((id) => numbersThrough(types, type, id, ['equal', 'broader'])),
      ...line.flatMap((id) => numbersThrough(types, type, id, ['narrower']).map(atMostPossible)),
      ...ids.flatMap((id) => numbersThrough(types, type, id, ['equal', 'broader', 'narrower']).map(atMostPossible)),
    ]),
  };
}

/** What is a part of a type, or of one below it, need not be what the piece is. */
function atMostPossible(number: TypeNumber): TypeNumber {
  return { ...number, doubtful: true, mayBe: true };
}

/** The numbers that stand so to a type which the piece is or may be, no surer than the piece is of its own. */
function numbersThrough(
  types: Types,
  of: PieceType,
  id: string,
  relations: readonly TypeRelation[],
): readonly TypeNumber[] {
  return (types.concordance.byType.get(`${of.series}/${id}`) ?? [])
    .filter(({ relation }) => relations.includes(relation))
    .map((row): TypeNumber => {
      const isDisputed = types.concordance.disputed.has(numberKey(row));
      return {
        ...(row as ConcordanceLine).reference,
        ...(isDisputed || noSurer(of.sure, row.sure) !== 'certain' ? { doubtful: true } : {}),
        ...(isDisputed ? { disputed: true } : {}),
      };
    });
}

/** What lies under a type and leads to a leaf that the piece can be. */
function below(series: TypeSeries | undefined, id: string, canBe: (type: TypeName) => boolean): readonly string[] {
  if (series === undefined) return [];
  const above = new Set(lineOf(series.types, id).map((type) => type.id));
  const leaves = leavesBelow(series.types, id).filter((leaf) => leaf !== id && canBe({ series: series.id, id: leaf }));
  const found = new Set(leaves.flatMap((leaf) => lineOf(series.types, leaf).map((type) => type.id)));
  return [...found].filter((each) => !above.has(each));
}

/** The numbers of a type in every book, as its series gives them, in the order of the concordance. */
export function numbersOf(types: Types, { series, id }: TypeName): readonly ConcordanceLine[] {
  return seriesNamed(types, series)?.numbers.filter((line) => line.type === `${series}/${id}`) ?? [];
}

/** Of a piece, the numbers it is known by elsewhere: those of its types that are their equals, without those it cites. */
export function numbersElsewhere(
  types: Types,
  of: readonly PieceType[],
  cited: readonly Reference[],
): readonly TypeNumber[] {
  const has = new Set(cited.map(numberKey));
  return of.flatMap((type) =>
    numbersThrough(types, type, type.id, ['equal']).filter((number) => !has.has(numberKey(number))),
  );
}
