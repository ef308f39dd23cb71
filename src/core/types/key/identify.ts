import type { Rarity } from '../../rarity/rarity.ts';
import { weigh } from './answers.ts';
import type { Answers } from './answers.ts';
import { bits } from './key.ts';
import type { Key, Outcomes } from './key.ts';
import { inseparable } from './separations.ts';

/** At this probability a type is found, and below this gain in bits no question is worth asking. */
export const SURE_ENOUGH = 0.95;
export const LEAST_GAIN = 0.05;
/** So seldom would honest mistakes alone explain the answers, before the list is said not to contain the piece. */
const TOO_SELDOM = 0.01;

export type Candidate = {
  readonly id: string;
  readonly probability: number;
  /** 0–1: the geometric mean, over the answers, of how well each suits against the best a type could attain. */
  readonly fit: number;
  /** The characters that only a mistake explains. */
  readonly against: readonly string[];
};

/** A question that may come next. `expects`: how likely each answer is now, by the names of the outcomes. */
export type Question = {
  readonly character: string;
  /** Bits of information the answer brings on average. */
  readonly gain: number;
  /** The gain times the chance to see it, by its cost: what the questions are ordered by. */
  readonly worth: number;
};

export type Identification = {
  /** Every type still in question, the likeliest first; equals in the order of the series. */
  readonly candidates: readonly Candidate[];
  /** What may be asked next, the most telling first: one step ahead, so a greedy order and not the shortest. */
  readonly questions: readonly Question[];
  /** Why there is no need to go on. `sure`: one type, or several that no character separates, has 95 per cent. */
  readonly stop: 'sure' | 'nothing-tells-more' | null;
  /** The likeliest type, with those that no character of the key separates from it. */
  readonly leading: readonly string[];
  /** Whether nothing in the list fits: so many answers against the best of it are seldom mistakes. */
  readonly outside: boolean;
  /** The characters of which no type in the list is known to show what was answered. */
  readonly unshown: readonly string[];
  /** Whether the series tells nothing of the likeliest type that was answered: it is not put out, and that is all. */
  readonly untold: boolean;
};

export type Manner = {
  /** One a type, in the order of the key; all alike when left out. */
  readonly prior?: readonly number[] | undefined;
  /** Whether one answer that a type cannot give puts it out. */
  readonly strict?: boolean | undefined;
};

/** Where the answers lead: what remains, what to ask next, and whether to stop. */
export function identify(key: Key, answers: Answers, manner: Manner = {}): Identification {
  const { probability, fit, against, answered, unshown } = posterior(key, answers, manner);
  const ranked = key.types
    .map((_, t) => t)
    .filter((t) => (probability[t] ?? 0) > 0)
    .sort((a, b) => (probability[b] ?? 0) - (probability[a] ?? 0) || a - b);
  const best = ranked[0];
  const group = best === undefined ? [] : (inseparable(key).find((each) => each.includes(best)) ?? [best]);
  const questions = questionsOf(key, probability, answers);
  const held = group.reduce((sum, t) => sum + (probability[t] ?? 0), 0);
  const telling = questions.some(({ gain }) => gain >= LEAST_GAIN);
  const isTold = (t: number): boolean => answered.some((at) => isKnown(key, t, at));
  const untold = best !== undefined && answered.length > 0 && !group.some(isTold);
  // Every type of which the series tells anything is contradicted: nothing fits, whatever a type without a word leaves open.
  const noneFits = untold && against.every((each, t) => each.length > 0 || !isTold(t));
  const name = (t: number): string => key.types[t]?.id ?? '';
  return {
    candidates: ranked.map((t) => ({
      id: name(t),
      probability: probability[t] ?? 0,
      fit: fit[t] ?? 0,
      against: against[t] ?? [],
    })),
    questions,
    stop: held >= SURE_ENOUGH && !untold ? 'sure' : telling ? null : 'nothing-tells-more',
    leading: group.map(name),
    untold,
    unshown,
    outside:
      ranked.length === 0 ||
      noneFits ||
      unshown.some((id) => isSeldomMistaken(key, id)) ||
      isOutside(key, answered, best === undefined ? [] : (against[best] ?? [])),
  };
}

