/** Millimetres in a typographic point: 1/72 of an inch of 25.4 mm. */
export const MILLIMETRES_PER_POINT = 25.4 / 72;

/** The mean width of a letter of a text face, as a part of its size. Common practice; the print is measured apart. */
const MEAN_LETTER = 0.42;

/** Line to line, as a part of the type size. */
export const LEADING = 1.25;

/** How many letters a line of this width holds, in the mean. */
export function lettersPerLine(width: number, points: number): number {
  return Math.max(1, Math.floor(width / (points * MILLIMETRES_PER_POINT * MEAN_LETTER)));
}
