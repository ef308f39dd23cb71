/**
 * Whether the middle piece of a collection may weigh this many grams: from a farthing of Edward III (0.3 g) to a crown or dollar (31 g),
 * and what lies between a little either way. Judged from the standards in the demo's list; a guess is shown, never taken.
 */
export function couldWeigh(grams: number): boolean {
  return grams >= 0.3 && grams <= 45;
}

/** Whether the middle piece may be this many millimetres across, or thick: coins lie between 8 and 50, medals go to 80; common practice. */
export function couldMeasure(field: string, millimetres: number): boolean {
  return field === 'thickness' ? millimetres >= 0.3 && millimetres <= 8 : millimetres >= 8 && millimetres <= 80;
}

/**
 * Whether grams over square millimetres make the thickness of a coin. A round of silver (10.49 g/cm³) 0.3 mm thick has 0.0025 g/mm², one of
 * 4 mm 0.033; aluminium (2.7) and gold (19.3) widen this. Densities: CRC Handbook.
 */
export function isThickAsACoin(gramsPerSquare: number): boolean {
  return gramsPerSquare >= 0.0015 && gramsPerSquare <= 0.06;
}

/** The middle one in order; null for none. */
export function middleOf(figures: readonly number[]): number | null {
  return figures.toSorted((a, b) => a - b)[Math.floor(figures.length / 2)] ?? null;
}
