import { weightSpan } from './parse-weight.ts';
import type { Weight } from './parse-weight.ts';
import { GRAIN } from './units.ts';

/** The two ways a cabinet may print weights; the other follows in brackets. */
export type Units = 'metric' | 'grains';

/** `1.38 g (21.3 gr)`, or grains first; never more figures than were weighed. */
export function showWeight(weight: Weight, units: Units): string {
  const { low, high } = weightSpan(weight);
  const off = weight.range || weight.plusMinus === null ? null : weight.plusMinus;
  const places = decimalsOfGrams(weight);
  const write = (perUnit: number, sign: string, decimals: number) => {
    const number = (grams: number) => (grams / perUnit).toFixed(decimals);
    if (weight.range) return `${number(low)}–${number(high)} ${sign}`;
    return off === null ? `${number(weight.grams)} ${sign}` : `${number(weight.grams)} ± ${number(off)} ${sign}`;
  };
  const grams = write(1, 'g', places);
  // A grain is about a fifteenth of a gram: one figure fewer says as much.
  const grains = write(GRAIN, 'gr', Math.max(0, places - 1));
  return units === 'metric' ? `${grams} (${grains})` : `${grains} (${grams})`;
}

/** Figures after the point that the weighing bears out, once in grams. Two for a vulgar fraction or a large unit. */
function decimalsOfGrams({ unit, decimals }: Weight): number {
  if (decimals === null) return 2;
  if (unit === 'g') return decimals;
  if (unit === 'gr') return decimals + 1;
  return unit === 'mg' ? 3 : 2;
}
