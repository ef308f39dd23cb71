import { parseReferences } from '../../core/references/parse-reference.ts';
import type { Records } from '../records.ts';
import { citedWorks } from './cited-works.ts';
import { typeRemarks } from './remarks.ts';
import { pieceTypes, typeKey } from './types-of.ts';
import type { Types } from './types-of.ts';

/** What a piece without a type may be, by its references; one candidate is a proposal, several are a question. */
export type TypeProposal = {
  readonly piece: string;
  readonly file: string;
  /** `type` as it would be written; `because`: the reference it follows from. */
  readonly candidates: readonly { readonly type: string; readonly because: string }[];
};

/**
 * Types for the pieces that name none: those whose exact number a reference is. What contradicts a stated fact of the
 * piece, or is only probable, is not proposed.
 */
export function proposeTypes(records: Records, types: Types): readonly TypeProposal[] {
  const works = citedWorks(records.works);
  return records.pieces.flatMap((piece): readonly TypeProposal[] => {
    if (piece.fields.type !== undefined) return [];
    const references = (piece.fields.references ?? []).flatMap((text) => {
      const read = parseReferences(text, { works });
      return read.ok ? read.value : [];
    });
    const sure = piece.fields.sure?.references ?? 'certain';
    const found = references.flatMap((reference) =>
      pieceTypes(types, undefined, 'certain', [reference], sure)
        .filter((one) => one.how === 'reference' && one.sure === 'certain')
        .map((one) => ({
          type: (types.holders.get(one.id) ?? []).length > 1 ? typeKey(one) : one.id,
          because: reference.text,
        })),
    );
    const candidates = [...new Map(found.map((one) => [one.type, one])).values()].filter(({ type }) =>
      typeRemarks({ ...records, pieces: [{ ...piece, fields: { ...piece.fields, type } }] }).every(
        ({ file }) => file !== piece.file,
      ),
    );
    return candidates.length === 0 ? [] : [{ piece: piece.id, file: piece.file, candidates }];
  });
}
