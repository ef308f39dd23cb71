/** How long and how heavy the old units are. Exact where the law makes them exact. */

/** Grams in a grain, troy and avoirdupois alike. International yard and pound agreement of 1959. */
export const GRAIN = 0.06479891;

/** Grams in a pennyweight of 24 grains. */
export const PENNYWEIGHT = 24 * GRAIN;

/** Grams in a troy ounce of 480 grains: 31.1034768. */
export const TROY_OUNCE = 480 * GRAIN;

/** Grams in an avoirdupois ounce of 437.5 grains: 28.349523125. */
export const AVOIRDUPOIS_OUNCE = 437.5 * GRAIN;

/** Millimetres in an inch. International yard and pound agreement of 1959. */
export const INCH = 25.4;

/** Millimetres in an English line, the twelfth of an inch. */
export const LINE = INCH / 12;

/** Millimetres in a Paris line: the law of 19 Frimaire VIII (10 December 1799) made the metre 443.296 lines. */
export const PARIS_LINE = 1000 / 443.296;

/** A low and a high end, both included. */
export type Interval = { readonly low: number; readonly high: number };
