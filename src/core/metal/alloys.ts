import type { Interval } from '../measures/units.ts';

/** Grams in a cubic centimetre at 20 °C. CRC Handbook of Chemistry and Physics. */
const DENSITY = { gold: 19.32, silver: 10.49, copper: 8.96 } as const;

/** Two metals melted together; `precious` is the one whose share is the fineness. */
export type Alloy = {
  readonly id: 'gold-copper' | 'gold-silver' | 'silver-copper';
  readonly title: string;
  readonly precious: number;
  readonly base: number;
  readonly names: readonly string[];
};

export const ALLOYS: readonly Alloy[] = [
  {
    id: 'silver-copper',
    title: 'silver and copper',
    precious: DENSITY.silver,
    base: DENSITY.copper,
    names: ['silver copper', 'silver', 'ag cu', 'agcu', 'ar', 'ag', 'billon'],
  },
  {
    id: 'gold-copper',
    title: 'gold and copper',
    precious: DENSITY.gold,
    base: DENSITY.copper,
    names: ['gold copper', 'gold', 'au cu', 'aucu', 'av', 'au'],
  },
  {
    id: 'gold-silver',
    title: 'gold and silver',
    precious: DENSITY.gold,
    base: DENSITY.silver,
    names: ['gold silver', 'electrum', 'au ag', 'auag', 'el'],
  },
];

/** `silver and copper`, `silver-copper`, `Ag/Cu`, or the precious metal alone, which is then taken with copper. */
export function readAlloy(text: string): Alloy | null {
  const name = text
    .toLowerCase()
    .replace(/ and | with |[-/&+, ]+/g, ' ')
    .trim();
  return ALLOYS.find(({ names }) => names.includes(name)) ?? null;
}

/** Density of an alloy by its fineness, volumes added: 1/ρ = w/ρa + (1 − w)/ρb. */
export function densityOf(alloy: Alloy, fineness: number): number {
  return 1 / (fineness / alloy.precious + (1 - fineness) / alloy.base);
}

/**
 * Fineness of an alloy by its density: w = (1/ρ − 1/ρb) / (1/ρa − 1/ρb). Clipped to what can be; null when the density
 * lies wholly outside the two metals.
 */
export function finenessOf(alloy: Alloy, density: Interval): Interval | null {
  if (density.high < alloy.base || density.low > alloy.precious) return null;
  const share = (at: number) => (1 / at - 1 / alloy.base) / (1 / alloy.precious - 1 / alloy.base);
  return { low: Math.max(0, share(density.low)), high: Math.min(1, share(density.high)) };
}
