/** The first page. */
export const homeWords = {
  find: 'Find a piece',
  findHint: 'A ruler, a town, a word of the legend',
  go: 'Search',
  all: (pieces: string) => (/^1 /.test(pieces) ? pieces : `All ${pieces}`),
  onShow: 'On show',
  onward: (pieces: number, cases: number) =>
    `See the exhibit: ${pieces === 1 ? '1 piece' : `${pieces} pieces`} in ${cases === 1 ? '1 case' : `${cases} cases`}`,
  about: 'About this cabinet',
  rules: 'How this catalogue is kept',
  sets: 'Sets under way',
  places: 'places filled',
  wanted: (labels: readonly string[], more: number) =>
    `Wanted next: ${labels.join(', ')}${more > 0 ? ` and ${more} more` : ''}.`,
  complete: 'Every place is filled.',
  doubtful: (count: number) =>
    count === 1 ? 'One place is not filled for certain.' : `${count} places are not filled for certain.`,
  newest: 'Recently added',
} as const;
