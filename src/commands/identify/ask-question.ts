import type { Answer } from '../../core/types/key/answers.ts';
import type { Question } from '../../core/types/key/identify.ts';
import { NOTHING } from '../../core/types/key/key.ts';
import type { Key } from '../../core/types/key/key.ts';
import { askText, askWhich } from '../parts/ask.ts';
import { parseAnswer } from '../../core/types/key/answers.ts';

const CANNOT_TELL = '?';
const SEVERAL = '/';

/** Asks one question; null when nobody can tell. */
export async function askQuestion(key: Key, { character: id, gain }: Question): Promise<Answer | null> {
  const at = key.characters.findIndex((one) => one.id === id);
  const character = key.characters[at];
  if (character === undefined) return null;
  const names = key.outcomes[at]?.names ?? [];
  const message = `${character.label}? (tells ${gain.toFixed(2)} bit)`;
  if (character.kind === 'states') {
    const label = (name: string): string =>
      name === NOTHING ? 'it has none' : (character.states.find((state) => state.id === name)?.label ?? name);
    const chosen = await askWhich(message, [
      ...names.map((name) => ({ value: name, label: label(name) })),
      { value: SEVERAL, label: 'one of several', hint: 'write them next' },
      { value: CANNOT_TELL, label: 'I cannot tell' },
    ]);
    if (chosen === CANNOT_TELL) return null;
    if (chosen !== SEVERAL) return { states: [chosen] };
  }
  const refuse = (text: string): string | null => {
    const read = text === '' ? null : parseAnswer(text, character, names);
    return read?.ok === false ? read.problem : null;
  };
  const text = await askText(`${message} Leave it empty when you cannot tell.`, {
    placeholder: names.join('/'),
    refuse,
  });
  const read = text === '' ? null : parseAnswer(text, character, names);
  return read?.ok === true ? read.value : null;
}
