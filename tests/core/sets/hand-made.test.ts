import { expect, test } from 'vitest';
import { dayFromCivil } from '../../../src/core/calendars/civil.ts';
import { hijriYear } from '../../../src/core/calendars/hijri.ts';
import { parseGrade } from '../../../src/core/grade/parse-grade.ts';
import { countSet } from '../../../src/core/sets/count-set.ts';
import type { SetPiece, TimeSpan } from '../../../src/core/sets/set-piece.ts';
import type { Lists, SetRule } from '../../../src/core/sets/set-rule.ts';
import type { SetState } from '../../../src/core/sets/set-state.ts';
import { LISTS, penny, rule } from './pieces.ts';

/*
 * Sets made by hand. The counts were reasoned from the rules before any was run, and the reason stands beside each: `low` is what
 * the best arrangement fills for certain, `filled` and `possible` are the places of the arrangement shown, `high` the most that any
 * arrangement could fill if every doubtful piece were what it may be.
 */
interface HandMade {
  readonly called: string;
  /** Why the counts are what they are. */
  readonly because: string;
  readonly rule: Partial<SetRule>;
  readonly pieces: readonly SetPiece[];
  readonly lists?: Partial<Lists>;
  readonly counts: readonly [low: number, filled: number, possible: number, high: number, of: number];
  /** Anything else that must hold. */
  readonly also?: (state: SetState) => void;
}

/** Places that any penny of the set may fill. */
const places = (...ids: readonly string[]) => ids.map((is) => ({ is, where: { denomination: ['penny'] } }));
const mintPlaces = (...ids: readonly string[]) => ids.map((is) => ({ is }));
const uk = (words: string) => {
  const outcome = parseGrade(words, { scale: 'uk' });
  if (!outcome.ok) throw new Error(outcome.problem);
  const { low, high } = outcome.value;
  return { stated: outcome.value, grade: low === null || high === null ? null : { low, high } };
};
const north = (number: string, more: object = {}) => ({ work: 'north', number, relation: 'is' as const, ...more });
const hijri = (year: number): TimeSpan => {
  const { first, last } = hijriYear(year);
  // AH 293 began on 2 November 905 and AH 294 on 22 October 906, Julian.
  return { low: year + 612, high: year + 613, days: [first, last] };
};
const year = (low: number, high = low): TimeSpan => ({ low, high });

const DURHAM = { id: 'durham', name: 'Durham', area: 'County Durham', struck: [{ low: 1100, high: 1540 }] };
const BERWICK = { id: 'berwick', name: 'Berwick', area: 'Scotland', struck: [{ low: 1150, high: 1333 }] };
const JAMES = {
  id: 'james',
  name: 'James VI and I',
  realm: 'Scotland',
  reigns: [
    { low: 1567, high: 1602, realm: 'Scotland' },
    { low: 1603, high: 1625, realm: 'Great Britain' },
  ],
};
const NO_REIGN = { id: 'somebody', name: 'Somebody', realm: 'England', reigns: [] };

