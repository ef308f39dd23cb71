import { expect, test } from 'vitest';
import type { EraScheme } from '../../../../src/core/eras/era-scheme.ts';
import { allBands } from '../../../../src/site/models/eras/era-bands.ts';

// Common practice: periods of very different lengths, two of which overlap.
const scheme: EraScheme = {
  id: 'plain',
  title: 'Plain periods',
  source: 'common practice',
  ends: 'inclusive',
  periods: [
    { id: 'a', name: 'Early', from: 410, to: 1066 },
    { id: 'b', name: 'A period with a name far longer than its years', from: 700, to: 720 },
    { id: 'c', name: 'Middle', from: 1067, to: 1539 },
    { id: 'd', name: 'A very short one at the end', from: 1990, to: 2000 },
  ],
};

const MIDDLE = { id: 'e', name: 'A sub-period in the middle (901–1100)', from: 901, to: 1100 };

/** Two stretches across, in per cent. */
const meet = (one: Stretch, other: Stretch): boolean => one.from < other.to && other.from < one.to;
type Stretch = { readonly from: number; readonly to: number };

test.for(['wide', 'narrow'] as const)(
  'on a %s page every name is inside the drawing, wholly in its band or off every band, and none on another',
  (page) => {
    // Years of which no side has room for a name on a phone: a sub-period in the middle of the drawing.
    const [drawn] = allBands([{ ...scheme, periods: [...scheme.periods, MIDDLE] }], { low: 1, high: 2000 });
    const { bands, lanes } = drawn?.[page] ?? expect.fail('nothing is drawn');
    expect(bands).toHaveLength(scheme.periods.length + 1);
    // Letters of 13 px take about 6 px each of a page of 1,100 or 330.
    const letters = page === 'wide' ? 6 / 11 : 6 / 3.3;
    const names = bands.map(({ name, named, lane, x, width }) => {
      const length = name.length * letters;
      const from = named.anchor === 'end' ? named.x - length : named.x;
      return { lane: named.lane, bandLane: lane, from, to: from + length, band: { from: x, to: x + width } };
    });
    for (const one of names) {
      expect(one.from).toBeGreaterThanOrEqual(0);
      expect(one.to).toBeLessThanOrEqual(100);
      for (const other of names) {
        const isOwn = one === other;
        const isInside = isOwn && one.band.from <= one.from && one.to <= one.band.to;
        if (other.bandLane === one.lane && !isInside) expect(meet(one, other.band)).toBe(false);
        if (!isOwn && other.lane === one.lane) expect(meet(one, other)).toBe(false);
        if (!isOwn && other.bandLane === one.bandLane) expect(meet(one.band, other.band)).toBe(false);
      }
    }
    expect(Math.max(...bands.map(({ lane }) => lane))).toBe(lanes - 1);
  },
);
