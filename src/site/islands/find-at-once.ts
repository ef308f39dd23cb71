/**
 * Where the address asks for something, its records are sent for before the script that searches them has come, and the
 * whole list, which would be thrown away, is not laid out. It imports nothing, so that nothing is waited for. Should the
 * script that searches not come, the list is back.
 */
const finder = document.querySelector<HTMLElement>('find-pieces');
const records = finder?.dataset['records'];

if (finder !== null && location.search !== '') {
  finder.toggleAttribute('data-asked', true);
  addEventListener('load', () => {
    if (customElements.get('find-pieces') === undefined) finder.removeAttribute('data-asked');
  });
  // A copy in a folder has no server to fetch from.
  if (records !== undefined && location.protocol !== 'file:') {
    const sent = fetch(records);
    // Told where it is awaited.
    sent.catch(() => null);
    Object.assign(finder, { sent });
  }
}
