import { normalLegend } from '../../legends/normal-legend.ts';
import { sharesOfStates } from './character.ts';
import type { Character, Shown } from './character.ts';
import { densityOf, singlesOf, spanOf } from './worn-measure.ts';
import type { Span } from './worn-measure.ts';

/** A leaf of a series as the key knows it: `shown` in the order of the characters. */
export type KeyType = { readonly id: string; readonly shown: readonly Shown[] };

/**
 * What may be answered to one character, and how likely each answer is from each type before mistakes are allowed for.
 * For type t the entries `start[t]` to `start[t + 1]` hold `outcome` and `share`; a type has few outcomes of many.
 * `spread` is the entropy in bits of the answers from that type, mistakes included.
 */
export type Outcomes = {
  readonly names: readonly string[];
  readonly start: Uint32Array;
  readonly outcome: Uint16Array;
  readonly share: Float64Array;
  readonly spread: Float64Array;
  /** For measures: where the answers can lie. */
  readonly span: Span | null;
};

export type Key = {
  readonly characters: readonly Character[];
  readonly types: readonly KeyType[];
  /** The same with each measure as widely as single pieces lie. */
  readonly singles: readonly KeyType[];
  readonly outcomes: readonly Outcomes[];
};

/** The answer that a piece has nothing of the kind: no initial mark, no edge. */
export const NOTHING = '-';
/** A measure is cut into so many equal steps when it is weighed what asking for it would tell. */
const STEPS = 16;

type Shares = ReadonlyMap<number, number>;

/** A key made ready for asking: everything that does not depend on the answers is worked out once. */
export function keyOf(characters: readonly Character[], types: readonly KeyType[]): Key {
  const singles = types.map((type) => ({
    ...type,
    shown: type.shown.map((one, at) => {
      const character = characters[at];
      return character === undefined ? one : singlesOf(one, character);
    }),
  }));
  return {
    characters,
    types,
    singles,
    outcomes: characters.map((character, at) => {
      const shown = singles.map((type): Shown => type.shown[at] ?? { shows: 'unknown' });
      return outcomesOf(character, shown);
    }),
  };
}

function outcomesOf(character: Character, shown: readonly Shown[]): Outcomes {
  const isMeasure = character.kind === 'weight' || character.kind === 'length';
  const span = isMeasure ? spanOf(shown, character.wear) : null;
  const names = namesOf(character, shown);
  const known = shown.map((one) => sharesOf(one, names, character, span));
  const usual = average(known, names.length);
  const filled = known.map((shares) => shares ?? usual);
  const size = filled.reduce((sum, shares) => sum + shares.size, 0);
  const outcomes = {
    names,
    start: new Uint32Array(shown.length + 1),
    outcome: new Uint16Array(size),
    share: new Float64Array(size),
    spread: new Float64Array(shown.length),
    span,
  };
  let next = 0;
  for (const [at, shares] of filled.entries()) {
    for (const [outcome, share] of shares) {
      outcomes.outcome[next] = outcome;
      outcomes.share[next] = share;
      next += 1;
    }
    outcomes.start[at + 1] = next;
    outcomes.spread[at] = spreadOf([...shares.values()], names.length, character.error);
  }
  return outcomes;
}

function namesOf(character: Character, shown: readonly Shown[]): readonly string[] {
  const none = shown.some(({ shows }) => shows === 'nothing') ? [NOTHING] : [];
  if (character.kind === 'states') return [...character.states.map(({ id }) => id), ...none];
  if (character.kind === 'legend') {
    const legends = shown.flatMap((one) => (one.shows === 'legend' ? one.legends.map(normalLegend) : []));
    return [...new Set(legends), ...none];
  }
  return [...Array.from({ length: STEPS }, (_, at) => String(at)), ...none];
}

/** Null where it is not known what a type shows. */
function sharesOf(shown: Shown, names: readonly string[], { wear }: Character, span: Span | null): Shares | null {
  const even = (named: readonly string[]): Shares => {
    const shares = new Map<number, number>();
    for (const name of named) {
      const at = names.indexOf(name);
      shares.set(at, (shares.get(at) ?? 0) + 1 / named.length);
    }
    return shares;
  };
  switch (shown.shows) {
    case 'unknown':
      return null;
    case 'nothing':
      return even([NOTHING]);
    case 'states':
      return new Map([...sharesOfStates(shown)].map(([state, share]) => [names.indexOf(state), share]));
    case 'legend':
      return even(shown.legends.map(normalLegend));
    case 'measure':
      return stepsOf(shown, wear, span ?? { low: shown.low, high: shown.high });
  }
}

function stepsOf(shown: Span, wear: number, span: Span): Shares {
  const step = (span.high - span.low) / STEPS;
  const weights = Array.from({ length: STEPS }, (_, at) =>
    Math.max(0, densityOf(span.low + (at + 0.5) * step, shown, wear, step / 2)),
  );
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  return new Map(weights.flatMap((weight, at): [number, number][] => (weight > 0 ? [[at, weight / whole]] : [])));
}

/** What the types that are known show on average: the best that can be said of one of which it is not known. */
function average(known: readonly (Shares | null)[], outcomes: number): Shares {
  const told = known.filter((shares) => shares !== null);
  if (told.length === 0) return new Map(Array.from({ length: outcomes }, (_, at) => [at, 1 / outcomes]));
  const sum = new Map<number, number>();
  for (const shares of told) for (const [at, share] of shares) sum.set(at, (sum.get(at) ?? 0) + share / told.length);
  return sum;
}

function spreadOf(shares: readonly number[], outcomes: number, error: number): number {
  const floor = outcomes === 0 ? 0 : error / outcomes;
  const told = shares.reduce((sum, share) => sum + bits((1 - error) * share + floor), 0);
  return told + (outcomes - shares.length) * bits(floor);
}

/** What an outcome of this probability adds to an entropy, in bits. */
export function bits(probability: number): number {
  return probability > 0 ? -probability * Math.log2(probability) : 0;
}
