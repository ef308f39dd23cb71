import { known } from '../../../catalogue/schema/fields.ts';
import type { Named, PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { onceFor } from '../../once-for.ts';
import { byYears } from '../charts/years.ts';
import { filedUnder } from '../shared/gather.ts';

/** The listed pieces of a ruler, oldest first, each in one of three lists. */
export type PiecesOfRuler = {
  /** In the ruler's name, and struck for him as far as is known. */
  readonly own: readonly PublicPiece[];
  /** In the ruler's name, and struck for somebody else: posthumous or immobilised. */
  readonly forOther: readonly PublicPiece[];
  /** Struck for the ruler, and in somebody else's name. */
  readonly inOther: readonly PublicPiece[];
};

export function piecesOfRuler({ listed }: Cabinet, id: string): PiecesOfRuler {
  const isNamed = (piece: PublicPiece): boolean => rulersNamed(piece).some((ruler) => ruler.id === id);
  const isStruckFor = (piece: PublicPiece): boolean => piece.struckFor.some((ruler) => ruler.id === id);
  const pieces = byRuler(listed).get(id) ?? [];
  return {
    own: pieces.filter((piece) => isNamed(piece) && (piece.struckFor.length === 0 || isStruckFor(piece))),
    forOther: pieces.filter((piece) => isNamed(piece) && piece.struckFor.length > 0 && !isStruckFor(piece)),
    inOther: pieces.filter((piece) => !isNamed(piece) && isStruckFor(piece)),
  };
}

/** The pieces of every ruler whom they name, oldest first, sorted once for all. */
const byRuler = onceFor((listed: readonly PublicPiece[]) =>
  filedUnder(byYears(listed), (piece) => [...rulersNamed(piece), ...piece.struckFor].map(({ id }) => id)),
);

/** In whose names a piece stands; empty where that is unknown or does not apply. */
export function rulersNamed({ rulers }: PublicPiece): readonly Named[] {
  return known(rulers) ?? [];
}
