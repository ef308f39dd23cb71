import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clustersOf } from '../../../../src/site/models/mints/map/clusters.ts';
import { landWithin } from '../../../../src/site/models/mints/map/land.ts';
import { mintMap, placeLabels } from '../../../../src/site/models/mints/map/mint-map.ts';

/** Modern coordinates of the towns, from GeoNames (CC BY 4.0), to a hundredth of a degree; from memory. */
const TOWNS = [
  { id: 'york', name: 'York', north: 53.96, east: -1.08 },
  { id: 'london', name: 'London', north: 51.51, east: -0.13 },
  { id: 'exeter', name: 'Exeter', north: 50.72, east: -3.53 },
  { id: 'durham', name: 'Durham', north: 54.78, east: -1.58 },
  { id: 'osaka', name: 'Osaka', north: 34.69, east: 135.5 },
].map((town) => ({ ...town, href: `/${town.id}/`, pieces: { low: 1, high: 1 } }));
const ENGLISH = TOWNS.filter(({ id }) => id !== 'osaka');

describe('a map of mints', () => {
  test('north is up and east is right', () => {
    const dots = new Map(mintMap(ENGLISH, 480)?.dots.map((dot) => [dot.id, dot]));
    expect(dots.get('durham')?.y ?? 0).toBeLessThan(dots.get('york')?.y ?? 0);
    expect(dots.get('york')?.y ?? 0).toBeLessThan(dots.get('exeter')?.y ?? 0);
    expect(dots.get('exeter')?.x ?? 0).toBeLessThan(dots.get('london')?.x ?? 0);
  });

  test.for([
    { what: 'four towns in England', towns: ENGLISH },
    { what: 'a town alone', towns: ENGLISH.slice(0, 1) },
    { what: 'England and Japan', towns: TOWNS },
  ])('$what lie inside their map, on a coast that is drawn', ({ towns }) => {
    const map = mintMap(towns, 480);
    expect(map?.land.length ?? 0).toBeGreaterThan(200);
    expect(map?.dots).toHaveLength(towns.length);
    for (const { x, y } of map?.dots ?? []) {
      expect(x).toBeGreaterThan(0);
      expect(x).toBeLessThan(480);
      expect(y).toBeGreaterThan(0);
      expect(y).toBeLessThan(map?.height ?? 0);
    }
  });

  test('no mint with coordinates, no map', () => {
    expect(mintMap([], 480)).toBeNull();
  });

  test('land that is cut to a stretch stays within it', () => {
    const { coordinates } = landWithin({ west: -2, east: 0, south: 53, north: 55 });
    const points = coordinates.flat(2);
    expect(points.length).toBeGreaterThan(50);
    for (const [east = 99, north = 99] of points) {
      expect(east).toBeGreaterThanOrEqual(-2);
      expect(east).toBeLessThanOrEqual(0);
      expect(north).toBeGreaterThanOrEqual(53);
      expect(north).toBeLessThanOrEqual(55);
    }
  });
});

describe('mints near one another', () => {
  test('England is one group and Japan another', () => {
    expect(clustersOf(TOWNS, 3.5).map((group) => group.map(({ id }) => id).toSorted())).toEqual([
      ['durham', 'exeter', 'london', 'york'],
      ['osaka'],
    ]);
  });

  test('the line of 180° parts nobody', () => {
    const fiji = { north: -17, east: 179 };
    const samoa = { north: -17, east: -179.5 };
    expect(clustersOf([fiji, samoa], 2)).toHaveLength(1);
  });
});

describe('names on a map', () => {
  test('no name covers another or leaves the frame', () => {
    const dot = fc.record({
      x: fc.integer({ min: 0, max: 480 }),
      y: fc.integer({ min: 0, max: 500 }),
      name: fc.constantFrom('York', 'Kingston upon Hull', 'Bury St Edmunds'),
    });
    fc.assert(
      fc.property(fc.array(dot, { maxLength: 15 }), (dots) => {
        const boxes = placeLabels(dots, { width: 480, height: 500, letter: 7, line: 17 }).flatMap((label, at) => {
          if (label === null) return [];
          const width = (dots[at]?.name.length ?? 0) * 7;
          const left =
            label.anchor === 'start' ? label.x : label.anchor === 'end' ? label.x - width : label.x - width / 2;
          return [{ left, right: left + width, top: label.y - 10, bottom: label.y }];
        });
        for (const [at, one] of boxes.entries()) {
          expect(one.left).toBeGreaterThanOrEqual(0);
          expect(one.right).toBeLessThanOrEqual(480);
          for (const other of boxes.slice(at + 1)) {
            const apart =
              one.right <= other.left || other.right <= one.left || one.bottom <= other.top || other.bottom <= one.top;
            expect(apart).toBe(true);
          }
        }
      }),
    );
  });
});
