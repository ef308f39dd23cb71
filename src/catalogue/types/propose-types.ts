import { parseReferences } from '../../core/references/parse-reference.ts';
import type { FiledPiece, Records } from '../records.ts';
import { isBlank } from '../schema/fields.ts';
import { citedWorks } from './cited-works.ts';
import { isCopy } from './inherit-facts.ts';
import { contradictions } from './remarks.ts';
import type { TypeFacts } from './type-facts.ts';
import { pieceTypes, typeKey } from './types-of.ts';
import type { TypeName, Types } from './types-of.ts';

/** What a piece without a type may be; one candidate is a proposal, several are a question. */
export type TypeProposal = {
  readonly piece: string;
  readonly file: string;
  /** `type` as it would be written; `because`: the reference or the facts it follows from. */
  readonly candidates: readonly { readonly type: string; readonly because: string }[];
  /** `reference`: its exact number is cited. `facts`: the only type of its series that its facts leave. */
  readonly by: 'reference' | 'facts';
};

/**
 * Types for the pieces that name none: those whose exact number a reference is; and, where no reference tells, the one type
 * of a series that ruler, denomination and whatever else is stated leave. What contradicts a stated fact, or is only
 * probable, is not proposed.
 */
export function proposeTypes(records: Pick<Records, 'pieces' | 'works'>, types: Types): readonly TypeProposal[] {
  const works = citedWorks(records.works);
  const byFacts = factsIndex(types);
  return records.pieces.flatMap((piece): readonly TypeProposal[] => {
    if (piece.fields.type !== undefined || isCopy(piece.fields)) return [];
    const references = (piece.fields.references ?? []).flatMap((text) => {
      const read = parseReferences(text, { works });
      return read.ok ? read.value : [];
    });
    const sure = piece.fields.sure?.references ?? 'certain';
    const cited = references.flatMap((reference) =>
      pieceTypes(types, undefined, 'certain', [reference], sure)
        .filter((one) => one.how === 'reference' && one.sure === 'certain')
        .map((one) => ({ type: written(one, types), because: reference.text })),
    );
    const by = cited.length > 0 ? 'reference' : 'facts';
    const found = by === 'reference' ? cited : leftByFacts(piece, types, byFacts);
    const candidates = [...new Map(found.map((one) => [one.type, one])).values()].filter(({ type }) =>
      fitsType(piece, type, types),
    );
    const isToldByFacts = by === 'reference' || candidates.length === 1;
    return candidates.length === 0 || !isToldByFacts ? [] : [{ piece: piece.id, file: piece.file, candidates, by }];
  });
}

function written(name: TypeName, types: Types): string {
  return (types.holders.get(name.id) ?? []).length > 1 ? typeKey(name) : name.id;
}

function fitsType(piece: FiledPiece, type: string, types: Types): boolean {
  return contradictions({ file: piece.file, fields: { ...piece.fields, type } }, types).length === 0;
}

/** The types of every series that have none under them, by ruler and denomination; a series of one type tells nothing. */
function factsIndex(types: Types): ReadonlyMap<string, readonly TypeName[]> {
  const index = new Map<string, TypeName[]>();
  for (const series of types.series) {
    for (const { id, narrower } of series.types.values()) {
      const key = narrower.length === 0 && series.shown.size > 1 ? factsKey(series.facts.get(id) ?? {}) : null;
      if (key === null) continue;
      const known = index.get(key);
      if (known === undefined) index.set(key, [{ series: series.id, id }]);
      else known.push({ series: series.id, id });
    }
  }
  return index;
}

function factsKey({ ruler, denomination, kind }: TypeFacts): string | null {
  if (ruler === undefined || isBlank(ruler) || denomination === undefined || isBlank(denomination)) return null;
  // What an import could not name may well be a coin; a yes is wanted in any case.
  return `${ruler.join(' ')} ${denomination} ${kind === undefined || kind === 'unknown' ? 'coin' : kind}`;
}

/** All types that share a piece's ruler and denomination; which of them contradict it is seen afterwards. */
function leftByFacts(
  { fields }: FiledPiece,
  types: Types,
  index: ReadonlyMap<string, readonly TypeName[]>,
): TypeProposal['candidates'] {
  const doubted = fields.sure?.ruler !== undefined || fields.sure?.denomination !== undefined;
  const key = doubted ? null : factsKey(fields);
  const told = (['mint', 'issuer', 'date'] as const).filter((field) => fields[field] !== undefined);
  const because = ['ruler', 'denomination', ...told].join(', ');
  return (key === null ? [] : (index.get(key) ?? [])).map((one) => ({ type: written(one, types), because }));
}
