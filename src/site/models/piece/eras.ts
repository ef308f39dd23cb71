import { formatYear } from '../../../core/dating/format-year.ts';
import { periodYears } from '../../../core/eras/era-scheme.ts';
import { yearsInWords } from '../../../core/eras/years-in-words.ts';
import type { PublicPiece, Span } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { pieceWords } from '../../words/piece.ts';
import type { ChartTable } from '../chart.ts';
import { lanesOf } from '../time-scale.ts';

/** Where a piece falls under one scheme, in words. */
export type EraRow = { readonly scheme: string; readonly to: string; readonly says: string };

/** One scheme's periods across the drawing, in per cent from the left. */
export type EraBand = {
  readonly scheme: string;
  readonly periods: readonly {
    readonly name: string;
    readonly from: number;
    readonly to: number;
    readonly isTouched: boolean;
    /** The line it stands on, where a scheme's periods lie over one another. */
    readonly lane: number;
  }[];
  readonly lanes: number;
};

/** The years of a piece beside the periods of every scheme. */
export type TimeChart = {
  readonly says: string;
  /** The years of the piece, in per cent from the left. */
  readonly piece: { readonly from: number; readonly to: number };
  readonly bands: readonly EraBand[];
  /** The first and last year drawn. */
  readonly ends: { readonly low: string; readonly high: string };
  readonly table: ChartTable;
};

export function eraRows(piece: PublicPiece, cabinet: Cabinet): readonly EraRow[] {
  return cabinet.lists.eras.map(({ id, fields }) => {
    const { state = 'unknown', periods = [] } = piece.eras[id] ?? {};
    const names = periods.map(({ name, share }) =>
      state === 'straddles' && share !== null ? pieceWords.share(name, Math.round(share * 100)) : name,
    );
    const says = names.length > 0 ? names.join('; ') : pieceWords.eraState[state];
    return { scheme: fields.title, to: urls.era(id), says };
  });
}

// Years drawn on either side of a piece, so that the next boundary is likely to be seen.
const ROOM = 250;

/** Null when the piece has no years that could be drawn. */
export function timeChartOf(piece: PublicPiece, cabinet: Cabinet, rows: readonly EraRow[]): TimeChart | null {
  const { years } = piece;
  const schemes = cabinet.lists.eras;
  if (years === null || schemes.length === 0 || !Number.isFinite(years.high - years.low)) return null;
  const room = Math.max(ROOM, years.high - years.low);
  const shown: Span = { low: years.low - room, high: years.high + room };
  const along = (year: number): number =>
    Math.round(
      (10000 * (Math.min(Math.max(year, shown.low), shown.high + 1) - shown.low)) / (shown.high + 1 - shown.low),
    ) / 100;
  return {
    says: pieceWords.timeSays(yearsInWords(years), schemes.length),
    piece: { from: along(years.low), to: along(years.high + 1) },
    ends: { low: formatYear(shown.low), high: formatYear(shown.high) },
    bands: schemes.map(({ id, fields, scheme }) => {
      const periods = scheme.periods.flatMap((period) => {
        const { low, high } = periodYears(period);
        const [from, to] = [along(low), along(high + 1)];
        const isTouched = piece.eras[id]?.periods.some((one) => one.id === period.id) === true;
        return to > from ? [{ name: period.name, from, to, isTouched }] : [];
      });
      const lanes = lanesOf(
        periods.map(({ from, to }) => ({ x: from, width: to - from })),
        0,
      );
      return {
        scheme: fields.title,
        periods: periods.map((period, at) => ({ ...period, lane: lanes[at] ?? 0 })),
        lanes: Math.max(1, ...lanes.map((lane) => lane + 1)),
      };
    }),
    table: {
      columns: [pieceWords.timeTable.scheme, pieceWords.timeTable.says],
      rows: rows.map(({ scheme, says }) => [scheme, says]),
    },
  };
}
