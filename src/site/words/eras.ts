export const erasWords = {
  title: 'Eras',
  description: 'The pieces of the cabinet under several era schemes, and where the schemes disagree.',
  lead: 'Authorities divide history differently. Each scheme is shown as it was published, and none is preferred. A piece is placed under every scheme that applies where it was made or found, and that has a period for its years.',
  none: 'There is no era scheme yet.',
  withoutPeriod: (count: number): string =>
    count === 1
      ? '1 piece is under no period of any of them'
      : `${String(count)} pieces are under no period of any of them`,
  withoutSays: ': made and found where none applies, or undated.',
  schemes: 'The schemes',
  schemesSay:
    'The periods of each scheme on one line of years. Where periods of a scheme overlap, or a name has no room, they are drawn one below the other.',
  piecesBelow:
    'Below the schemes every dated piece, from its earliest to its latest possible year. Hollow: the date is uncertain.',
  tableScheme: 'Scheme',
  tablePeriod: 'Period',
  tableYears: 'Years',
  tablePieces: 'Pieces',
  disagreements: 'Where schemes disagree',
  disagreementsLead:
    'A name in quotation marks is a period that several schemes know and give different years. The pieces under it fall in it by one scheme and not, or not wholly, by another.',
  noCommonName: (years: string): string => `Pieces of ${years}`,
  nameless: (count: number): string =>
    count === 1 ? 'One group of years under different names' : `${String(count)} groups of years under different names`,
  noDisagreements: 'The schemes agree about every piece here.',
  over: (pieces: string): string => `Concerns ${pieces}`,
  source: 'Source:',
  region: 'For:',
  ends: {
    inclusive: 'The first and the last year of a period both belong to it.',
    shared: 'A year in which one period ends and the next begins counts half to each.',
  },
  periodsOf: (title: string): string => `The periods of “${title}”`,
  schemeSays: (title: string): string =>
    `The periods of “${title}”, and under them every dated piece, from its earliest to its latest possible year. Hollow: the date is uncertain.`,
  pieces: 'The pieces, period by period',
  /** Of a piece in a period that does not hold all its years: where else it may belong. */
  orElse: (others: readonly string[]): string =>
    others.length === 0 ? 'or of years outside every period' : `or ${others.join(', or ')}`,
  notDrawn: (count: number): string =>
    count === 0
      ? ''
      : count === 1
        ? 'One piece of other years is not drawn here and is named at the end.'
        : `${String(count)} pieces of other years are not drawn here and are named at the end.`,
  outside: 'Outside every period',
  undated: 'Undated',
  notApplicable: 'Made elsewhere: the scheme does not apply',
  appliesTo: (places: readonly string[]): string => `Applies to pieces made or found in: ${places.join(', ')}.`,
  unfold: (pieces: string): string => `The ${pieces}`,
  perhapsMark: '*',
  perhapsNote: '* Only if it was made or found where the scheme applies, which is not known.',
  othersDisagree: 'Where the schemes disagree',
} as const;