const NOT: readonly HandMade[] = [
  {
    called: 'not silver, of a gold piece, one of no recorded metal and a silver one',
    because: 'Gold is certain; what is not recorded may be anything and is possible; silver is shut out.',
    rule: { 'one-per': 'listed', where: { not: { metal: ['silver'] } }, places: places('one', 'two', 'three') },
    pieces: [penny('gold', { metal: 'gold' }), penny('silent'), penny('silver', { metal: 'silver' })],
    counts: [1, 1, 1, 2, 3],
  },
  {
    called: 'not the Archbishop, where one piece names no issuer',
    because: 'York says the King: certain. London does not say who issued it: possible.',
    rule: { where: { not: { issuer: ['Archbishop of York'] } }, places: mintPlaces('york', 'london') },
    pieces: [penny('a', { mint: 'york', issuer: 'King' }), penny('b', { mint: 'london' })],
    counts: [1, 1, 1, 2, 2],
  },
  {
    called: 'not silver, of a piece that is probably gold',
    because: 'Probably gold may still be silver: possible.',
    rule: { 'one-per': 'listed', where: { not: { metal: ['silver'] } }, places: places('one') },
    pieces: [penny('a', { metal: 'gold', sure: { metal: 'probable' } })],
    counts: [0, 0, 1, 1, 1],
  },
  {
    called: 'not silver, of a piece that is possibly silver',
    because: 'Possibly silver may be something else: possible, never shut out for certain.',
    rule: { 'one-per': 'listed', where: { not: { metal: ['silver'] } }, places: places('one') },
    pieces: [penny('a', { metal: 'silver', sure: { metal: 'possible' } })],
    counts: [0, 0, 1, 1, 1],
  },
  {
    called: 'not struck for Edward I, of his own penny and one struck in his name by another',
    because: 'A piece that names nobody else was struck for its ruler: shut out. The other says Edward IV: certain.',
    rule: { 'one-per': 'listed', where: { not: { 'struck-for': ['edward-i'] } }, places: places('one', 'two') },
    pieces: [penny('own'), penny('later', { struckFor: ['edward-iv'] })],
    counts: [1, 1, 0, 1, 2],
  },
  {
    called: 'not from Scotland, of London, of no mint and of Berwick',
    because: 'London lies in England: certain. No mint, no area: possible. Berwick is shut out.',
    rule: { 'one-per': 'listed', where: { not: { area: ['Scotland'] } }, places: places('one', 'two', 'three') },
    pieces: [penny('a', { mint: 'london' }), penny('b'), penny('c', { mint: 'berwick' })],
    lists: { mints: [...LISTS.mints, BERWICK] },
    counts: [1, 1, 1, 2, 3],
  },
  {
    called: 'not North 1018, of a doubtful 1018, of no reference and of 1020',
    because:
      '1020 is certainly another. A doubtful 1018 may be another, and so may one without a number: both possible.',
    rule: {
      'one-per': 'listed',
      where: { not: { references: ['north 1018'] } },
      places: places('one', 'two', 'three'),
    },
    pieces: [
      penny('a', { references: [north('1018', { doubtful: true })] }),
      penny('b'),
      penny('c', { references: [north('1020')] }),
    ],
    counts: [1, 1, 2, 3, 3],
  },
];

const DIES: readonly HandMade[] = [
  {
    called: 'obverse A1 and reverse A1, of a piece whose obverse is A1',
    because:
      'A die is known with its face: the obverse is filled; the reverse die is not recorded and asks for itself.',
    rule: { 'one-per': 'die', places: mintPlaces('obverse A1', 'reverse A1') },
    pieces: [penny('a', { dies: { obverse: 'A1' } })],
    counts: [1, 1, 0, 1, 2],
  },
  {
    called: 'obverse A1, of A1 with a question mark',
    because: 'The question mark makes it possible.',
    rule: { 'one-per': 'die', places: mintPlaces('obverse A1') },
    pieces: [penny('a', { dies: { obverse: 'A1?' } })],
    counts: [0, 0, 1, 1, 1],
  },
  {
    called: 'the pair A1-b3, of a piece of which one die is known and one of both',
    because: 'Only the piece with both dies is the pair; the other does not say.',
    rule: { 'one-per': 'die', places: mintPlaces('A1-b3') },
    pieces: [penny('half', { dies: { obverse: 'A1' } }), penny('pair', { dies: { obverse: 'A1', reverse: 'b3' } })],
    counts: [1, 1, 0, 1, 1],
  },
  {
    called: 'the pairs A1-b3 and A1-b4, of A1 with a doubtful b3',
    because: 'It may be A1-b3: possible. It is not A1-b4.',
    rule: { 'one-per': 'die', places: mintPlaces('A1-b3', 'A1-b4') },
    pieces: [penny('a', { dies: { obverse: 'A1', reverse: 'b3?' } })],
    counts: [0, 0, 1, 1, 2],
  },
];

