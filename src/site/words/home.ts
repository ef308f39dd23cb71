/** The first page. */
export const homeWords = {
  find: 'Find a piece',
  findHint: 'A ruler, a town, a word of the legend',
  go: 'Search',
  all: (pieces: string) => (/^1 /.test(pieces) ? pieces : `All ${pieces}`),
  onShow: 'On show',
  extent: (pieces: number, cases: number, isPart: boolean) =>
    `${pieces === 1 ? '1\u00a0piece' : `${pieces}\u00a0pieces`} in ${cases === 1 ? '1\u00a0case' : `${cases}\u00a0cases`}${isPart ? ', some of them here' : ''}`,
  about: 'About this cabinet',
  rules: 'How this catalogue is kept',
  sets: 'Sets under way',
  wanted: (labels: readonly string[], more: number) =>
    `Wanted next: ${labels.join(', ')}${more > 0 ? ` and ${more} more` : ''}.`,
  newest: 'Recently added',
} as const;
