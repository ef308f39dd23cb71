import { isBlank } from '../../../catalogue/schema/fields.ts';
import { formatWeight } from '../../../core/measures/parse-weight.ts';
import { formatReference } from '../../../core/references/format-reference.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { dateInWords } from '../board.ts';

/** The small note that lies with a piece, in the traditional order: ruler, denomination, mint, date, reference; weight and axis below. */
export type Ticket = { readonly number: string; readonly lines: readonly string[]; readonly foot: string };

export function ticketOf(piece: PublicPiece): Ticket {
  const names = (held: readonly { name: string }[] | string | null): string => (held === null || typeof held === 'string' ? '' : held.map(({ name }) => name).join(' and '));
  const name = (held: { name: string } | string | null): string => (held === null || typeof held === 'string' ? '' : held.name);
  const reference = piece.references[0];
  const { weight, axis } = piece;
  const foot = [
    weight === null || weight === undefined || isBlank(weight) ? '' : formatWeight(weight),
    axis === null || axis === undefined || axis.hours === null ? '' : `${axis.hours}h`,
  ];
  return {
    number: piece.number,
    lines: [
      names(piece.rulers),
      name(piece.denomination),
      [name(piece.mint), piece.issuer ?? ''].filter((part) => part !== '').join(', '),
      dateInWords(piece),
      reference === undefined ? '' : formatReference(reference, reference.cited),
    ].filter((line) => line !== ''),
    foot: foot.filter((part) => part !== '').join(' · '),
  };
}
