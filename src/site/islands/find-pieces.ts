import type { Answer, Found } from '../find/choose.ts';
import { FACETS } from '../find/record.ts';
import type { FacetName } from '../find/record.ts';
import { formatState, isChosen, parseState } from '../find/state.ts';
import type { FindState, Sort } from '../find/state.ts';
import { findWords } from '../words/find.ts';
import { drawn, FindFiles } from './find-files.ts';
import { layFound } from './lay-found.ts';

const AT_ONCE = 96;
/** How many found pieces are among the first that a visitor sees. */
const SOON = 4;
/** How many are laid before the browser may draw: what fills the screen of a phone, which heeds no finger meanwhile. */
const SLICE = 12;
/** How long nothing is typed, in milliseconds, before the address says what is asked: a browser lets it be written only so often. */
const WRITTEN_AFTER = 300;

/**
 * Finds pieces as they are asked for. The complete list is in the page already; this narrows and sorts it, keeps what
 * was asked in the address, and tells how many answered. It comes when somebody is about to ask (find-at-once.ts), so what
 * was typed until then is answered as well.
 */
class FindPieces extends HTMLElement {
  #form: HTMLFormElement | null = null;
  #files: FindFiles | null = null;
  #all: readonly Element[] = [];
  /** Where the whole list lies while others are shown: out of the page, where no picture is fetched. */
  readonly #away = document.createElement('template').content;
  #says = '';
  /** The counts of the whole list, as the page came with them. */
  #counts: readonly (readonly [Element, string])[] = [];
  #shown = AT_ONCE;
  #turn = 0;
  /** The order in which pieces are laid; null for the best answers first. */
  #order: Sort | null = null;
  /** The boxes of each facet by their values, each with its count. */
  #boxes: ReadonlyMap<FacetName, readonly (readonly [HTMLInputElement, Element | null])[]> = new Map();

