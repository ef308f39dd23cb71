/** Words on every time line. */
export const timeWords = {
  before: '‹',
  after: '›',
  key: 'A solid bar runs from the earliest year to the latest that a piece may belong to; a hollow one is a date the keeper is not sure of.',
  more: (count: number): string => `And ${String(count)} more.`,
  all: 'All of them, to search and sort',
} as const;
