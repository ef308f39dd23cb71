export const worksWords = {
  title: 'Works cited',
  description:
    'The books that this cabinet cites for its pieces, sets, exhibits and lists, and what each is cited for.',
  lead: 'The books cited for the pieces, the sets and the exhibits, with the numbers cited from each, in the order of the book. The sources of the standards and other lists come last.',
  jump: 'By the first letter of the author',
  none: 'No work is cited yet.',
  /** For what a book is cited: `Cited for 42 pieces, 4 sets and 1 exhibit`. */
  cited: (pieces: number, sets: number, exhibits: number): string => {
    const counted = [
      [pieces, 'piece'],
      [sets, 'set'],
      [exhibits, 'exhibit'],
    ] as const;
    const parts = counted.flatMap(([count, of]) =>
      count === 0 ? [] : [`${String(count)} ${of}${count === 1 ? '' : 's'}`],
    );
    return `Cited for ${new Intl.ListFormat('en-GB').format(parts)}`;
  },
  letterId: (letter: string): string => `letter-${letter.toLowerCase()}`,
  citedFrom: (book: string): string => `Cited from ${book}`,
  page: (title: string, page: number): string => `${title}, page ${String(page)}`,
  inOrder: 'Every number cited from this book, in its own order.',
  behindTitle: 'Sources of the lists',
  behindLead:
    'Not cited for a piece, a set or an exhibit: the sources of the lists of rulers, mints, standards and eras.',
  text: (title: string): string => `Text of “${title}”`,
  set: (title: string): string => `Set “${title}”`,
  exhibit: (title: string): string => `Exhibit “${title}”`,
  short: (name: string): string => `Cited as ${name}.`,
  read: 'Read online',
} as const;
