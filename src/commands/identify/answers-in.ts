import { parseLength } from '../../core/measures/parse-length.ts';
import { parseWeight, weightSpan } from '../../core/measures/parse-weight.ts';
import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';
import type { Answer, Answers } from '../../core/types/key/answers.ts';
import type { Character } from '../../core/types/key/character.ts';
import { NOTHING } from '../../core/types/key/key.ts';
import type { Key } from '../../core/types/key/key.ts';

/** Half of the last place of a common scale and of a calliper, where no precision is stated: 0.005 g, 0.05 mm. */
const USUAL_PRECISION = { weight: 0.005, length: 0.05 } as const;

/** Answers as words of a command line: `crown=pearls`, `weight=1.38 g`. */
export function answersIn(words: readonly string[], key: Key): Outcome<Answers> {
  const answers = new Map<string, Answer>();
  for (const word of words) {
    const at = word.indexOf('=');
    const [id, text] = [word.slice(0, Math.max(0, at)), word.slice(at + 1)];
    const character = key.characters.find((one) => one.id === id);
    if (at === -1 || character === undefined)
      return refuse(
        `"${word}" is no answer. Write one of ${key.characters.map((one) => one.id).join(', ')}, = and what you see.`,
      );
    const answer = parseAnswer(text, character, key.outcomes[key.characters.indexOf(character)]?.names ?? []);
    if (!answer.ok) return answer;
    answers.set(id, answer.value);
  }
  return good(answers);
}

/** One answer: a state or several, a measure, or a worn legend. */
export function parseAnswer(text: string, character: Character, names: readonly string[]): Outcome<Answer> {
  if (character.kind === 'legend')
    return text.trim() === '' ? refuse('Write what can be read, with ? and *.') : good({ legend: text });
  if (character.kind === 'weight') {
    const weight = parseWeight(text);
    if (!weight.ok) return weight;
    const { low, high } = weightSpan(weight.value);
    return good({ measure: weight.value.grams, plusMinus: Math.max((high - low) / 2, USUAL_PRECISION.weight) });
  }
  if (character.kind === 'length') {
    const length = parseLength(text);
    if (!length.ok) return length;
    const { low, high } = length.value;
    return good({ measure: (low + high) / 2, plusMinus: Math.max((high - low) / 2, USUAL_PRECISION.length) });
  }
  const states = text.split('/').map((each) => each.trim());
  const unknown = states.find((state) => !names.includes(state));
  return unknown === undefined
    ? good({ states })
    : refuse(
        `"${unknown}" is no state of ${character.label}. Write one of ${names.map((one) => (one === NOTHING ? '- (has none)' : one)).join(', ')}.`,
      );
}
