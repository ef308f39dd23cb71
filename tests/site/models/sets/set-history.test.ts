import { expect, test } from 'vitest';
import type { SetState } from '../../../../src/core/sets/set-state.ts';
import { nearestWidth } from '../../../../src/site/models/sets/place-shown.ts';
import { setHistory } from '../../../../src/site/models/sets/set-history.ts';

const counted = (of: number, history: SetState['history']): SetState => ({
  id: 'towns', title: 'Towns', of, filled: history.at(-1)?.filled ?? { low: 0, high: 0 }, excused: 0,
  places: [], spares: [], upgrades: [], leftOut: [], wanted: [], history,
}); // prettier-ignore

test('every well of a set is drawn once: in the year in which it was filled, or as still empty', () => {
  const history = setHistory(
    counted(6, [
      { year: 1998, filled: { low: 2, high: 2 } },
      { year: 2001, filled: { low: 2, high: 3 } },
      { year: null, filled: { low: 3, high: 4 } },
    ]),
  );
  expect(history?.years.map(({ year, wells }) => [year, wells])).toEqual([
    ['1998', ['filled', 'filled']],
    ['2001', ['possible']],
    ['Year not recorded', ['filled']],
    ['still empty', ['wanted', 'wanted']],
  ]);
});

test('of hundreds of wells the first are drawn and the others counted', () => {
  const years = setHistory(
    counted(450, [
      { year: 1998, filled: { low: 1, high: 1 } },
      { year: 1999, filled: { low: 2, high: 2 } },
    ]),
  )?.years;
  const last = years?.at(-1);
  expect((last?.wells.length ?? 0) + (last?.more ?? 0)).toBe(448);
  expect(last?.wells.length).toBeLessThan(50);
});

test('one year alone is no history', () => {
  expect(setHistory(counted(3, [{ year: 1998, filled: { low: 1, high: 1 } }]))).toBeNull();
});

test('an empty well is as wide as the nearest pieces of its set', () => {
  expect(nearestWidth([18, null, null, null, 30], 1)).toBe(18);
  expect(nearestWidth([18, null, null, null, 30], 2)).toBe(24);
  expect(nearestWidth([18, null, null, null, 30], 3)).toBe(30);
  expect(nearestWidth([null, null], 0)).toBe(20);
});
