import { isId, MOST } from '../compare/state.ts';
import { compareWords as words } from '../words/compare.ts';

/** What is chosen is kept while the visit lasts, from one page of a list to the next. */
const KEPT = 'gathered';

/** Lets a visitor choose pieces on the boards of the page, through any search, and leads to where they lie side by side. */
class GatherPieces extends HTMLElement {
  readonly #chosen = new Set<string>();
  readonly #watch = new MutationObserver(() => this.#offer());

  /** Where chosen pieces lie side by side. */
  #to = '';

  connectedCallback(): void {
    this.#to = this.querySelector('a')?.href ?? '';
    this.querySelector('[data-begin]')?.addEventListener('click', () => {
      this.#begin();
      document.querySelector<HTMLElement>('.gathers input')?.focus();
    });
    this.querySelector('[data-leave]')?.addEventListener('click', () => this.#leave());
    this.removeAttribute('data-waits');
    for (const id of kept()) this.#chosen.add(id);
    if (this.#chosen.size > 0) this.#begin();
  }

  #begin(): void {
    this.#toggle(true);
    for (const list of document.querySelectorAll('[data-board] ul')) this.#watch.observe(list, { childList: true });
    this.#offer();
  }

  #leave(): void {
    this.#watch.disconnect();
    this.#chosen.clear();
    keep([]);
    for (const offered of document.querySelectorAll('.gathers')) offered.remove();
    this.#toggle(false);
    this.querySelector<HTMLElement>('[data-begin]')?.focus();
  }

  #toggle(isOn: boolean): void {
    const begin = this.querySelector<HTMLElement>('[data-begin]');
    const bar = this.querySelector<HTMLElement>('[data-chosen]');
    if (begin !== null) begin.ariaExpanded = String(isOn);
    if (begin !== null) begin.hidden = isOn;
    if (bar !== null) bar.hidden = !isOn;
    this.#tell();
  }

  /** Lays a box to tick under every piece on the board that has none. */
  #offer(): void {
    for (const line of document.querySelectorAll<HTMLElement>('[data-board] li[data-piece]')) {
      const id = line.dataset['piece'] ?? '';
      if (id === '' || line.querySelector('.gathers') !== null) continue;
      const box = document.createElement('input');
      box.type = 'checkbox';
      box.checked = this.#chosen.has(id);
      box.ariaLabel = words.gatherOne(line.querySelector('.title')?.textContent.trim() ?? id);
      box.addEventListener('change', () => {
        if (box.checked) this.#chosen.add(id);
        else this.#chosen.delete(id);
        keep([...this.#chosen]);
        this.#tell();
      });
      const label = document.createElement('label');
      label.className = 'gathers';
      label.append(box, words.gatherShort);
      line.querySelector('.says')?.append(label);
    }
    this.#tell();
  }

  #tell(): void {
    const says = this.querySelector('[data-says]');
    const go = this.querySelector('a');
    const count = this.#chosen.size;
    if (says !== null) says.textContent = words.gathered(count);
    if (go !== null) go.hidden = count < 2;
    if (go !== null) go.href = `${this.#to}?pieces=${[...this.#chosen].join(',')}`;
    for (const box of document.querySelectorAll<HTMLInputElement>('.gathers input'))
      box.disabled = count >= MOST && !box.checked;
  }
}

function kept(): readonly string[] {
  try {
    return (sessionStorage.getItem(KEPT) ?? '').split(',').filter(isId);
  } catch {
    return [];
  }
}

function keep(ids: readonly string[]): void {
  try {
    sessionStorage.setItem(KEPT, ids.join(','));
  } catch {
    // A browser that keeps nothing still gathers from one page.
  }
}

customElements.define('gather-pieces', GatherPieces);
