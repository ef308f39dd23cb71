import { expect, test } from 'vitest';
import type { SetState } from '../../../../src/core/sets/set-state.ts';
import { nearestWidth } from '../../../../src/site/models/sets/place-shown.ts';
import { setHistory } from '../../../../src/site/models/sets/set-history.ts';

type Came = SetState['history'][number]['came'];
const placed = (history: SetState['history'], wanted: number): SetState => {
  const states: Came = [...history.flatMap(({ came }) => came), ...Array.from({ length: wanted }, () => 'wanted' as const)];
  const places = states.map((state, at) => ({ id: String(at), label: String(at), state }));
  return {
    id: 'towns', title: 'Towns', of: states.length, filled: { low: 0, high: 0 }, excused: 0, places, spares: [], upgrades: [], leftOut: [],
    wanted: [], history,
  };
}; // prettier-ignore

test('every place of a set is drawn once, with the mark it has on the board: in the year of its piece, or as wanted', () => {
  const history = setHistory(
    placed(
      [
        { year: 1998, came: ['filled', 'filler'] },
        { year: 2001, came: ['possible'] },
        { year: null, came: ['filled'] },
      ],
      2,
    ),
  );
  expect(history?.years.map(({ year, wells }) => [year, wells])).toEqual([
    ['1998', ['filled', 'filler']],
    ['2001', ['possible']],
    ['Year not recorded', ['filled']],
    ['wanted', ['wanted', 'wanted']],
  ]);
  expect(history?.table.rows[0]).toEqual(['1998', '1\u00a0has its piece, 1\u00a0filler']);
});

test('of hundreds of places the first are drawn and the others counted', () => {
  const years = setHistory(
    placed(
      [
        { year: 1998, came: ['filled'] },
        { year: 1999, came: ['filled'] },
      ],
      448,
    ),
  )?.years;
  const last = years?.at(-1);
  expect((last?.wells.length ?? 0) + (last?.more ?? 0)).toBe(448);
  expect(last?.wells.length).toBeLessThan(50);
});

test('one year alone is no history', () => {
  expect(setHistory(placed([{ year: 1998, came: ['filled'] }], 2))).toBeNull();
});

test('an empty well is as wide as the nearest pieces of its set', () => {
  expect(nearestWidth([18, null, null, null, 30], 1)).toBe(18);
  expect(nearestWidth([18, null, null, null, 30], 2)).toBe(24);
  expect(nearestWidth([18, null, null, null, 30], 3)).toBe(30);
  expect(nearestWidth([null, null], 0)).toBe(20);
});
