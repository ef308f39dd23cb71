import { isCopy } from '../../../catalogue/types/inherit-facts.ts';
import { known } from '../../../catalogue/schema/fields.ts';
import type { Tally } from '../../../core/sets/tally.ts';
import type { Named, PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { onceFor } from '../../once-for.ts';
import { byYears } from '../charts/years.ts';
import { filedUnder } from '../shared/gather.ts';
import { isCertain, tallyOf } from '../shared/tally.ts';

/** The listed pieces of a ruler, oldest first, each in one of four lists. */
export type PiecesOfRuler = {
  /** In the ruler's name, and struck for him as far as is known. */
  readonly own: readonly PublicPiece[];
  /** In the ruler's name, and struck for somebody else: posthumous or immobilised. */
  readonly forOther: readonly PublicPiece[];
  /** Struck for the ruler, and in somebody else's name. */
  readonly inOther: readonly PublicPiece[];
  /** Replicas and counterfeits, whoever's name they bear: no coins of anybody's. */
  readonly copies: readonly PublicPiece[];
};

/** What a ruler has here: `own` with `inOther`, of which the latter are struck in another name; and what is only in the ruler's name. */
export type RulerTally = { readonly of: Tally; readonly inOther: Tally; readonly forOther: Tally };

export function piecesOfRuler({ listed }: Cabinet, id: string): PiecesOfRuler {
  const isNamed = (piece: PublicPiece): boolean => rulersNamed(piece).some((ruler) => ruler.id === id);
  const isStruckFor = (piece: PublicPiece): boolean => piece.struckFor.some((ruler) => ruler.id === id);
  const all = byRuler(listed).get(id) ?? [];
  const pieces = all.filter((piece) => !isCopy(piece));
  return {
    own: pieces.filter((piece) => isNamed(piece) && (piece.struckFor.length === 0 || isStruckFor(piece))),
    forOther: pieces.filter((piece) => isNamed(piece) && piece.struckFor.length > 0 && !isStruckFor(piece)),
    inOther: pieces.filter((piece) => !isNamed(piece) && isStruckFor(piece)),
    copies: all.filter(isCopy),
  };
}

/** Counts the pieces of a ruler by whom they were struck for, which may be several in doubt, and by the name on them where nobody says. */
export function tallyOfRuler({ own, inOther, forOther, copies }: PiecesOfRuler): RulerTally {
  const isOfRuler = (piece: PublicPiece): boolean =>
    isCertain(piece, piece.struckFor.length > 0 ? 'struck-for' : 'ruler');
  return {
    of: tallyOf([...own, ...inOther, ...copies], isOfRuler),
    inOther: tallyOf(inOther, isOfRuler),
    forOther: tallyOf(forOther, (piece) => isCertain(piece, 'ruler', 'struck-for')),
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
