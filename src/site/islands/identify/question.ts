import { NOTHING } from '../../../core/types/key/key.ts';
import { typesWords } from '../../words/types.ts';
import type { KeyCharacter } from './open-key.ts';
import { button, CANNOT_TELL, drawn, element } from './open-key.ts';

const words = typesWords.ask;

/** A question to be asked: what may be answered, what was answered before, and the bits it tells (null: it was answered). */
export type Asked = {
  readonly character: KeyCharacter;
  readonly names: readonly string[];
  readonly given: string | undefined;
  readonly gain: number | null;
  /** Which question it is, from 1. */
  readonly at: number;
};

/**
 * The form of a question. `settle` takes the answer as it would be written, and gives back a sentence when it cannot be
 * read; `keep` leaves an answer as it was.
 */
export function questionForm(
  asked: Asked,
  settle: (answer: string) => string | null,
  keep: () => void,
): HTMLFormElement {
  const { character, given } = asked;
  const form = document.createElement('form');
  form.noValidate = true;
  const field = document.createElement('fieldset');
  const legend = document.createElement('legend');
  const heading = element('h2', character.label);
  if (character.on !== null) heading.append(' ', element('span', character.on, 'on'));
  legend.append(heading);
  field.append(legend, element('p', words.number(asked.at), 'number plain'));
  if (character.look !== null) field.append(element('p', character.look, 'look'));
  const read = character.kind === 'states' ? stateBoxes(field, asked) : writtenAnswer(field, asked);
  const problem = element('p', '', 'problem');
  problem.setAttribute('role', 'alert');
  const answer = element('button', words.answer, 'go');
  answer.type = 'submit';
  const buttons = element('p', '', 'choices');
  buttons.append(
    answer,
    button(words.cannotTell, () => settle(CANNOT_TELL)),
    ...(given === undefined ? [] : [button(words.keep, keep)]),
  );
  form.append(field, problem, buttons);
  if (asked.gain !== null) {
    const seen = character.seen < 1 ? words.seen(character.seen) : '';
    form.append(element('p', words.why(asked.gain, seen), 'plain quiet'));
  }
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    problem.textContent = settle(read()) ?? '';
  });
  return form;
}

/** A box for each state; more than one may be ticked. */
function stateBoxes(field: HTMLElement, { character, names, given }: Asked): () => string {
  field.append(element('p', words.several, 'plain quiet'));
  const before = new Set(given?.split('/'));
  const list = element('ul', '', Object.keys(character.drawn).length === 0 ? 'states' : 'states pictured');
  const boxes = names.map((name) => {
    const box = document.createElement('input');
    box.type = 'checkbox';
    box.checked = before.has(name);
    const label = element('label');
    const drawing = character.drawn[name];
    label.append(box, ...(drawing === undefined ? [] : [drawn(drawing)]), element('span', stateLabel(character, name)));
    const line = document.createElement('li');
    line.append(label);
    list.append(line);
    return { name, box };
  });
  field.append(list);
  return () =>
    boxes
      .filter(({ box }) => box.checked)
      .map(({ name }) => name)
      .join('/');
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
