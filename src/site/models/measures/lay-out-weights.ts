import { gather } from '../shared/gather.ts';
import { DOT_WIDTH } from './weight-rows.ts';
import type { WeightChart, WeightDot, WeightRow } from './weight-rows.ts';

/** A column of a histogram; hollow for pieces whose weight is not to be compared without a thought. */
export type WeightColumn = {
  readonly x: number;
  readonly y: number;
  readonly height: number;
  readonly isHollow: boolean;
};

/** Rows of a weight chart in pixels from the top: title, room for the highest stack, the line. */
export type LaidWeights = {
  readonly rows: readonly (Omit<WeightRow, 'dots'> & {
    readonly titleAt: number;
    readonly top: number;
    readonly line: number;
    /** A dot for every piece, while they are few enough to be distinguished; else none. */
    readonly dots: readonly (WeightDot & { readonly y: number })[];
    readonly columns: readonly WeightColumn[];
  })[];
  readonly base: number;
  readonly height: number;
};

const TITLE = 20;
const DOT = 10;
const FOOT = 26;
/** A stack of more dots than this is drawn as a column. */
const MOST_DOTS = 14;

/** Stacks of dots; in a row where they would grow too high, and on a long page, columns. */
export function layOutWeights({ rows, isLong }: WeightChart): LaidWeights {
  let bottom = 0;
  const laid = rows.map((row) => {
    const isCrowded = isLong || row.high > MOST_DOTS;
    const room = Math.min(row.high, MOST_DOTS) * DOT;
    const top = bottom + TITLE;
    const line = top + room + 6;
    bottom = line + 6;
    return {
      ...row,
      titleAt: top - 5,
      top,
      line,
      dots: isCrowded ? [] : row.dots.map((dot) => ({ ...dot, y: line - 6 - dot.stack * DOT })),
      columns: isCrowded ? columnsOf(row, line, room / row.high) : [],
    };
  });
  return { rows: laid, base: bottom, height: bottom + FOOT };
}

/** For every place as wide as a dot a solid column, and on it a hollow one. */
function columnsOf({ dots }: WeightRow, line: number, perPiece: number): readonly WeightColumn[] {
  return gather(dots, ({ x }) => Math.round(x / DOT_WIDTH) * DOT_WIDTH).flatMap(({ key: x, all }) => {
    const hollow = all.filter(({ isHollow }) => isHollow).length * perPiece;
    const solid = all.length * perPiece - hollow;
    return [
      { x, y: line - solid, height: solid, isHollow: false },
      { x, y: line - solid - hollow, height: hollow, isHollow: true },
    ].filter(({ height }) => height > 0);
  });
}
