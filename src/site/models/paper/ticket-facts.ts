import { dateOf, weightOf } from '../../../catalogue/exhibits/label-text.ts';
import { formatReference } from '../../../core/references/reference.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { paperWords } from '../../words/paper.ts';

/**
 * The front of a ticket, in the order of the trade: number, ruler, denomination, mint, date; a piece without a ruler goes by its
 * title. Common practice.
 */
export function frontFacts(piece: PublicPiece): readonly string[] {
  const ruler = namesOf(piece.rulers);
  const what = nameOf(piece.denomination) ?? (ruler === null || piece.kind === 'unknown' ? null : piece.kind);
  return facts([piece.number, ruler ?? (what === null ? piece.title : null), what, nameOf(piece.mint), dateOf(piece)]);
}

/** The back: number again, reference, metal and weight, axis. */
export function backFacts(piece: PublicPiece): readonly string[] {
  const { axis, metal } = piece;
  const hours = axis?.hours ?? null;
  return facts([
    piece.number,
    ...piece.references.slice(0, 2).map((reference) => formatReference(reference, reference.cited)),
    facts([metal === 'none' || metal === 'unknown' ? null : metal, weightOf(piece)]).join(', ') || null,
    hours === null ? null : paperWords.axis(hours),
  ]);
}

function facts(all: readonly (string | null)[]): readonly string[] {
  return all.filter((fact) => fact !== null);
}

function namesOf(named: PublicPiece['rulers']): string | null {
  return named === null || typeof named === 'string' ? null : named.map(({ name }) => name).join(', ');
}

function nameOf(named: { readonly name: string } | string | null): string | null {
  return named === null || typeof named === 'string' ? null : named.name;
}
