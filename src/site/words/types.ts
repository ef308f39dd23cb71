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
function lowered(label: string): string {
  return /^\p{Lu}\p{Ll}/u.test(label) ? `${label.charAt(0).toLowerCase()}${label.slice(1)}` : label;
}

/** A share of 1, in the words of everyday: each with the least share that is called so. */
const LEFT = [
  [0.9, 'nearly all'],
  [0.7, 'about three quarters'],
  [0.58, 'about two thirds'],
  [0.42, 'about half'],
  [0.29, 'about a third'],
  [0.22, 'about a quarter'],
] as const;

function leftOf(share: number): string {
  return LEFT.find(([least]) => share >= least)?.[1] ?? `about one in ${String(Math.round(1 / share))}`;
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
    `A well for each type, with a piece of it where there is one here. A broken rim: possibly of that type.${isDrawn ? ' In an empty well are the marks by which its type is known, drawn.' : ''}`,
  noneHere: 'none here',
  notes: 'What the list rests on',
  page: (page: number): string => `page ${String(page)}`,
  more: (count: number): string => `and ${String(count)} more.`,
  allTypes: (count: number): string =>
    count === 1 ? 'It is among the types of the series.' : `All ${String(count)} are among the types of the series.`,
  key: 'Identify a piece',
  keyLead: 'Which type is the piece before you?',
  /** `on the reverse`; null where it is not said. */
  onFace: (face: string | null): string | null => (face === null ? null : `on the ${face}`),
  keyBoard: 'The types of the key',
  keyBoardSays: 'A well for each type. With each answer those that it speaks against grow empty.',
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
  census: 'Pieces recorded in this list',
  censusLead:
    'The pieces that this list records, and those here; not all that exist. A piece that was recorded twice is counted once. A grade is an opinion, so a place among them is a range. The page of dies counts its coins apart from these.',
  isCommon: 'The list calls the type common: many more exist than are recorded here, so nothing is ranked.',
  standing: (title: string, place: string): string => `${title}: ${place}`,
  cannotCompare: (count: number): string =>
    count === 1 ? 'One of them cannot be compared with it.' : `${String(count)} of them cannot be compared with it.`,
  notGraded: 'grade not recorded',
  sameObject: 'the same piece as',
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
    specimen: 'Specimen',
    grade: 'Grade',
  },
  sources: 'Sources',
  sourceOf: (mark: string): string => `source ${mark}`,
  sameWithout: 'A number without a word beside it is that of the same type.',
  unknown: NOT_KNOWN,
  notApplicable: HAS_NONE,
  or: OR,
  concordanceLead:
    'The numbers of each type in other books, a column for each book. A number with nothing under it is that of the same type; what else one covers is said under it.',
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
  keyTable: 'The marks, type by type',
  allShow: 'The same in every type:',
  keyTableLead: 'Without the questions: everything each type shows, to be read by eye.',
  shown: shownWords,
  ask: {
    begin: (types: number): string => `${String(types)} types are possible.`,
    allAlike: 'All are equally likely until something is answered.',
    soFar: (labels: string, share: string, isEach: boolean, count: number): string =>
      `Likeliest so far: ${labels} (${share}${isEach ? ' each' : ''}).${count === 1 ? '' : ` ${String(count)} types are left.`}`,
    severalTypes: (count: number): string => `${String(count)} types alike`,
    found: (label: string): string => `Most likely ${label}. Compare its page with the piece before you write it down.`,
    together: (labels: string): string => `Most likely ${labels}: no mark in this key separates them.`,
    outside: (label: string): string =>
      `Probably not in this list: too many answers speak against even the nearest type, ${label}. Check your answers first.`,
    notShown: (labels: string): string =>
      `Probably not in this list: no type in it is known to show what you answered of ${labels}. Check that answer first.`,
    sureBroader: (label: string, share: string): string => `Most likely ${label} (${share}), whichever type of it.`,
    unshown: (labels: string): string =>
      `No type in this list is known to show what you answered of: ${labels}. Look again; if you are right, the piece is not in the list.`,
    noneAgrees: 'No type agrees with every answer.',
    takenTogether: 'Taken together:',
    untold: (label: string): string =>
      `Nothing in this list fits. ${label} is left only because the series says nothing of what was answered.`,
    nothingLeft: 'Every type is excluded by some answer. Take one back, or untick “Every answer is certain”.',
    sureEnough: 'There is enough to tell',
    nothingMore: 'No further question would tell much',
    why: (bits: number, seen: string): string =>
      `The answer usually leaves ${leftOf(2 ** -bits)} of what is still possible${seen}.`,
    seen: (share: number): string =>
      `; by the list’s own estimate it can be seen on about ${String(Math.round(share * 100))} of 100 pieces`,
    number: (at: number): string => `Question ${String(at)}`,
    cannotTell: 'I cannot tell',
    couldNotTell: 'could not be told',
    answer: 'Answer',
    keep: 'Leave it as it was',
    several: 'Tick every one it may be.',
    tick: 'Tick at least one, or say that you cannot tell.',
    measure: { weight: 'Weight with its unit, like 1.38 g', length: 'Length with its unit, like 18.6 mm' },
    legend: 'What can be read: letters, ? for one letter, * for any run of them',
    answered: 'Your answers',
    change: 'Change',
    takeBack: 'Take back',
    restart: 'Begin again',
    remaining: 'What is left',
    unlikely: 'no longer likely',
    speaksAgainst: (labels: readonly string[]): string => `against it: ${labels.map(lowered).join(', ')}`,
    share: (probability: number): string =>
      probability >= 0.995
        ? 'over 99 %'
        : probability < 0.01
          ? 'under 1 %'
          : `${String(Math.round(probability * 100))} %`,
    fit: (against: readonly string[], of: number): string => {
      const all = of === 1 ? 'the answer' : of === 2 ? 'both answers' : `all ${String(of)} answers`;
      return against.length === 0 ? `Agrees with ${all}.` : `Speaks against it: ${against.join(', ')}.`;
    },
    strict: 'Every answer is certain: one that speaks against a type excludes it',
    weighing: 'How the answers are weighed',
    rarity: 'Commoner types count for more, by their published rarity',
    greedy:
      'What comes next is what tells most by itself, by how often it can be seen at all and how surely it is read. Any answer may be a mistake, so a type that one answer speaks against becomes less likely and is not excluded.',
    differ: (one: string, other: string): string => `How ${one} and ${other} differ`,
    differBy: (one: string, shown: string, other: string, others: string): string =>
      `${shown} in ${one}, ${others} in ${other}.`,
    differOthers: (one: string): string => `${one} and another:`,
    differNot: 'No mark in this key separates them.',
    sometimes: (label: string): string => `${label} (in some specimens)`,
    look: 'Answer this',
    more: (count: number): string => `and ${String(count)} more, less likely`,
    others: 'Answer something else',
    failed: 'The key could not be loaded. The table below holds everything it knows.',
  },
  diesWhy:
    'Every die was cut by hand and no two are quite alike, so coins struck with one die came from one mint within months or a few years. Dies that were used together put coins in order, tell what belongs to one mint, and say how much of a coinage is still unseen.',
  diesLead:
    'A line joins an obverse with each reverse it was struck with, thicker where more coins are recorded; dies without a line between their groups share nothing that is recorded. Only coins whose dies were compared are counted here.',
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
