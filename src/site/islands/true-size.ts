const REMEMBERED = 'device-pixels-a-millimetre';

/** A first guess at the pixels a millimetre: of a screen on a desk, and of one in the hand. */
const GUESS = { desk: 3.78, hand: 6 } as const;

/** Shows the piece as large as it is, once a card or ruler has told how long a millimetre is on this screen. */
class TrueSize extends HTMLElement {
  #isShown = false;
  /** Pixels of the device a millimetre: those of the page change when it is magnified. Null until it was measured. */
  #measured = remembered();

  connectedCallback(): void {
    const show = this.querySelector<HTMLButtonElement>('[data-show]');
    const adjust = this.querySelector<HTMLButtonElement>('[data-adjust]');
    const forget = this.querySelector<HTMLButtonElement>('[data-forget]');
    const measure = this.querySelector<HTMLElement>('.measure');
    const slider = this.querySelector('input');
    const says = this.querySelector('output');
    if (show === null || adjust === null || forget === null) return;
    if (measure === null || slider === null || says === null) return;
    const larger = { back: show.dataset['larger'] ?? '', show: show.textContent };

    const render = (): void => {
      const millimetre = this.#measured === null ? null : this.#measured / devicePixelRatio;
      const root = document.documentElement.style;
      if (this.#isShown && millimetre !== null) root.setProperty('--piece-scale', `${rounded(millimetre)}px`);
      else root.removeProperty('--piece-scale');
      show.textContent = this.#isShown ? larger.back : larger.show;
      says.textContent = this.#isShown ? (says.dataset['says'] ?? '') : '';
      adjust.hidden = this.#measured === null;
      forget.hidden = this.#measured === null;
    };
    const draw = (millimetre: number): void => {
      slider.value = String(millimetre);
      measure.style.setProperty('--screen-millimetre', `${slider.value}px`);
    };
    const begin = (): void => {
      const guess = matchMedia('(pointer: coarse)').matches ? GUESS.hand : GUESS.desk;
      draw(this.#measured === null ? guess : this.#measured / devicePixelRatio);
      measure.hidden = false;
      slider.focus();
    };
    const end = (): void => {
      measure.hidden = true;
      render();
      show.focus();
    };
    const on = (name: string, act: () => void): void => {
      this.querySelector(`[data-${name}]`)?.addEventListener('click', act);
    };
    on('show', () => {
      if (this.#measured === null) {
        begin();
        return;
      }
      this.#isShown = !this.#isShown;
      render();
    });
    on('adjust', begin);
    on('leave', end);
    on('done', () => {
      // Fingers may have magnified the page while a card lay on it.
      this.#measured = Number(slider.value) * devicePixelRatio * (visualViewport?.scale ?? 1);
      this.#isShown = true;
      remember(this.#measured);
      end();
    });
    on('forget', () => {
      this.#measured = null;
      this.#isShown = false;
      remember(null);
      end();
    });
    for (const step of this.querySelectorAll<HTMLElement>('[data-step]'))
      step.addEventListener('click', () => draw(Number(slider.value) + Number(step.dataset['step'])));
    slider.addEventListener('input', () => draw(Number(slider.value)));
    measure.addEventListener('keydown', ({ key }) => {
      if (key === 'Escape') end();
    });
    addEventListener('resize', render);
    render();
    this.hidden = false;
  }
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
