const REMEMBERED = 'device-pixels-a-millimetre';

/** A first guess at the pixels a millimetre: of a screen on a desk, and of one in the hand. */
const GUESS = { desk: 3.78, hand: 6 } as const;

/** What the control is made of. */
type Parts = {
  readonly show: HTMLButtonElement;
  readonly adjust: HTMLButtonElement;
  readonly forget: HTMLButtonElement;
  readonly measure: HTMLElement;
  readonly slider: HTMLInputElement;
  readonly says: HTMLOutputElement;
  /** What the button says while the piece is larger or smaller than it is, and while it is as large as it is. */
  readonly words: { readonly show: string; readonly back: string };
};

/** Shows the piece as large as it is, once a card or ruler has told how long a millimetre is on this screen. */
class TrueSize extends HTMLElement {
  #isShown = false;
  /** Pixels of the device a millimetre: those of the page change when it is magnified. Null until it was measured. */
  #measured = remembered();

  connectedCallback(): void {
    const parts = partsOf(this);
    if (parts === null) return;
    const { slider, measure } = parts;
    const on = (name: string, act: () => void): void => {
      this.querySelector(`[data-${name}]`)?.addEventListener('click', act);
    };
    on('show', () => this.#toggle(parts));
    on('adjust', () => this.#openMeasure(parts));
    on('leave', () => this.#closeMeasure(parts));
    on('done', () => {
      // Fingers may have magnified the page while a card lay on it.
      this.#take(Number(slider.value) * devicePixelRatio * (visualViewport?.scale ?? 1));
      this.#closeMeasure(parts);
    });
    on('forget', () => {
      this.#take(null);
      this.#closeMeasure(parts);
    });
    for (const step of this.querySelectorAll<HTMLElement>('[data-step]'))
      step.addEventListener('click', () => draw(parts, Number(slider.value) + Number(step.dataset['step'])));
    slider.addEventListener('input', () => draw(parts, Number(slider.value)));
    measure.addEventListener('keydown', ({ key }) => {
      if (key === 'Escape') this.#closeMeasure(parts);
    });
    addEventListener('resize', () => this.#render(parts));
    this.#render(parts);
    this.hidden = false;
  }

  #render({ show, adjust, forget, says, words }: Parts): void {
    const millimetre = this.#measured === null ? null : this.#measured / devicePixelRatio;
    const root = document.documentElement.style;
    if (this.#isShown && millimetre !== null) root.setProperty('--piece-scale', `${rounded(millimetre)}px`);
    else root.removeProperty('--piece-scale');
    show.textContent = this.#isShown ? words.back : words.show;
    says.textContent = this.#isShown ? (says.dataset['says'] ?? '') : '';
    adjust.hidden = this.#measured === null;
    forget.hidden = this.#measured === null;
  }

  #toggle(parts: Parts): void {
    if (this.#measured === null) {
      this.#openMeasure(parts);
      return;
    }
    this.#isShown = !this.#isShown;
    this.#render(parts);
  }

  #openMeasure(parts: Parts): void {
    const guess = matchMedia('(pointer: coarse)').matches ? GUESS.hand : GUESS.desk;
    draw(parts, this.#measured === null ? guess : this.#measured / devicePixelRatio);
    parts.measure.hidden = false;
    parts.slider.focus();
  }

  #closeMeasure(parts: Parts): void {
    parts.measure.hidden = true;
    this.#render(parts);
    parts.show.focus();
  }

  /** Keeps what was measured and shows the piece by it; null forgets it. */
  #take(measured: number | null): void {
    this.#measured = measured;
    this.#isShown = measured !== null;
    remember(measured);
  }
}

function partsOf(element: TrueSize): Parts | null {
  const show = element.querySelector<HTMLButtonElement>('[data-show]');
  const adjust = element.querySelector<HTMLButtonElement>('[data-adjust]');
  const forget = element.querySelector<HTMLButtonElement>('[data-forget]');
  const measure = element.querySelector<HTMLElement>('.measure');
  const slider = element.querySelector('input');
  const says = element.querySelector('output');
  if (show === null || adjust === null || forget === null) return null;
  if (measure === null || slider === null || says === null) return null;
  const words = { back: show.dataset['larger'] ?? '', show: show.textContent };
  return { show, adjust, forget, measure, slider, says, words };
}

/** Draws the measure to so many pixels of the page a millimetre. */
function draw({ slider, measure }: Parts, millimetre: number): void {
  slider.value = String(millimetre);
  measure.style.setProperty('--screen-millimetre', `${slider.value}px`);
}

const rounded = (pixels: number): number => Math.round(pixels * 1000) / 1000;

/** What was measured on this device; null when it never was or nothing may be kept here. */
function remembered(): number | null {
  try {
    const pixels = Number(localStorage.getItem(REMEMBERED));
    return pixels > 0 ? pixels : null;
  } catch {
    return null;
  }
}

function remember(pixels: number | null): void {
  try {
    if (pixels === null) localStorage.removeItem(REMEMBERED);
    else localStorage.setItem(REMEMBERED, String(pixels));
  } catch {
    // A browser that keeps nothing still shows it this once.
  }
}

customElements.define('true-size', TrueSize);