const REFERENCES: readonly HandMade[] = [
  {
    called: 'North 1018, of a doubtful one in fine state and a certain one that is worn',
    because: 'A certain piece comes before a better one that is doubtful.',
    rule: { 'one-per': 'reference', places: mintPlaces('north 1018') },
    pieces: [
      penny('doubtful', { references: [north('1018', { doubtful: true })], grade: { low: 60, high: 60 } }),
      penny('certain', { references: [north('1018')], grade: { low: 8, high: 8 } }),
    ],
    counts: [1, 1, 0, 1, 1],
    also: (state) => {
      expect(state.places[0]?.piece).toBe('certain');
    },
  },
  {
    called: 'North 1, 2 and 3, of cf. 1, 2 var. and one that is unlisted',
    because: 'cf. and var. may be the number: possible each. What is not in the book is no number of it.',
    rule: { 'one-per': 'reference', places: mintPlaces('north 1', 'north 2', 'north 3') },
    pieces: [
      penny('a', { references: [north('1', { relation: 'cf.' })] }),
      penny('b', { references: [north('2', { relation: 'var.' })] }),
      penny('c', { references: [north('', { relation: 'unlisted' })] }),
    ],
    counts: [0, 0, 2, 2, 3],
  },
  {
    called: 'North 1018, 1019 and 1020, of one piece that is somewhere from 1018 to 1020',
    because: 'It may be any of them, and fills one place at most.',
    rule: { 'one-per': 'reference', places: mintPlaces('north 1018', 'north 1019', 'north 1020') },
    pieces: [penny('a', { references: [north('1018', { to: '1020' })] })],
    counts: [0, 0, 1, 1, 3],
  },
];

const DATES: readonly HandMade[] = [
  {
    called: '1780, counted as it stands on the piece, of a piece of 1961 that says 1780',
    because: 'The rule counts the date on the piece.',
    rule: { 'one-per': 'date', dates: 'as-dated', places: mintPlaces('1780') },
    pieces: [penny('a', { interval: year(1961), dated: year(1780) })],
    counts: [1, 1, 0, 1, 1],
  },
  {
    called: '1780, counted as made, of the same piece',
    because: 'It was made in 1961.',
    rule: { 'one-per': 'date', places: mintPlaces('1780') },
    pieces: [penny('a', { interval: year(1961), dated: year(1780) })],
    counts: [0, 0, 0, 0, 1],
  },
  {
    called: '1780, counted as dated, of a date on the piece that nobody can read',
    because: 'What stands there is not understood, and the year of making does not stand in for it.',
    rule: { 'one-per': 'date', dates: 'as-dated', places: mintPlaces('1780') },
    pieces: [penny('a', { interval: year(1780), dated: 'unreadable' })],
    counts: [0, 0, 0, 0, 1],
  },
  {
    called: '1780, counted as dated, of a piece without a date on it that was made in 1780',
    because: 'Nothing stands on it, so the time of making is its date.',
    rule: { 'one-per': 'date', dates: 'as-dated', places: mintPlaces('1780') },
    pieces: [penny('a', { interval: year(1780) })],
    counts: [1, 1, 0, 1, 1],
  },
  {
    called: 'AH 293 and AH 294, of a dirham of AH 294',
    because: 'Both years touch AD 906, but by days it is AH 294 alone.',
    rule: {
      'one-per': 'listed',
      places: [
        { is: '293', where: { date: hijri(293) } },
        { is: '294', where: { date: hijri(294) } },
      ],
    },
    pieces: [penny('a', { interval: hijri(294) })],
    counts: [1, 1, 0, 1, 2],
    also: (state) => {
      expect(state.places.map(({ piece }) => piece)).toEqual([undefined, 'a']);
      expect(hijri(294).days?.[0]).toBe(dayFromCivil({ year: 906, month: 10, day: 22 }));
    },
  },
  {
    called: '1279 to 1281, of a piece of 1280 to 1285',
    because: 'It lies there only in part: possible.',
    rule: { 'one-per': 'listed', places: [{ is: 'early', where: { date: year(1279, 1281) } }] },
    pieces: [penny('a', { interval: year(1280, 1285) })],
    counts: [0, 0, 1, 1, 1],
  },
  {
    called: '1279 and 1400, of one piece of 1279 or 1400',
    because: 'It may be either, and fills one place at most.',
    rule: { 'one-per': 'date', places: mintPlaces('1279', '1400') },
    pieces: [penny('a', { interval: { ...year(1279, 1400), alternatives: [year(1279), year(1400)] } })],
    counts: [0, 0, 1, 1, 2],
  },
  {
    called: '1350, of one piece of 1279 or 1400',
    because: '1350 lies between the two and is neither.',
    rule: { 'one-per': 'date', places: mintPlaces('1350') },
    pieces: [penny('a', { interval: { ...year(1279, 1400), alternatives: [year(1279), year(1400)] } })],
    counts: [0, 0, 0, 0, 1],
  },
];

