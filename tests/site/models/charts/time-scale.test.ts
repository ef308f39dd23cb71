import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { along, barOf, lanesOf, scaleOver, ticksOf, timeScale } from '../../../../src/site/models/charts/time-scale.ts';

const span = fc
  .tuple(fc.integer({ min: -3000, max: 2100 }), fc.integer({ min: 0, max: 2500 }))
  .map(([low, length]) => ({ low, high: low + length }));

describe('a line of years', () => {
  test('a year begins where the year before it ends, and the last ends the drawing', () => {
    const scale = { low: 1201, high: 1300 };
    expect(barOf(scale, { low: 1201, high: 1201 })).toEqual({ x: 0, width: 1, opensLeft: false, opensRight: false });
    expect(barOf(scale, { low: 1300, high: 1300 })).toEqual({ x: 99, width: 1, opensLeft: false, opensRight: false });
    expect(along(scale, 1251)).toBe(50);
  });

  test('what runs on past an edge is cut there and says so', () => {
    const scale = { low: 1201, high: 1300 };
    expect(barOf(scale, { low: -Infinity, high: 1210 })).toEqual({
      x: 0,
      width: 10,
      opensLeft: true,
      opensRight: false,
    });
    expect(barOf(scale, { low: 1291, high: Infinity })).toEqual({
      x: 90,
      width: 10,
      opensLeft: false,
      opensRight: true,
    });
  });

  test('what lies outside is not drawn', () => {
    expect(barOf({ low: 1201, high: 1300 }, { low: 1301, high: 1400 })).toBeNull();
    expect(barOf({ low: 1201, high: 1300 }, { low: 1100, high: 1200 })).toBeNull();
  });

  test('there is no year 0: the round years before Christ count back from 1 BC', () => {
    expect(ticksOf({ low: -99, high: 300 }).map(({ says }) => says)).toEqual([
      '100 BC',
      'AD 1',
      'AD 100',
      'AD 200',
      'AD 300',
    ]);
  });

  test('a line of single years marks each of them, with no gap between 1 BC and AD 1', () => {
    expect(ticksOf({ low: -2, high: 3 }).map(({ says }) => says)).toEqual([
      '3 BC',
      '2 BC',
      '1 BC',
      'AD 1',
      'AD 2',
      'AD 3',
    ]);
  });

  test('a single year is given a decade to lie in', () => {
    const scale = timeScale({ low: 1696, high: 1696 });
    expect(scale.high - scale.low + 1).toBe(10);
  });

  test('undated pieces ask for no line', () => {
    expect(scaleOver([{ low: -Infinity, high: Infinity }])).toBeNull();
    expect(scaleOver([])).toBeNull();
  });

  test('every bar lies inside the drawing, whatever the years', () => {
    fc.assert(
      fc.property(span, span, (shown, piece) => {
        const bar = barOf(timeScale(shown), piece);
        if (bar === null) return;
        expect(bar.x).toBeGreaterThanOrEqual(0);
        expect(bar.width).toBeGreaterThan(-0.011);
        expect(bar.x + bar.width).toBeLessThanOrEqual(100.02);
      }),
    );
  });

  test('there are marks to read by, few enough to stand apart, on every line', () => {
    fc.assert(
      fc.property(span, (shown) => {
        const ticks = ticksOf(timeScale(shown));
        expect(ticks.length).toBeGreaterThan(0);
        expect(ticks.length).toBeLessThanOrEqual(7);
      }),
    );
  });
});

describe('lanes', () => {
  const bar = fc.record({ x: fc.integer({ min: 0, max: 95 }), width: fc.integer({ min: 1, max: 40 }) });

  test('no two bars in one lane touch', () => {
    fc.assert(
      fc.property(fc.array(bar, { maxLength: 40 }), (unsorted) => {
        const bars = unsorted.toSorted((a, b) => a.x - b.x);
        const lanes = lanesOf(bars);
        for (const [at, one] of bars.entries()) {
          for (const [later, other] of bars.entries()) {
            if (later <= at || lanes[at] !== lanes[later]) continue;
            expect(other.x).toBeGreaterThanOrEqual(one.x + one.width);
          }
        }
      }),
    );
  });

  test('bars that follow one another share the first lane', () => {
    expect(
      lanesOf([
        { x: 0, width: 10 },
        { x: 20, width: 10 },
        { x: 5, width: 10 },
      ]),
    ).toEqual([0, 0, 1]);
  });
});
