import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  FACES,
  formatCompare,
  isId,
  LAYINGS,
  otherWay,
  parseCompare,
  STRAIGHT,
} from '../../../src/site/compare/state.ts';

const state = fc.record({
  pieces: fc.uniqueArray(fc.stringMatching(/^[a-z0-9]+(-[a-z0-9]+)*$/), { maxLength: 6 }),
  faces: fc.constantFrom(...FACES),
  laid: fc.constantFrom(...LAYINGS),
  turned: fc.boolean(),
  lie: fc.constant(STRAIGHT),
});
const lie = fc.record({
  degrees: fc.integer({ min: -1800, max: 1800 }).map((tenths) => tenths / 10 + 0),
  across: fc.integer({ min: -3000, max: 3000 }).map((hundredths) => hundredths / 100 + 0),
  down: fc.integer({ min: -3000, max: 3000 }).map((hundredths) => hundredths / 100 + 0),
});

describe('what lies side by side, in an address', () => {
  test('reads back as it was written', () => {
    fc.assert(
      fc.property(state, (one) => {
        expect(parseCompare(formatCompare(one))).toEqual(one);
      }),
    );
  });

  test('reads back with how one lies over the other', () => {
    fc.assert(
      fc.property(state, lie, (one, lies) => {
        const over = { ...one, laid: 'over', lie: lies } as const;
        expect(parseCompare(formatCompare(over))).toEqual(over);
      }),
    );
  });

  test.for(['', 'x', '1,2', '1,2,3,4', '1,2,NaN', '400,0,0', '0,900,0', '1e9,0,0', '٣,0,0'])(
    'lies straight where the address says %j',
    (text) => {
      expect(parseCompare(`?laid=over&lie=${text}`).lie).toEqual(STRAIGHT);
    },
  );

  // A turn and a shift undone: geometry of the plane, common knowledge.
  test('lies the other way round when they change places, and twice is as before', () => {
    expect(otherWay({ degrees: 90, across: 2, down: 0 })).toEqual({ degrees: -90, across: 0, down: 2 });
    fc.assert(
      fc.property(lie, (one) => {
        const back = otherWay(otherWay(one));
        expect(Math.abs(back.degrees - one.degrees)).toBeLessThan(0.001);
        expect(Math.hypot(back.across - one.across, back.down - one.down)).toBeLessThan(0.03);
      }),
    );
  });

  test('is short: commas as they are, and nothing of what goes without saying', () => {
    const usual = { faces: 'both', laid: 'beside', turned: false, lie: STRAIGHT } as const;
    expect(formatCompare({ ...usual, pieces: ['york-penny-3b', 'york-penny-9b'] })).toBe(
      '?pieces=york-penny-3b,york-penny-9b',
    );
    expect(formatCompare({ ...usual, pieces: [] })).toBe('');
  });

  test.for([
    ['?pieces=a,b,a', ['a', 'b']],
    ['?pieces=a&pieces=b', ['a', 'b']],
    ['?pieces=%20a%20,,b', ['a', 'b']],
    ['', []],
  ] as const)('%s names %j', ([query, pieces]) => {
    expect(parseCompare(query)).toEqual({ pieces, faces: 'both', laid: 'beside', turned: false, lie: STRAIGHT });
  });

  test.for(['../secret', 'A', 'a--b', 'a.json', '', 'a/b', '"'])('%j is no id, and is never asked for', (text) => {
    expect(isId(text)).toBe(false);
  });
});