const WITHIN: readonly HandMade[] = [
  {
    called: 'England, of a piece of Durham',
    because: 'Durham lies in County Durham, and that in England.',
    rule: { 'one-per': 'area', places: mintPlaces('England') },
    pieces: [penny('a', { mint: 'durham' })],
    lists: { mints: [DURHAM], areas: [{ name: 'County Durham', in: 'England' }] },
    counts: [1, 1, 0, 1, 1],
  },
  {
    called: 'County Durham, of a piece that says England and no more',
    because: 'It may be of County Durham, and may not: possible.',
    rule: { 'one-per': 'area', places: mintPlaces('County Durham') },
    pieces: [penny('a', { area: 'England' })],
    lists: { areas: [{ name: 'County Durham', in: 'England' }] },
    counts: [0, 0, 1, 1, 1],
  },
  {
    called: 'the British Isles, of a penny of Edward I',
    because: 'His realm is England, which lies within.',
    rule: { 'one-per': 'listed', places: [{ is: 'isles', where: { realm: ['British Isles'] } }] },
    pieces: [penny('a')],
    lists: { realms: [{ name: 'England', in: 'British Isles' }] },
    counts: [1, 1, 0, 1, 1],
  },
  {
    called: 'Scotland and Great Britain, of James before and after 1603',
    because: 'The realm goes by the reign in which a piece was made: one each.',
    rule: {
      'one-per': 'listed',
      places: [
        { is: 'scotland', where: { realm: ['Scotland'] } },
        { is: 'britain', where: { realm: ['Great Britain'] } },
      ],
    },
    pieces: [
      penny('a', { rulers: ['james'], interval: year(1600) }),
      penny('b', { rulers: ['james'], interval: year(1610) }),
    ],
    lists: { rulers: [JAMES] },
    counts: [2, 2, 0, 2, 2],
  },
  {
    called: 'one per ruler, no date asked, with a ruler whose file has no reign',
    because: 'Without a date he needs no reign: both have a place, and the penny fills one.',
    rule: { 'one-per': 'ruler' },
    pieces: [penny('a')],
    lists: { rulers: [...LISTS.rulers.filter(({ id }) => id === 'edward-i'), NO_REIGN] },
    counts: [1, 1, 0, 1, 2],
  },
];

