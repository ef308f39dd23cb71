import { dateOf, labelText, weightOf } from '../../../catalogue/exhibits/label-text.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';

export { dateOf, weightOf };

/** What a label says in full: the keeper's own words, or the facts in the order of a ticket. See `labelText`. */
export function labelOf(piece: PublicPiece, own: string | undefined): string {
  return labelText(piece, own).label;
}
