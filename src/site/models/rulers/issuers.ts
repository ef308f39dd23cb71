import { formatYears } from '../../../core/dating/format-years.ts';
import { isCopy } from '../../../catalogue/types/inherit-facts.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { urls } from '../../urls.ts';
import { gather } from '../shared/gather.ts';
import { rulersNamed } from './pieces-of-ruler.ts';

/** Who was responsible for pieces and is not named on them as their ruler: an archbishop in a king's time, a town, a tradesman. */
export type Issuer = { readonly name: string; readonly href: string; readonly pieces: readonly PublicPiece[] };

/** The issuers of pieces, in the order in which these come. Who issues in his own name is a ruler or has a role, and is listed there. */
export function issuersOf(pieces: readonly PublicPiece[]): readonly Issuer[] {
  return gather(pieces.filter(isIssuedByOther), ({ issuer }) => issuer ?? '').map(({ key, all }) => {
    const [first] = all;
    return {
      name: key,
      href: all.length === 1 && first !== undefined ? urls.piece(first.id) : urls.search(key),
      pieces: all,
    };
  });
}

/** Words for a ruler without a name: `The king`. */
const THE_RULER = /^(?:the )?(?:king|queen|emperor|empress|crown|state)$/iu;

function isIssuedByOther(piece: PublicPiece): boolean {
  const { issuer } = piece;
  if (issuer === null || issuer === 'unknown' || issuer === 'none' || isCopy(piece)) return false;
  return !THE_RULER.test(issuer) && !rulersNamed(piece).some(({ name }) => issuer.includes(name));
}

/** From the first possible year of any to the last of any; empty where none is dated. */
export function yearsOfAll(pieces: readonly PublicPiece[]): string {
  const ends = pieces.flatMap(({ years }) => (years === null ? [] : [years.low, years.high])).filter(Number.isFinite);
  return ends.length === 0 ? '' : formatYears(Math.min(...ends), Math.max(...ends));
}
