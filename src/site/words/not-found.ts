export const notFoundWords = {
  title: 'An empty well',
  says: 'Nothing lies at this address. A piece keeps its address for good, so the link you followed may hold a slip.',
  find: 'Look through the pieces',
} as const;
