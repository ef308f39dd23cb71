import { describe, expect, test } from 'vitest';
import type { Graded } from '../../../src/core/grade/compare-grades.ts';
import { formatStanding, ordinal, standingOf } from '../../../src/core/types/census.ts';
import { inherit, noSurer } from '../../../src/core/types/inherit.ts';
import { leavesBelow, lineOf, seriesTree } from '../../../src/core/types/series.ts';

const tree = seriesTree(
  [
    { id: '3', level: 'class', label: 'Class 3', says: { date: '1280/1281', crown: '?' } },
    { id: '3b', broader: '3', level: 'variety', label: 'Class 3b', says: { crown: 'one' } },
    { id: '3g', broader: '3', level: 'variety', label: 'Class 3g', says: { date: '-' } },
    { id: '3g1', broader: '3g', level: 'dies', label: 'Class 3g, first pair', says: {} },
  ],
  { metal: 'silver' },
);

describe('A series', () => {
  test('fills a blank from the broader type and the whole series, and says which', () => {
    const says = (id: string) =>
      Object.fromEntries([...(tree.types.get(id)?.says ?? [])].map(([column, { text, by }]) => [column, [text, by]]));
    expect(says('3b')).toEqual({ metal: ['silver', null], date: ['1280/1281', '3'], crown: ['one', '3b'] });
    expect(says('3g1')).toEqual({ metal: ['silver', null], date: ['-', '3g'], crown: ['?', '3'] });
  });

  test('knows what lies under what', () => {
    expect(leavesBelow(tree.types, '3')).toEqual(['3b', '3g1']);
    expect(lineOf(tree.types, '3g1').map(({ id }) => id)).toEqual(['3g1', '3g', '3']);
  });

  test('tells of rows it cannot place, and reads the rest', () => {
    const { types, faults } = seriesTree([
      { id: 'a', broader: 'b', label: 'A', says: {} },
      { id: 'b', broader: 'a', label: 'B', says: { mint: 'york' } },
      { id: 'c', broader: 'nowhere', label: 'C', says: {} },
      { id: 'c', label: 'C again', says: {} },
      { id: 'd', broader: 'a', label: 'D', says: {} },
    ]);
    expect(faults.map(({ row, id, fault }) => [row, id, fault])).toEqual([
      [0, 'a', 'circle'],
      [2, 'c', 'no-broader'],
      [3, 'c', 'twice'],
    ]);
    expect(types.get('d')?.broader).toBe('a');
    expect(types.size).toBe(4);
  });
});

describe('A piece inherits', () => {
  const type = {
    mint: 'york', date: { earliest: 1280 }, weight: 1.44, axis: 6, references: ['north 1018'],
    obverse: { legend: 'EDWR ANGL', design: 'Crowned bust', reading: 'Edwardus rex' },
  }; // prettier-ignore

  test('what it does not say, part by part, but nothing that is true of a specimen alone', () => {
    const { fields, fromType } = inherit<Record<string, unknown>>(
      { obverse: { legend: 'EDWR …', reading: 'Edward' } },
      type,
    );
    expect(fields).toEqual({
      mint: 'york',
      date: { earliest: 1280 },
      obverse: { legend: 'EDWR …', reading: 'Edward', design: 'Crowned bust' },
    });
    expect(fromType).toEqual(['mint', 'date', 'obverse.design']);
  });

  test('and its own word wins, unknown and none included', () => {
    const { fields, fromType } = inherit<Record<string, unknown>>(
      { mint: 'unknown', date: 'none', obverse: type.obverse },
      type,
    );
    expect([fields['mint'], fields['date'], fromType]).toEqual(['unknown', 'none', []]);
  });

  test('no surer than its type', () => {
    expect(noSurer('certain', 'probable')).toBe('probable');
    expect(noSurer('possible', 'probable')).toBe('possible');
  });
});

/** On the numeric scale, from one step to another. */
function grade(low: number, high = low): Graded {
  return { words: `${String(low)}–${String(high)}`, low, high, mappings: [] };
}

describe('A place in a census is an interval', () => {
  const census = [grade(45), grade(35, 40), grade(20, 30), grade(20), grade(12), grade(4)].map((each, at) => ({
    specimen: `specimen ${String(at)}`,
    grade: each,
    sameAs: [] as string[],
  }));

  test.for([
    // Counted by hand: 45 and 35–40 are above 20, 20–30 may be, 20 is its equal and does not push it down.
    [20, 20, '3rd to 4th of 7 recorded'],
    [50, 50, '1st of 7 recorded'],
    [15, 40, '2nd to 5th of 7 recorded'],
    [3, 3, '7th of 7 recorded'],
    [4, 12, '5th to 6th of 7 recorded'],
  ] as const)('%s to %s stands %s', ([low, high, stands]) => {
    expect(formatStanding(standingOf({ name: 'mine', grade: grade(low, high) }, census))).toBe(stands);
  });

  test('a line that is the piece itself is not counted again, nor one recorded twice', () => {
    const doubled = [
      ...census,
      { specimen: 'museum 12', grade: grade(45), sameAs: ['specimen 0'] },
      { specimen: 'sale 3', grade: grade(20), sameAs: ['mine'] },
    ];
    expect(standingOf({ name: 'mine', grade: grade(20) }, doubled).of).toBe(7);
  });

  test('one that nothing compares with only widens it', () => {
    const before = standingOf({ name: 'mine', grade: grade(12) }, census);
    const after = standingOf({ name: 'mine', grade: grade(12) }, [
      ...census,
      { specimen: 'ungraded', grade: null, sameAs: [] },
    ]);
    expect([after.best, after.worst, after.of]).toEqual([before.best, before.worst + 1, before.of + 1]);
    expect(after.withoutComparison).toBe(1);
  });

  test.for([null, { ...grade(20), low: null, high: null, notGraded: 'cut' }])(
    'a piece without a grade is not ranked',
    (none) => {
      const standing = standingOf({ name: 'mine', grade: none }, census);
      expect(formatStanding(standing)).toBe('one of 7 recorded; it is not graded, so it is not ranked');
    },
  );

  test('said as a person would', () => {
    expect(formatStanding({ isGraded: true, best: 2, worst: 4, of: 7, withoutComparison: 0 })).toBe(
      '2nd to 4th of 7 recorded',
    );
    expect(formatStanding({ isGraded: true, best: 1, worst: 1, of: 1, withoutComparison: 0 })).toBe(
      'the only one recorded',
    );
    expect([1, 2, 3, 4, 11, 12, 13, 21, 22, 101, 111].map(ordinal)).toEqual([
      '1st',
      '2nd',
      '3rd',
      '4th',
      '11th',
      '12th',
      '13th',
      '21st',
      '22nd',
      '101st',
      '111th',
    ]);
  });
});
