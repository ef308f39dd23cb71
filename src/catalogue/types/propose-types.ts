import { parseReferences } from '../../core/references/parse-reference.ts';
import type { Reference } from '../../core/references/reference.ts';
import { concord } from '../../core/types/concordance.ts';
import { leavesBelow } from '../../core/types/series.ts';
import type { FiledPiece, Records } from '../records.ts';
import { isBlank } from '../schema/fields.ts';
import { citedWorks } from './cited-works.ts';
import { isCopy } from './inherit-facts.ts';
import { canBeOf, contradictions } from './against-type.ts';
import type { TypeFacts } from './type-facts.ts';
import { nearestTypes, seriesNamed, typeKey, typeNamed, typeOfKey, typesCited } from './types-of.ts';
import type { TypeName, Types } from './types-of.ts';

/** What a piece without a type may be; one candidate is a proposal, several are a question. */
export type TypeProposal = {
  readonly piece: string;
  readonly file: string;
  /** `type` as it would be written; `because`: the reference or the facts it follows from. */
  readonly candidates: readonly { readonly type: string; readonly because: string }[];
  /** `reference`: its exact number is cited. `facts`: the only type of its series that its facts leave. `near`: nothing follows. */
  readonly by: 'reference' | 'facts' | 'near';
  /** The only type below the one proposed that nothing the piece says contradicts. */
  readonly nearer: string | null;
};

/**
 * Types for the pieces that name none: those whose exact number a reference is, or of which it is a part; where no reference
 * tells, the one type of a series that ruler, denomination and whatever else is stated leave; and where that tells nothing
 * either, what a cited number is near. What contradicts a stated fact is not proposed, nor written what is only probable.
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
    const told = references.flatMap((reference) =>
      typesCited(types, [reference], sure)
        .filter((one) => one.sure === 'certain')
        .map((one) => ({ ...one, because: reference.text })),
    );
    const cited = nearestTypes(types, told).map((one) => ({ type: written(one, types), because: one.because }));
    const propose = (found: TypeProposal['candidates'], by: TypeProposal['by']): readonly TypeProposal[] => {
      const candidates = [...new Map(found.map((one) => [one.type, one])).values()].filter(({ type }) =>
        fitsType(piece, type, types),
      );
      if (candidates.length === 0 || (by === 'facts' && candidates.length > 1)) return [];
      const [only] = candidates;
      const nearer = candidates.length > 1 || only === undefined ? null : onlyBelow(piece, only.type, types);
      return [{ piece: piece.id, file: piece.file, candidates, by, nearer }];
    };
    if (cited.length > 0) return propose(cited, 'reference');
    const left = propose(leftByFacts(piece, types, byFacts), 'facts');
    return left.length > 0 ? left : propose(nearTypes(types, references), 'near');
  });
}

/** The types a cited number has anything to do with: its relation to them, or the reference itself, is not that of a specimen. */
function nearTypes(types: Types, references: readonly Reference[]): TypeProposal['candidates'] {
  return references
    .filter(({ relation }) => relation !== 'unlisted')
    .flatMap((reference) =>
      concord(reference, types.concordance)
        .filter(({ through }) => through === null)
        .map(({ type }) => ({ type: written(typeOfKey(type), types), because: reference.text })),
    );
}

/** Where the piece's own facts leave one of all the types below another, that one. */
function onlyBelow(piece: FiledPiece, type: string, types: Types): string | null {
  const named = typeNamed(types, type);
  const series = named.ok ? seriesNamed(types, named.value.series) : undefined;
  if (!named.ok || series === undefined) return null;
  const below = leavesBelow(series.types, named.value.id).filter((id) => id !== named.value.id);
  const left = below.filter((id) => canBeOf(piece.fields, { series: series.id, id }, types));
  const [only] = left;
  return left.length !== 1 || below.length === 1 || only === undefined
    ? null
    : written({ series: series.id, id: only }, types);
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
