import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { GeometryCollection, MultiPolygon as Areas, Polygon as Area, Topology } from 'topojson-specification';
import type { MultiPolygon, Position } from 'geojson';

// Read when a map is drawn. Bundled it is a script of 420,000 lines, with which a build needs 150 MB more.
const require = createRequire(import.meta.url);

/** A stretch of the earth in degrees; it does not cross the line of 180°. */
export type Stretch = { readonly west: number; readonly east: number; readonly south: number; readonly north: number };

/** A piece of coast in degrees, and the stretch that it and each run of its points takes. */
type Line = {
  readonly easts: Float64Array;
  readonly norths: Float64Array;
  readonly takes: Stretch;
  readonly runs: readonly Stretch[];
};

/** A coast: lines that end where the next begins, a negative number meaning the line ~number from its end. */
type Ring = readonly number[];

type Land = { readonly lines: readonly Line[]; readonly polygons: readonly (readonly Ring[])[] };

/** Points of a run: the coast of Eurasia has a hundred thousand. */
const RUN = 64;
const ANYWHERE: Stretch = { west: -Infinity, east: Infinity, south: -Infinity, north: Infinity };
const NOWHERE: Stretch = { west: Infinity, east: -Infinity, south: Infinity, north: -Infinity };

let wide: MultiPolygon | null = null;
let close: Land | null = null;

/** All the land, coarsely: for a map of continents. */
export function wideLandOf(): MultiPolygon {
  wide ??= within(landOf(require.resolve('world-atlas/land-110m.json')), ANYWHERE);
  return wide;
}

/** The land within a stretch, finely. It is cut to the stretch in degrees before anything is projected. */
export function landWithin(stretch: Stretch): MultiPolygon {
  close ??= landOf(require.resolve('world-atlas/land-10m.json'));
  return within(close, stretch);
}

function within({ lines, polygons }: Land, stretch: Stretch): MultiPolygon {
  const coordinates = polygons.flatMap((rings) => {
    const kept = rings
      .map((ring) => cutRing(nearPoints(ring, lines, stretch), stretch))
      .filter(({ length }) => length > 3);
    return kept.length === 0 ? [] : [kept];
  });
  return { type: 'MultiPolygon', coordinates };
}

/**
 * The land of a file in TopoJSON. Its lines are kept in steps from point to point: 400,000 small lists to a reader of JSON, which
 * would take longer over them than all the rest of a map does. They are read as the figures they are.
 */
function landOf(path: string): Land {
  const bytes = readFileSync(path);
  const [from, to] = [bytes.lastIndexOf(LINES) + LINES.length - 3, bytes.indexOf(']]]', bytes.lastIndexOf(LINES)) + 3];
  const rest = `${bytes.toString('latin1', 0, from)}[]${bytes.toString('latin1', to)}`;
  const { transform, objects } = JSON.parse(rest) as Topology;
  const { land } = objects;
  if (land === undefined || transform === undefined) throw new Error('The coastlines hold no land.');
  const { scale, translate } = transform;
  const lines = stepsIn(bytes.subarray(from, to)).map((steps): Line => {
    const [easts, norths] = [new Float64Array(steps.length / 2), new Float64Array(steps.length / 2)];
    let [x, y] = [0, 0];
    for (let at = 0; at < easts.length; at += 1) {
      x += steps[2 * at] ?? 0;
      y += steps[2 * at + 1] ?? 0;
      easts[at] = x * scale[0] + translate[0];
      norths[at] = y * scale[1] + translate[1];
    }
    const runs = Array.from({ length: Math.ceil(easts.length / RUN) }, (_, run) =>
      takenBy(easts, norths, run * RUN, Math.min((run + 1) * RUN, easts.length)),
    );
    return { easts, norths, runs, takes: runs.reduce(around, NOWHERE) };
  });
  return { lines, polygons: polygonsOf(land as Shape) };
}

const LINES = '"arcs":[[[';
const [OPEN, CLOSE, COMMA, MINUS, ZERO] = ['[', ']', ',', '-', '0'].map((sign) => sign.charCodeAt(0));

/** The whole numbers of lists of lists of pairs, one row of figures for each list. */
function stepsIn(written: Uint8Array): readonly (readonly number[])[] {
  const lists: number[][] = [];
  let [depth, figure, isNegative] = [0, 0, false];
  let list: number[] = [];
  for (const sign of written) {
    if (sign === OPEN) depth += 1;
    else if (sign === MINUS) isNegative = true;
    else if (sign !== COMMA && sign !== CLOSE) figure = figure * 10 + sign - (ZERO ?? 0);
    if (depth === 3 && (sign === COMMA || sign === CLOSE)) {
      list.push(isNegative ? -figure : figure);
      [figure, isNegative] = [0, false];
    }
    if (sign !== CLOSE) continue;
    depth -= 1;
    if (depth !== 1) continue;
    lists.push(list);
    list = [];
  }
  return lists;
}

type Shape = GeometryCollection | Areas | Area;

function polygonsOf(shape: Shape): readonly (readonly Ring[])[] {
  if (shape.type === 'GeometryCollection') return shape.geometries.flatMap((one) => polygonsOf(one as Shape));
  return shape.type === 'Polygon' ? [shape.arcs] : shape.arcs;
}

function takenBy(easts: Float64Array, norths: Float64Array, from: number, to: number): Stretch {
  let { west, east, south, north } = NOWHERE;
  for (let at = from; at < to; at += 1) {
    west = Math.min(west, easts[at] ?? west);
    east = Math.max(east, easts[at] ?? east);
    south = Math.min(south, norths[at] ?? south);
    north = Math.max(north, norths[at] ?? north);
  }
  return { west, east, south, north };
}

function around(one: Stretch, other: Stretch): Stretch {
  return {
    west: Math.min(one.west, other.west),
    east: Math.max(one.east, other.east),
    south: Math.min(one.south, other.south),
    north: Math.max(one.north, other.north),
  };
}

/** The points of a coast, of a run that is beyond one side of the stretch only its ends: no cut shows what is between. */
function nearPoints(ring: Ring, lines: readonly Line[], stretch: Stretch): readonly Position[] {
  const parts = ring.flatMap((number) => {
    const line = lines[number < 0 ? ~number : number];
    return line === undefined ? [] : [{ line, isReversed: number < 0 }];
  });
  if (isBeyond(parts.map(({ line }) => line.takes).reduce(around, NOWHERE), stretch)) return [];
  return parts.flatMap(({ line, isReversed }) => {
    const points: Position[] = [];
    const put = (at: number): number => points.push([line.easts[at] ?? 0, line.norths[at] ?? 0]);
    for (const [run, takes] of line.runs.entries()) {
      const [from, to] = [run * RUN, Math.min((run + 1) * RUN, line.easts.length) - 1];
      if (isBeyond(takes, stretch)) [from, to].forEach(put);
      else for (let at = from; at <= to; at += 1) put(at);
    }
    if (isReversed) points.reverse();
    // Its last point is the first of the next.
    return points.slice(0, -1);
  });
}

function isBeyond(taken: Stretch, { west, east, south, north }: Stretch): boolean {
  return taken.east < west || taken.west > east || taken.north < south || taken.south > north;
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
