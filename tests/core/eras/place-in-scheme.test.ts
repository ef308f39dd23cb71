import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { EraScheme } from '../../../src/core/eras/era-scheme.ts';
import { placeInScheme } from '../../../src/core/eras/place-in-scheme.ts';
import { ERA_SCHEMES, eraScheme } from '../../published/era-schemes.ts';

/**
 * A piece of 1526–1544 (Henry VIII's second coinage; J. J. North, *English Hammered Coinage* 2, from memory): nineteen years.
 * The shares are counted by hand from the published bounds; a year shared by two periods counts half in each.
 */
const published = [
  { scheme: 'finds-database', state: 'within', shares: { medieval: 14 / 19, 'post-medieval': 1 } },
  { scheme: 'heritage-ages', state: 'straddles', shares: { medieval: 14.5 / 19, 'post-medieval': 4.5 / 19 } },
  { scheme: 'heritage-dynasties', state: 'within', shares: { tudor: 1 } },
  { scheme: 'arena-denmark', state: 'straddles', shares: { medieval: 10.5 / 19, 'post-medieval': 8.5 / 19 } },
  { scheme: 'arena-norway', state: 'straddles', shares: { medieval: 11.5 / 19, 'post-medieval': 7.5 / 19 } },
  { scheme: 'arena-iceland', state: 'within', shares: { medieval: 1 } },
  { scheme: 'netherlands', state: 'within', shares: { 'nieuwe-tijd-a': 1 } },
  { scheme: 'sweden', state: 'within', shares: { 'nyare-tid': 1 } },
];

test.for(published)('a piece of 1526–1544 $state under $scheme', ({ scheme, state, shares }) => {
  const placing = placeInScheme({ low: 1526, high: 1544 }, eraScheme(scheme));
  expect(placing.state).toBe(state);
  expect(Object.fromEntries(placing.periods.map(({ id, share }) => [id, share]))).toEqual(shares);
});

/** Boundaries as the sources print them: the year before, the year itself, the year after. */
const boundaries = [
  { scheme: 'finds-database', year: 1065, periods: ['early-medieval'], state: 'within' },
  { scheme: 'finds-database', year: 1066, periods: ['early-medieval', 'medieval'], state: 'within' },
  { scheme: 'finds-database', year: 1900, periods: ['post-medieval'], state: 'within' },
  { scheme: 'finds-database', year: 1901, periods: ['modern'], state: 'within' },
  { scheme: 'heritage-ages', year: 42, periods: [], state: 'outside' },
  { scheme: 'heritage-ages', year: 43, periods: ['roman'], state: 'within' },
  { scheme: 'heritage-ages', year: 410, periods: ['roman', 'early-medieval'], state: 'straddles' },
  { scheme: 'heritage-ages', year: 1539, periods: ['medieval'], state: 'within' },
  { scheme: 'heritage-ages', year: 1540, periods: ['medieval', 'post-medieval'], state: 'straddles' },
  { scheme: 'heritage-ages', year: 1541, periods: ['post-medieval'], state: 'within' },
  {
    scheme: 'heritage-dynasties',
    year: 1603,
    periods: ['tudor', 'elizabethan', 'jacobean', 'stuart'],
    state: 'straddles',
  },
  { scheme: 'arena-denmark', year: 2020, periods: ['modern'], state: 'within' },
  { scheme: 'sweden', year: 799, periods: [], state: 'outside' },
];

test.for(boundaries)('the year $year $state under $scheme', ({ scheme, year, periods, state }) => {
  const placing = placeInScheme({ low: year, high: year }, eraScheme(scheme));
  expect(placing.periods.map(({ id }) => id)).toEqual(periods);
  expect(placing.state).toBe(state);
});

/**
 * The year 1066 by rulers: Edward died on 5 January, Harold fell on 14 October, William was crowned on 25 December (Handbook of
 * British Chronology, 3rd edition, 1986). Stephen died in October 1154 and Henry II followed.
 */
