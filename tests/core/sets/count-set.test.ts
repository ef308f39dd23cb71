import { describe, expect, test } from 'vitest';
import { parseGrade } from '../../../src/core/grade/parse-grade.ts';
import { countSet } from '../../../src/core/sets/count-set.ts';
import type { SetPiece } from '../../../src/core/sets/set-piece.ts';
import type { SetRule } from '../../../src/core/sets/set-rule.ts';
import type { SetState } from '../../../src/core/sets/set-state.ts';
import { graded, LISTS, onSteps, penny, rule } from './pieces.ts';

function count(of: Partial<SetRule>, pieces: readonly SetPiece[]): SetState {
  const state = countSet(rule(of), pieces, LISTS);
  if (!state.ok) throw new Error(state.problem);
  return state.value;
}

test('a small set, with every state, as written out by hand', () => {
  const state = count(
    {
      id: 'recoinage',
      title: 'Recoinage',
      where: { denomination: ['penny'] },
      places: [{ is: 'london' }, { is: 'york' }, { is: 'bristol' }, { is: 'exeter' }, { is: 'reading', excused: 'struck nothing before 1338' }],
      aim: onSteps(50, 58),
    },
    [
      penny('london-fine', { mint: 'london', acquired: 2010, ...graded(40, 45) }),
      penny('london-worn', { mint: 'london', acquired: 2001, ...graded(12, 15) }),
      penny('york-perhaps', { mint: 'york', sure: { mint: 'probable' }, acquired: 2004 }),
      penny('bristol-bent', { mint: 'bristol', details: true, ...graded(30) }),
      penny('york-sold', { mint: 'york', status: 'sold', acquired: 1999 }),
      penny('halfpenny', { mint: 'exeter', denomination: 'halfpenny' }),
    ],
  );
  expect(state).toEqual({
    id: 'recoinage',
    title: 'Recoinage',
    of: 4,
    filled: { low: 1, high: 2 },
    excused: 1,
    places: [
      { id: 'london', label: 'London', state: 'filled', piece: 'london-fine', others: ['london-worn'], because: 'Chosen before london-worn, because this one has the better grade.' },
      { id: 'york', label: 'York', state: 'possible', piece: 'york-perhaps', because: 'The mint is only probable. The only piece that fits.' },
      { id: 'bristol', label: 'Bristol', state: 'filler', piece: 'bristol-bent', because: 'Has a problem, and is a filler until a sound piece comes. The only piece that fits.' },
      { id: 'exeter', label: 'Exeter', state: 'wanted', because: 'Nothing in the cabinet fits.' },
      { id: 'reading', label: 'Reading', state: 'excused', because: 'struck nothing before 1338' },
    ],
    spares: [{ piece: 'london-worn', label: 'London', because: 'Fits London, where “london-fine” stands, which has the better grade.' }],
    upgrades: [
      { place: 'london', from: 'london-worn', to: 'london-fine', certain: true, made: true, because: 'The grade of london-fine, 40–45, is above that of london-worn, 12–15.' },
    ],
    leftOut: [{ piece: 'york-sold', because: 'Sold: only pieces kept or lent count.' }],
    wanted: [
      { place: 'exeter', label: 'Exeter', why: 'empty', because: 'Nothing in the cabinet fits.' },
      { place: 'bristol', label: 'Bristol', why: 'filler', because: 'A problem piece is a filler here.' },
      { place: 'york', label: 'York', why: 'possible', because: 'The mint is only probable. The only piece that fits.' },
      { place: 'london', label: 'London', why: 'below the aim', because: 'The piece that stands here is below the grade aimed at.' },
    ],
    history: [
      { year: 2004, came: ['possible'] },
      { year: 2010, came: ['filled'] },
      { year: null, came: ['filler'] },
    ],
  });
}); // prettier-ignore

