export const notFoundWords = {
  title: 'An empty well',
  says: 'There is no page at this address. A piece keeps its address for good, so the link you followed may be mistyped.',
  find: 'See all pieces',
} as const;
