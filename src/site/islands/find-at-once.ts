/**
 * Where the address asks for something, its records are sent for before the script that searches them has come, and the
 * whole list, which would be thrown away, is not laid out. Should the script not come, the list is back.
 */
const finder = document.querySelector<HTMLElement>('find-pieces');
const isAsked = location.search !== '';
const records = finder?.dataset['records'];
if (isAsked) finder?.toggleAttribute('data-asked', true);

// A copy in a folder has no server to fetch from.
const begun = isAsked && records !== undefined && location.protocol !== 'file:' ? fetch(records) : null;
// Told where it is awaited, if anywhere.
begun?.catch(() => null);

import('./find-pieces.ts')
  .then(({ findPieces }) => findPieces(begun))
  .catch(() => finder?.removeAttribute('data-asked'));
