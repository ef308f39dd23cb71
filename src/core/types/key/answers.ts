import { matchMask } from '../../legends/match-mask.ts';
import { parseLength } from '../../measures/parse-length.ts';
import { parseWeight, weightSpan } from '../../measures/parse-weight.ts';
import type { Outcome } from '../../outcome.ts';
import { good, refuse } from '../../outcome.ts';
import { sharesOfStates } from './character.ts';
import type { Character, Shown } from './character.ts';
import { NOTHING } from './key.ts';
import type { Key, Outcomes } from './key.ts';
import { canMeasure, densityOf, peakOf } from './worn-measure.ts';

/**
 * What somebody saw: one state or several it may be; a measure with its precision, in grams or millimetres; a worn
 * legend as a mask; or nothing of the kind. What cannot be seen is left out of the answers.
 */
export type Answer =
  | { readonly states: readonly string[] }
  | { readonly measure: number; readonly plusMinus: number }
  | { readonly legend: string };

/** By the id of the character, in any order. */
export type Answers = ReadonlyMap<string, Answer>;

/** Half of the last place of a common scale and of a calliper, where no precision is stated: 0.005 g, 0.05 mm. */
const USUAL_PRECISION = { weight: 0.005, length: 0.05 } as const;

/**
 * Reads one answer: a state or several (`a/b`), a measure with its unit, or a worn legend with `?` and `*`. `names`: what
 * may be answered, as in `Outcomes`.
 */
export function parseAnswer(text: string, character: Character, names: readonly string[]): Outcome<Answer> {
  const written = text.trim();
  switch (character.kind) {
    case 'legend':
      return written === ''
        ? refuse('Write what can be read: letters, ? for one letter, * for any run of them.')
        : good({ legend: written });
    case 'weight': {
      const weight = parseWeight(written);
      if (!weight.ok) return weight;
      const { low, high } = weightSpan(weight.value);
      return good({ measure: (low + high) / 2, plusMinus: Math.max((high - low) / 2, USUAL_PRECISION.weight) });
    }
    case 'length': {
      const length = parseLength(written);
      if (!length.ok) return length;
      const { low, high } = length.value;
      return good({ measure: (low + high) / 2, plusMinus: Math.max((high - low) / 2, USUAL_PRECISION.length) });
    }
    case 'states': {
      const states = written.split('/').map((each) => each.trim());
      const unknown = states.find((state) => !names.includes(state));
      const known = names.map((one) => (one === NOTHING ? '- (has none)' : one)).join(', ');
      return unknown === undefined
        ? good({ states: [...new Set(states)] })
        : refuse(`"${unknown}" is no state of ${character.label}. Write one of ${known}.`);
    }
  }
}

/**
 * What one answer says of every type. `likelihood`: L(a|t) = (1 − ε)·f + ε/S, with f the share of the type's specimens
 * that answer so and S the number of possible answers. `fit`: that, against the best any type could attain. `misses`: 1
 * where no specimen of the type answers so, and only a mistake explains it.
 */
export type Weighed = {
  readonly likelihood: Float64Array;
  readonly fit: Float64Array;
  readonly misses: Uint8Array;
};

export function weigh(key: Key, at: number, answer: Answer): Weighed {
  const character = key.characters[at];
  const outcomes = key.outcomes[at];
  const size = key.types.length;
  const likelihood = new Float64Array(size).fill(1);
  const fit = new Float64Array(size).fill(1);
  const misses = new Uint8Array(size);
  if (character === undefined || outcomes === undefined) return { likelihood, fit, misses };
  const ask = asked(character, outcomes, answer);
  const mean = ask.meanOver(key.singles.flatMap(({ shown }) => shown[at] ?? []));
  const floor = character.error * ask.chance;
  for (const [t, { shown }] of key.singles.entries()) {
    const here = shown[at] ?? { shows: 'unknown' as const };
    // An answer that no type is known to give is one by chance from a type of which nothing is told.
    const share = here.shows !== 'unknown' ? ask.share(here) : mean > 0 ? mean : ask.chance;
    likelihood[t] = (1 - character.error) * share + floor;
    if (here.shows === 'unknown') continue;
    misses[t] = ask.misses(here) ? 1 : 0;
    fit[t] = (likelihood[t] ?? 0) / ((1 - character.error) * ask.best(here) + floor);
  }
  return { likelihood, fit, misses };
}

type Asked = {
  readonly share: (shown: Shown) => number;
  readonly best: (shown: Shown) => number;
  readonly misses: (shown: Shown) => boolean;
  /** How likely a mistaken answer is to be this one. */
  readonly chance: number;
  readonly meanOver: (shown: readonly Shown[]) => number;
};

function asked(character: Character, outcomes: Outcomes, answer: Answer): Asked {
  const share = shareOf(character, outcomes, answer);
  const isMeasure = 'measure' in answer;
  return {
    share,
    best: (shown) => {
      if (!isMeasure) return 1;
      if (shown.shows !== 'measure' || outcomes.span === null) return 1;
      const width = outcomes.span.high - outcomes.span.low;
      return width * peakOf(shown, character.wear, answer.plusMinus);
    },
    misses: (shown) =>
      isMeasure
        ? shown.shows !== 'measure' || !canMeasure(answer.measure, shown, character.wear, answer.plusMinus)
        : share(shown) === 0,
    chance:
      'states' in answer ? answer.states.length / outcomes.names.length : isMeasure ? 1 : 1 / outcomes.names.length,
    meanOver: (all) => {
      const known = all.filter(({ shows }) => shows !== 'unknown');
      return known.length === 0 ? 1 : known.reduce((sum, shown) => sum + share(shown), 0) / known.length;
    },
  };
}

/** The share of a type's specimens that give this answer; for a measure, how many times denser than if all were even. */
function shareOf(character: Character, { span }: Outcomes, answer: Answer): (shown: Shown) => number {
  const among = <T>(all: readonly T[], isOne: (one: T) => boolean): number => all.filter(isOne).length / all.length;
  if ('states' in answer) {
    const named = new Set(answer.states);
    return (shown) => {
      if (shown.shows === 'nothing') return named.has(NOTHING) ? 1 : 0;
      if (shown.shows !== 'states') return 0;
      return [...sharesOfStates(shown)].reduce((sum, [state, share]) => sum + (named.has(state) ? share : 0), 0);
    };
  }
  if ('legend' in answer) {
    const matching = new Map<string, boolean>();
    const matches = (legend: string): boolean => {
      const known = matching.get(legend) ?? matchMask(answer.legend, legend).matches;
      matching.set(legend, known);
      return known;
    };
    return (shown) => (shown.shows === 'legend' ? among(shown.legends, matches) : 0);
  }
  const width = span === null ? 1 : span.high - span.low;
  return (shown) =>
    shown.shows === 'measure' ? width * densityOf(answer.measure, shown, character.wear, answer.plusMinus) : 0;
}
