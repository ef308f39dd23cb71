import type { Character, Shown } from '../../core/types/key/character.ts';
import type { TypeRelation } from '../../core/types/concordance.ts';

const RELATION: Readonly<Record<TypeRelation, string>> = {
  equal: 'the same type',
  close: 'nearly the same',
  broader: 'covers more than this type',
  narrower: 'covers a part of this type',
  overlaps: 'overlaps',
};

/** `a, b or c`. */
const EITHER = new Intl.ListFormat('en-GB', { type: 'disjunction' });
/** `a and b`. */
const BOTH = new Intl.ListFormat('en-GB', { type: 'conjunction' });
/** More issues than this are counted and not named. */
const MOST_NAMED = 6;
const NOT_KNOWN = 'not known';
const HAS_NONE = 'has none';
const OR = ' or ';

/** What a type shows of a character, in the words of the key. */
function shownWords(shown: Shown, { kind, states }: Pick<Character, 'kind' | 'states'>): string {
  switch (shown.shows) {
    case 'unknown':
      return NOT_KNOWN;
    case 'nothing':
      return HAS_NONE;
    case 'states':
      return statesInWords(shown, (id) => states.find((state) => state.id === id)?.label ?? id);
    case 'legend':
      return EITHER.format(shown.legends);
    case 'measure': {
      const unit = kind === 'length' ? 'mm' : 'g';
      return shown.low === shown.high ? `${shown.low} ${unit}` : `${shown.low}–${shown.high} ${unit}`;
    }
  }
}

/** `nothing or a star`; `nothing, seldom an annulet`. */
function statesInWords(
  { states, seldom = [] }: Extract<Shown, { shows: 'states' }>,
  label: (id: string) => string,
): string {
  const usual = states.filter((state) => !seldom.includes(state)).map(label);
  const few = seldom.map(label);
  if (few.length === 0 || usual.length === 0) return EITHER.format(states.map(label));
  return `${EITHER.format(usual)}, seldom ${EITHER.format(few)}`;
}

/** A name within a sentence: `The crown` becomes `the crown`. */
export function lowered(label: string): string {
  return /^\p{Lu}\p{Ll}/u.test(label) ? `${label.charAt(0).toLowerCase()}${label.slice(1)}` : label;
}

