import { tidy, writeAmount } from '../measures/amount.ts';
import { lastPlace, parseWeight } from '../measures/parse-weight.ts';
import type { Weight } from '../measures/parse-weight.ts';
import type { Interval } from '../measures/units.ts';
import { good, refuse } from '../outcome.ts';
import type { Outcome } from '../outcome.ts';

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

export type Gravity = {
  readonly specificGravity: Interval;
  /** Null when the density fits no share of the two metals. */
  readonly fineness: Interval | null;
  readonly alloy: Alloy;
  /** What was taken for granted, a sentence each, to be printed with the figure. */
  readonly assumed: readonly string[];
};

/** What weighing in water cannot tell, to be printed with a fineness that it gives. */
const CANNOT_TELL =
  'It cannot tell a third metal, such as lead, tin or zinc, which moves the figure either way; a plated or enriched surface, for a piece answers for its mean; a hollow, a crack, a porous core, a mount, a plug or dirt in the letters, with which it weighs too little in water; nor whether it is genuine, for a forger can mix a metal of the right density. Under about a gram the last figure of the scale outweighs the difference, and published densities of 22 carat gold run from 17.48 to 17.62.';

const ALWAYS = [
  'Water is taken as 1 g/cm³ and the lift of the air is left out; at 20 °C that makes the figure 3 parts in 1000 too high.',
  'The volumes of the two metals are taken to add up, which they do nearly and not exactly.',
];

/** Reads two weighings, `26.922 g` in air and `24.283 g` in water, and the alloy, if it is known. */
export function parseGravity(air: string, water: string, alloy?: string): Outcome<Gravity> {
  const [inAir, inWater] = [weighing(air), weighing(water)];
  if (!inAir.ok) return inAir;
  if (!inWater.ok) return inWater;
  const named = alloy === undefined || alloy.trim() === '' ? undefined : readAlloy(alloy);
  if (named === null)
    return refuse(
      `The alloy "${alloy ?? ''}" is not known here. Write silver and copper, gold and copper, or gold and silver.`,
    );
  return specificGravity(inAir.value, inWater.value, named);
}

/** Specific gravity and the fineness it points to. Each weighing is as good as its last figure, or its stated precision. */
export function specificGravity(air: Weight, water: Weight, alloy?: Alloy): Outcome<Gravity> {
  const [offAir, offWater] = [precision(air), precision(water)];
  if (!(water.grams < air.grams))
    return refuse('A piece weighs less in water than in air. Write the weight in air first.');
  const loss = air.grams - water.grams;
  if (!(loss > offAir + offWater)) {
    return refuse(
      'The scale is too rough for this piece: the loss in water is within its error. Weigh it to one more figure.',
    );
  }
  const specific = {
    low: (air.grams + offAir) / (loss + offAir + offWater),
    high: (air.grams - offAir) / (loss - offAir - offWater),
  };
  const middle = air.grams / loss;
  const chosen = alloy ?? ALLOYS.find(({ base, precious }) => base <= middle && middle <= precious) ?? ALLOYS[0];
  if (chosen === undefined) return refuse('No alloy is known here.');
  const fineness = finenessOf(chosen, specific);
  return good({
    specificGravity: specific,
    fineness,
    alloy: chosen,
    assumed: assumptions(chosen, alloy === undefined, fineness, [offAir, offWater]),
  });
}

function assumptions(
  alloy: Alloy,
  guessed: boolean,
  fineness: Interval | null,
  [air = 0, water = 0]: readonly number[],
): readonly string[] {
  const first = guessed
    ? `No alloy was named: ${alloy.title} was taken, as the nearest that has this density.`
    : `The piece is taken to be ${alloy.title} and nothing else.`;
  const scale = `The weighings are taken as good to ${writeAmount(air, 5)} g in air and ${writeAmount(water, 5)} g in water.`;
  const outside = `The density lies outside ${alloy.title}: no share of the two has it.`;
  return [first, scale, ...ALWAYS, fineness === null ? outside : CANNOT_TELL];
}

/** Half a step of the last figure written, unless a precision is stated. */
function precision(weight: Weight): number {
  return weight.plusMinus ?? lastPlace(weight) / 2;
}

/** Only the ratio counts, so a bare number will do; it is taken as grams. */
function weighing(text: string): Outcome<Weight> {
  return parseWeight(/^[\d.,]+$/.test(tidy(text)) ? `${tidy(text)} g` : text);
}
