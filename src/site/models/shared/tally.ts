import { tally } from '../../../core/sets/tally.ts';
import type { Tally } from '../../../core/sets/tally.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';

/** Whether nothing said of these facts of a piece is in doubt. */
export function isCertain({ sure }: PublicPiece, ...facts: readonly (keyof PublicPiece['sure'])[]): boolean {
  return facts.every((fact) => (sure[fact] ?? 'certain') === 'certain');
}

/** Counts pieces under a name, whoever counts: `isSure` says which are so for certain. What a piece is must be certain as well. */
export function tallyOf(pieces: readonly PublicPiece[], isSure: (piece: PublicPiece) => boolean): Tally {
  return tally(
    pieces.map((piece) => ({
      kind: piece.kind,
      status: piece.status,
      isSure: isSure(piece) && isCertain(piece, 'kind'),
    })),
  );
}
