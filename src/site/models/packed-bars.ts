import type { PublicPiece } from '../../publish/public-piece.ts';
import { lanesOf } from './time-scale.ts';
import type { TimeScale } from './time-scale.ts';
import { pieceRow, timeLine } from './timed.ts';
import { byYears } from './years.ts';
import type { DrawnBar } from './timed.ts';

/** The bars of many pieces in as few lanes as they need. */
export type PackedBars = { readonly lanes: number; readonly bars: readonly (DrawnBar & { readonly lane: number })[] };

export function packedBars(pieces: readonly PublicPiece[], scale: TimeScale): PackedBars {
  const rows = byYears(pieces).map((piece) => pieceRow(piece));
  const bars = timeLine(rows, { scale })?.rows.flatMap((row) => row.bars) ?? [];
  const lanes = lanesOf(bars);
  return {
    lanes: Math.max(0, ...lanes.map((lane) => lane + 1)),
    bars: bars.map((bar, at) => ({ ...bar, lane: lanes[at] ?? 0 })),
  };
}
