import type { Outcome } from '../../core/outcome.ts';

/** What a text was read as: a sentence for people, and the fields of the JSON contract. */
export type Answer = { readonly sentence: string; readonly fields: Readonly<Record<string, unknown>> };

/** What was said beside the words: the scale, the problem, the reigns of a cabinet. */
export type Beside = { readonly scale?: string; readonly problem?: string };

/** One kind of text that can be read. `args` names what it takes, in order; a single one may be several words. */
export type Kind = {
  readonly name: string;
  readonly args: readonly string[];
  /** How many of the last args may be left out. */
  readonly optional?: number;
  /** What to type after the name of the kind, as separate words of a command line. */
  readonly examples: readonly (readonly string[])[];
  /** Whether a cabinet is asked for help: always, or only with a text that cannot be read without. */
  readonly consults?: 'always' | 'in need';
  readonly read: (words: readonly string[], beside: Beside) => Outcome<Answer>;
};

/** A kind that takes one text. */
export function ofOneText(
  name: string,
  examples: readonly string[],
  read: (text: string, beside: Beside) => Outcome<Answer>,
): Kind {
  return {
    name,
    args: ['text'],
    examples: examples.map((text) => [text]),
    read: (words, beside) => read(words.join(' '), beside),
  };
}

/** The answer to a value that was read; what could not be read stays a problem. */
export function answer<T>(outcome: Outcome<T>, tell: (value: T) => Answer): Outcome<Answer> {
  return outcome.ok ? { ok: true, value: tell(outcome.value) } : outcome;
}

/** A number for a sentence, to a sensible figure: `0.7734`, `26.7`. */
export function figure(value: number, places: number): string {
  return String(Number(value.toFixed(places)));
}

/** A span for a sentence, one number when its ends are the same in print. */
export function span({ low, high }: { readonly low: number; readonly high: number }, places: number): string {
  const [from, to] = [figure(low, places), figure(high, places)];
  return from === to ? from : `${from} to ${to}`;
}
