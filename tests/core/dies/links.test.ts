import { describe, expect, test } from 'vitest';
import { coverageInterval, uncutCoverage } from '../../../src/core/dies/estimate.ts';
import { chainBetween, dieCounts, issuesOf, linkedGroups, typeLinks } from '../../../src/core/dies/links.ts';
import type { DiePair } from '../../../src/core/dies/links.ts';
import { dieStates } from '../../../src/core/dies/states.ts';

function pair(obverse: string, reverse: string, type = '', coins: number | null = 1): DiePair {
  return { obverse, reverse, types: type === '' ? [] : [type], coins };
}

/**
 * The denarii of C. Censorinus: 346/1a, 1c and 1d share obverse dies; 1a and 1b, 1c and 1d, 1e and 1f share reverses (the
 * third release of the Roman Republican Die Project, American Numismatic Society, after M. Crawford 1971). The letters of
 * the dies are ours, one for each link that is published.
 */
const CENSORINUS = [
  pair('dot left', 'XXV', '346/1a'), pair('plain 1', 'XXV', '346/1b'), pair('dot left', 'symbol', '346/1c'),
  pair('dot left', 'other symbol', '346/1d'), pair('plain 2', 'symbol', '346/1d'), pair('plain 3', 'Greek A', '346/1e'),
  pair('plain 4', 'Greek A', '346/1f'),
]; // prettier-ignore

describe('Die links', () => {
  test('of RRC 346 make {a, b, c, d} and {e, f}, as published', () => {
    expect(linkedGroups(CENSORINUS).map(({ types }) => types)).toEqual([
      ['346/1a', '346/1b', '346/1c', '346/1d'],
      ['346/1e', '346/1f'],
    ]);
    expect(typeLinks(CENSORINUS).map(({ side, die, types }) => [side, die, types])).toContainEqual([
      'reverse', 'Greek A', ['346/1e', '346/1f'],
    ]); // prettier-ignore
  });

  // Coverage is of one issue: common practice of die studies. A pair of two types shows them struck together.
  test('count by issue what was struck together, and apart what was not', () => {
    const rows: readonly DiePair[] = [
      pair('A1', 'a1', '3b', 7), pair('A2', 'a2', '3c', 4), pair('A2', 'a1', '3b'), pair('B1', 'b1', '9b', 9),
      pair('A2', 'a3', '3d'), { obverse: 'A1', reverse: 'a3', types: ['3b', '3d'], coins: 1 }, pair('Z', 'z'),
    ]; // prettier-ignore
    expect(issuesOf(rows).map(({ types, pairs }) => [types, pairs.length])).toEqual([
      [['3b', '3d'], 4],
      [['3c'], 1],
      [['9b'], 1],
    ]);
  });

  test('an obverse and a reverse of one name are two dies', () => {
    expect(linkedGroups([pair('A', 'B'), pair('C', 'A')])).toHaveLength(2);
  });

  test('a chain goes by dies used together', () => {
    const chain = chainBetween(CENSORINUS, { side: 'obverse', die: 'plain 1' }, { side: 'obverse', die: 'plain 2' });
    expect(chain?.map(({ die }) => die)).toEqual(['plain 1', 'XXV', 'dot left', 'symbol', 'plain 2']);
    expect(
      chainBetween(CENSORINUS, { side: 'obverse', die: 'plain 1' }, { side: 'reverse', die: 'Greek A' }),
    ).toBeNull();
  });

  test('a die is a joint when the pairs on its two sides share nothing else', () => {
    const chain = [pair('A1', 'b1'), pair('A2', 'b1'), pair('A2', 'b2'), pair('A3', 'b2')];
    expect(linkedGroups(chain)[0]?.joints).toEqual([{ side: 'obverse', die: 'A2' }].map((die) => die));
    const ring = [...chain, pair('A1', 'b3'), pair('A3', 'b3')];
    expect(linkedGroups(ring)[0]?.joints).toEqual([]);
    // A reverse used once more does not make its obverse a joint.
    expect(linkedGroups([...ring, pair('A2', 'once')])[0]?.joints).toEqual([]);
  });

  test('joints are what brute force finds: without them fewer pairs hang together', () => {
    for (let seed = 1; seed <= 200; seed += 1) {
      let state = seed;
      const chance = (most: number): number => (state = (state * 16807) % 2147483647) % most;
      const pairs = Array.from({ length: 3 + chance(9) }, () => pair(`A${String(chance(5))}`, `b${String(chance(5))}`));
      for (const { pairs: group, joints, obverses, reverses } of linkedGroups(pairs)) {
        const dies = [
          ...obverses.map((die) => ({ side: 'obverse' as const, die })),
          ...reverses.map((die) => ({ side: 'reverse' as const, die })),
        ];
        const broken = dies.filter(
          ({ side, die }) => linkedGroups(group.filter((each) => each[side] !== die)).length > 1,
        );
        expect(joints.map(({ side, die }) => `${side} ${die}`).sort()).toEqual(
          broken.map(({ side, die }) => `${side} ${die}`).sort(),
        );
      }
    }
  });

  test('a chain of ten thousand dies is walked without exhausting anything', () => {
    const long = Array.from({ length: 10_000 }, (_, at) =>
      pair(`A${String(Math.floor(at / 2))}`, `b${String(Math.ceil(at / 2))}`),
    );
    expect(linkedGroups(long)).toHaveLength(1);
  });

  test('rows that name a pair again are one pair with the coins of both; uncounted stays uncounted', () => {
    expect(dieCounts([pair('A', 'b', '', 2), pair('A', 'b', '', 1), pair('B', 'b', '', 1)], 'obverse')).toEqual({
      n: 4,
      d: 2,
      d1: 1,
      d2: 0,
    });
    expect(dieCounts([pair('A', 'b', '', null)], 'obverse')).toBeNull();
  });
});

