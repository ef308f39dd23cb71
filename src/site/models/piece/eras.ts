import { yearsInWords } from '../../../core/eras/years-in-words.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { erasWords } from '../../words/eras.ts';
import { pieceWords } from '../../words/piece.ts';
import type { ChartTable } from '../charts/chart.ts';
import { eraBands } from '../eras/era-bands.ts';
import type { SchemesChart } from '../eras/eras-page.ts';
import { packedBars } from '../charts/packed-bars.ts';
import { ticksOf } from '../charts/time-scale.ts';

/** Where a piece falls under one scheme, in words. */
export type EraRow = { readonly scheme: string; readonly to: string; readonly says: string };

/** The years of a piece below the periods of every scheme. */
export type TimeChart = { readonly says: string; readonly chart: SchemesChart; readonly table: ChartTable };

export function eraRows(piece: PublicPiece, cabinet: Cabinet): readonly EraRow[] {
  return cabinet.lists.eras.map(({ id, fields }) => {
    const { state = 'unknown', periods = [], applies } = piece.eras[id] ?? {};
    const names = periods.map(({ name, share }) =>
      state === 'straddles' && share !== null ? pieceWords.share(name, share) : name,
    );
    const placed = names.length > 0 ? names.join('; ') : pieceWords.eraState[state];
    const says = applies === 'perhaps' ? `${placed}, ${erasWords.perhaps}` : placed;
    return { scheme: fields.title, to: urls.era(id), says };
  });
}

// Years drawn on either side of a piece, so that the next boundary is likely to be seen.
const ROOM = 250;

/** Null when the piece has no years that could be drawn. */
export function timeChartOf(piece: PublicPiece, cabinet: Cabinet, rows: readonly EraRow[]): TimeChart | null {
  const { years } = piece;
  const schemes = cabinet.lists.eras.filter(({ id }) => piece.eras[id]?.state !== 'not applicable');
  if (years === null || schemes.length === 0 || !Number.isFinite(years.high - years.low)) return null;
  const room = Math.max(ROOM, years.high - years.low);
  const scale = { low: years.low - room, high: years.high + room };
  return {
    says: pieceWords.timeSays(yearsInWords(years), schemes.length),
    chart: {
      ticks: ticksOf(scale),
      schemes: schemes.map(({ scheme }) => eraBands(scheme, scale)),
      pieces: packedBars([piece], scale),
    },
    table: {
      columns: [pieceWords.timeTable.scheme, pieceWords.timeTable.says],
      rows: rows.map(({ scheme, says }) => [scheme, says]),
    },
  };
}