/** Whether the series tells what a type shows of a character. */
function isKnown(key: Key, t: number, at: number): boolean {
  return (key.types[t]?.shown[at]?.shows ?? 'unknown') !== 'unknown';
}

function posterior(key: Key, answers: Answers, { prior, strict = false }: Manner) {
  const size = key.types.length;
  const logarithm = Float64Array.from({ length: size }, (_, t) => Math.log(prior?.[t] ?? 1));
  const fits = new Float64Array(size);
  const against: string[][] = Array.from({ length: size }, () => []);
  const answered: number[] = [];
  const unshown: string[] = [];
  for (const [at, character] of key.characters.entries()) {
    const answer = answers.get(character.id);
    if (answer === undefined) continue;
    answered.push(at);
    const { likelihood, fit, misses } = weigh(key, at, answer);
    const told = [...misses.keys()].filter((t) => isKnown(key, t, at));
    if (told.length > 0 && told.every((t) => misses[t] === 1)) unshown.push(character.id);
    for (let t = 0; t < size; t += 1) {
      logarithm[t] = (logarithm[t] ?? 0) + Math.log(likelihood[t] ?? 1);
      fits[t] = (fits[t] ?? 0) + Math.log(fit[t] ?? 1);
      if (misses[t] === 1) against[t]?.push(character.id);
    }
  }
  if (strict) for (let t = 0; t < size; t += 1) if ((against[t]?.length ?? 0) > 0) logarithm[t] = -Infinity;
  const highest = logarithm.reduce((most, each) => Math.max(most, each), -Infinity);
  const weights = logarithm.map((each) => (highest === -Infinity ? 0 : Math.exp(each - highest)));
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  return {
    probability: weights.map((weight) => (whole === 0 ? 0 : weight / whole)),
    fit: fits.map((sum) => Math.exp(sum / Math.max(1, answered.length))),
    against,
    answered,
    unshown,
  };
}

/** Every character not yet answered with what asking for it would bring, the most telling first. */
function questionsOf(key: Key, probability: Float64Array, answers: Answers): readonly Question[] {
  const open = candidatesIn(probability);
  return key.characters
    .flatMap((character, at): Question[] => {
      const outcomes = key.outcomes[at];
      if (outcomes === undefined || answers.has(character.id)) return [];
      const gain = gainOf(outcomes, character.error, probability, open);
      return [{ character: character.id, gain, worth: (gain * character.seen) / character.cost }];
    })
    .sort((a, b) => b.worth - a.worth);
}

/** The types that have any probability to speak of: the rest can change no gain in the sixth place. */
export function candidatesIn(probability: Float64Array): readonly number[] {
  return [...probability.keys()].filter((t) => (probability[t] ?? 0) > 1e-9);
}

/** How likely each outcome of a character is now. */
export function expected(
  outcomes: Outcomes,
  error: number,
  probability: Float64Array,
  open: readonly number[],
): Float64Array {
  const { start, outcome, share, names } = outcomes;
  const expects = new Float64Array(names.length).fill(names.length === 0 ? 0 : error / names.length);
  for (const t of open) {
    const weight = (1 - error) * (probability[t] ?? 0);
    for (let at = start[t] ?? 0; at < (start[t + 1] ?? 0); at += 1) {
      const o = outcome[at] ?? 0;
      expects[o] = (expects[o] ?? 0) + weight * (share[at] ?? 0);
    }
  }
  return expects;
}

/** The mutual information of the answer and the type, in bits: H(answer) less what is left of it once the type is known. */
export function gainOf(outcomes: Outcomes, error: number, probability: Float64Array, open: readonly number[]): number {
  const expects = expected(outcomes, error, probability, open);
  let gain = 0;
  for (const each of expects) gain += bits(each);
  for (const t of open) gain -= (probability[t] ?? 0) * (outcomes.spread[t] ?? 0);
  return Math.max(0, gain);
}

