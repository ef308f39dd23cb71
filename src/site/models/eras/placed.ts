import { known } from '../../../catalogue/schema/fields.ts';
import { yearsOf } from '../../../core/dating/interval.ts';
import { periodYears } from '../../../core/eras/era-scheme.ts';
import type { EraScheme } from '../../../core/eras/era-scheme.ts';
import type { EraPlacing } from '../../../core/eras/place-in-scheme.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Tally } from '../../../core/sets/tally.ts';
import type { Cabinet } from '../../cabinet.ts';
import { erasWords } from '../../words/eras.ts';
import { isCertain, tallyOf } from '../shared/tally.ts';

/** The pieces that a period of a scheme has, for certain or not, in the order given. */
export function piecesIn(pieces: readonly PublicPiece[], { id }: EraScheme, period: string): readonly PublicPiece[] {
  return pieces.filter((piece) => piece.eras[id]?.periods.some((one) => one.id === period));
}

/** The rulers of the lists, with their reigns. */
type Rulers = Cabinet['lists']['rulers'];

/**
 * Why a piece is not for certain of a period it has; null where it is. What its ruler decides, a doubtful year does not undo; nor does
 * it where all of his reign is in the period.
 */
export function doubtOf(piece: PublicPiece, scheme: EraScheme, period: string, rulers: Rulers): string | null {
  const placing = piece.eras[scheme.id];
  if (placing === undefined) return null;
  if (placing.by !== 'ruler') {
    const years = doubtOfYears(placing, scheme, period);
    if (years !== null) return years;
  }
  if (placing.applies === 'perhaps') return erasWords.doubt.place;
  if (!isCertain(piece, 'kind')) return erasWords.doubt.kind;
  const isDated = isCertain(piece, 'date') && known(piece.date)?.doubtful !== true;
  return placing.by === 'ruler' || isDated || hasReignsIn(piece, scheme, period, rulers) ? null : erasWords.doubt.date;
}

/** Whether a piece was certainly struck for rulers whose reigns are known and within the period. */
function hasReignsIn(piece: PublicPiece, scheme: EraScheme, period: string, rulers: Rulers): boolean {
  const { struckFor } = piece;
  const [named, fact] =
    struckFor.length > 0 ? ([struckFor, 'struck-for'] as const) : ([known(piece.rulers) ?? [], 'ruler'] as const);
  const own = scheme.periods.find(({ id }) => id === period);
  if (own === undefined || named.length === 0 || !isCertain(piece, fact)) return false;
  const { low, high } = periodYears(own);
  return named.every(({ id }) => {
    const reigns = rulers[id]?.fields.reigns ?? [];
    return reigns.length > 0 && reigns.every(({ from, to }) => low <= yearsOf(from).low && yearsOf(to).high <= high);
  });
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
export function tallyIn(pieces: readonly PublicPiece[], scheme: EraScheme, period: string, rulers: Rulers): Tally {
  return tallyOf(pieces, (piece) => doubtOf(piece, scheme, period, rulers) === null);
}
