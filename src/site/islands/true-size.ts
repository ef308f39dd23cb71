const REMEMBERED = 'pixels-a-millimetre';

/** Shows the piece as large as it is, once a card or ruler has told how long a millimetre is on this screen. */
class TrueSize extends HTMLElement {
  #isShown = false;

  connectedCallback(): void {
    const show = this.querySelector<HTMLButtonElement>('[data-show]');
    const adjust = this.querySelector<HTMLButtonElement>('[data-adjust]');
    const measure = this.querySelector<HTMLElement>('.measure');
    const slider = this.querySelector('input');
    const done = this.querySelector('[data-done]');
    if (show === null || adjust === null || measure === null || slider === null || done === null) return;
    const larger = { back: show.dataset['larger'] ?? '', show: show.textContent };

    const render = (): void => {
      const pixels = remembered();
      const root = document.documentElement.style;
      if (this.#isShown && pixels !== null) root.setProperty('--piece-scale', `${pixels}px`);
      else root.removeProperty('--piece-scale');
      show.textContent = this.#isShown ? larger.back : larger.show;
      adjust.hidden = pixels === null || !this.#isShown;
    };
    const begin = (): void => {
      slider.value = String(remembered() ?? slider.value);
      measure.hidden = false;
      measure.style.setProperty('--screen-millimetre', `${slider.value}px`);
      slider.focus();
    };
    show.addEventListener('click', () => {
      if (remembered() === null) {
        begin();
        return;
      }
      this.#isShown = !this.#isShown;
      render();
    });
    adjust.addEventListener('click', begin);
    slider.addEventListener('input', () => {
      measure.style.setProperty('--screen-millimetre', `${slider.value}px`);
    });
    done.addEventListener('click', () => {
      remember(slider.value);
      measure.hidden = true;
      this.#isShown = true;
      render();
      show.focus();
    });
    this.hidden = false;
  }
}

/** Pixels a millimetre on this screen; null when it was never measured or nothing may be kept here. */
function remembered(): number | null {
  try {
    const pixels = Number(localStorage.getItem(REMEMBERED));
    return pixels > 0 ? pixels : null;
  } catch {
    return null;
  }
}

function remember(pixels: string): void {
  try {
    localStorage.setItem(REMEMBERED, pixels);
  } catch {
    // A browser that keeps nothing still shows it this once.
  }
}

customElements.define('true-size', TrueSize);
