import { known } from '../../../catalogue/schema/fields.ts';
import { GONE } from '../../../core/sets/tally.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { gather } from './gather.ts';

/**
 * The piece that stands for its ruler, mint or issuer in a list: of those that are here, photographed and certainly of the name (a
 * doubtful one only where nothing else is), of the kind of which there are most, one without a problem and of the highest grade.
 * Of equals the first.
 */
export function representative(
  pieces: readonly PublicPiece[],
  { photographs }: Pick<Cabinet, 'photographs'>,
  isCertain: (piece: PublicPiece) => boolean,
): PublicPiece | null {
  const seen = pieces.filter(({ id, status }) => photographs[id] !== undefined && !GONE.includes(status));
  const certain = seen.filter(isCertain);
  const [first, ...others] = gather(certain.length > 0 ? certain : seen, kindOf);
  if (first === undefined) return null;
  const usual = others.reduce((most, one) => (one.all.length > most.all.length ? one : most), first).all;
  const [one, ...rest] = usual;
  return one === undefined ? null : rest.reduce((best, piece) => (isBetter(piece, best) ? piece : best), one);
}

/** What a piece was made as. */
function kindOf({ kind, denomination }: PublicPiece): string {
  return `${kind} ${known(denomination)?.id ?? ''}`;
}

function isBetter(piece: PublicPiece, than: PublicPiece): boolean {
  const [mine, theirs] = [piece, than].map(({ problem, treatments }) => problem === null && treatments.length === 0);
  if (mine !== theirs) return mine === true;
  return (piece.grade?.low ?? 0) > (than.grade?.low ?? 0);
}
