import { yearsInWords } from '../../../core/eras/years-in-words.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { pieceWords } from '../../words/piece.ts';
import type { ChartTable } from '../charts/chart.ts';
import { allBands } from '../eras/era-bands.ts';
import type { SchemesChart } from '../eras/eras-page.ts';
import { packedBars } from '../charts/packed-bars.ts';
import { ticksOf } from '../charts/time-scale.ts';

/** Where a piece falls under one scheme, in words. */
export type EraRow = { readonly scheme: string; readonly to: string; readonly says: string };

/** The years of a piece below the periods of every scheme. */
export type TimeChart = { readonly says: string; readonly chart: SchemesChart; readonly table: ChartTable };

/**
 * Only schemes that are known to apply: a scheme of Britain says nothing of a piece whose mint and find lie elsewhere, nor of one of which
 * neither is known to lie there.
 */
export function eraRows(piece: PublicPiece, cabinet: Cabinet): readonly EraRow[] {
  return schemesOf(piece, cabinet).map(({ id, fields }) => {
    const { state = 'unknown', periods = [] } = piece.eras[id] ?? {};
    const names = periods.map(({ name, share }) =>
      state === 'straddles' && share !== null ? pieceWords.share(name, share) : name,
    );
    const says = names.length > 0 ? names.join('; ') : pieceWords.eraState[state];
    return { scheme: fields.title, to: urls.era(id), says };
  });
}

// Years drawn on either side of a piece, so that the next boundary is likely to be seen.
const ROOM = 250;

function schemesOf({ eras }: PublicPiece, { lists }: Cabinet): Cabinet['lists']['eras'] {
  return lists.eras.filter(({ id, fields }) => {
    const { state, applies } = eras[id] ?? {};
    const isElsewhere = state === 'not applicable' || applies === 'perhaps';
    // Outside every period nothing tells whether a scheme of some places would apply.
    return !isElsewhere && (state !== 'outside' || (fields['applies-to'] ?? []).length === 0);
  });
}

/** Null when the piece has no years that could be drawn. */
export function timeChartOf(piece: PublicPiece, cabinet: Cabinet, rows: readonly EraRow[]): TimeChart | null {
  const { years } = piece;
  const schemes = schemesOf(piece, cabinet);
  if (years === null || schemes.length === 0 || !Number.isFinite(years.high - years.low)) return null;
  const room = Math.max(ROOM, years.high - years.low);
  const scale = { low: years.low - room, high: years.high + room };
  return {
    says: pieceWords.timeSays(yearsInWords(years), schemes.length),
    chart: {
      ticks: ticksOf(scale),
      schemes: allBands(
        schemes.map(({ scheme }) => scheme),
        scale,
      ),
      pieces: packedBars([piece], scale),
    },
    table: {
      columns: [pieceWords.timeTable.scheme, pieceWords.timeTable.says],
      rows: rows.map(({ scheme, says }) => [scheme, says]),
    },
  };
}
