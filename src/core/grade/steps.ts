import type { Interval } from '../measures/units.ts';

/** The thirty steps of the numeric scale. Common practice. */
export const NUMERIC_STEPS: readonly number[] = [
  1, 2, 3, 4, 6, 8, 10, 12, 15, 20, 25, 30, 35, 40, 45, 50, 53, 55, 58, 60, 61, 62, 63, 64, 65, 66, 67, 68, 69, 70,
];

export const LOWEST = 1;
export const HIGHEST = 70;

export function isStep(number: number): boolean {
  return NUMERIC_STEPS.includes(number);
}

/** The last step below a number, and the first above it; the ends of the scale stay where they are. */
export function stepBelow(number: number): number {
  return NUMERIC_STEPS.findLast((step) => step < number) ?? LOWEST;
}

export function stepAbove(number: number): number {
  return NUMERIC_STEPS.find((step) => step > number) ?? HIGHEST;
}

/** The upper half of the steps in an interval; of an odd number of steps, the middle one too. */
export function upperHalf({ low, high }: Interval): Interval {
  const steps = stepsIn({ low, high });
  return { low: steps[Math.floor(steps.length / 2)] ?? low, high };
}

/** The lower half of the steps in an interval; of an odd number of steps, the middle one too. */
export function lowerHalf({ low, high }: Interval): Interval {
  const steps = stepsIn({ low, high });
  return { low, high: steps[Math.ceil(steps.length / 2) - 1] ?? high };
}

function stepsIn({ low, high }: Interval): readonly number[] {
  return NUMERIC_STEPS.filter((step) => low <= step && step <= high);
}