const ARRANGED: readonly HandMade[] = [
  {
    called: 'a piece that fits two places, and one that fits the first alone',
    because: 'Never first come: the second place takes the piece that fits both.',
    rule: { places: [{ is: 'any', where: { denomination: ['penny'] } }, { is: 'london' }] },
    pieces: [penny('a', { mint: 'london' }), penny('b')],
    counts: [2, 2, 0, 2, 2],
  },
  {
    called: 'a certain piece of one place that may be of another, and a doubtful piece of the first',
    because: 'Shown is the certain place. If both were what they may be, each would fill one: high is 2.',
    rule: {
      'one-per': 'reference',
      places: mintPlaces('north 1', 'north 2'),
    },
    pieces: [
      penny('a', { references: [north('1'), north('2', { relation: 'cf.' })] }),
      penny('b', { references: [north('1', { doubtful: true })] }),
    ],
    counts: [1, 1, 0, 2, 2],
  },
  {
    called: 'one piece, two places, by default',
    because: 'A piece fills one place of a set.',
    rule: { places: [{ is: 'any', where: { denomination: ['penny'] } }, { is: 'london' }] },
    pieces: [penny('a', { mint: 'london' })],
    counts: [1, 1, 0, 1, 2],
  },
  {
    called: 'one piece, two places, where the rule allows it',
    because: 'Any number of places: both.',
    rule: {
      places: [{ is: 'any', where: { denomination: ['penny'] } }, { is: 'london' }],
      accept: { 'one-piece': 'any-places' },
    },
    pieces: [penny('a', { mint: 'london' })],
    counts: [2, 2, 0, 2, 2],
  },
  {
    called: 'two equal pieces and one place',
    because: 'One fills it, the other is a spare, and they are said to be equal.',
    rule: { places: mintPlaces('london') },
    pieces: [penny('a', { mint: 'london' }), penny('b', { mint: 'london' })],
    counts: [1, 1, 0, 1, 1],
    also: (state) => {
      expect(state.spares.map(({ piece }) => piece)).toEqual(['b']);
      expect(state.spares[0]?.because).toMatch(/equal/u);
    },
  },
  {
    called: 'two equal pieces of which the keeper prefers the second',
    because: 'prefer: decides between equals.',
    rule: { places: mintPlaces('london') },
    pieces: [penny('a', { mint: 'london' }), penny('b', { mint: 'london', prefer: 1 })],
    counts: [1, 1, 0, 1, 1],
    also: (state) => {
      expect(state.places[0]?.piece).toBe('b');
    },
  },
  {
    called: 'three places that two pieces may fill, both doubtful, and one shared',
    because: 'a may be London or York, b York alone: both can stand, 0 for certain.',
    rule: { 'one-per': 'reference', places: mintPlaces('north 1', 'north 2', 'north 3') },
    pieces: [
      penny('a', { references: [north('1', { to: '2' })] }),
      penny('b', { references: [north('2', { doubtful: true })] }),
    ],
    counts: [0, 0, 2, 2, 3],
  },
];

