import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { brought, moved, numberedEvery, wholeView } from '../../../src/site/islands/zoom/view.ts';

const length = fc.integer({ min: 100, max: 2000 });
const extent = fc.record({ width: length, height: length });
const place = fc.integer({ min: -1000, max: 1000 });
const point = fc.record({ x: place, y: place });
const times = fc.double({ min: 0.2, max: 5, noNaN: true });

describe('a picture under the glass', () => {
  test('is seen whole to begin with, and touches the glass at two edges', () => {
    expect(wholeView({ width: 390, height: 600 }, { width: 832, height: 832 })).toEqual({
      zoom: 390 / 832, x: 0, y: 0 }); // prettier-ignore
  });

  test('never leaves a strip of the glass bare that it could fill', () => {
    fc.assert(
      fc.property(extent, extent, fc.array(fc.tuple(times, point, point)), (glass, picture, doings) => {
        let view = wholeView(glass, picture);
        for (const [nearer, at, by] of doings) {
          view = moved(brought(view, nearer, at, glass, picture), by, glass, picture);
          for (const [room, size, middle] of [
            [glass.width, picture.width * view.zoom, view.x],
            [glass.height, picture.height * view.zoom, view.y],
          ] as const) {
            const bare = Math.max(middle - size / 2 + room / 2, room / 2 - (middle + size / 2));
            expect(bare).toBeLessThanOrEqual(Math.max(0, room - size) / 2 + 1e-6);
          }
        }
      }),
    );
  });

  test('keeps what lies under a finger under it while it comes nearer', () => {
    // Well inside a picture that fills the glass, where no edge holds it back: 832 pixels shown at 832, the finger 100 from the middle.
    const glass = { width: 832, height: 832 };
    const before = wholeView(glass, glass);
    const after = brought(before, 2, { x: 100, y: -40 }, glass, glass);
    expect((100 - after.x) / after.zoom).toBeCloseTo((100 - before.x) / before.zoom, 9);
    expect((-40 - after.y) / after.zoom).toBeCloseTo((-40 - before.y) / before.zoom, 9);
  });

  test('comes back to the whole from wherever it was', () => {
    fc.assert(
      fc.property(extent, extent, times, point, (glass, picture, nearer, at) => {
        const back = brought(brought(wholeView(glass, picture), nearer, at, glass, picture), 1e-6, at, glass, picture);
        expect(back.zoom).toBeCloseTo(wholeView(glass, picture).zoom, 9);
      }),
    );
  });
});

test.for([
  { pixels: 80, every: 1 },
  { pixels: 33, every: 2 },
  { pixels: 12, every: 5 },
  { pixels: 4, every: 10 },
])('a rule of $pixels pixels a millimetre is numbered every $every mm', ({ pixels, every }) => {
  expect(numberedEvery(pixels)).toBe(every);
});
