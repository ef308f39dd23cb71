import { formatYears } from '../../../core/dating/format-years.ts';
import type { Interval } from '../../../core/eras/era-scheme.ts';
import { yearsInWords } from '../../../core/eras/years-in-words.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';

/** Years for a row: `1279–1307`, `AD 69–79`, `before 1352`. */
export function spanInWords(span: Interval): string {
  return Number.isFinite(span.low) && Number.isFinite(span.high)
    ? formatYears(span.low, span.high)
    : yearsInWords(span);
}

/** Oldest first; what is undated last; then as they came. */
export function byYears(pieces: readonly PublicPiece[]): readonly PublicPiece[] {
  const low = ({ years }: PublicPiece): number => years?.low ?? Infinity;
  const high = ({ years }: PublicPiece): number => years?.high ?? Infinity;
  return pieces.toSorted((a, b) => compare(low(a), low(b)) || compare(high(a), high(b)));
}

function compare(a: number, b: number): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
