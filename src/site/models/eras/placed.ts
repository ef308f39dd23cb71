import { known } from '../../../catalogue/schema/fields.ts';
import type { EraScheme } from '../../../core/eras/era-scheme.ts';
import type { EraPlacing } from '../../../core/eras/place-in-scheme.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Tally } from '../../../core/sets/tally.ts';
import { erasWords } from '../../words/eras.ts';
import { isCertain, tallyOf } from '../shared/tally.ts';

/** The pieces that a period of a scheme has, for certain or not, in the order given. */
export function piecesIn(pieces: readonly PublicPiece[], { id }: EraScheme, period: string): readonly PublicPiece[] {
  return pieces.filter((piece) => piece.eras[id]?.periods.some((one) => one.id === period));
}

/** Why a piece is not for certain of a period it has; null where it is. What its ruler decides, a doubtful year does not undo. */
export function doubtOf(piece: PublicPiece, scheme: EraScheme, period: string): string | null {
  const placing = piece.eras[scheme.id];
  if (placing === undefined) return null;
  if (placing.by !== 'ruler') {
    const years = doubtOfYears(placing, scheme, period);
    if (years !== null) return years;
  }
  if (placing.applies === 'perhaps') return erasWords.doubt.place;
  if (!isCertain(piece, 'kind')) return erasWords.doubt.kind;
  const isDated = isCertain(piece, 'date') && known(piece.date)?.doubtful !== true;
  return placing.by === 'ruler' || isDated ? null : erasWords.doubt.date;
}

/** Of years that run beyond a period, or that another of other rulers has as well: where periods go by rulers, a piece is of one. */
function doubtOfYears({ periods }: EraPlacing, scheme: EraScheme, period: string): string | null {
  const goesByRulers = (asked: string): boolean =>
    scheme.periods.some(({ id, rulers }) => id === asked && rulers !== undefined);
  const isWhole = periods.some(({ id, share }) => id === period && share === 1);
  const rivals = periods.filter(
    ({ id, share }) => id !== period && (share !== 1 || (goesByRulers(id) && goesByRulers(period))),
  );
  if (isWhole && !rivals.some(({ id }) => goesByRulers(id) && goesByRulers(period))) return null;
  return erasWords.doubt.years(rivals.map(({ name }) => name));
}

/** What pieces come to in a period. */
export function tallyIn(pieces: readonly PublicPiece[], scheme: EraScheme, period: string): Tally {
  return tallyOf(pieces, (piece) => doubtOf(piece, scheme, period) === null);
}
