const DOTS =
  'A filled dot has pieces here, a broken ring only pieces whose mint is doubtful, a hollow dot none; the larger, the more.';

export const mintsWords = {
  title: 'Mints',
  description: 'Where the pieces were made: maps, names through time, and the pieces of each mint.',
  lead: 'Where the pieces were made. The maps show coastlines only, because borders have changed since.',
  none: 'There is no mint yet.',
  mapSays: (count: number): string =>
    `All ${String(count)} mints whose place is known; those close together are one dot.`,
  closeSays: (count: number): string => `The ${String(count)} mints that are close together.`,
  /** What a dot on the maps means, each drawn beside its words. */
  dots: [
    { held: 'yes', says: 'pieces here' },
    { held: 'maybe', says: 'only pieces whose mint is doubtful' },
    { held: 'no', says: 'no piece here' },
  ],
  larger: 'The larger a dot, the more pieces.',
  column: { mint: 'Mint', at: 'North, east', pieces: 'Pieces here' },
  unplaced: (names: readonly string[]): string | null =>
    names.length === 0
      ? null
      : `On no map, because no place is entered for ${names.length === 1 ? 'it' : 'them'}: ${names.join('; ')}.`,
  list: 'List of mints',
  elsewhere: 'Area not recorded',
  names: 'Names',
  namesSay:
    'Names through time and, below, the years in which the mint was active, as far as they are known. A hollow bar has an end that is only about known; › goes on.',
  since: (year: string): string => `from ${year}`,
  about: (years: string): string => `about ${years}`,
  fromTo: (from: string, to: string): string => `from ${from} to ${to}`,
  ofRealm: (name: string, realm: string): string => `${name} (${realm})`,
  struck: 'Struck coins',
  noNames: 'years not recorded',
  made: 'The pieces on a line of years',
  board: 'The pieces',
  nothing: 'None of this mint in this cabinet.',
  unsure: (how: string): string => `mint ${how}`,
  source: 'Source:',
  where: (area: string): string => `${area}.`,
  mapOf: (name: string): string => `${name}, ringed, and the mints around it. ${DOTS}`,
  rulers: 'In the name of',
  issuers: 'Responsible for them, in a ruler’s name or in nobody’s:',
  degrees: (north: number, east: number): string =>
    `${Math.abs(north).toFixed(2)}° ${north < 0 ? 'S' : 'N'}, ${Math.abs(east).toFixed(2)}° ${east < 0 ? 'W' : 'E'}`,
  others: 'Pieces without a known mint are not on these pages.',
} as const;
