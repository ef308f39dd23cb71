import type { Catalogue, Piece } from '../catalogue.ts';
import type { Blank } from '../schema/fields.ts';
import { isBlank } from '../schema/fields.ts';
import type { LabelledPiece } from './label-text.ts';

/** A piece of the catalogue as a label may tell of it, for the checks; pages have it from `publicPiece`. */
export function labelledPiece({ fields, references }: Piece, lists: Catalogue): LabelledPiece {
  const { ruler, mint, denomination } = fields;
  return {
    title: fields.title,
    number: fields.number,
    kind: fields.kind,
    rulers: named(ruler, (ids) => [ids].flat().map((id) => ({ name: lists.rulers[id]?.fields.name ?? id }))),
    issuer: fields.issuer ?? null,
    mint: named(mint, (id) => ({ name: lists.mints[id]?.fields.name ?? id })),
    makers: fields.makers ?? [],
    denomination: named(denomination, (id) => ({ name: lists.denominations[id]?.fields.name ?? id })),
    date: fields.date,
    dated: fields.dated ?? null,
    metal: fields.metal ?? null,
    weight: fields.weight,
    size: fields.diameter,
    axis: fields.axis,
    sure: fields.sure ?? {},
    references: references.map((reference) => {
      const work = lists.works[reference.work]?.fields;
      return { ...reference, cited: work?.short ?? work?.author ?? work?.title ?? reference.work };
    }),
  };
}

function named<T, N>(value: T | Blank | undefined, of: (held: Exclude<T, Blank>) => N): N | Blank | null {
  if (value === undefined) return null;
  return isBlank(value) ? value : of(value as Exclude<T, Blank>);
}
