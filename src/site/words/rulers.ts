export const rulersWords = {
  title: 'Rulers',
  description: 'In whose names the pieces stand, reign by reign, with the rulers of whom the cabinet has nothing.',
  lead: 'Those in whose name the pieces stand, and those between them of whom there is nothing here. A half-high bar is a joint reign; a broken outline is a reign without a piece.',
  none: 'No ruler has been written down yet.',
  noCoins: 'struck no coins',
  listOf: (realm: string): string => `The rulers of ${realm}`,
  elsewhere: 'Other realms',
  reignless: 'Reign not recorded',
  otherNames: (names: readonly string[]): string => `Also called ${names.join(', ')}.`,
  reigns: 'Reigns',
  reignOf: (realm: string): string => `Ruled: ${realm}.`,
  reign: (name: string, at: number, of: number): string =>
    of === 1 ? name : `${name}, ${['first', 'second', 'third', 'fourth', 'fifth'][at] ?? `${String(at + 1)}th`} reign`,
  with: (names: string): string => `with ${names}`,
  and: (names: readonly string[]): string =>
    names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1) ?? ''}`,
  source: 'Source:',
  timeSays:
    'The reign above, pale where it was held alone and half as high where it was shared; under it the pieces, each from the earliest to the latest year it may belong to.',
  groups: {
    own: 'In this name',
    forOther: 'In this name, struck for another',
    inOther: 'Struck for this ruler, in another’s name',
  },
  forWhom: (names: string): string => `struck for ${names}`,
  inWhose: (names: string): string => `in the name of ${names}`,
  withWhom: (names: string): string => `with ${names}`,
  nothing: 'The cabinet has no piece in this name, and none struck for this ruler.',
  gaps: (years: readonly string[]): string => `No piece here can belong to ${years.join(', ')}.`,
  noGaps: 'There is no year of the reign to which no piece here could belong.',
} as const;
