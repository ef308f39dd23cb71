import type { TypeRelation } from '../../core/types/concordance.ts';

const RELATION: Readonly<Record<TypeRelation, string>> = {
  equal: 'the same',
  close: 'nearly the same',
  broader: 'covers more',
  narrower: 'covers less',
  overlaps: 'overlaps',
};

/** Phrases of the pages of types. */
export const typesWords = {
  title: 'Types',
  description: 'What the pieces are specimens of: types as published books describe and number them.',
  lead: 'What the pieces are specimens of. Each type is described once, with its numbers in every book.',
  series: (types: number, pieces: number): string =>
    `${String(types)} types, ${pieces === 0 ? 'no piece here' : pieces === 1 ? 'one piece here' : `${String(pieces)} pieces here`}`,
  source: 'After',
  tree: 'The types',
  board: 'The pieces here',
  key: 'Identify a piece',
  keyLead: 'Which type is it?',
  concordance: 'Concordance',
  dies: 'Dies',
  none: 'The cabinet has no piece of this type.',
  here: (count: number): string => (count === 1 ? '1 piece' : `${String(count)} pieces`),
  facts: 'What is true of it',
  characters: 'What it shows',
  numbers: 'Its numbers',
  noNumbers: 'No number in any book is set down for it.',
  narrower: 'Its varieties',
  rarity: 'Published rarity',
  rarityOf: (scale: string, said: string, source: string | null, date: string | null): string =>
    `${said} (${scale}${source === null ? '' : `, ${source}`}${date === null ? '' : `, ${date}`})`,
  census: 'Known pieces',
  censusLead: 'As recorded. A grade is somebody’s opinion, so a place among them is a stretch and not a number.',
  standing: (title: string, place: string): string => `${title}: ${place}`,
  cannotCompare: (count: number): string =>
    count === 1 ? 'One of them cannot be compared with it.' : `${String(count)} of them cannot be compared with it.`,
  notGraded: 'grade not recorded',
  sameObject: 'the same piece as',
  after: (label: string): string => `as ${label}`,
  wholeSeries: 'as the whole series',
  relation: RELATION,
  column: {
    type: 'Type',
    book: 'Book',
    number: 'Number',
    relation: 'The number',
    sure: 'How sure',
    source: 'After',
    specimen: 'Specimen',
    grade: 'Grade',
  },
  unknown: 'not known',
  notApplicable: 'has none',
  or: ' or ',
  concordanceLead:
    'The numbers of each type in other books. “Covers more” means that the entry of the book holds other types besides; nothing is concluded from what is only nearly the same.',
  disputed: (number: string, types: string): string =>
    `${number} is given as the number of ${types}. It cannot be the number of each, so nothing is concluded from it.`,
  disagreements: 'Where the lines disagree',
  keyTable: 'The characters, type by type',
  keyTableLead: 'Without the questions: everything each type shows, to be read by eye.',
  ask: {
    question: 'Next question',
    why: (bits: string, seen: string): string => `It tells most now: ${bits} bit of what is still open${seen}.`,
    seen: (share: number): string => `, and can be seen on about ${String(Math.round(share * 100))} of 100 pieces`,
    cannotTell: 'I cannot tell',
    answer: 'Answer',
    several: 'Tick more than one when in doubt between them.',
    measure: { weight: 'Weight, with its unit', length: 'Length, with its unit' },
    legend: 'What can be read: letters, ? for one letter, * for any run',
    answered: 'Your answers',
    change: 'Change',
    takeBack: 'Take back',
    restart: 'Begin again',
    remaining: 'What remains',
    fit: (against: number, of: number): string =>
      against === 0
        ? `agrees with all ${String(of)} answers`
        : `${String(against)} of ${String(of)} answers speak against it`,
    strict: 'Strict: one answer against a type puts it out',
    found: (label: string): string => `Most likely ${label}.`,
    together: (labels: string): string => `${labels}: no character of this key separates them.`,
    nothingMore: 'No further question would tell much.',
    outside: 'Probably not in this list: too many answers speak against even the best of them.',
    greedy: 'The next question is always the one that tells most by itself; a cleverer order might need one fewer.',
    differ: 'How do these two differ?',
    differBy: (characters: string): string => `They differ in: ${characters}.`,
    differNot: 'No character of this key separates them.',
    sometimes: (label: string): string => `${label} (in some specimens)`,
    more: (count: number): string => `and ${String(count)} more, less likely`,
    others: 'Other questions',
    failed: 'The key could not be loaded. The table below holds everything it knows.',
    unread: 'This cannot be read.',
  },
  diesLead:
    'Which dies were used together. A line joins an obverse with each reverse it was struck with; dies without a line between their groups share nothing that is recorded.',
  noDies: 'No dies are recorded for this series.',
  group: (at: number, coins: number | null): string =>
    `Group ${String(at)}${coins === null ? '' : `: ${String(coins)} ${coins === 1 ? 'coin' : 'coins'} recorded`}`,
  joints: (dies: string): string => `Held together by ${dies}: without it, the group would fall apart.`,
  linkedTypes: (types: string): string => `The group links ${types}.`,
  coverage: (side: string, share: string, low: string, high: string, n: number, d: number): string =>
    `${side}: ${String(d)} dies on ${String(n)} coins. They struck about ${share} of the issue, with 95 per cent confidence between ${low} and ${high}.`,
  noInterval:
    'How many dies there once were is not given with an interval: the published ones miss the true number too often where it is known.',
  states: 'States of the dies',
  stateOrder: (die: string, order: string): string => `${die}: ${order}`,
  thenState: ', then ',
  orState: ' and (in no known order) ',
  chartSays: (group: number): string =>
    `The dies of group ${String(group)}: obverses above, reverses below, a line for each pair.`,
  pair: { obverse: 'Obverse', reverse: 'Reverse', types: 'Types', coins: 'Coins', here: 'Pieces here' },
  faceOf: { obverse: 'Obverses', reverse: 'Reverses' },
} as const;
