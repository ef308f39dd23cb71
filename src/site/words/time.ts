/** Words on every time line. */
export const timeWords = {
  before: '‹',
  after: '›',
  key: 'A solid bar runs from the earliest to the latest possible year of a piece; a hollow bar is an uncertain date.',
  tenMillimetres: '10 mm',
  scaleSays: 'The pieces are drawn at one scale; the mark is as long as ten millimetres of them.',
  more: (count: number): string => `${String(count)} more not shown.`,
  all: 'See them all',
} as const;
