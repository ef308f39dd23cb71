import type { EraPlacing } from '../../core/eras/place-in-scheme.ts';

export const erasWords = {
  title: 'Eras',
  description: 'The pieces of the cabinet under several ways to cut up time, and where those ways disagree.',
  lead: 'No two authorities cut up time alike. Each scheme is kept as it was printed, every piece is placed under all of them, and none is preferred.',
  none: 'No era scheme has been written down yet.',
  schemes: 'The schemes',
  schemesSay:
    'The periods of each scheme on one line of years. Where periods of one scheme overlap they lie above one another; where it has none, the line is bare.',
  tableScheme: 'Scheme',
  tablePeriod: 'Period',
  tableYears: 'Years',
  tablePieces: 'Pieces',
  quarrels: 'Where they disagree',
  quarrelsLead: (pieces: string): string =>
    `Two schemes disagree over a piece when both use one name and give it different years, or when one has a period for it and the other has none. They do so over ${pieces}, gathered here by the quarrel.`,
  noQuarrels: 'The schemes agree about every piece here, as far as they speak of it.',
  over: (pieces: string, years: string): string => `Over ${pieces}, ${years}`,
  says: {
    within: '',
    straddles: 'cut through: ',
    outside: 'no period',
    unknown: 'undated',
  } satisfies Record<EraPlacing['state'], string>,
  source: 'Source:',
  region: 'For:',
  ends: {
    inclusive: 'The first and the last year of a period belong to it whole.',
    shared: 'A year in which one period ends and the next begins belongs half to each.',
  },
  periodsOf: (title: string): string => `The periods of “${title}”`,
  schemeSays: (title: string): string =>
    `The periods of “${title}”, and under them every dated piece from the earliest to the latest year it may belong to. Hollow: a date the keeper is not sure of.`,
  pieces: 'The pieces, period by period',
  share: (share: number | null): string | null =>
    share === null
      ? 'how much of its years falls here is not known'
      : share === 1
        ? null
        : share < 0.005
          ? 'hardly any of its years'
          : `${String(Math.round(share * 100))} in a hundred of its years`,
  outside: 'Outside every period',
  undated: 'Undated',
  othersDisagree: 'Where the schemes disagree',
} as const;
