import { known } from '../../../catalogue/schema/fields.ts';
import { formatDate } from '../../../core/dating/format-date.ts';
import { formatWeight } from '../../../core/measures/parse-weight.ts';
import { formatReference } from '../../../core/references/format-reference.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { capital } from '../../words/capital.ts';
import { exhibitWords } from '../../words/exhibits.ts';

/**
 * What a label says: the keeper's own words, or the facts in the order of a ticket: what it is, when, of what and how heavy,
 * which book. A modern copy is always called one.
 */
export function labelOf(piece: PublicPiece, own: string | undefined): string {
  const says = own ?? derived(piece);
  const isCalledCopy = /\b(cop(y|ies)|replica|reproduction|facsimile)\b/i.test(says);
  return piece.kind === 'replica' && !isCalledCopy ? `${exhibitWords.copy} ${says}` : says;
}

function derived(piece: PublicPiece): string {
  const stuff = [piece.metal === null ? null : capital(piece.metal), weightOf(piece)].filter((part) => part !== null);
  const [reference] = piece.references;
  return [
    piece.title,
    dateOf(piece),
    stuff.length === 0 ? null : stuff.join(', '),
    reference === undefined ? null : formatReference(reference, reference.cited),
  ]
    .filter((fact) => fact !== null)
    .map((fact) => (/[.!?]$/.test(fact) ? fact : `${fact}.`))
    .join(' ');
}

/** The date in words; null where none is recorded. */
export function dateOf(piece: PublicPiece): string | null {
  const date = known(piece.date);
  return date === null ? null : formatDate(date);
}

export function weightOf(piece: PublicPiece): string | null {
  const weight = known(piece.weight);
  return weight === null ? null : formatWeight(weight);
}
