import { formatYear } from '../../core/dating/format-years.ts';
import type { Count } from '../../core/sets/set-state.ts';
import type { Tally } from '../../core/sets/tally.ts';
import { countWords } from './counts.ts';

export const rulersWords = {
  title: 'Rulers',
  description: 'The rulers of the pieces, reign by reign, and the rulers without a piece here.',
  lead: 'The rulers named on the pieces or for whom they were struck, and others that this cabinet lists and has no piece of; it does not list everyone who ruled.',
  /** What a bar of a reign means, each drawn beside its words. */
  bars: [
    { kind: 'sure', says: 'a reign with a piece here' },
    { kind: 'unsure', says: 'its pieces are doubtful, or only bear the name' },
    { kind: 'gap', says: 'no piece here' },
    { kind: 'brief', says: 'no piece here, and too short to draw' },
    { kind: 'joint', says: 'a joint reign' },
  ],
  noneMeans: '“None in this cabinet” says nothing of whether coins exist; where none is known, that is said.',
  none: 'There is no ruler yet.',
  noCoins: 'no coins known',
  /**
   * What a ruler has here: the pieces struck for him, how many of them in another name, and those that only bear his.
   * `1 to 2 pieces; 2 more in this name, struck for others`.
   */
  count: ({ of, inOther, forOther }: Readonly<Record<'of' | 'inOther' | 'forOther', Tally>>): string => {
    const hasOwn = of.here.high > 0 || of.replicas + of.counterfeits + of.gone > 0;
    const isAllInOther = inOther.here.high === of.here.high;
    const parts = [
      ...(hasOwn || forOther.here.high + forOther.gone === 0 ? [countWords.tally(of)] : []),
      ...(inOther.here.high === 0
        ? []
        : [
            isAllInOther
              ? 'struck in another name'
              : inOther.here.low === 0
                ? `perhaps ${inOther.here.high} of them in another name`
                : `${countWords.range(inOther.here)} of them in another name`,
          ]),
      ...(forOther.here.high === 0 ? [] : [inNameOnly(forOther.here, of.here.high > 0)]),
      ...(forOther.gone === 0 ? [] : [`${forOther.gone} in this name, no longer here`]),
    ];
    return parts.join('; ');
  },
  listOf: (realm: string): string => `The rulers of ${realm}`,
  from: (name: string, year: number): string => `${name} from ${formatYear(year)}`,
  elsewhere: 'Other realms',
  reignless: 'Reign not recorded',
  notRulers: 'Others named on the pieces',
  issuers: 'Issuers: in another’s name, or in nobody’s',
  /** Nobody's term of office: an archbishop's pieces may be of a few of his years. */
  yearsOfPieces: (years: string): string => (years === '' ? '' : `pieces of ${years}`),
  role: (role: string): string => `Role: ${role}.`,
  office: 'In office',
  otherNames: (names: readonly string[]): string => `Also called ${names.join(', ')}.`,
  reigns: (count: number): string => (count === 1 ? 'Reign' : 'Reigns'),
  reignOf: (realm: string): string => `Realm: ${realm}.`,
  reign: (name: string, at: number, of: number): string =>
    of === 1 ? name : `${name}, ${['first', 'second', 'third', 'fourth', 'fifth'][at] ?? `${String(at + 1)}th`} reign`,
  with: (names: string): string => `with ${names}`,
  about: (years: string): string => `about ${years}`,
  and: (names: readonly string[]): string =>
    names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1) ?? ''}`,
  source: 'Source:',
  timeSays: (reigns: number, isShared: boolean): string =>
    `Above, the ${reigns === 1 ? 'reign' : 'reigns'}${isShared ? ', at half height where shared' : ''}. Below, the pieces, each from its earliest to its latest possible year; a hollow bar is an uncertain date.`,
  groups: {
    own: 'In the name of this ruler',
    forOther: 'In this ruler’s name, struck for another',
    inOther: 'Struck for this ruler in another name',
    copies: 'Copies and counterfeits in this ruler’s name',
  },
  forWhom: (names: string, isSure: boolean): string => `${isSure ? '' : 'perhaps '}struck for ${names}`,
  /** Of a piece that may be of any of several. */
  orFor: (names: readonly string[]): string => `perhaps struck for ${names.join(' or for ')}`,
  inWhose: (names: string): string => `in the name of ${names}`,
  withWhom: (names: string): string => `with ${names}`,
  all: 'These pieces as one list',
  nothing: 'The cabinet has no piece of this ruler.',
  gaps: (years: readonly string[]): string => `None in this cabinet for ${rulersWords.and(years)}.`,
  noGaps: 'The pieces here could cover every year of the reign.',
} as const;

function inNameOnly({ low, high }: Count, isMore: boolean): string {
  const struck = `struck for ${high === 1 ? 'another' : 'others'}`;
  const how = low === high ? struck : low === 0 ? `perhaps ${struck}` : `${struck}, ${high - low} of them perhaps`;
  return `${high}${isMore ? ' more' : ''} in this name, ${how}`;
}
