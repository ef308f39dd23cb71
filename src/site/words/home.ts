/** The first page. */
export const homeWords = {
  find: 'Find a piece',
  findHint: 'A ruler, a town, a word of the legend',
  go: 'Look',
  all: (pieces: string) => `All ${pieces}`,
  onShow: 'On show',
  onward: (pieces: number, cases: number) =>
    `${pieces === 1 ? 'The piece' : `All ${pieces} pieces`}, ${cases === 1 ? 'in one case' : `in ${cases} cases`}, with what is to be said of them`,
  about: 'About this cabinet',
  rules: 'How it is kept, and by what rules',
  sets: 'Sets under way',
  places: 'places filled',
  wanted: (labels: readonly string[], more: number) =>
    `Wanted next: ${labels.join(', ')}${more > 0 ? ` and ${more} more` : ''}.`,
  complete: 'Every place is filled.',
  doubtful: (count: number) =>
    count === 1
      ? 'One place is filled only possibly or for now.'
      : `${count} places are filled only possibly or for now.`,
  newest: 'Newest in the cabinet',
} as const;
