import { parseAnswer } from '../../core/types/key/answers.ts';
import type { Answer } from '../../core/types/key/answers.ts';
import { identify, sureBroader } from '../../core/types/key/identify.ts';
import type { Identification } from '../../core/types/key/identify.ts';
import type { KeyFile } from '../models/types/key-page.ts';
import { keyWords as words } from '../words/key.ts';
import { typesWords } from '../words/types.ts';
import {
  button,
  CANNOT_TELL,
  countLeft,
  element,
  labelOf,
  likely,
  likelyBroader,
  openKey,
  typeLinks,
} from './identify/open-key.ts';
import type { KeyCharacter, OpenKey } from './identify/open-key.ts';
import { showPlaces } from './identify/places.ts';
import { questionForm, stateLabel } from './identify/question.ts';
import { candidateList, differenceView } from './identify/remaining.ts';
import { stillPossible } from './identify/still.ts';
import { markWells } from './identify/wells.ts';
import { readJson } from './read-json.ts';

/** Types named in one sentence. */
const MOST_NAMED = 3;
/** Unless the likeliest two are together as likely as this, it is too early to hold them against each other. */
const HALF = 0.5;

/**
 * Asks what tells most, one question at a time; answers can be changed or taken back in any order. They are in the
 * address behind `#` as the command `identify` takes them, so that they are there again on the way back from a type.
 */
class IdentifyPiece extends HTMLElement {
  #open: OpenKey | null = null;
  /** Every answer as it would be written, in the order given; `?` where nobody could tell. */
  #said: ReadonlyMap<string, string> = new Map();
  #asking: string | null = null;
  /** The question on the page; null where there is none. */
  #asked: string | null = null;
  /** The type that the likeliest is compared with, where one was chosen. */
  #other: string | null = null;

  connectedCallback(): void {
    for (const box of this.querySelectorAll('[data-strict], [data-rarity]'))
      box.addEventListener('change', () => this.#render());
    window.addEventListener('hashchange', () => this.#restore());
    void this.#load();
  }

  async #load(): Promise<void> {
    const from = new URL(this.dataset['from'] ?? '', location.href).href;
    for (const part of this.querySelectorAll<HTMLElement>('[data-waits-for-key]')) part.hidden = false;
    try {
      const file = (await readJson(from)) as KeyFile;
      this.#open = openKey(file, from);
      this.#restore();
    } catch {
      this.#part('says').textContent = words.failed;
    }
  }

  #part(name: string): HTMLElement {
    return this.querySelector<HTMLElement>(`[data-${name}]`) ?? this;
  }

