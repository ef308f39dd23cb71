export const notFoundWords = {
  title: 'Page not found',
  says: 'There is no page at this address. A piece keeps its address for good, so the link you followed may be mistyped.',
  find: 'See all pieces',
  withdrawn: 'Withdrawn',
  withdrawnSays: 'What stood at this address has been withdrawn by the keeper.',
  moved: 'Moved',
  movedSays: 'What stood at this address has a new one.',
  follow: 'Go to the new address',
} as const;