describe('joint reigns, rulers who return and rulers struck for', () => {
  const joint = penny('shilling', { rulers: ['philip-of-spain', 'mary-i'], interval: { low: 1554, high: 1555 } });
  const places = [{ is: 'mary-i' }, { is: 'philip-of-spain' }];
  test('a piece of a joint reign fills the place of one of them', () => {
    expect(count({ 'one-per': 'ruler', places }, [joint]).filled).toEqual({ low: 1, high: 1 });
  });
  test('or of both, where the rule says so', () => {
    const state = count({ 'one-per': 'ruler', places, accept: { 'joint-reign': 'both' } }, [joint]);
    expect(state.places.map(({ piece }) => piece)).toEqual(['shilling', 'shilling']);
    expect(state.history).toEqual([{ year: null, came: ['filled', 'filled'] }]);
  });
  test('even so it fills one ruler’s place once only', () => {
    const twice = [{ is: 'mary-i' }, { is: 'mary-again', where: { ruler: ['mary-i'] } }];
    expect(count({ 'one-per': 'ruler', places: twice, accept: { 'joint-reign': 'both' } }, [joint]).filled.low).toBe(1);
  });
  test('a ruler who returned has one place, for a piece of either reign', () => {
    const of = { 'one-per': 'ruler', where: { ruler: ['edward-iv'] } } as const;
    for (const year of [1465, 1475]) {
      expect(count(of, [penny('groat', { rulers: ['edward-iv'], interval: { low: year, high: year } })])).toMatchObject(
        { of: 1, filled: { low: 1 } },
      );
    }
  });
  test('a posthumous piece counts for the name on it, or for whom it was struck', () => {
    const posthumous = penny('penny', { rulers: ['edward-i'], struckFor: ['edward-iv'] });
    const both = [{ is: 'edward-i' }, { is: 'edward-iv' }];
    const stands = (by: 'ruler' | 'struck-for') =>
      count({ 'one-per': 'ruler', count: by, places: both }, [posthumous]).places.map(({ piece }) => piece);
    expect(stands('ruler')).toEqual(['penny', undefined]);
    expect(stands('struck-for')).toEqual([undefined, 'penny']);
  });
});

test('a piece fills any number of places where the rule lets it', () => {
  const places = [
    { is: 'early', where: { date: { low: 1279, high: 1290 } } },
    { is: 'silver', where: { metal: ['silver'] } },
  ];
  const pieces = [penny('both', { metal: 'silver' })];
  expect(count({ 'one-per': 'listed', places }, pieces).filled.low).toBe(1);
  expect(count({ 'one-per': 'listed', places, accept: { 'one-piece': 'any-places' } }, pieces).filled.low).toBe(2);
});

describe('between equals', () => {
  const london = { places: [{ is: 'london' }] };
  test('the keeper’s preference decides, whatever the grades', () => {
    const pieces = [
      penny('a', { mint: 'london', ...graded(20) }),
      penny('b', { mint: 'london', prefer: 1, ...graded(20) }),
      penny('c', { mint: 'london', prefer: 2, ...graded(20) }),
    ];
    expect(count(london, pieces).places[0]).toMatchObject({ piece: 'b', others: ['c', 'a'] });
    expect(count(london, [...pieces, penny('d', { mint: 'london', ...graded(25) })]).places[0]).toMatchObject({
      piece: 'b',
      because: 'Chosen before c, because this one is what the keeper prefers.',
    });
  });
  test('but lets no problem piece before a sound one, nor a doubtful piece certain', () => {
    const sound = penny('sound', { mint: 'london', ...graded(20) });
    const holed = penny('holed', { mint: 'london', details: true, prefer: 1, ...graded(40) });
    const doubtful = penny('doubtful', { mint: 'london', sure: { mint: 'probable' }, prefer: 1, ...graded(40) });
    expect(count(london, [sound, holed, doubtful]).places[0]).toMatchObject({ piece: 'sound', state: 'filled' });
  });
  test('a grade that may reach higher comes first', () => {
    const pieces = [
      penny('a', { mint: 'london', ...graded(20, 30) }),
      penny('b', { mint: 'london', ...graded(20, 35) }),
    ];
    expect(count(london, pieces).places[0]).toMatchObject({
      piece: 'b',
      because: 'Chosen before a, because this one may reach a higher grade.',
    });
  });
  test('and then nothing decides, which is said', () => {
    expect(count(london, [penny('b', { mint: 'london' }), penny('a', { mint: 'london' })]).places[0]).toMatchObject({
      piece: 'a',
      because: 'Chosen before b: the two are equal here.',
    });
  });
});

