/** Lays a copy of the reverse behind the obverse and turns the two over together. Without it both lie side by side. */
class TurnOver extends HTMLElement {
  connectedCallback(): void {
    const front = this.querySelector('[data-face="obverse"] .turns');
    const reverse = this.querySelector('[data-face="reverse"] .turns > *');
    const { turn = '', back = '', turned = '' } = this.dataset;
    if (front === null || reverse === null) return;

    const behind = document.createElement('div');
    behind.className = 'behind';
    behind.ariaHidden = 'true';
    behind.append(reverse.cloneNode(true));

    const name = this.querySelector('[data-face="obverse"] [data-name]');
    const obverseName = name?.textContent ?? '';
    const reverseName = this.querySelector('[data-face="reverse"] [data-name]')?.textContent ?? '';

    const button = document.createElement('button');
    const says = document.createElement('output');
    button.type = 'button';
    button.textContent = turn;
    button.addEventListener('click', () => {
      if (!behind.isConnected) front.append(behind);
      // The copy has to be laid out before it can move.
      front.getBoundingClientRect();
      const isTurned = front.classList.toggle('turned');
      button.textContent = isTurned ? back : turn;
      says.textContent = isTurned ? turned : '';
      if (name !== null) name.textContent = isTurned ? reverseName : obverseName;
    });
    this.append(button, says);
  }
}

customElements.define('turn-over', TurnOver);
