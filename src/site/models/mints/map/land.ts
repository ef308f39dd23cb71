import { feature } from 'topojson-client';
import type { Topology } from 'topojson-specification';
import type { MultiPolygon, Polygon, Position } from 'geojson';
import closeLand from 'world-atlas/land-10m.json' with { type: 'json' };
import wideLand from 'world-atlas/land-110m.json' with { type: 'json' };

/** A stretch of the earth in degrees; it does not cross the line of 180°. */
export type Stretch = { readonly west: number; readonly east: number; readonly south: number; readonly north: number };

/** All the land, coarsely: for a map of continents. */
export function wideLandOf(): MultiPolygon {
  return { type: 'MultiPolygon', coordinates: polygonsOf(wideLand) };
}

let close: readonly (readonly Position[][])[] | null = null;

/**
 * The land within a stretch, finely. It is cut to the stretch in degrees before anything is projected: the coast of all Eurasia is
 * one line of a hundred thousand points, and a map of a county needs a few hundred of them.
 */
export function landWithin(stretch: Stretch): MultiPolygon {
  close ??= polygonsOf(closeLand);
  const coordinates = close.flatMap((rings) => {
    const kept = rings.map((ring) => cutRing(ring, stretch)).filter((ring) => ring.length > 3);
    return kept.length === 0 ? [] : [kept];
  });
  return { type: 'MultiPolygon', coordinates };
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

/** A closed ring cut to a stretch, side by side, after Sutherland and Hodgman (Communications of the ACM 17, 1974). */
function cutRing(ring: readonly Position[], { west, east, south, north }: Stretch): Position[] {
  const sides: readonly Side[] = [
    { axis: 0, at: west, keeps: (value) => value >= west },
    { axis: 0, at: east, keeps: (value) => value <= east },
    { axis: 1, at: south, keeps: (value) => value >= south },
    { axis: 1, at: north, keeps: (value) => value <= north },
  ];
  const cut = sides.reduce<readonly Position[]>(cutAtSide, ring.slice(0, -1));
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
