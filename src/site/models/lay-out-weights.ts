import type { WeightChart, WeightDot, WeightRow } from './weight-rows.ts';

/** Rows of a weight chart in pixels from the top: title, room for the highest stack, the line. */
export type LaidWeights = {
  readonly rows: readonly (Omit<WeightRow, 'dots'> & {
    readonly titleAt: number;
    readonly top: number;
    readonly line: number;
    readonly dots: readonly (WeightDot & { readonly y: number })[];
  })[];
  readonly base: number;
  readonly height: number;
};

const TITLE = 20;
const DOT = 10;
const FOOT = 26;

export function layOutWeights({ rows }: WeightChart): LaidWeights {
  let bottom = 0;
  const laid = rows.map((row) => {
    const top = bottom + TITLE;
    const line = top + row.high * DOT + 6;
    bottom = line + 6;
    return {
      ...row,
      titleAt: top - 5,
      top,
      line,
      dots: row.dots.map((dot) => ({ ...dot, y: line - 6 - dot.stack * DOT })),
    };
  });
  return { rows: laid, base: bottom, height: bottom + FOOT };
}
