/**
 * Makes the form of Find ready, and brings what searches only when somebody is about to ask: by an address, or by the first
 * touch of the form. It imports nothing beforehand, so that a visitor who looks through the list waits for nothing. Where an
 * address asks, its records are sent for at once, and the whole list, which would be thrown away, is not laid out; should
 * what searches not come, the list is back.
 */
const finder = document.querySelector<HTMLElement>('find-pieces');
const form = finder?.querySelector('form');

if (finder && form) {
  form.removeAttribute('data-waits');
  // On a phone all but the words waits behind one line, so that the pieces are not far.
  finder.querySelector('[data-narrow]')?.toggleAttribute('open', matchMedia('(width >= 40rem)').matches);
  finder.querySelector('[data-lists]')?.remove();
  form.addEventListener('submit', (event) => event.preventDefault());
  if (location.search === '') {
    for (const touched of ['focusin', 'pointerdown', 'input', 'submit']) {
      form.addEventListener(touched, () => begin(finder), { once: true });
    }
  } else {
    finder.toggleAttribute('data-asked', true);
    sendForRecords(finder);
    begin(finder);
  }
}

function begin(asked: HTMLElement): void {
  // Told by the list itself, which is whole.
  import('./find-pieces.ts').catch(() => asked.removeAttribute('data-asked'));
}

function sendForRecords(asked: HTMLElement): void {
  const records = asked.dataset['records'];
  // A copy in a folder has no server to fetch from.
  if (records === undefined || location.protocol === 'file:') return;
  const sent = fetch(records);
  // Told where it is awaited.
  sent.catch(() => null);
  Object.assign(asked, { sent });
}