describe('Coverage', () => {
  /** Good's estimate and Esty's interval as scikit-bio's own tests have them (`goods_coverage`, `esty_ci`). */
  test('of 75 singletons, six pairs, one 3 and two 4 is 0.23469388', () => {
    expect(uncutCoverage({ n: 75 + 12 + 3 + 8, d1: 75, d2: 6 }).coverage).toBeCloseTo(0.23469388, 8);
  });

  test('the uncovered share of ten specimens 1,1,2,1,1,3,2,1,3,4 lies from −0.3338565 to 0.5338565', () => {
    const labels = [1, 1, 2, 1, 1, 3, 2, 1, 3, 4];
    const rows = labels.map((label) => pair(String(label), 'b'));
    const counts = dieCounts(rows, 'obverse');
    expect(counts).toEqual({ n: 10, d: 4, d1: 1, d2: 2 });
    const { low, high } = uncutCoverage(counts ?? { n: 1, d1: 0, d2: 0 });
    expect(1 - high).toBeCloseTo(-0.3338565, 6);
    expect(1 - low).toBeCloseTo(0.5338565, 6);
    expect(coverageInterval({ n: 10, d1: 1, d2: 2 }).high).toBe(1);
  });
});

describe('States of a die', () => {
  const row = (die: string, state: string, ...after: string[]) => ({ die, state, after });

  test('are in the order that is said, and where nothing is said, in none', () => {
    const { histories, faults } = dieStates([
      row('A', '3', '2'),
      row('A', '1'),
      row('A', '2', '1'),
      row('A', '2b', '1'),
    ]);
    expect(histories[0]?.steps).toEqual([['1'], ['2', '2b'], ['3']]);
    expect(histories[0]?.open).toEqual([
      ['3', '2b'],
      ['2', '2b'],
    ]);
    expect(faults).toEqual([]);
  });

  test('a circle is told whole and has no place in the order', () => {
    const { histories, faults } = dieStates([
      row('A', '1'),
      row('A', '2', '1', '3'),
      row('A', '3', '2'),
      row('B', '2', '9'),
    ]);
    expect(faults).toEqual([
      { fault: 'circle', die: 'A', states: ['2', '3'] },
      { fault: 'unknown-state', row: 3, die: 'B', state: '2', after: '9' },
    ]);
    expect(histories[0]?.steps).toEqual([['1']]);
  });
});
