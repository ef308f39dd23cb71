import { gather } from '../shared/gather.ts';
import { DOT_WIDTH } from './weight-rows.ts';
import type { ChartPage, WeightChart, WeightDot, WeightRow } from './weight-rows.ts';

/** A column of a histogram; hollow for pieces whose weight is not to be compared without a thought. */
export type WeightColumn = {
  readonly x: number;
  readonly y: number;
  readonly height: number;
  readonly isHollow: boolean;
};

/** A row of a weight chart in pixels from its top: room for the highest stack, then its line. */
export type LaidRow = Omit<WeightRow, 'dots'> & {
  readonly line: number;
  /** A dot for every piece, while they are few enough to be distinguished; else none. */
  readonly dots: readonly (WeightDot & { readonly y: number })[];
  readonly columns: readonly WeightColumn[];
};

/** From one dot to the next above it, as far as two fingertips ask. */
const DOT = 24;
/** A stack of more dots than this is drawn as a column, and so many pixels high. */
const MOST_DOTS = 10;
const MOST_HIGH = 140;

/** Stacks of dots; in a row where they would grow too high, and on a long page, columns. */
export function layOutWeights({ rows, isLong }: WeightChart, page: ChartPage): readonly LaidRow[] {
  return rows.map((row) => {
    const high = row.high[page];
    const isCrowded = isLong || high > MOST_DOTS;
    const room = isCrowded ? MOST_HIGH : high * DOT;
    return {
      ...row,
      line: room,
      dots: isCrowded ? [] : row.dots.map((dot) => ({ ...dot, y: room - DOT / 2 - dot.stack[page] * DOT })),
      columns: isCrowded ? columnsOf(row, room, room / Math.max(MOST_DOTS, high), page) : [],
    };
  });
}

/** For every place as wide as a dot a solid column, and on it a hollow one. */
function columnsOf({ dots }: WeightRow, line: number, perPiece: number, page: ChartPage): readonly WeightColumn[] {
  const place = DOT_WIDTH[page];
  return gather(dots, ({ x }) => Math.round(x / place) * place).flatMap(({ key: x, all }) => {
    const hollow = all.filter(({ isHollow }) => isHollow).length * perPiece;
    const solid = all.length * perPiece - hollow;
    return [
      { x, y: line - solid, height: solid, isHollow: false },
      { x, y: line - solid - hollow, height: hollow, isHollow: true },
    ].filter(({ height }) => height > 0);
  });
}
