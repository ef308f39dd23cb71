import { parseLength } from '../../measures/parse-length.ts';
import { parseWeight, weightSpan } from '../../measures/parse-weight.ts';
import type { Outcome } from '../../outcome.ts';
import { good, refuse } from '../../outcome.ts';
import { NOT_APPLICABLE, NOT_KNOWN } from '../series.ts';

export type CharacterState = { readonly id: string; readonly label: string };

/** Something to look at on a piece, in the words of a key (SDD and DELTA call it a character, its values states). */
export type Character = {
  readonly id: string;
  readonly label: string;
  /** `states`: one of a list; `weight` in grams and `length` in millimetres; `legend`: letters, read worn. */
  readonly kind: 'states' | 'weight' | 'length' | 'legend';
  /** For `states` alone. */
  readonly states: readonly CharacterState[];
  /** How often an answer is wrong, 0–1. */
  readonly error: number;
  /** How often it can be seen at all, 0–1. */
  readonly seen: number;
  /** How much trouble it is, 1 for a look. */
  readonly cost: number;
  /** For measures: what wear takes off on average, in the same unit. A piece is never heavier for being worn. */
  readonly wear: number;
  /** For measures: how far single pieces were made off what is published, either way; left out, what is usual (see `singlesOf`). */
  readonly scatter?: number | undefined;
};

export const USUAL = { error: 0.05, seen: 1, cost: 1, wear: 0 } as const;

/** What the specimens of a type show of one character. */
export type Shown =
  | { readonly shows: 'unknown' }
  | { readonly shows: 'nothing' }
  | {
      readonly shows: 'states';
      readonly states: readonly string[];
      /** Those of them that only few specimens show; left out where there are none. */
      readonly seldom?: readonly string[];
    }
  | { readonly shows: 'measure'; readonly low: number; readonly high: number }
  | { readonly shows: 'legend'; readonly legends: readonly string[] };

/**
 * The weight of a state that a cell calls seldom, against one it does not: next to one usual state it is on one specimen in ten.
 * DELTA writes such a word as a comment, `<rarely>`, and SDD as a modifier of frequency (both from memory); the number is ours.
 */
const SELDOM = 1 / 9;
const WRITTEN_SELDOM = /\s*\(seldom\)$/i;

/** The share of a type's specimens that show each of its states, 0–1; a state given several times counts as often. */
export function sharesOfStates({
  states,
  seldom = [],
}: Extract<Shown, { shows: 'states' }>): ReadonlyMap<string, number> {
  const weight = (state: string): number => (seldom.includes(state) ? SELDOM : 1);
  const whole = states.reduce((sum, state) => sum + weight(state), 0);
  const shares = new Map<string, number>();
  for (const state of states) shares.set(state, (shares.get(state) ?? 0) + weight(state) / whole);
  return shares;
}

/** What most specimens show: without the states that a cell calls seldom, unless it calls all of them so. */
export function usually(shown: Shown): Shown {
  if (shown.shows !== 'states' || shown.seldom === undefined) return shown;
  const { states, seldom } = shown;
  const usual = states.filter((state) => !seldom.includes(state));
  return { shows: 'states', states: usual.length === 0 ? states : usual };
}

/** Reads a cell of a column of characters: `a/b` is either, `a/b (seldom)` b on few, `?` is not known, `-` does not apply. */
export function parseShown(text: string, character: Character): Outcome<Shown> {
  const written = text.trim();
  if (written === NOT_KNOWN || written === '') return good({ shows: 'unknown' });
  if (written === NOT_APPLICABLE) return good({ shows: 'nothing' });
  switch (character.kind) {
    case 'states':
      return readStates(written, character);
    case 'legend':
      return good({ shows: 'legend', legends: written.split('/').map((each) => each.trim()) });
    case 'weight': {
      const weight = parseWeight(written);
      return weight.ok ? good({ shows: 'measure', ...weightSpan(weight.value) }) : weight;
    }
    case 'length': {
      const length = parseLength(written);
      return length.ok ? good({ shows: 'measure', low: length.value.low, high: length.value.high }) : length;
    }
  }
}

function readStates(written: string, { label, states }: Character): Outcome<Shown> {
  const named = written.split('/').map((each) => each.trim());
  const ids: string[] = [];
  const seldom: string[] = [];
  for (const text of named) {
    const name = text.replace(WRITTEN_SELDOM, '');
    const state = states.find(({ id, label: words }) => id === name || words.toLowerCase() === name.toLowerCase());
    if (state === undefined)
      return refuse(
        `"${name}" is no state of ${label}. Write one of ${states.map(({ id }) => id).join(', ')}; a/b for either, a/b (seldom) for b on few, ? for not known, - for does not apply.`,
      );
    ids.push(state.id);
    if (name !== text) seldom.push(state.id);
  }
  return good({ shows: 'states', states: [...new Set(ids)], ...(seldom.length === 0 ? {} : { seldom }) });
}
