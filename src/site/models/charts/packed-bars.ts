import type { PublicPiece } from '../../../publish/public-piece.ts';
import { barOf, lanesOf } from './time-scale.ts';
import type { TimeBar, TimeScale } from './time-scale.ts';
import { pieceRow, timeLine } from './timed.ts';
import type { DrawnBar } from './timed.ts';
import { byYears } from './years.ts';

/** The bars of many pieces in as few lanes as they need. */
export type PackedBars = {
  readonly drawn: 'bars';
  readonly lanes: number;
  readonly bars: readonly (DrawnBar & { readonly lane: number })[];
};

/** How many pieces may belong to each stretch of years: for more pieces than can be drawn one by one. */
export type PieceDensity = {
  readonly drawn: 'density';
  /** `share`: of the fullest column, from 0 to 1. */
  readonly columns: readonly { readonly x: number; readonly width: number; readonly share: number }[];
};

const MOST_BARS = 400;
const COLUMNS = 120;

/** Every piece as a bar; past four hundred, columns as high as there are pieces that may be of those years. */
export function packedBars(pieces: readonly PublicPiece[], scale: TimeScale): PackedBars | PieceDensity {
  if (pieces.length > MOST_BARS) return densityOf(pieces, scale);
  const rows = byYears(pieces).map((piece) => pieceRow(piece));
  const bars = timeLine(rows, { scale })?.rows.flatMap((row) => row.bars) ?? [];
  const lanes = lanesOf(bars);
  return {
    drawn: 'bars',
    lanes: Math.max(0, ...lanes.map((lane) => lane + 1)),
    bars: bars.map((bar, at) => ({ ...bar, lane: lanes[at] ?? 0 })),
  };
}

function densityOf(pieces: readonly PublicPiece[], scale: TimeScale): PieceDensity {
  const bars = pieces.flatMap(({ years }): readonly TimeBar[] => {
    const bar = years === null ? null : barOf(scale, years);
    return bar === null ? [] : [bar];
  });
  const width = 100 / COLUMNS;
  const counts = Array.from({ length: COLUMNS }, (_, at) => {
    const [from, to] = [at * width, (at + 1) * width];
    return bars.filter((bar) => bar.x < to && bar.x + bar.width > from).length;
  });
  const most = Math.max(1, ...counts);
  return {
    drawn: 'density',
    columns: counts.map((count, at) => ({ x: at * width, width, share: count / most })),
  };
}
