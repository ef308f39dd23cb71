import { good, type Outcome } from '../outcome.ts';
import type { Reading } from './dating.ts';
import { qualify } from './reading.ts';
import { ABOUT, PERHAPS } from './words.ts';
import { wordBefore } from './written-text.ts';

/** A reader of words within a phrase. Undefined when it does not understand them. */
export type WordReader = (words: string) => Outcome<Reading> | undefined;

const MARKS = [
  { mark: 'doubtful', found: wordBefore(PERHAPS), leave: '' },
  { mark: 'about', found: wordBefore(ABOUT), leave: '' },
  // "AD c. 270" is "c. AD 270".
  { mark: 'about', found: /^(?<era>AD|A\.D\.|AH|A\.H\.) (?:c\.|ca\.|circa|about) /i, leave: '$<era> ' },
  { mark: 'doubtful', found: / ?(?:\?|\(\?\)|\(probably\)|\(perhaps\))$/i, leave: '' },
  { mark: 'doubtful', found: /(?<=^\d{1,5}) ?\?(?= [A-Z])/, leave: '' },
  { mark: 'about', found: / (?:or so|or thereabouts|ca\.|circa|\((?:circa|c\.|ca\.|about)\))$/i, leave: '' },
] as const;

/** Marks may stand in any order, and each once on either side; who doubts more often than that writes no date. */
const MOST_ROUNDS = 4;

/** Takes "about" and "perhaps" off both ends of some words and puts them on what the rest is read as. */
export function readQualified(text: string, read: WordReader): Outcome<Reading> | undefined {
  const marks = new Set<string>();
  let words = withoutParentheses(text);
  for (let before = '', round = 0; before !== words && round < MOST_ROUNDS; round += 1) {
    before = words;
    for (const { mark, found, leave } of MARKS) {
      const rest = words.replace(found, leave).trim();
      if (rest === words || rest === '') continue;
      words = withoutParentheses(rest);
      marks.add(mark);
    }
  }
  const outcome = read(words);
  return outcome?.ok ? good(qualify(outcome.value, marks.has('about'), marks.has('doubtful'))) : outcome;
}

function withoutParentheses(text: string): string {
  return /^(?:\((?<round>[^()]+)\)|\[(?<square>[^[\]]+)\])$/.exec(text)?.slice(1).find(Boolean)?.trim() ?? text;
}
