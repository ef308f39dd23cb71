/** How large, at least and at most, pieces are laid: pixels a millimetre. */
const LEAST = 4;
const MOST = 16;

/**
 * The pixels a millimetre at which pieces so many millimetres wide fill a row of `room` pixels, each with `label` pixels
 * for its words at least and `gap` between them; the least when they do not fit at all, for a row can be moved along.
 */
export function fittingScale(millimetres: readonly number[], room: number, label: number, gap: number): number {
  const takes = (scale: number): number =>
    millimetres.reduce((sum, wide) => sum + Math.max(label, wide * scale), gap * Math.max(0, millimetres.length - 1));
  for (let scale = MOST; scale > LEAST; scale -= 0.25) if (takes(scale) <= room) return scale;
  return LEAST;
}