describe('upgrades', () => {
  const london = { places: [{ is: 'london' }] };
  const of = (...pieces: readonly SetPiece[]) =>
    count(london, pieces).upgrades.map(({ from, to, certain, made }) => [from, to, certain, made]);
  const at = (id: string, facts: Partial<SetPiece>) => penny(id, { mint: 'london', ...facts });
  test('are certain only when the lowest of one is above the highest of the other', () => {
    expect(of(at('vf', graded(20, 35)), at('ef', graded(40, 45)))).toEqual([['vf', 'ef', true, true]]);
    expect(of(at('vf', graded(20, 40)), at('ef', graded(40, 45)))).toEqual([['vf', 'ef', false, true]]);
  });
  test('are none between equals, nor where one is not graded', () => {
    expect(of(at('a', graded(20, 30)), at('b', graded(20, 30)))).toEqual([]);
    expect(of(at('a', graded(20, 30)), at('b', {}))).toEqual([]);
  });
  test('are possible where a spare may be better than what stands there', () => {
    expect(of(at('narrow', graded(30, 35)), at('wide', graded(20, 50)))).toEqual([['narrow', 'wide', false, false]]);
    expect(of(at('sure', graded(30)), at('perhaps', { sure: { mint: 'possible' }, ...graded(60) }))).toEqual([
      ['sure', 'perhaps', false, false],
    ]);
  });
  test('never put a problem piece above a sound one', () => {
    const accept = { details: 'yes' } as const;
    const pieces = [at('sound', graded(20)), at('cleaned', { details: true, ...graded(60) })];
    expect(count({ ...london, accept }, pieces).upgrades).toMatchObject([
      { from: 'sound', to: 'cleaned', certain: false },
    ]);
  });
  // The rules of DESIGN for comparing: a proof is a way of striking (common practice), one problem is not another.
  const stated = (text: string, facts: Partial<SetPiece> = {}): Partial<SetPiece> => {
    const outcome = parseGrade(text, { scale: 'us' });
    if (!outcome.ok) return expect.fail(outcome.problem);
    const { low, high, problem } = outcome.value;
    const grade = low === null || high === null ? null : { low, high };
    return { grade, stated: outcome.value, details: problem !== undefined, ...facts };
  };
  test('are none between a proof and a piece for use, whatever the numbers', () => {
    expect(of(at('used', stated('VF-30')), at('proof', stated('PR-65')))).toEqual([]);
    expect(of(at('used', stated('VF-30')), at('mint', stated('MS-65')))).toEqual([['used', 'mint', true, true]]);
    expect(of(at('proof', stated('PR-60')), at('better', stated('PR-65')))).toEqual([['proof', 'better', true, true]]);
  });
  test('are certain from one problem piece to another only where the problem is the same', () => {
    const accept = { details: 'yes' } as const;
    const between = (...pieces: readonly SetPiece[]) => count({ ...london, accept }, pieces).upgrades;
    expect(between(at('low', stated('VF-20, cleaned')), at('high', stated('AU-50, cleaned')))).toMatchObject([
      { from: 'low', to: 'high', certain: true },
    ]);
    expect(between(at('low', stated('VF-20, cleaned')), at('high', stated('AU-50, pierced')))).toMatchObject([
      { from: 'low', to: 'high', certain: false },
    ]);
  });
  test('are not certain between problem pieces whose problems nobody named', () => {
    const accept = { details: 'yes' } as const;
    const pieces = [at('low', { details: true, ...graded(20) }), at('high', { details: true, ...graded(50) })];
    expect(count({ ...london, accept }, pieces).upgrades).toMatchObject([{ from: 'low', to: 'high', certain: false }]);
  });
  test('are certain where a sound piece has come for a filler', () => {
    expect(of(at('bent', { details: true, ...graded(40) }), at('sound', graded(12)))).toEqual([
      ['bent', 'sound', true, true],
    ]);
  });
  test('are none where the lesser piece came later: that is a duplicate', () => {
    expect(of(at('good', { acquired: 1990, ...graded(40) }), at('later', { acquired: 2000, ...graded(10) }))).toEqual(
      [],
    );
  });
});