  #isTicked(name: string): boolean {
    return this.querySelector<HTMLInputElement>(`[data-${name}]`)?.checked === true;
  }

  #character(id: string): KeyCharacter | undefined {
    return this.#open?.file.characters.find((one) => one.id === id);
  }

  #names(id: string): readonly string[] {
    const at = this.#open?.file.characters.findIndex((one) => one.id === id) ?? -1;
    return this.#open?.key.outcomes[at]?.names ?? [];
  }

  #read(id: string, text: string): Answer | string {
    const character = this.#character(id);
    if (character === undefined) return words.failed;
    if (character.kind === 'states' && text === '') return words.tick;
    const read = parseAnswer(text, character, this.#names(id));
    return read.ok ? read.value : read.problem;
  }

  /** Takes the answers that are in the address; what cannot be read is left out. */
  #restore(): void {
    const given = [...new URLSearchParams(location.hash.slice(1))];
    this.#said = new Map(
      given.filter(([id, text]) =>
        text === CANNOT_TELL ? this.#character(id) !== undefined : typeof this.#read(id, text) !== 'string',
      ),
    );
    this.#render();
  }

  /** Answers a question (null takes the answer back) and goes on; a sentence when it cannot be read. */
  #settle(id: string, text: string | null): string | null {
    if (text !== null && text !== CANNOT_TELL) {
      const read = this.#read(id, text);
      if (typeof read === 'string') return read;
    }
    this.#say(this.#with(id, text));
    this.#ask(null);
    return null;
  }

  /** Takes what was tapped so far without going on: everything but the question follows at once. */
  #draft(id: string, text: string): void {
    this.#asking = id;
    this.#say(this.#with(id, text === '' ? null : text));
    this.#render(false);
  }

  #with(id: string, text: string | null): ReadonlyMap<string, string> {
    const said = new Map(this.#said);
    if (text === null) said.delete(id);
    else said.set(id, text);
    return said;
  }

  #say(said: ReadonlyMap<string, string>): void {
    this.#said = said;
    history.replaceState(
      history.state,
      '',
      said.size === 0 ? location.pathname : `#${String(new URLSearchParams([...said]))}`,
    );
  }

  /** Shows a question, null for the one that tells most, and moves the keyboard to it. */
  #ask(id: string | null): void {
    this.#asking = id;
    this.#render();
    this.#part('ask').querySelector<HTMLElement>('input, [tabindex="-1"], button')?.focus();
  }

  #render(andAsk = true): void {
    const open = this.#open;
    if (open === null) return;
    const answers = new Map<string, Answer>();
    for (const [id, text] of this.#said) {
      const read = text === CANNOT_TELL ? '' : this.#read(id, text);
      if (typeof read !== 'string') answers.set(id, read);
    }
    const found = identify(open.key, answers, {
      strict: this.#isTicked('strict'),
      prior: this.#isTicked('rarity') ? (open.file.prior ?? undefined) : undefined,
    });
    this.#part('says').textContent = [
      this.#state(open, found, answers.size),
      ...this.#besides(open, found, answers.size),
    ].join(' ');
    const still = stillPossible(open, found, answers.size);
    this.#part('still').replaceChildren(...(still === null ? [] : [still]));
    if (andAsk) this.#showQuestion(open, found);
    showPlaces(this, open, { asking: this.#asked, seen: new Set(this.#said.keys()) }, (id) => this.#ask(id));
    this.#showAnswers();
    const hasBoard = this.querySelector('[data-type]') !== null;
    markWells(this, open, found, answers.size);
    this.#part('remaining').replaceChildren(
      ...(hasBoard ? [] : candidateList(open, found, answers.size)),
      ...this.#difference(open, found, answers.size),
    );
  }

  /** How the likeliest and another type differ; nothing before anything is answered. */
  #difference(open: OpenKey, found: Identification, answers: number): readonly HTMLElement[] {
    const [first, second] = found.candidates;
    if (answers === 0 || (first?.probability ?? 0) + (second?.probability ?? 0) < HALF) return [];
    const choose = (other: string): void => {
      this.#other = other;
      this.#render();
      this.#part('remaining').querySelector<HTMLElement>('h3')?.focus();
    };
    const view = differenceView(open, found, this.#other, choose, (id) => this.#ask(id));
    return view === null ? [] : [view];
  }

  /** Where the answers lead, in a sentence. */
  #state(open: OpenKey, found: Identification, answers: number): string {
    const [first] = found.candidates;
    const leading = found.leading.map((id) => labelOf(open, id)).join(typesWords.or);
    if (first === undefined) return words.nothingLeft;
    if (found.outside && !found.untold && found.unshown.length > 0) return words.notShown(this.#labels(found.unshown));
    if (found.outside) return (found.untold ? words.untold : words.outside)(labelOf(open, first.id));
    if (found.stop === 'sure') return found.leading.length > 1 ? words.together(leading) : words.found(leading);
    if (answers === 0) return words.begin(open.file.types.filter(({ outside }) => outside !== true).length);
    const alike = likely(found).filter(({ probability }) => first.probability - probability < 1e-6);
    const names =
      alike.length > MOST_NAMED
        ? words.severalTypes(alike.length)
        : words.oneOf(alike.map(({ id }) => labelOf(open, id)));
    return words.soFar(names, words.chance(first.probability), alike.length > 1, countLeft(open, found) - alike.length);
  }

  /** What there is to say besides: the class is sure though the type is not, and answers that fit nothing. */
  #besides(open: OpenKey, found: Identification, answers: number): readonly string[] {
    const [first] = found.candidates;
    if (first === undefined || found.outside) return [];
    const broader = found.stop === 'sure' || found.unshown.length > 0 ? null : sureBroader(likelyBroader(open, found, answers));
    const disagrees = found.unshown.length > 0 ? [words.unshown(this.#labels(found.unshown))] : first.against.length > 0 ? [words.noneAgrees] : [];
    return [...(broader === null ? [] : [words.sureBroader(open.file.broader.find(({ id }) => id === broader.id)?.label ?? '', words.chance(broader.probability))]), ...disagrees];
  } // prettier-ignore

  #labels(characters: readonly string[]): string {
    return characters.map((id) => this.#character(id)?.label ?? id).join(', ');
  }

  #showQuestion(open: OpenKey, found: Identification): void {
    const unasked = found.questions.filter(({ character }) => !this.#said.has(character));
    const next = this.#asking ?? (found.stop === null ? (unasked[0]?.character ?? null) : null);
    const character = next === null ? undefined : this.#character(next);
    this.#asked = next;
    if (character === undefined) {
      const end = element('h2', found.stop === 'sure' ? words.sureEnough : words.nothingMore);
      end.tabIndex = -1;
      this.#part('ask').replaceChildren(end);
      this.#part('foot').replaceChildren(...(found.stop === 'sure' ? typeLinks(open, found.leading) : []));
      return;
    }
    const { id } = character;
    const { form, foot } = questionForm(
      { character, names: this.#names(id), given: this.#said.get(id) },
      {
        settle: (text) => this.#settle(id, text),
        draft: (text) => this.#draft(id, text),
        keep: () => this.#ask(null),
      },
    );
    this.#part('ask').replaceChildren(form);
    this.#part('foot').replaceChildren(...foot);
  }

  #showAnswers(): void {
    const list = element('ul', '', 'answers');
    for (const [id, text] of this.#said) {
      const character = this.#character(id);
      if (character === undefined) continue;
      const states = character.kind === 'states' ? text.split('/').map((name) => stateLabel(character, name)) : [text];
      const line = element('li', `${character.label}: `);
      line.append(
        element('span', text === CANNOT_TELL ? words.couldNotTell : states.join(typesWords.or), 'said'),
        ' ',
        this.#named(words.change, character, () => this.#ask(id)),
        ' ',
        this.#named(words.takeBack, character, () => this.#settle(id, null)),
      );
      list.append(line);
    }
    const again = button(words.restart, () => {
      this.#say(new Map());
      this.#ask(null);
    });
    const parts = [element('h2', words.seen), list, again];
    this.#part('answered').replaceChildren(...(this.#said.size === 0 ? [] : parts));
  }

  /** A button that says which answer it means to those who listen. */
  #named(text: string, { label }: KeyCharacter, act: () => void): HTMLElement {
    const made = button(text, act);
    made.append(element('span', `: ${label}`, 'for-listeners'));
    return made;
  }
}

customElements.define('identify-piece', IdentifyPiece);