describe('a scheme that goes by rulers', () => {
  const scheme: EraScheme = {
    id: 'by-rulers', title: '', source: '', ends: 'shared',
    periods: [
      { id: 'anglo-saxon', name: 'Anglo-Saxon', from: 600, to: 1066, rulers: ['aethelstan', 'edward', 'harold'] },
      { id: 'anglo-scandinavian', name: 'Anglo-Scandinavian', from: 885, to: 954, rulers: ['anlaf'] },
      { id: 'norman', name: 'Norman', from: 1066, to: 1154, rulers: ['william', 'stephen'] },
      { id: 'plantagenet', name: 'Plantagenet', from: 1154, to: 1485, rulers: ['henry'] },
    ],
  }; // prettier-ignore
  const cases: readonly [readonly string[], readonly [number, number] | null, readonly string[]][] = [
    [['harold'], [1066, 1066], ['anglo-saxon']],
    [['edward'], [1065, 1066], ['anglo-saxon']],
    [['william'], [1066, 1068], ['norman']],
    [['stephen'], [1150, 1154], ['norman']],
    [['harold'], null, ['anglo-saxon']],
    // Æthelstan held York from 927 to 939 and Anlaf from 939 to 941, both within the years of both periods (the same Handbook).
    [['aethelstan'], [928, 939], ['anglo-saxon']],
    [['anlaf'], [939, 941], ['anglo-scandinavian']],
    [[], [928, 941], ['anglo-saxon', 'anglo-scandinavian']],
    // Nobody sure, two of different lines, or a name that went on long after its bearer: the years decide.
    [[], [1066, 1066], ['anglo-saxon', 'norman']],
    [
      ['harold', 'william'],
      [1066, 1066],
      ['anglo-saxon', 'norman'],
    ],
    [['edward'], [1100, 1110], ['norman']],
  ];
  test.for(cases)('of %s in %s: %s', ([rulers, years, periods]) => {
    const placing = placeInScheme(years === null ? null : { low: years[0], high: years[1] }, scheme, rulers);
    expect(placing.periods.map(({ id }) => id)).toEqual(periods);
    const isSplit = periods.includes('norman') && periods.length > 1;
    expect(placing.state).toBe(isSplit ? 'straddles' : 'within');
    const isRulers =
      rulers.length === 1 && periods[0] === scheme.periods.find((one) => one.rulers?.includes(rulers[0] ?? ''))?.id;
    expect(placing.by).toBe(isRulers ? 'ruler' : undefined);
  });
});

describe('years without an end', () => {
  const denmark = eraScheme('arena-denmark');
  test('an undated piece, and one that may be of any year, is unknown', () => {
    expect(placeInScheme(null, denmark)).toEqual({ state: 'unknown', periods: [] });
    expect(placeInScheme({ low: -Infinity, high: Infinity }, denmark).state).toBe('unknown');
  });
  test('a piece from before 1000 touches the Iron Age by no share that can be measured', () => {
    expect(placeInScheme({ low: -Infinity, high: 999 }, denmark)).toEqual({
      state: 'straddles',
      periods: [{ id: 'iron-age', name: 'Iron Age', share: null }],
    });
  });
  test('a piece from after 1700 lies within a period that goes on', () => {
    const { state, periods } = placeInScheme({ low: 1701, high: Infinity }, denmark);
    expect([state, periods]).toEqual(['within', [{ id: 'modern', name: 'Modern', share: null }]]);
  });
  test('a piece whose years run out of the scheme straddles its end', () => {
    const { state, periods } = placeInScheme({ low: 791, high: 810 }, eraScheme('sweden'));
    expect([state, periods.map(({ share }) => share)]).toEqual(['straddles', [11 / 20]]);
  });
});

const anyInterval = fc
  .tuple(fc.integer({ min: -800, max: 2100 }), fc.nat(400))
  .map(([low, more]) => ({ low, high: low + more }));

test('no share is below 0 or above 1, and within means that one is 1', () => {
  fc.assert(
    fc.property(fc.constantFrom(...ERA_SCHEMES), anyInterval, (scheme, interval) => {
      const { state, periods } = placeInScheme(interval, scheme);
      for (const { share } of periods) expect(share !== null && share > 0 && share <= 1).toBe(true);
      expect(state === 'within').toBe(periods.some(({ share }) => share === 1));
      expect(state === 'outside').toBe(periods.length === 0);
    }),
  );
});

test('periods that lie end to end share out all the years of a piece between them', () => {
  const bounds = fc
    .uniqueArray(fc.integer({ min: 0, max: 2000 }), { minLength: 2, maxLength: 8 })
    .map((years) => years.toSorted((a, b) => a - b));
  fc.assert(
    fc.property(
      bounds,
      fc.constantFrom('shared' as const, 'inclusive' as const),
      fc.nat(),
      fc.nat(),
      (years, ends, one, two) => {
        const periods = years.slice(1).map((to, at) => ({
          id: `p${String(at)}`,
          name: '',
          from: (years[at] ?? 0) + (ends === 'inclusive' && at > 0 ? 1 : 0),
          to,
        }));
        const scheme: EraScheme = { id: 's', title: '', source: '', ends, periods };
        const [first = 0, last = 0] = [years[0], years.at(-1)];
        const [a, b] = [first + (one % (last - first + 1)), first + (two % (last - first + 1))];
        const placing = placeInScheme({ low: Math.min(a, b), high: Math.max(a, b) }, scheme);
        const sum = placing.periods.reduce((total, { share }) => total + (share ?? 0), 0);
        expect(sum).toBeCloseTo(1, 9);
      },
    ),
  );
});
