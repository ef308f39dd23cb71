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

test.for(['wide', 'narrow'] as const)(
  'on a %s page every name is written, inside the drawing, and none on another',
  (page) => {
    const [drawn] = allBands([scheme], { low: 1, high: 2000 });
    const { bands, lanes } = drawn?.[page] ?? expect.fail('nothing is drawn');
    expect(bands.map(({ name }) => name)).toEqual(scheme.periods.map(({ name }) => name));
    const letters = page === 'wide' ? 6.6 / 11 : 6.6 / 3.3;
    const boxes = bands.map(({ name, named, lane }) => {
      const length = name.length * letters;
      return {
        lane,
        from: named.anchor === 'end' ? named.x - length : named.x,
        to: named.anchor === 'end' ? named.x : named.x + length,
      };
    });
    for (const { from, to } of boxes) {
      expect(from).toBeGreaterThanOrEqual(0);
      expect(to).toBeLessThanOrEqual(100);
    }
    for (const [at, one] of boxes.entries())
      for (const other of boxes.slice(at + 1))
        if (one.lane === other.lane) expect(one.to <= other.from || other.to <= one.from).toBe(true);
    expect(Math.max(...bands.map(({ lane }) => lane))).toBe(lanes - 1);
  },
);
