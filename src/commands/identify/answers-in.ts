import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';
import { parseAnswer } from '../../core/types/key/answers.ts';
import type { Answer, Answers } from '../../core/types/key/answers.ts';
import type { Key } from '../../core/types/key/key.ts';

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
