import { yearsOf } from '../../core/dating/interval.ts';
import { COPIES } from '../../core/sets/tally.ts';
import { inherit, noSurer } from '../../core/types/inherit.ts';
import { leavesBelow } from '../../core/types/series.ts';
import type { FiledPiece } from '../records.ts';
import { UNSURE_FIELDS } from '../fields/piece-fields.ts';
import { isBlank, known } from '../schema/fields.ts';
import type { TypeSeries } from './series.ts';
import type { TypeFacts } from './type-facts.ts';
import { seriesNamed, typeNamed } from './types-of.ts';
import type { Types } from './types-of.ts';

/** A piece with what its type tells filled in, and the fields that come from there: `mint`, `obverse.design`. */
export type FilledPiece = FiledPiece & { readonly fromType: readonly string[] };

/** Whether something only imitates a type: it cites the number of its model, and is no specimen of it. */
export function isCopy({ kind }: { readonly kind: string }): boolean {
  return COPIES.includes(kind);
}

/** What a copy shares with its model: what is to be seen on it. Where, when and of what it was made is its own. */
const OF_THE_MODEL: readonly string[] = ['ruler', 'denomination', 'faces', 'shape', 'obverse', 'reverse', 'edge'];

/**
 * Fills in what a piece leaves to its type. How sure it is of the type is how sure it is, at best, of what follows; and what
 * a narrower type says otherwise is only possible of a piece known no nearer, or left out where no doubt can be told.
 */
export function inheritFacts(piece: FiledPiece, types: Types): FilledPiece {
  const { type: said } = piece.fields;
  const named = said === undefined ? null : typeNamed(types, said);
  const series = named?.ok === true ? seriesNamed(types, named.value.series) : undefined;
  const id = named?.ok === true ? named.value.id : '';
  if (series?.facts.has(id) !== true) return { ...piece, fromType: [] };
  const open = openFacts(series, id);
  const { fields, fromType } = inherit(piece.fields, tellable(factsFor(piece.fields, series, id), open));
  const ofType = piece.fields.sure?.type ?? 'certain';
  const best = (field: string) => (open.has(field) ? 'possible' : ofType);
  const doubted = UNSURE_FIELDS.filter((field) => fromType.includes(field) && best(field) !== 'certain');
  const sure = Object.fromEntries(
    doubted.map((field) => [field, noSurer(best(field), fields.sure?.[field] ?? 'certain')]),
  );
  return {
    ...piece,
    fields: doubted.length === 0 ? fields : { ...fields, sure: { ...fields.sure, ...sure } },
    fromType,
  };
}

/** What a type says of such a piece: of a copy, only what is to be seen on it. */
export function factsFor(piece: { readonly kind: string }, series: TypeSeries, id: string): TypeFacts {
  const facts = series.facts.get(id) ?? {};
  if (!isCopy(piece)) return facts;
  return Object.fromEntries(Object.entries(facts).filter(([field]) => OF_THE_MODEL.includes(field)));
}

/** What of these facts can be told: all, less those left open by narrower types for which a piece has no word of doubt. */
function tellable(facts: TypeFacts, open: ReadonlySet<string>): TypeFacts {
  const canTell = (path: string): boolean => !open.has(path) || (UNSURE_FIELDS as readonly string[]).includes(path);
  return Object.fromEntries(
    Object.entries(facts)
      .filter(([field]) => canTell(field))
      .map(([field, value]) => [field, isSide(value) ? partsOf(value, (part) => canTell(`${field}.${part}`)) : value]),
  );
}

type Parts = Readonly<Record<string, unknown>>;

function isSide(value: unknown): value is Parts {
  return typeof value === 'object' && value !== null && ('design' in value || 'legend' in value || 'reading' in value);
}

function partsOf(side: Parts, keep: (part: string) => boolean): Parts {
  return Object.fromEntries(Object.entries(side).filter(([part]) => keep(part)));
}

const OPEN = new WeakMap<TypeSeries, Map<string, ReadonlySet<string>>>();

/** The facts of a type (`mint`, `obverse.design`) that one of the types below it states otherwise. */
export function openFacts(series: TypeSeries, id: string): ReadonlySet<string> {
  const found = OPEN.get(series) ?? new Map<string, ReadonlySet<string>>();
  OPEN.set(series, found);
  const before = found.get(id);
  if (before !== undefined) return before;
  const own = flat(series.facts.get(id) ?? {});
  const below = leavesBelow(series.types, id).map((leaf) => flat(series.facts.get(leaf) ?? {}));
  const open = new Set(
    [...own].flatMap(([path, value]) => (below.every((leaf) => agrees(path, value, leaf.get(path))) ? [] : [path])),
  );
  found.set(id, open);
  return open;
}

function flat(facts: TypeFacts): ReadonlyMap<string, unknown> {
  return new Map(
    Object.entries(facts).flatMap(([field, value]: [string, unknown]) =>
      isSide(value)
        ? Object.entries(value).map(([part, each]): [string, unknown] => [`${field}.${part}`, each])
        : [[field, value] as [string, unknown]],
    ),
  );
}

/** A narrower date within a wider one does not say otherwise; any other fact is the same or it is not. */
function agrees(path: string, value: unknown, narrower: unknown): boolean {
  if (JSON.stringify(value) === JSON.stringify(narrower)) return true;
  if (path !== 'date') return false;
  const [wide, narrow] = [value, narrower].map((date) => {
    const told = date as TypeFacts['date'];
    return told === undefined || isBlank(told) ? null : known(told);
  });
  if (wide == null || narrow == null) return false;
  const [all, part] = [yearsOf(wide), yearsOf(narrow)];
  return part.low >= all.low && part.high <= all.high;
}
