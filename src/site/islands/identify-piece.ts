import { parseLength } from '../../core/measures/parse-length.ts';
import { parseWeight } from '../../core/measures/parse-weight.ts';
import type { Answer } from '../../core/types/key/answers.ts';
import { identify } from '../../core/types/key/identify.ts';
import type { Identification } from '../../core/types/key/identify.ts';
import { keyOf, NOTHING } from '../../core/types/key/key.ts';
import type { Key } from '../../core/types/key/key.ts';
import { separations } from '../../core/types/key/separations.ts';
import type { KeyFile } from '../models/types/key-page.ts';
import { typesWords } from '../words/types.ts';
import { readJson } from './read-json.ts';

const words = typesWords.ask;
/** Candidates shown, and the least probability of one that is. */
const MOST = 8;
const LEAST = 0.005;

/** Asks what tells most, one question at a time; answers can be changed or taken back in any order. */
class IdentifyPiece extends HTMLElement {
  #file: KeyFile | null = null;
  #key: Key | null = null;
  readonly #answers = new Map<string, Answer>();
  /** What nobody could tell, in the order it was said. */
  readonly #passed = new Set<string>();
  #asking: string | null = null;

  connectedCallback(): void {
    this.querySelector('[data-strict]')?.addEventListener('change', () => this.#render());
    void this.#load();
  }

  async #load(): Promise<void> {
    try {
      this.#file = (await readJson(this.dataset['from'] ?? '')) as KeyFile;
      this.#key = keyOf(this.#file.characters, this.#file.types);
      this.#render();
    } catch {
      this.#part('ask').textContent = words.failed;
    }
    this.removeAttribute('data-waits');
  }