  /** The file of what can be found, in full: addresses in it are meant from where it lies. */
  get #records(): string {
    return new URL(this.dataset['records'] ?? '', document.baseURI).href;
  }

  connectedCallback(): void {
    const form = this.querySelector('form');
    const list = this.querySelector('[data-board] ul');
    if (form === null || list === null) return;
    this.#form = form;
    this.#all = [...list.children];
    this.#says = this.querySelector('[data-says]')?.textContent ?? '';
    this.#counts = [...this.querySelectorAll('[data-count]')].map((count) => [count, count.textContent]);
    this.#boxes = new Map(
      FACETS.map((facet) => [
        facet,
        [...this.querySelectorAll<HTMLInputElement>(`[data-facet="${facet}"] input`)].map((box) => [
          box,
          box.closest('label')?.querySelector('[data-count]') ?? null,
        ]),
      ]),
    );

    const sent = Reflect.get(this, 'sent') as Promise<Response> | undefined;
    const texts = new URL(this.dataset['texts'] ?? '', document.baseURI).href;
    this.#files = new FindFiles({ records: this.#records, texts }, sent ?? null);
    // Should this fail, asking tries again and says so.
    this.#files.early(parseState('')).catch(() => this.#files?.forget());
    let waiting = 0;
    form.addEventListener('input', (event) => {
      const isTyped = event.target instanceof HTMLInputElement && event.target.type === 'search';
      clearTimeout(waiting);
      if (!isTyped) {
        void this.#ask('push');
        return;
      }
      void this.#show(this.#asked());
      waiting = window.setTimeout(() => void this.#ask('replace'), WRITTEN_AFTER);
    });
    form.addEventListener('submit', (event) => {
      event.preventDefault();
      void this.#ask('push');
    });
    form.addEventListener('reset', () => setTimeout(() => void this.#ask('push')));
    this.querySelector('[data-more]')?.addEventListener('click', () => {
      this.#shown += AT_ONCE;
      void this.#answer(parseState(location.search));
    });
    for (const better of form.querySelectorAll('[data-better]'))
      better.addEventListener('click', () => {
        this.#chooseFrom(better);
      });
    addEventListener('popstate', () => void this.#restore());
    // What was chosen until now, an order as well: the choice brought this script.
    if (location.search === '' && isChosen(this.#asked())) void this.#ask('push');
    else void this.#restore();
  }

  /** Puts what the address asks into the form, and answers it. */
  async #restore(): Promise<void> {
    const state = parseState(location.search);
    this.#fill(state);
    this.#shown = AT_ONCE;
    if (isChosen(state)) await this.#answer(state);
    else this.#layWhole();
  }

  /** What the form asks. */
  #asked(): FindState {
    const data = new URLSearchParams(
      [...new FormData(this.#form ?? undefined)].flatMap(([name, value]) =>
        typeof value === 'string' && value !== '' ? [[name, value]] : [],
      ),
    );
    return parseState(data.toString());
  }

  /** Puts what the form asks into the address, and answers it. */
  async #ask(how: 'push' | 'replace'): Promise<void> {
    const state = this.#asked();
    const address = `${location.pathname}${formatState(state)}`;
    if (how === 'push') history.pushState(null, '', address);
    else history.replaceState(null, '', address);
    await this.#show(state);
  }

  async #show(state: FindState): Promise<void> {
    this.#shown = AT_ONCE;
    if (isChosen(state)) await this.#answer(state);
    else this.#layWhole();
  }

  async #answer(state: FindState): Promise<void> {
    const turn = (this.#turn += 1);
    const files = this.#files;
    if (files === null) return;
    try {
      const ready = await files.early(state);
      if (turn !== this.#turn) return;
      const early = ready.find(state);
      // What nothing matches may be a word of the texts, and is not answered before those have come.
      let rest = ready.isWhole || early.matching > 0 ? this.#lay(state, early, ready.all) : [];
      if (!ready.isWhole) {
        await drawn();
        const { find, all } = await files.whole();
        if (turn !== this.#turn) return;
        const whole = find(state);
        rest = this.#lay(state, whole, all);
      }
      await this.#layRest(rest, turn);
    } catch {
      files.forget();
      this.#layWhole();
      this.#say(findWords.failed);
    }
  }

  /** Lays the first of an answer and says how many there are; gives back what is to be laid after them. */
  #lay(state: FindState, answer: Answer, all: number): readonly Found[] {
    const isSought = state.words !== '' || state.legend !== '';
    this.#order = state.sort ?? (isSought ? null : 'number');
    const rest = this.#layFirst(answer);
    this.#tell(state, answer, all);
    return rest;
  }

  /** Lays the first of what was found, and gives back what is to be laid after it. */
  #layFirst({ matching, similar, first }: Answer): readonly Found[] {
    const shown = first(this.#shown);
    this.#away.append(...this.#all);
    this.removeAttribute('data-asked');
    this.querySelector('[data-board] ul')?.replaceChildren(...this.#laid(shown.slice(0, SLICE), SOON));
    this.#toggle('[data-board]', shown.length > 0);
    this.#toggle('[data-more]', matching + similar > this.#shown);
    this.#toggle('[data-pager]', false);
    return shown.slice(SLICE);
  }

  /** Lays what is below the screen when nobody types any more: it would be thrown away with the next key. */
  async #layRest(rest: readonly Found[], turn: number): Promise<void> {
    await new Promise((settle) => setTimeout(settle, WRITTEN_AFTER));
    if (turn !== this.#turn) return;
    for (let at = 0; at < rest.length; at += SLICE) {
      await drawn();
      if (turn !== this.#turn) return;
      this.querySelector('[data-board] ul')?.append(...this.#laid(rest.slice(at, at + SLICE), 0));
    }
  }

  #laid(found: readonly Found[], soon: number): readonly Element[] {
    const patterns = this.querySelector<HTMLTemplateElement>('[data-found]');
    if (patterns === null) return [];
    return found.flatMap(
      (one, at) => layFound(one, patterns, this.#records, { soon: at < soon, sort: this.#order }) ?? [],
    );
  }

  #layWhole(): void {
    this.#turn += 1;
    this.removeAttribute('data-asked');
    const list = this.querySelector('[data-board] ul');
    if (list?.firstElementChild !== this.#all[0]) list?.replaceChildren(...this.#all);
    this.#toggle('[data-board]', true);
    this.#toggle('[data-more]', false);
    this.#toggle('[data-pager]', true);
    this.#say(this.#says);
    this.#nameChosen(parseState(''));
    for (const [count, text] of this.#counts) count.textContent = text;
    for (const [box] of [...this.#boxes.values()].flat()) box.disabled = false;
  }

  #tell(state: FindState, { matching, similar, counts }: Answer, all: number): void {
    const said = findWords.foundWith(matching, similar, all);
    this.#say(matching + similar === 0 ? findWords.none : findWords.sorted(said, state.sort));
    this.#nameChosen(state);
    for (const [facet, boxes] of this.#boxes)
      for (const [box, shown] of boxes) {
        const count = counts[facet].get(box.value) ?? 0;
        if (shown !== null) shown.textContent = String(count);
        box.disabled = count === 0 && !box.checked;
      }
  }

  /** The chosen values as words that can be taken out again. */
  #nameChosen(state: FindState): void {
    const boxes = [...this.querySelectorAll<HTMLInputElement>('[data-facet] input:checked')];
    this.querySelector('[data-chosen]')?.replaceChildren(
      ...boxes.map((box) => {
        const label = box.closest('label')?.querySelector('span')?.textContent ?? box.value;
        const button = document.createElement('button');
        button.type = 'button';
        button.textContent = label;
        button.ariaLabel = findWords.remove(label);
        button.addEventListener('click', () => {
          box.checked = false;
          void this.#ask('push').then(() => this.#form?.querySelector<HTMLElement>('summary')?.focus());
        });
        const line = document.createElement('li');
        line.append(button);
        return line;
      }),
    );
    this.#toggle('[data-clear]', isChosen(state));
    this.#nameOrder(state);
  }

  /** Chooses a grade and the better ones of its scale, which stand after it; none beside a problem, which speaks of wear alone. */
  #chooseFrom(better: Element): void {
    const lines = [...(better.closest('ul')?.children ?? [])];
    const from = lines.findIndex((line) => line.contains(better));
    for (const [at, line] of lines.entries())
      for (const box of line.querySelectorAll('input')) box.checked = at >= from && !line.hasAttribute('data-details');
    void this.#ask('push');
  }

  /** Which order comes of itself; the other can be chosen beside it. */
  #nameOrder({ words, legend, sort }: FindState): void {
    const isSought = words !== '' || legend !== '';
    const best = this.querySelector('[data-best]');
    if (best !== null) best.textContent = isSought ? findWords.bestFirst : findWords.sort.number;
    this.#toggle('[data-order="number"]', isSought || sort === 'number');
  }

  #fill({ words, legend, sort, chosen }: FindState): void {
    const form = this.#form;
    if (form === null) return;
    for (const [name, value] of Object.entries({ words, legend, sort: sort ?? '' })) {
      const field = form.elements.namedItem(name);
      if (field instanceof HTMLInputElement || field instanceof RadioNodeList) field.value = value;
    }
    if (legend !== '')
      for (const part of ['[data-narrow]', '[data-worn]']) this.querySelector(part)?.toggleAttribute('open', true);
    for (const facet of FACETS) {
      for (const box of form.querySelectorAll<HTMLInputElement>(`[data-facet="${facet}"] input`)) {
        box.checked = chosen[facet].includes(box.value);
      }
    }
  }

  #say(text: string): void {
    const says = this.querySelector('[data-says]');
    if (says !== null && says.textContent !== text) says.textContent = text;
  }

  #toggle(selector: string, isShown: boolean): void {
    const element = this.querySelector<HTMLElement>(selector);
    if (element !== null) element.hidden = !isShown;
  }
}

customElements.define('find-pieces', FindPieces);