/** Phrases of the pages of types. */
export const typesWords = {
  title: 'Types',
  description: 'What the pieces are specimens of: types as published books describe and number them.',
  lead: 'What the pieces are specimens of. Each series here is described type by type, with the numbers of its types in several books. Pieces of other series have no types here.',
  series: (types: number, pieces: number): string =>
    `${String(types)} types, ${pieces === 0 ? 'none in this cabinet' : pieces === 1 ? 'one piece here' : `${String(pieces)} pieces here`}`,
  source: 'After',
  seeAlso: 'Not used for this list, and to be looked at for more:',
  outside: 'Not in this list, though the key can lead to them:',
  tree: 'All types as a list',
  board: 'Also here',
  /** The mark of a type on a piece of it, through the glass. */
  onPiece: (label: string, piece: string): string => `${label}, on ${piece}`,
  known: 'What it is known by',
  common: (count: number): string =>
    count === 1 ? 'One more mark, which many types share' : `${String(count)} more marks, which many types share`,
  open: (labels: readonly string[]): string => `Not described here: ${BOTH.format(labels.map(lowered))}.`,
  leftOpen: 'Left open by the list',
  sharedFacts: 'What the whole series shares',
  levelOf: (level: string, above: string | null): string =>
    `${level.charAt(0).toUpperCase()}${level.slice(1)}${above === null ? '' : ` of ${above}`}`,
  tray: (title: string): string => `${title}: a well for each type`,
  traySays: (isDrawn: boolean): string =>
    `${isDrawn ? 'In an empty well are the marks by which its type is known. ' : ''}A broken rim: a piece that is only possibly of the type.`,
  noneHere: 'none here',
  notes: 'What the list rests on',
  page: (page: number): string => `page ${String(page)}`,
  more: (count: number): string => `and ${String(count)} more.`,
  allTypes: (count: number): string =>
    count === 1 ? 'It is among the types of the series.' : `All ${String(count)} are among the types of the series.`,
  key: 'Identify your piece',
  concordance: 'Concordance',
  dies: 'Dies',
  none: 'The cabinet has no piece of this type.',
  seen: 'See this piece',
  here: (count: number, certain = count): string =>
    certain === count
      ? `${String(count)} ${count === 1 ? 'piece' : 'pieces'}`
      : certain === 0
        ? `possibly ${String(count)} ${count === 1 ? 'piece' : 'pieces'}`
        : `${String(certain)} to ${String(count)} pieces`,
  facts: 'Facts',
  numbers: 'Numbers in the books',
  noNumbers: 'No number in any book is set down for it.',
  narrower: 'Its varieties',
  rarity: 'Rarity',
  census: 'Pieces recorded',
  censusLead: (sources: readonly string[]): string =>
    `Those that this list records, not all that exist${sources.length === 1 ? `; the source of each: ${sources.join('')}` : ''}.`,
  censusRows: (count: number): string => (count === 1 ? 'The one recorded' : `The ${String(count)} recorded`),
  isCommon: 'The type is common, so no piece is ranked among them.',
  standing: (title: string, place: string): string => `${title}: ${place}`,
  cannotCompare: (count: number): string =>
    count === 1 ? 'One of them cannot be compared with it.' : `${String(count)} of them cannot be compared with it.`,
  notGraded: 'grade not recorded',
  ownRows: 'Its own',
  after: (label: string): string => `As ${label}`,
  wholeSeries: 'As the whole series',
  relation: RELATION,
  column: {
    type: 'Type',
    character: 'Mark',
    book: 'Book',
    number: 'Number',
    relation: 'Relation',
    sure: 'How sure',
    source: 'Source',
    specimen: 'Piece',
    grade: 'Grade',
    sameAs: 'The same piece as',
  },
  sources: 'Sources',
  sourceOf: (mark: string): string => `source ${mark}`,
  unknown: NOT_KNOWN,
  notApplicable: HAS_NONE,
  or: OR,
  concordanceLead: 'The number of each type in other books. Where one covers more or less than the type, it says so.',
  usualSource: (book: string, says: string, hasOthers: boolean): string =>
    `${book}: ${says}${hasOthers ? ', but for the numbers with a letter' : ''}.`,
  disputed: (number: string, types: string): string =>
    `${number} is given as the number of ${types}. It cannot be the number of each, so nothing is concluded from it.`,
  severalNumbers: (type: string, numbers: string): string =>
    `${type} is called the equal of ${numbers}. It can be that of one of them only, so each is possible and none is certain.`,
  severalRelations: (type: string, number: string, relations: string): string =>
    `${number} is said to stand to ${type} in several ways: ${relations}.`,
  severalDoubts: (type: string, number: string): string =>
    `How surely ${number} stands to ${type} is said differently.`,
  disagreements: 'Where the lines disagree',
  shown: shownWords,
  diesWhy:
    'No two dies are quite alike, so coins struck with one die were struck within months or a few years, as a rule at one mint. Dies that were used together put coins in order, suggest which belong to one workshop, and say how much of a coinage is still unseen.',
  diesLead:
    'A line joins an obverse with each reverse it was struck with, thicker where more coins are recorded; dies without a line between their groups share nothing that is recorded. Only coins whose dies were compared are counted here.',
  readDies: 'How to read this',
  /** One source for all that is here: `invented`. */
  allFrom: (source: string): string => `Source of every pair: ${source}.`,
  lone: 'Pairs that share no die with another',
  coins: (count: number): string => `${String(count)} ${count === 1 ? 'coin' : 'coins'}`,
  lonePair: (obverse: string, reverse: string, facts: readonly string[]): string =>
    `${[`${obverse} with ${reverse}`, ...facts].join(', ')}.`,
  noDies: 'No dies are recorded for this series.',
  group: (at: number, coins: number | null, mints: readonly string[] = []): string =>
    `Group ${String(at)}${mints.length === 0 ? '' : `, ${mints.join(', ')}`}${coins === null ? '' : `: ${String(coins)} ${coins === 1 ? 'coin' : 'coins'} recorded`}`,
  joints: (dies: string): string => `Held together by ${dies}: without any one of these the group would fall apart.`,
  linkedTypes: (types: string): string => `The group links ${types}.`,
  /** The types of one issue: `Class 3b and Class 3c`. */
  issue: (labels: readonly string[]): string => BOTH.format(labels),
  coverage: (
    issue: string,
    side: string,
    [share = '', low = '', high = '']: readonly string[],
    n: number,
    d: number,
  ): string =>
    `${issue}, ${side.toLowerCase()}: ${String(d)} dies on ${String(n)} coins. If these coins are a fair sample, the known dies struck about ${share} of all that were made, with 95 per cent confidence between ${low} and ${high}.`,
  noLoneDie: (issue: string, side: string, n: number, d: number): string =>
    `${issue}, ${side.toLowerCase()}: ${String(d)} dies on ${String(n)} coins, and every one on two coins or more. If these coins are a fair sample, few are missing; how few cannot be told from them.`,
  loneDies: (issue: string, side: string, n: number): string =>
    `${issue}, ${side.toLowerCase()}: ${String(n)} coins and as many dies, so most of the dies are not known yet.`,
  fewCoins: (issues: readonly string[], few: number): string =>
    `Fewer than ${String(few)} coins are recorded of ${issues.length > MOST_NAMED ? `${String(issues.length)} other issues` : `each of these: ${issues.join('; ')}`}. Nothing is said of the dies that are missing there.`,
  noInterval: 'How many dies there once were is not estimated here.',
  states: 'States of the dies',
  statesLead: 'From the earliest to the latest, as far as the signs put them in order.',
  state: (name: string): string => `State ${name}`,
  noOrder: 'Nothing recorded says which of these came first.',
  heldDies: 'A picture, or a filled point, is a die of a piece here.',
  pairsFrom: (source: string): string => `Source: ${source}.`,
  ofTypes: (types: string): string => `Struck with these dies: ${types}.`,
  chartSays: (group: number): string =>
    `The dies of group ${String(group)}: obverses above, reverses below, a line for each pair.`,
  pair: {
    obverse: 'Obverse',
    reverse: 'Reverse',
    types: 'Types',
    mint: 'Mint',
    coins: 'Coins',
    source: 'Source',
    here: 'Here:',
  },
  faceOf: { obverse: 'Obverses', reverse: 'Reverses' },
} as const;