  #part(name: string): HTMLElement {
    return this.querySelector<HTMLElement>(`[data-${name}]`) ?? this;
  }

  #render(): void {
    if (this.#key === null) return;
    const strict = this.querySelector<HTMLInputElement>('[data-strict]')?.checked === true;
    const found = identify(this.#key, this.#answers, { strict });
    this.#showQuestion(found);
    this.#showAnswers();
    this.#showRemaining(found);
  }

  #showQuestion(found: Identification): void {
    const open = found.questions.filter(({ character }) => !this.#passed.has(character));
    const wanted = this.#asking ?? (found.stop === null ? (open[0]?.character ?? null) : null);
    const character = this.#file?.characters.find(({ id }) => id === wanted);
    const place = this.#part('ask');
    if (character === undefined) {
      const again = found.stop === 'sure' ? [] : [element('p', words.nothingMore)];
      place.replaceChildren(...again, this.#others(open.map((each) => each.character)));
      return;
    }
    const form = document.createElement('form');
    const field = document.createElement('fieldset');
    field.append(element('legend', character.label));
    if (character.look !== null) field.append(element('p', character.look));
    const question = found.questions.find((each) => each.character === character.id);
    if (question !== undefined)
      field.append(
        element(
          'p',
          words.why(question.gain.toFixed(2), character.seen < 1 ? words.seen(character.seen) : ''),
          'plain quiet',
        ),
      );
    const read = this.#field(field, character.id);
    const problem = element('p', '');
    problem.setAttribute('role', 'alert');
    form.append(
      field,
      problem,
      button(words.answer, 'submit'),
      button(words.cannotTell, 'button', () => {
        this.#answers.delete(character.id);
        this.#passed.add(character.id);
        this.#go(null);
      }),
    );
    form.addEventListener('submit', (event) => {
      event.preventDefault();
      const answer = read();
      if (typeof answer === 'string') problem.textContent = answer;
      else {
        this.#answers.set(character.id, answer);
        this.#passed.delete(character.id);
        this.#go(null);
      }
    });
    place.replaceChildren(form, this.#others(open.map((each) => each.character).filter((id) => id !== character.id)));
  }

  /** The control for a character; what it gives back reads it, as an answer or a sentence about what is wrong. */
  #field(field: HTMLElement, id: string): () => Answer | string {
    const at = this.#file?.characters.findIndex((one) => one.id === id) ?? -1;
    const character = this.#file?.characters[at];
    const given = this.#answers.get(id);
    if (character?.kind !== 'states') {
      const isLegend = character?.kind === 'legend';
      const label = element(
        'label',
        isLegend ? words.legend : words.measure[character?.kind === 'length' ? 'length' : 'weight'],
      );
      const input = document.createElement('input');
      input.type = 'text';
      if (given !== undefined && 'legend' in given) input.value = given.legend;
      label.append(document.createElement('br'), input);
      field.append(label);
      return () =>
        isLegend
          ? input.value.trim() === ''
            ? words.unread
            : { legend: input.value }
          : measured(input.value, character?.kind === 'length');
    }
    const names = this.#key?.outcomes[at]?.names ?? [];
    field.append(element('p', words.several, 'plain quiet'));
    const boxes = names.map((name) => {
      const label = element(
        'label',
        ` ${character.states.find((state) => state.id === name)?.label ?? (name === NOTHING ? typesWords.notApplicable : name)}`,
      );
      const box = document.createElement('input');
      box.type = 'checkbox';
      box.checked = given !== undefined && 'states' in given && given.states.includes(name);
      label.prepend(box);
      field.append(label);
      return { name, box };
    });
    return () => {
      const states = boxes.filter(({ box }) => box.checked).map(({ name }) => name);
      return states.length === 0 ? words.several : { states };
    };
  }

  #go(asking: string | null): void {
    this.#asking = asking;
    this.#render();
    this.#part('ask').querySelector<HTMLElement>('input, button')?.focus();
  }

  #others(ids: readonly string[]): HTMLElement {
    const details = document.createElement('details');
    details.append(element('summary', words.others));
    for (const id of ids) details.append(button(this.#label(id), 'button', () => this.#go(id)));
    details.hidden = ids.length === 0;
    return details;
  }

  #label(id: string): string {
    return this.#file?.characters.find((one) => one.id === id)?.label ?? id;
  }

  #showAnswers(): void {
    const given = [...this.#answers, ...[...this.#passed].map((id): [string, null] => [id, null])];
    const list = document.createElement('ul');
    for (const [id, answer] of given) {
      const line = element('li', `${this.#label(id)}: ${answer === null ? words.cannotTell : this.#said(id, answer)} `);
      line.append(
        button(words.change, 'button', () => this.#go(id)),
        button(words.takeBack, 'button', () => {
          this.#answers.delete(id);
          this.#passed.delete(id);
          this.#go(null);
        }),
      );
      list.append(line);
    }
    const restart = button(words.restart, 'button', () => {
      this.#answers.clear();
      this.#passed.clear();
      this.#go(null);
    });
    this.#part('answered').replaceChildren(
      ...(given.length === 0 ? [] : [element('h2', words.answered), list, restart]),
    );
  }

  #said(id: string, answer: Answer): string {
    if ('legend' in answer) return answer.legend;
    if ('measure' in answer) return String(answer.measure);
    const states = this.#file?.characters.find((one) => one.id === id)?.states ?? [];
    return answer.states
      .map((name) => states.find((state) => state.id === name)?.label ?? typesWords.notApplicable)
      .join(typesWords.or);
  }

  #showRemaining(found: Identification): void {
    const labels = found.leading.map((id) => this.#file?.types.find((type) => type.id === id)?.label ?? id);
    const parts: HTMLElement[] = [];
    if (found.outside) parts.push(element('p', words.outside));
    else if (found.stop === 'sure') {
      parts.push(element('p', words.found(labels.join(typesWords.or))));
      if (labels.length > 1) parts.push(element('p', words.together(labels.join(', '))));
    }
    const likely = found.candidates.filter(({ probability }, at) => at < MOST && (at === 0 || probability >= LEAST));
    const list = document.createElement('ol');
    for (const candidate of likely) list.append(this.#candidate(candidate));
    parts.push(list);
    if (found.candidates.length > likely.length)
      parts.push(element('p', words.more(found.candidates.length - likely.length), 'plain quiet'));
    const [first, second] = likely;
    if (first !== undefined && second !== undefined && this.#key !== null) {
      const by = separations(this.#key, first.id, second.id).map(({ character, always }) =>
        always ? character.label : words.sometimes(character.label),
      );
      const names = [first, second].map(({ id }) => this.#file?.types.find((type) => type.id === id)?.label ?? id);
      parts.push(
        element('p', `${names.join(' and ')}: ${by.length === 0 ? words.differNot : words.differBy(by.join(', '))}`),
      );
    }
    this.#part('remaining').replaceChildren(...parts);
  }

  #candidate({ id, probability, against }: Identification['candidates'][number]): HTMLElement {
    const type = this.#file?.types.find((one) => one.id === id);
    const line = document.createElement('li');
    const link = document.createElement('a');
    link.href = type?.href ?? '';
    link.textContent = type?.label ?? id;
    const share = probability >= 0.995 ? '> 99' : String(Math.round(probability * 100));
    const fit = this.#answers.size === 0 ? '' : `; ${words.fit(against.length, this.#answers.size)}`;
    line.append(link, ` ${share} %${fit} `);
    for (const piece of type?.pieces ?? []) {
      if (piece.src === null) continue;
      const shown = document.createElement('a');
      shown.href = piece.href;
      const picture = document.createElement('img');
      picture.src = piece.src;
      picture.alt = piece.title;
      picture.loading = 'lazy';
      shown.append(picture);
      line.append(shown);
    }
    return line;
  }
}

function measured(text: string, isLength: boolean): Answer | string {
  if (isLength) {
    const length = parseLength(text);
    if (!length.ok) return length.problem;
    const { low, high } = length.value;
    return { measure: (low + high) / 2, plusMinus: Math.max((high - low) / 2, 0.05) };
  }
  const weight = parseWeight(text);
  return weight.ok ? { measure: weight.value.grams, plusMinus: weight.value.plusMinus ?? 0.005 } : weight.problem;
}

function element(name: string, text: string, kind = ''): HTMLElement {
  const made = document.createElement(name);
  made.textContent = text;
  if (kind !== '') made.className = kind;
  return made;
}

function button(text: string, type: 'button' | 'submit', act?: () => void): HTMLButtonElement {
  const made = document.createElement('button');
  made.type = type;
  made.textContent = text;
  if (act !== undefined) made.addEventListener('click', act);
  return made;
}

customElements.define('identify-piece', IdentifyPiece);