/** Whether so many answers against a type are too many for mistakes: the tail of the number of mistakes that chance makes. */
function isOutside(key: Key, answered: readonly number[], against: readonly string[]): boolean {
  if (against.length === 0) return false;
  let mistakes = [1];
  for (const at of answered) {
    const error = key.characters[at]?.error ?? 0;
    mistakes = [...mistakes, 0].map((none, made) => none * (1 - error) + (mistakes[made - 1] ?? 0) * error);
  }
  return mistakes.slice(against.length).reduce((sum, each) => sum + each, 0) < TOO_SELDOM;
}

/** Whether a mistake seldom leads to one answer of this question: a mistake may be any of its answers. */
function isSeldomMistaken(key: Key, id: string): boolean {
  const at = key.characters.findIndex((character) => character.id === id);
  const answers = key.outcomes[at]?.names.length ?? 1;
  return (key.characters[at]?.error ?? 1) / answers < TOO_SELDOM;
}

/** Probabilities summed upwards: how likely it is that a piece is under each broader type. */
export function sumUpwards(
  candidates: readonly Candidate[],
  broaderOf: (id: string) => string | null,
): ReadonlyMap<string, number> {
  const sums = new Map<string, number>();
  for (const { id, probability } of candidates) {
    for (let above: string | null = id; above !== null; above = broaderOf(above))
      sums.set(above, (sums.get(above) ?? 0) + probability);
  }
  return sums;
}

export type Together = { readonly id: string; readonly probability: number };

/**
 * The broader types of which a piece may be, the likeliest first and the broader of equals before the narrower: those under
 * which more than one candidate lies, but not all of them, and which have a chance to speak of.
 */
export function together(
  candidates: readonly Candidate[],
  broaderOf: (id: string) => string | null,
): readonly Together[] {
  const counts = sumUpwards(
    candidates.map((one) => ({ ...one, probability: 1 })),
    broaderOf,
  );
  const sums = sumUpwards(candidates, broaderOf);
  const depthOf = (id: string): number => {
    const above = broaderOf(id);
    return above === null ? 0 : 1 + depthOf(above);
  };
  return [...sums]
    .filter(([id, sum]) => sum >= 0.01 && (counts.get(id) ?? 0) > 1 && (counts.get(id) ?? 0) < candidates.length)
    .map(([id, probability]) => ({ id, probability }))
    .sort((a, b) =>
      Math.abs(a.probability - b.probability) > 1e-9 ? b.probability - a.probability : depthOf(a.id) - depthOf(b.id),
    );
}

/** The narrowest broader type that is sure enough. */
export function sureBroader(found: readonly Together[]): Together | null {
  return found.filter(({ probability }) => probability >= SURE_ENOUGH).at(-1) ?? null;
}

/**
 * Published rarities as a prior, all that are known of each type: the geometric middle of the pieces a class stands for, the
 * least of them twice where no most is given. Scales count different things, so only one is taken: that which gives numbers
 * of most types, the first of equals; of several sources on it, from the least to the most that any of them gives. Null where
 * no scale gives numbers; a type without one counts as the middle of the others.
 */
export function rarityPrior(rarities: readonly (readonly Rarity[])[]): readonly number[] | null {
  const told = new Map<string, number>();
  for (const of of rarities)
    for (const scale of new Set(of.flatMap(({ low, scale: each }) => (low === null ? [] : [each]))))
      told.set(scale, (told.get(scale) ?? 0) + 1);
  const [chosen] = [...told].sort(([, one], [, other]) => other - one)[0] ?? [];
  const counts = rarities.map((of) => {
    const spans = of.flatMap(({ low, high, scale }) => (low === null || scale !== chosen ? [] : [{ low, high }]));
    if (spans.length === 0) return null;
    const low = Math.min(...spans.map((span) => span.low));
    return Math.sqrt(low * Math.max(...spans.map((span) => span.high ?? 4 * span.low)));
  });
  const known = counts.filter((count) => count !== null);
  if (known.length === 0) return null;
  const middle = Math.exp(known.reduce((sum, count) => sum + Math.log(count), 0) / known.length);
  return counts.map((count) => count ?? middle);
}
