/**
 * Lays a copy of the reverse behind the obverse and turns the two over together about the height of the piece, as a hand
 * would to read its die axis. Without it, and where a visitor wants no motion, both lie side by side.
 */
class TurnOver extends HTMLElement {
  connectedCallback(): void {
    const front = this.querySelector<HTMLElement>('[data-face="obverse"] .turns');
    const obverse = front?.firstElementChild ?? null;
    const reverse = this.querySelector('[data-face="reverse"] .turns > *');
    const caption = this.querySelector<HTMLElement>('[data-face="obverse"] figcaption');
    const place = this.querySelector('[data-turn-here]');
    const otherCaption = this.querySelector('[data-face="reverse"] figcaption')?.cloneNode(true);
    if (front === null || obverse === null || reverse === null || caption === null || place === null) return;
    if (!(otherCaption instanceof HTMLElement)) return;
    const { turn = '', back = '', turned = '' } = this.dataset;

    const behind = document.createElement('div');
    behind.className = 'behind';
    behind.ariaHidden = 'true';
    behind.append(reverse.cloneNode(true));

    const button = document.createElement('button');
    const says = document.createElement('output');
    button.type = 'button';
    button.className = 'worded plain';
    button.textContent = turn;
    const turnOver = (isTurned: boolean): void => {
      if (isTurned === front.classList.contains('turned')) return;
      if (!behind.isConnected) {
        front.append(behind);
        caption.after(otherCaption);
      }
      // The copy has to be laid out before it can move.
      front.getBoundingClientRect();
      front.classList.toggle('turned', isTurned);
      button.textContent = isTurned ? back : turn;
      says.textContent = isTurned ? turned : '';
      obverse.ariaHidden = String(isTurned);
      behind.ariaHidden = String(!isTurned);
      caption.hidden = isTurned;
      otherCaption.hidden = !isTurned;
    };
    button.addEventListener('click', () => turnOver(!front.classList.contains('turned')));
    matchMedia('(prefers-reduced-motion: reduce)').addEventListener('change', ({ matches }) => {
      if (matches) turnOver(false);
    });
    place.append(button);
    this.append(says);
  }
}

customElements.define('turn-over', TurnOver);
