export const worksWords = {
  title: 'Works cited',
  description: 'The books by which the pieces of this cabinet are described, and what each is cited for.',
  lead: 'The books by which the pieces are described, with the numbers cited from each, in the order of the book.',
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
