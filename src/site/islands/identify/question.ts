import { NOTHING } from '../../../core/types/key/key.ts';
import { keyWords as words } from '../../words/key.ts';
import { typesWords } from '../../words/types.ts';
import type { KeyCharacter } from './open-key.ts';
import { button, CANNOT_TELL, drawn, element } from './open-key.ts';

/** A question to be asked: what may be answered, and what was answered before. */
export type Asked = {
  readonly character: KeyCharacter;
  readonly names: readonly string[];
  readonly given: string | undefined;
};

/** What is done with an answer as it would be written. */
export type Taking = {
  /** Takes it and goes on; a sentence when it cannot be read. */
  readonly settle: (answer: string) => string | null;
  /** Takes what was tapped so far, so that what remains is seen at once; `` for nothing. */
  readonly draft: (answer: string) => void;
  /** Leaves an answer as it was and goes on. */
  readonly keep: () => void;
};

/** The name by which the buttons of a question, which stand under it, belong to its form. */
const FORM = 'key-question';

/** The form of a question, and its buttons, which keep to the foot of the screen. */
export function questionForm(
  asked: Asked,
  { settle, draft, keep }: Taking,
): { readonly form: HTMLFormElement; readonly foot: readonly HTMLElement[] } {
  const { character, given } = asked;
  const form = document.createElement('form');
  form.noValidate = true;
  form.id = FORM;
  const field = document.createElement('fieldset');
  const legend = document.createElement('legend');
  legend.append(element('h2', character.ask ?? character.label));
  field.append(legend);
  const look = [character.look ?? '', words.worn(character.seen)].filter((part) => part !== '').join(' ');
  if (look !== '') field.append(element('p', look, 'look'));
  const read = character.kind === 'states' ? stateBoxes(field, asked, draft) : writtenAnswer(field, asked);
  const problem = element('p', '', 'problem');
  problem.setAttribute('role', 'alert');
  const go = element('button', words.go, 'go');
  go.type = 'submit';
  go.setAttribute('form', FORM);
  const buttons = element('p', '', 'choices');
  buttons.append(
    go,
    button(words.cannotTell, () => settle(CANNOT_TELL)),
    ...(given === undefined ? [] : [button(words.keep, keep)]),
  );
  form.append(field);
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    problem.textContent = settle(read()) ?? '';
  });
  return { form, foot: [problem, buttons] };
}

/** Each state, to be tapped; more than one may be. */
function stateBoxes(
  field: HTMLElement,
  { character, names, given }: Asked,
  draft: (answer: string) => void,
): () => string {
  const before = new Set(given?.split('/'));
  const list = element('ul', '', Object.keys(character.drawn).length === 0 ? 'states' : 'states pictured');
  const boxes = names.map((name) => {
    const box = document.createElement('input');
    box.type = 'checkbox';
    box.checked = before.has(name);
    const label = element('label');
    const drawing = character.drawn[name];
    label.append(box, ...(drawing === undefined ? [] : [drawn(drawing)]), inPrint(stateLabel(character, name)));
    const line = document.createElement('li');
    line.append(label);
    list.append(line);
    return { name, box };
  });
  const answer = (): string =>
    boxes
      .filter(({ box }) => box.checked)
      .map(({ name }) => name)
      .join('/');
  list.addEventListener('change', () => draft(answer()));
  field.append(list, element('p', words.tap, 'plain quiet tap'));
  return answer;
}

/** Words in which what stands on the piece is set as it is set elsewhere: letter-spaced capitals. */
function inPrint(text: string): HTMLElement {
  const made = element('span');
  for (const [at, part] of text.split(/((?:\p{Lu}{2,}|\p{Lu}(?= ))(?: \p{Lu}+)*)(?!\p{Ll})/u).entries())
    made.append(at % 2 === 1 ? element('span', part, 'cut') : part);
  return made;
}

function writtenAnswer(field: HTMLElement, { character, given }: Asked): () => string {
  const isLegend = character.kind === 'legend';
  const label = element(
    'label',
    isLegend ? words.legend : words.measure[character.kind === 'length' ? 'length' : 'weight'],
  );
  const input = element('input', '', 'written');
  input.type = 'text';
  input.autocomplete = 'off';
  input.spellcheck = false;
  if (isLegend) input.autocapitalize = 'characters';
  if (given !== undefined && given !== CANNOT_TELL) input.value = given;
  label.append(input);
  field.append(label);
  return () => input.value;
}

/** A state in the words of the key. */
export function stateLabel({ states }: KeyCharacter, name: string): string {
  return states.find(({ id }) => id === name)?.label ?? (name === NOTHING ? typesWords.notApplicable : name);
}
