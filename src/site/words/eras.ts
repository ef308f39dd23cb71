export const erasWords = {
  title: 'Eras',
  description: 'The pieces of the cabinet under several era schemes, and where the schemes disagree.',
  lead: 'Authorities divide history differently. Each scheme is shown as it was published, and none is preferred. A piece is placed under every scheme that applies where it was made or found, by its ruler where the scheme goes by rulers, else by its years.',
  /** A scheme by a letter, so that it need be named once only: `A`; the twenty-seventh is `A2`. */
  letter: (at: number): string =>
    String.fromCharCode(65 + (at % 26)) + (at < 26 ? '' : String(Math.floor(at / 26) + 1)),
  rowsSay:
    'Each band is a period on one line of years, each mark in it a piece or several. A row leads to its pieces, and to the reason of a count such as 2 to 3.',
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
    'A name in quotation marks is a period that several schemes know and give different years. The pieces under it fall in it by one scheme and not, or not wholly, by another. Each scheme is called by its letter.',
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
  schemeSays:
    'The periods, and under them every dated piece, from its earliest to its latest possible year. Hollow: the date is uncertain.',
  pieces: 'The pieces, period by period',
  piecesSay: 'All at one scale, oldest first. What is not certain of a period is named under it, with the reason.',
  /** Why a piece may not be of a period, to follow “because”. */
  doubt: {
    years: (others: readonly string[]): string =>
      others.length === 0 ? 'its years run beyond the period' : `its years also fit ${others.join(' or ')}`,
    place: 'it is not known to be made or found where the scheme applies',
    date: 'its date is doubtful',
    kind: 'what it is is doubtful',
  },
  /** Under a piece. */
  notCertain: (reason: string): string => `Not certain: ${reason}`,
  /** Under the name of a period, of all pieces that are doubtful for one reason. */
  notCertainOf: (count: number, of: number, reason: string): string =>
    of === 1
      ? `Not certain, because ${reason}`
      : count === 1
        ? `One of them is not certain, because ${reason}`
        : `${String(count)} are not certain, each because ${reason}`,
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
  unfold: (pieces: string): string => `Show the ${pieces}`,
  othersDisagree: 'Where the schemes disagree',
} as const;
