import { writeAmount } from '../../../core/measures/amount.ts';
import type { Interval } from '../../../core/measures/units.ts';

export type NumberTick = { readonly at: number; readonly says: string };
/** A stretch of numbers with round ends and round steps between them. */
export type NumberScale = Interval & { readonly ticks: readonly NumberTick[] };

/** The round scale that holds every value; null for none. `from` is a number that must be on it, such as 0. */
export function numberScale(values: readonly number[], from?: number): NumberScale | null {
  const all = (from === undefined ? values : [...values, from]).filter(Number.isFinite);
  if (values.length === 0 || all.length === 0) return null;
  const [least, most] = [Math.min(...all), Math.max(...all)];
  // Numbers that differ by less than a millionth of themselves are one number: a step so small has no room in a double.
  const span = most - least;
  const step = stepFor(span > 1e-6 * Math.abs(most) ? span : Math.abs(most) || 1);
  const [first, last] = [Math.floor(least / step + 1e-9), Math.ceil(most / step - 1e-9)];
  const count = Math.max(1, last - first);
  const ticks = Array.from({ length: count + 1 }, (_, at) => {
    const value = (first + at) * step;
    return { at: value, says: writeAmount(value, 4) };
  });
  return { low: first * step, high: (first + count) * step, ticks };
}

/** A round step, 1, 2 or 5 and noughts, that is taken at most five times. */
function stepFor(length: number): number {
  const power = 10 ** Math.floor(Math.log10(length / 5));
  return [1, 2, 5, 10].map((each) => each * power).find((step) => length / step <= 5 + 1e-9) ?? 10 * power;
}

/** The width of a stretch of a scale, from 0 to 100; what is exact is drawn as wide as can be seen. */
export function widthAlong(scale: Interval, { low, high }: Interval): number {
  const width = shareAlong(scale, high) - shareAlong(scale, low);
  return Math.max(LEAST_WIDTH, Math.round(100 * width) / 100);
}

/** A rectangle of no width is not drawn at all. */
const LEAST_WIDTH = 0.3;

/** How far along a scale a value lies, from 0 to 100, to two figures after the point. */
export function shareAlong({ low, high }: Interval, value: number): number {
  return Math.round((10_000 * (value - low)) / (high - low)) / 100;
}
