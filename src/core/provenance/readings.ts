/** How a provenance is printed, for a visitor's table. After the American Alliance of Museums, *Guide to Provenance Research* (2001). */
export const PROVENANCE_READINGS: readonly { readonly write: string; readonly means: string }[] = [
  { write: 'A; B', means: 'it passed directly from A to B' },
  { write: 'A. B', means: 'B had it after A, but how it came from one to the other is not known' },
  { write: '(A)', means: 'A was a dealer or a saleroom' },
  { write: 'possibly A', means: 'it is not certain that A had it' },
];
