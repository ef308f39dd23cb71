import { createRequire } from 'node:module';
import { feature } from 'topojson-client';
import type { Topology } from 'topojson-specification';
import type { MultiPolygon, Polygon, Position } from 'geojson';

// Read as JSON when a map is drawn. Bundled it is a script of 420,000 lines, with which a build needs 150 MB more.
const require = createRequire(import.meta.url);

/** A stretch of the earth in degrees; it does not cross the line of 180°. */
export type Stretch = { readonly west: number; readonly east: number; readonly south: number; readonly north: number };

/** All the land, coarsely: for a map of continents. */
export function wideLandOf(): MultiPolygon {
  wide ??= { type: 'MultiPolygon', coordinates: polygonsOf(require('world-atlas/land-110m.json') as Topology) };
  return wide;
}

let wide: MultiPolygon | null = null;

/** A coast, the stretch it takes, and the stretch that each run of its points takes. */
type Coast = { readonly points: readonly Position[]; readonly takes: Stretch; readonly runs: readonly Stretch[] };

/** Points of a run: the coast of Eurasia has a hundred thousand. */
const RUN = 64;

let close: readonly (readonly Coast[])[] | null = null;

/** The land within a stretch, finely. It is cut to the stretch in degrees before anything is projected. */
export function landWithin(stretch: Stretch): MultiPolygon {
  close ??= polygonsOf(require('world-atlas/land-10m.json') as Topology).map((rings) => rings.map(coastOf));
  const coordinates = close.flatMap((coasts) => {
    const kept = coasts.map((coast) => cutRing(nearPoints(coast, stretch), stretch)).filter((ring) => ring.length > 3);
    return kept.length === 0 ? [] : [kept];
  });
  return { type: 'MultiPolygon', coordinates };
}

function coastOf(ring: readonly Position[]): Coast {
  const points = ring.slice(0, -1);
  const runs = Array.from({ length: Math.ceil(points.length / RUN) }, (_, at) =>
    takenBy(points.slice(at * RUN, (at + 1) * RUN)),
  );
  return {
    points,
    takes: takenBy(
      runs.flatMap(({ west, east, south, north }) => [
        [west, south],
        [east, north],
      ]),
    ),
    runs,
  };
}

function takenBy(points: readonly Position[]): Stretch {
  const [easts, norths] = [points.map(([east = 0]) => east), points.map(([, north = 0]) => north)];
  return {
    west: Math.min(...easts),
    east: Math.max(...easts),
    south: Math.min(...norths),
    north: Math.max(...norths),
  };
}

/** The points of a coast, of a run that lies beyond one side of the stretch only its ends: no cut shows what is between. */
function nearPoints({ points, takes, runs }: Coast, { west, east, south, north }: Stretch): readonly Position[] {
  const isBeyond = (run: Stretch): boolean =>
    run.east < west || run.west > east || run.north < south || run.south > north;
  if (isBeyond(takes)) return [];
  const near: Position[] = [];
  for (const [at, run] of runs.entries()) {
    const [from, to] = [at * RUN, Math.min((at + 1) * RUN, points.length)];
    if (isBeyond(run)) near.push(points[from] ?? [], points[to - 1] ?? []);
    else for (let one = from; one < to; one += 1) near.push(points[one] ?? []);
  }
  return near;
}

function polygonsOf(topology: Topology): Position[][][] {
  const land = topology.objects['land'];
  if (land === undefined) throw new Error('The coastlines hold no land.');
  const shapes = feature(topology, land);
  const features = shapes.type === 'FeatureCollection' ? shapes.features : [shapes];
  return features.flatMap(({ geometry }) => (isLand(geometry) ? ringsOf(geometry) : []));
}

function isLand(geometry: { type: string } | null): geometry is Polygon | MultiPolygon {
  return geometry?.type === 'Polygon' || geometry?.type === 'MultiPolygon';
}

function ringsOf(geometry: Polygon | MultiPolygon): Position[][][] {
  return geometry.type === 'Polygon' ? [geometry.coordinates] : geometry.coordinates;
}

type Side = { readonly axis: 0 | 1; readonly at: number; readonly keeps: (value: number) => boolean };

/** The points of a ring, closed, cut to a stretch, side by side, after Sutherland and Hodgman (Communications of the ACM 17, 1974). */
function cutRing(ring: readonly Position[], { west, east, south, north }: Stretch): Position[] {
  const sides: readonly Side[] = [
    { axis: 0, at: west, keeps: (value) => value >= west },
    { axis: 0, at: east, keeps: (value) => value <= east },
    { axis: 1, at: south, keeps: (value) => value >= south },
    { axis: 1, at: north, keeps: (value) => value <= north },
  ];
  const cut = sides.reduce<readonly Position[]>(cutAtSide, ring);
  const [first] = cut;
  return first === undefined ? [] : [...cut, first];
}

function cutAtSide(points: readonly Position[], side: Side): readonly Position[] {
  const kept: Position[] = [];
  let before = points.at(-1);
  for (const point of points) {
    if (before !== undefined && isIn(before, side) !== isIn(point, side)) kept.push(crossing(before, point, side));
    if (isIn(point, side)) kept.push(point);
    before = point;
  }
  return kept;
}

function isIn(point: Position, { axis, keeps }: Side): boolean {
  return keeps(point[axis] ?? 0);
}

function crossing(from: Position, to: Position, { axis, at }: Side): Position {
  const other = axis === 0 ? 1 : 0;
  const [a = 0, b = 0] = [from[axis], to[axis]];
  const [c = 0, d = 0] = [from[other], to[other]];
  const along = c + ((d - c) * (at - a)) / (b - a);
  return axis === 0 ? [at, along] : [along, at];
}
