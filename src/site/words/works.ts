export const worksWords = {
  title: 'Works cited',
  description:
    'The books that this cabinet cites for its pieces, sets, exhibits and lists, and what each is cited for.',
  lead: 'The books cited for the pieces, the sets and the exhibits, with the numbers cited from each, in the order of the book. The sources of the standards and other lists come last.',
  jump: 'By the first letter of the author',
  none: 'No work is cited yet.',
  cited: (count: number): string => (count === 1 ? 'Cited for 1 piece' : `Cited for ${String(count)} pieces`),
  citedFrom: (book: string): string => `Cited from ${book}`,
  page: (title: string, page: number): string => `${title}, page ${String(page)}`,
  inOrder: 'Every number cited from this book, in its own order.',
  behindTitle: 'Sources of the lists',
  behindLead:
    'Not cited for a piece, a set or an exhibit: the sources of the lists of rulers, mints, standards and eras.',
  alsoIn: 'Cited by',
  set: (title: string): string => `the set “${title}”`,
  exhibit: (title: string): string => `the exhibit “${title}”`,
  short: (name: string): string => `Cited as ${name}.`,
  read: 'Read online',
} as const;
