import type { GridFact } from '../../core/sets/grid.ts';
import type { PlaceState, Wanted } from '../../core/sets/set-state.ts';

/** What a visitor reads on the pages of sets. */
export const setsWords = {
  title: 'Sets',
  titleOfPage: (page: number): string => `Sets, page ${String(page)}`,
  placesOf: (title: string, page: number): string => `${title}, page ${String(page)} of its places`,
  placesFrom: (from: number, to: number, of: number): string =>
    `Places ${String(from)} to ${String(to)} of ${String(of)}.`,
  placesOnPages: 'The places go on over several pages; the list of what is wanted has all of them on one.',
  morePlaces: (count: number): string => `and ${String(count)} more`,
  moreInData: (count: number): string => `${String(count)} more, in the set’s file of data.`,
  description: 'The sets of this cabinet: the rule of each, and how complete it is.',
  lead: 'Each set has a written rule and a list of places. Here are the pieces that have come so far and, as rounds of paper of their size, those that are wanted.',
  none: 'No set has been written down yet.',
  placesSay: (of: number, tally: string): string => `${of === 1 ? '1 place' : `${String(of)} places`}: ${tally}.`,
  countLeavesOut: (count: number): string =>
    count === 1
      ? 'One more place cannot be filled and is not counted.'
      : `${String(count)} more places cannot be filled and are not counted.`,
  countReaches: (high: number): string =>
    `Certain pieces were laid first; laid otherwise, up to ${String(high)} places could have one, not all certain.`,
  state: {
    filled: 'filled',
    possible: 'not certain',
    filler: 'filler',
    wanted: 'wanted',
    excused: 'cannot be filled',
  } satisfies Record<PlaceState['state'], string>,
  fillerFor: (problem: string): string => `filler: ${problem}`,
  tally: {
    filled: (count: number): string =>
      count === 1 ? '1\u00a0has its piece' : `${String(count)}\u00a0have their piece`,
    possible: (count: number): string => `${String(count)}\u00a0not certain`,
    filler: (count: number): string => (count === 1 ? '1\u00a0filler' : `${String(count)}\u00a0fillers`),
    wanted: (count: number): string => `${String(count)}\u00a0wanted`,
    excused: (count: number): string => `${String(count)}\u00a0cannot be filled`,
  } satisfies Record<PlaceState['state'], (count: number) => string>,
  /** What lies on the board beside pieces. */
  marks: [
    {
      state: 'possible',
      mark: 'not certain',
      says: 'a broken ring: the piece is only probably or possibly what is asked for',
    },
    { state: 'filler', mark: 'filler', says: 'half a ring: a piece with a problem, until a better one comes' },
    { state: 'wanted', mark: 'wanted', says: 'a round of paper, as large as the nearest pieces of the set' },
    {
      state: 'excused',
      mark: 'cannot be filled',
      says: 'a dot: nothing was made for this place, or nothing is known; the reason is given, and it is not counted',
    },
  ] satisfies readonly { state: PlaceState['state']; mark: string; says: string }[],
  toCite: 'Cite this set',
  pictureSays: (titles: readonly string[]) => `On a board, at one scale: ${titles.join('; ')}.`,
  gridOf: (rows: string, columns: string): string => `By ${rows} and ${columns}`,
  gridSays:
    'All pieces that fit, drawn so small that every column is on the board. An empty cell says only that nothing is here, not that such a piece was ever made.',
  gridFacts: {
    ruler: 'ruler', dynasty: 'dynasty', mint: 'mint', area: 'area', issuer: 'issuer', denomination: 'denomination',
    metal: 'metal', type: 'type', kind: 'kind', realm: 'realm',
  } satisfies Record<GridFact, string>, // prettier-ignore
  gridPossibleMark: 'A broken ring: the piece is only probably or possibly of this place.',
  gridPossible: (title: string): string => `${title}, possibly here`,
  gridMore: (count: number): string => `${String(count)} more`,
  notRecorded: 'not recorded',
  rule: 'The rule',
  sources: 'Source of the list',
  aim: (grade: string, scale: string): string => `Target grade: ${grade} on the ${scale} scale.`,
  trayOf: (title: string): string => `The places of the set: ${title}`,
  places: 'What lies where, and why',
  place: 'Place',
  others: 'Also fits:',
  othersMore: (count: number): string => `and ${String(count)} more`,
  more: (count: number): string => `Show ${String(count)} more`,
  upgrades: 'One piece for another',
  upgradesMade: 'A better piece, or one that may be better, has taken the place of another:',
  upgradesOpen: 'A piece in the cabinet may be better than the one in its place:',
  upgrade: (place: string, certain: boolean): string => `${place}, ${certain ? 'certainly' : 'possibly'} better`,
  insteadOf: 'instead of',
  spares: 'Others that would fit',
  leftOut: 'Left out',
  leftOutLead: 'These would fit, except for one thing.',
  wantedNext: 'Wanted next',
  toBetter: 'A better one wanted',
  toBetterSays: 'These places have a piece, and a better or a certain one is looked for:',
  wantedList: 'The wanted list, to print',
  /** Where no place is empty. */
  toBetterList: 'The list of these, to print',
  scale: 'The pieces are drawn at half the scale of the boards.',
  wantedNone: 'Nothing is wanted: every place that can be filled is filled.',
  json: 'The set as data (JSON)',
  history: 'Year by year',
  historySays: (title: string, marks: ReadonlySet<PlaceState['state']>): string =>
    [
      `The places of “${title}” by the year in which the piece came that lies there now.`,
      ...(marks.has('possible') ? ['A broken ring: not certain.'] : []),
      ...(marks.has('filler') ? ['Half a ring: a filler, which does not count.'] : []),
    ].join(' '),
  historyYear: 'Year',
  historyCame: 'Places that got their piece',
  historyUndated: 'Year not recorded',
  wantedTitle: (title: string): string => `Wanted: ${title}`,
  wantedDescription: (title: string): string =>
    `What is still missing from the set “${title}”, to print and take along.`,
  wantedLead: 'To print and take along. It has no prices of ours, and nothing that shows what the cabinet is worth.',
  wantedKeeper: (keeper: string): string => `For ${keeper}`,
  wantedWhy: {
    empty: 'Empty places',
    filler: 'Filler: a piece without problems is wanted',
    possible: 'Not filled for certain; a certain one is wanted',
    'below the aim': 'Below the target grade',
  } satisfies Record<Wanted['why'], string>,
  wantedHere: 'In the cabinet',
  wantedNothing: 'none in this cabinet',
  wantedElsewhere: (count: number): string =>
    count === 1 ? 'one that may fit, needed elsewhere' : `${String(count)} that may fit, needed elsewhere`,
  wantedSeen: 'Seen (where, when, price)',
  back: 'Back to the set',
} as const;
