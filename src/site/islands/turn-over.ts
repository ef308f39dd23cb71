/**
 * Turns the piece over in its place about its height, as a hand would to read its die axis: a copy of the reverse lies
 * behind the obverse, and the reverse beside it goes meanwhile. Where a visitor wants no motion the two change places at
 * once; without it both lie side by side.
 */
class TurnOver extends HTMLElement {
  connectedCallback(): void {
    const front = this.querySelector<HTMLElement>('[data-face="obverse"] .turns');
    const obverse = front?.firstElementChild ?? null;
    const beside = this.querySelector('[data-face="reverse"]');
    const reverse = beside?.querySelector('.turns > *') ?? null;
    const caption = this.querySelector<HTMLElement>('[data-face="obverse"] figcaption');
    const button = document.querySelector<HTMLButtonElement>('[data-turn-over]');
    const otherCaption = beside?.querySelector('figcaption')?.cloneNode(true);
    if (front === null || obverse === null || reverse === null || caption === null || button === null) return;
    if (!(otherCaption instanceof HTMLElement)) return;
    const { turn = '', back = '', turned = '' } = this.dataset;

    const behind = document.createElement('div');
    behind.className = 'behind';
    behind.ariaHidden = 'true';
    behind.append(reverse.cloneNode(true));

    const says = document.createElement('output');
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
    button.removeAttribute('data-waits');
    // Said where the reverse lay, so that nothing on the page moves.
    beside?.append(says);
  }
}

customElements.define('turn-over', TurnOver);