const ACCEPTED: readonly HandMade[] = [
  {
    called: 'an aim of VF, of a piece in F',
    because: 'The place is filled; on one scale F is below VF, so it stays wanted.',
    rule: { places: mintPlaces('london'), aim: uk('VF').stated },
    pieces: [penny('a', { mint: 'london', ...uk('F') })],
    counts: [1, 1, 0, 1, 1],
    also: (state) => {
      expect(state.wanted.map(({ why }) => why)).toEqual(['below the aim']);
    },
  },
  {
    called: 'an aim of VF, of a piece in VF',
    because: 'The aim is met.',
    rule: { places: mintPlaces('london'), aim: uk('VF').stated },
    pieces: [penny('a', { mint: 'london', ...uk('VF') })],
    counts: [1, 1, 0, 1, 1],
    also: (state) => {
      expect(state.wanted).toEqual([]);
    },
  },
  {
    called: 'an aim of VF, of a cleaned EF',
    because: 'A problem piece is a filler and counts in nothing.',
    rule: { places: mintPlaces('london'), aim: uk('VF').stated },
    pieces: [penny('a', { mint: 'london', details: true, ...uk('EF') })],
    counts: [0, 0, 0, 0, 1],
    also: (state) => {
      expect(state.wanted.map(({ why }) => why)).toEqual(['filler']);
    },
  },
  {
    called: 'F and VF of one type in one place',
    because: 'VF is certainly above F on one scale and takes the place.',
    rule: { places: mintPlaces('london') },
    pieces: [penny('a', { mint: 'london', ...uk('F') }), penny('b', { mint: 'london', ...uk('VF') })],
    counts: [1, 1, 0, 1, 1],
    also: (state) => {
      expect(state.places[0]?.piece).toBe('b');
      expect(state.upgrades.every(({ certain }) => certain)).toBe(true);
    },
  },
  {
    called: 'certain pieces only, of one certain and one probable',
    because: 'uncertain: no makes the probable one nothing.',
    rule: { places: mintPlaces('london', 'york'), accept: { uncertain: 'no' } },
    pieces: [penny('a', { mint: 'london' }), penny('b', { mint: 'york', sure: { mint: 'probable' } })],
    counts: [1, 1, 0, 1, 2],
  },
  {
    called: 'a replica, a sold piece and one made over, in a set as struck',
    because: 'None of the three counts; London waits.',
    rule: { places: mintPlaces('london') },
    pieces: [
      penny('a', { mint: 'london', kind: 'replica' }),
      penny('b', { mint: 'london', status: 'sold' }),
      penny('c', { mint: 'london', altered: true }),
    ],
    counts: [0, 0, 0, 0, 1],
    also: (state) => {
      expect(state.leftOut.map(({ piece }) => piece).toSorted()).toEqual(['a', 'b', 'c']);
    },
  },
  {
    called: 'a joint reign in the places of both rulers, where the rule counts both',
    because: 'One shilling of Philip and Mary fills two places.',
    rule: {
      'one-per': 'ruler',
      places: mintPlaces('philip-of-spain', 'mary-i'),
      accept: { 'joint-reign': 'both' },
    },
    pieces: [penny('a', { rulers: ['philip-of-spain', 'mary-i'], interval: year(1554) })],
    counts: [2, 2, 0, 2, 2],
  },
  {
    called: 'three mints of which one is excused',
    because: 'The excused place stands out of the number: one of two.',
    rule: { places: [...mintPlaces('london', 'york'), { is: 'reading', excused: 'struck nothing before 1338' }] },
    pieces: [penny('a', { mint: 'london' }), penny('b', { mint: 'reading' })],
    counts: [1, 1, 0, 1, 2],
  },
  {
    called: 'a piece that may be a counterfeit',
    because: 'A doubtful kind fills nothing for certain.',
    rule: { places: mintPlaces('london') },
    pieces: [penny('a', { mint: 'london', sure: { kind: 'probable' } })],
    counts: [0, 0, 1, 1, 1],
  },
];

const SETS = [...NOT, ...DIES, ...REFERENCES, ...DATES, ...WITHIN, ...ARRANGED, ...ACCEPTED];

test.for(SETS)('$called: $because', ({ rule: of, pieces, lists, counts, also }) => {
  const outcome = countSet(rule(of), pieces, { ...LISTS, ...lists });
  if (!outcome.ok) throw new Error(outcome.problem);
  const { filled, places: states } = outcome.value;
  const inState = (state: string) => states.filter((place) => place.state === state).length;
  expect([filled.low, inState('filled'), inState('possible'), filled.high, outcome.value.of]).toEqual(counts);
  also?.(outcome.value);
});

test('there are at least 36 of them', () => {
  expect(SETS.length).toBeGreaterThanOrEqual(36);
});

test('a rule by date asks for the reign of a ruler who has none, and says how many', () => {
  const lists = { ...LISTS, rulers: [...LISTS.rulers, NO_REIGN] };
  const outcome = countSet(rule({ 'one-per': 'ruler', where: { date: year(1272, 1307) } }), [], lists);
  expect(outcome.ok ? '' : outcome.problem).toContain('1 of 8 rulers has no reign (somebody)');
});
