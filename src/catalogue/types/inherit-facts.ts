import { inherit, noSurer } from '../../core/types/inherit.ts';
import type { FiledPiece } from '../records.ts';
import { UNSURE_FIELDS } from '../fields/piece-fields.ts';
import { seriesNamed, typeNamed } from './types-of.ts';
import type { Types } from './types-of.ts';

/** A piece with what its type tells filled in, and the fields that come from there: `mint`, `obverse.design`. */
export type FilledPiece = FiledPiece & { readonly fromType: readonly string[] };

/** Fills in what a piece leaves to its type. How sure it is of the type is how sure it is, at best, of what follows. */
export function inheritFacts(piece: FiledPiece, types: Types): FilledPiece {
  const { type: said } = piece.fields;
  const named = said === undefined ? null : typeNamed(types, said);
  const facts = named?.ok === true ? seriesNamed(types, named.value.series)?.facts.get(named.value.id) : undefined;
  if (facts === undefined) return { ...piece, fromType: [] };
  const { fields, fromType } = inherit(piece.fields, facts);
  const ofType = piece.fields.sure?.type ?? 'certain';
  const doubted = UNSURE_FIELDS.filter((field) => fromType.includes(field) && ofType !== 'certain');
  const sure = Object.fromEntries(doubted.map((field) => [field, noSurer(ofType, fields.sure?.[field] ?? 'certain')]));
  return {
    ...piece,
    fields: doubted.length === 0 ? fields : { ...fields, sure: { ...fields.sure, ...sure } },
    fromType,
  };
}
