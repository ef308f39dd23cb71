import { lowered } from './types.ts';

const EITHER = new Intl.ListFormat('en-GB', { type: 'disjunction' });

/** How likely something is, as one says it: `about 8 in 10`, `about 1 in 4`. */
function chance(probability: number): string {
  if (probability >= 0.995) return 'all but certain';
  if (probability >= 0.95) return 'nearly certain';
  if (probability < 0.01) return 'hardly';
  return probability >= 0.55
    ? `about ${String(Math.round(probability * 10))} in 10`
    : `about 1 in ${String(Math.round(1 / probability))}`;
}

/** Above this share of pieces on which a mark can be seen, nothing is said of how often it cannot. */
const OFTEN_SEEN = 0.6;

/** What the key says: it talks to somebody who has the piece in hand. */
export const keyWords = {
  title: 'Identify your piece',
  /** Under the type of a piece: a way to that of one's own. */
  yours: 'Identify your own with the key',
  ofSet: 'One of these lies before you?',
  board: 'The types of the key',
  boardSays: 'A well for each type. What your marks speak against leaves its well.',
  place: (of: string): string => `Where to look, on ${of}`,
  look: (label: string): string => `${label}: look here`,
  first: 'First make sure that it is one of these',
  elsewhere: 'Or look first at:',
  begin: (types: number): string => `It may still be any of the ${String(types)}.`,
  allAlike: 'Nothing has been looked at yet.',
  soFar: (labels: string, share: string, isEach: boolean, others: number): string =>
    `Most likely ${labels}, ${share}${isEach ? ' each' : ''}.${others < 1 ? '' : others === 1 ? ' One other may still be it.' : ` ${String(others)} others may still be it.`}`,
  oneOf: (labels: readonly string[]): string => EITHER.format(labels),
  severalTypes: (count: number): string => `one of ${String(count)} types alike`,
  found: (label: string): string => `It is ${label}, as far as this list goes. Compare it before you write it down.`,
  together: (labels: string): string => `It is ${labels}: no mark in this list separates them.`,
  outside: (label: string): string =>
    `It is probably not in this list: too much of what you saw speaks against even the nearest type, ${label}. Look again first.`,
  notShown: (labels: string): string =>
    `It is probably not in this list: no type in it is known to show what you saw of ${labels}. Look at that again first.`,
  sureBroader: (label: string, share: string): string => `${label} is ${share}, whichever type of it.`,
  unshown: (labels: string): string =>
    `No type in this list is known to show what you saw of: ${labels}. Look again; if you are right, the piece is not in the list.`,
  noneAgrees: 'No type agrees with all you saw.',
  takenTogether: 'Taken together:',
  untold: (label: string): string =>
    `Nothing in this list fits. ${label} is left only because the series says nothing of what you saw.`,
  nothingLeft: 'Something you saw shuts out every type. Take one mark back, or say that you are not sure of all.',
  see: (label: string): string => `See ${label}`,
  sureEnough: 'You have seen enough',
  nothingMore: 'Nothing else on it would tell you more',
  worn: (seen: number): string => (seen < OFTEN_SEEN ? 'Often worn away: pass it over if it is.' : ''),
  cannotTell: 'I cannot make it out',
  couldNotTell: 'cannot be made out',
  go: 'Look further',
  keep: 'Leave it as it was',
  tap: 'Tap what you see, and a second if it may be either.',
  tick: 'Tap what you see first, or say that you cannot make it out.',
  measure: { weight: 'Weight with its unit, like 1.38 g', length: 'Length with its unit, like 18.6 mm' },
  legend: 'What can be read: letters, ? for one letter, * for any run of them',
  seen: 'What you saw',
  change: 'Look again',
  takeBack: 'Take back',
  restart: 'Begin with another piece',
  unlikely: 'no longer likely',
  speaksAgainst: (labels: readonly string[]): string => `against it: ${labels.map(lowered).join(', ')}`,
  chance,
  fit: (against: readonly string[]): string =>
    against.length === 0 ? 'Agrees with all you saw.' : `Against it: ${against.map(lowered).join(', ')}.`,
  sureOfAll: 'I am sure of every mark: one that does not fit shuts a type out',
  rarity: 'Commoner types count for more, by their published rarity',
  sureness: 'How sure you are',
  mistakes:
    'A worn mark is easily misread. So one that does not fit makes a type less likely and does not shut it out, and what is asked next is what tells most by itself and can be seen and read most surely.',
  differ: (one: string, other: string): string => `${one} or ${other}?`,
  differOthers: (one: string): string => `${one} or another:`,
  differNot: 'No mark in this list separates them.',
  sometimes: (label: string): string => `${label} (in some specimens)`,
  lookAtIt: 'Look at it',
  more: (count: number): string => `and ${String(count)} more, less likely`,
  failed: 'The list could not be loaded. The table below holds everything in it.',
  table: 'The marks, type by type',
  tableLead: 'Everything each type shows, to be read by eye.',
} as const;