describe('a set of types', () => {
  const types = [
    { id: 'lc-3c', names: ['lc-3c', 'pence/lc-3c'], series: 'pence', label: 'Class 3c', level: null, leaf: true,
      states: { ruler: ['edward-i'], denomination: ['penny'] }, made: { low: 1280, high: 1281 } },
  ]; // prettier-ignore
  const works = [{ id: 'north', names: ['North'] }];
  const of = { 'one-per': 'type', series: 'pence', places: [{ is: 'lc-3c' }] } as const;
  const leftOut = (pieces: readonly SetPiece[]) =>
    countSet(rule({ ...of, where: { denomination: ['penny', 'halfpenny'] } }), pieces, { ...LISTS, types, works });
  test('offers no piece that can be of none of them', () => {
    const counted = leftOut([
      penny('silent'),
      penny('of-another', { rulers: ['edward-iv'], interval: { low: 1464, high: 1470 } }),
      penny('of-nobody', { rulers: [], blanks: { ruler: 'none' } }),
      penny('later', { rulers: [], interval: { low: 1300, high: 1301 } }),
      penny('probably-later', { rulers: [], interval: { low: 1489, high: 1500 }, sure: { date: 'probable' } }),
      penny('perhaps-later', { rulers: [], interval: { low: 1300, high: 1301 }, sure: { date: 'possible' } }),
      penny('doubtful', { rulers: ['edward-iv'], sure: { ruler: 'possible' } }),
      penny('cut', { denomination: 'halfpenny', shape: 'cut half' }),
      penny('round-half', { denomination: 'halfpenny' }),
    ]);
    const left = counted.ok ? counted.value.leftOut.map(({ piece }) => piece) : [];
    expect(left.toSorted()).toEqual(['cut', 'doubtful', 'perhaps-later', 'silent']);
  });

  // Reigns: Handbook of British Chronology, 3rd edition (1986). A class that struck on into the next reign names no ruler.
  test('a doubt about the date keeps no coin of another ruler among what might fit a class that leaves its ruler open', () => {
    const open = { ...types[0], id: 'lc-10', names: ['lc-10'], label: 'Class 10', states: { denomination: ['penny'] }, made: { low: 1301, high: 1310 } }; // prettier-ignore
    const rulers = [
      { id: 'edward-i', name: 'Edward I', reigns: [{ low: 1272, high: 1307 }] },
      { id: 'edward-ii', name: 'Edward II', reigns: [{ low: 1307, high: 1327 }] },
      { id: 'henry-vii', name: 'Henry VII', reigns: [{ low: 1485, high: 1509 }] },
    ];
    const perhaps = { date: 'possible' } as const;
    const counted = countSet(
      rule({ ...of, where: { denomination: ['penny'] } }),
      [
        penny('henry-vii', { rulers: ['henry-vii'], interval: { low: 1489, high: 1500 }, sure: perhaps }),
        penny('henry-vii-undated', { rulers: ['henry-vii'], interval: null }),
        penny('st-peter', { rulers: [], blanks: { ruler: 'none' }, interval: { low: 921, high: 927 }, sure: perhaps }),
        penny('edward-ii', { rulers: ['edward-ii'], interval: { low: 1307, high: 1310 }, sure: perhaps }),
        penny('edward-i', { interval: { low: 1291, high: 1300 }, sure: perhaps }),
        penny('some-edward', { rulers: [], interval: { low: 1320, high: 1330 }, sure: perhaps }),
      ],
      { ...LISTS, rulers, types: [...types, open] as typeof types, works },
    );
    const left = counted.ok ? counted.value.leftOut.map(({ piece }) => piece) : [];
    expect(left).toEqual(['edward-i', 'edward-ii', 'some-edward']);
  });
});
