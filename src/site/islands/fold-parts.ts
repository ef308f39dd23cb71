/**
 * Folds the parts of a long page: those marked `data-fold="narrow"` on a phone, those marked `data-fold="always"`
 * anywhere. They are written open, so that without a script nothing is hidden, and opened when a link leads into one
 * and for printing.
 */
const parts = document.querySelectorAll<HTMLDetailsElement>('details[data-fold]');
const isNarrow = matchMedia('(width < 44rem)').matches;

function openTarget(): void {
  const target = location.hash.length > 1 ? document.getElementById(decodeURIComponent(location.hash.slice(1))) : null;
  const part = target?.closest<HTMLDetailsElement>('details[data-fold]');
  if (target === null || part === null || part === undefined || part.open) return;
  part.open = true;
  target.scrollIntoView();
}

for (const part of parts) part.open = part.dataset['fold'] === 'narrow' && !isNarrow;
openTarget();
window.addEventListener('hashchange', openTarget);
window.addEventListener('beforeprint', () => {
  for (const part of parts) part.open = true;
});
