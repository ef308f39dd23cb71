import { geoEqualEarth, geoMercator, geoPath } from 'd3-geo';
import type { GeoProjection } from 'd3-geo';
import { widthOfText } from '../../../../core/cases/typeset-text.ts';
import type { Count } from '../../../../core/sets/set-state.ts';
import type { OnEarth } from './clusters.ts';
import { landWithin, wideLandOf } from './land.ts';
import type { Stretch } from './land.ts';

/** A mint to be set on a map. */
export type Sited = OnEarth & {
  readonly id: string;
  readonly name: string;
  readonly href: string;
  /** How many pieces of it are here, for certain and at most. */
  readonly pieces: Count;
};

type MapDot = {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly href: string;
  readonly name: string;
  /** `maybe`: only pieces whose mint is doubtful. */
  readonly held: 'yes' | 'maybe' | 'no';
  /** Whether the map is of this mint and those around it. */
  readonly isOwn: boolean;
  /** Its area grows with the pieces here. */
  readonly r: number;
  readonly label: PlacedLabel;
};

/** A coast and the mints on it, in the units of the drawing. */
export type MintMap = {
  readonly width: number;
  readonly height: number;
  readonly land: string;
  readonly dots: readonly MapDot[];
};

/** The size of a name and of a letter of it; on a wide map, which a telephone draws small, names are larger. */
const CLOSE_NAME = { line: 19, letter: 7.8 } as const;
const WIDE_NAME = { line: 29, letter: 11.8 } as const;
/** A map wider than this is a wide one. */
export const WIDE = 600;
/** Room left around the outermost mints, a share of the drawing. */
const ROOM = 0.14;

/** A map that holds all of these mints, as wide as asked and as high as they need; null when there is none. It may be of one of them, `own`. */
export function mintMap(mints: readonly Sited[], width: number, own?: string): MintMap | null {
  if (mints.length === 0) return null;
  const spread = Math.max(...extents(mints));
  const isClose = spread < 40;
  const shape = isClose ? geoMercator() : geoEqualEarth().rotate([-middleEast(mints), 0]);
  const height = heightFor(mints, shape, width);
  const projection = fitted(mints, shape, width, height).clipExtent([
    [0, 0],
    [width, height],
  ]);
  const path = geoPath(projection).digits(1);
  // The more pieces, the sooner its name finds room; the one whose map it is has the first.
  const rank = ({ id, pieces }: Sited): number => (id === own ? Infinity : pieces.high);
  const ordered = mints.toSorted((a, b) => (rank(a) === rank(b) ? (a.name < b.name ? -1 : 1) : rank(b) - rank(a)));
  const at = ordered.flatMap((mint) => {
    const point = projection([mint.east, mint.north]);
    return point === null ? [] : [{ mint, x: tenth(point[0]), y: tenth(point[1]) }];
  });
  const labels = placeLabels(
    at.map(({ mint, x, y }) => ({
      x,
      y,
      name: mint.name,
      r: radiusOf(mint.pieces.high) + (mint.id === own ? RING : 0),
    })),
    { width, height, ...(width > WIDE ? WIDE_NAME : CLOSE_NAME) },
  );
  return {
    width,
    height,
    land: path(isClose ? landWithin(stretchOf(projection, width, height)) : wideLandOf()) ?? '',
    dots: at.map(({ mint, x, y }, index) => ({
      id: mint.id,
      x,
      y,
      href: mint.href,
      name: mint.name,
      held: mint.pieces.low > 0 ? 'yes' : mint.pieces.high > 0 ? 'maybe' : 'no',
      isOwn: mint.id === own,
      r: radiusOf(mint.pieces.high),
      label: labels[index] ?? null,
    })),
  };
}

/** How far the ring of the mint whose map it is stands from its dot, with its stroke. */
const RING = 5;

/** A dot as large as twenty-five pieces make it is the largest. */
function radiusOf(pieces: number): number {
  return tenth(3 + 1.6 * Math.sqrt(Math.min(25, pieces)));
}

/** What of the earth the drawing shows, with a margin, so that the cut lies outside it. */
function stretchOf(projection: GeoProjection, width: number, height: number): Stretch {
  const [west, north] = projection.invert?.([0, 0]) ?? [-180, 85];
  const [east, south] = projection.invert?.([width, height]) ?? [180, -85];
  return { west: west - 0.5, east: east + 0.5, south: south - 0.5, north: north + 0.5 };
}

function extents(mints: readonly Sited[]): readonly [number, number] {
  const norths = mints.map(({ north }) => north);
  const easts = mints.map(({ east }) => east);
  return [Math.max(...norths) - Math.min(...norths), Math.max(...easts) - Math.min(...easts)];
}

function middleEast(mints: readonly Sited[]): number {
  const easts = mints.map(({ east }) => east);
  return (Math.max(...easts) + Math.min(...easts)) / 2;
}

/** The corners of what is to be seen: a lone mint gets some country around it. */
function cornersOf(mints: readonly Sited[]): { type: 'MultiPoint'; coordinates: [number, number][] } {
  const [high, wide] = extents(mints);
  const norths = mints.map(({ north }) => north);
  const easts = mints.map(({ east }) => east);
  const [padNorth, padEast] = [Math.max(0, LEAST - high) / 2, Math.max(0, LEAST * 1.4 - wide) / 2];
  const [west, east] = [Math.max(-180, Math.min(...easts) - padEast), Math.min(180, Math.max(...easts) + padEast)];
  const [south, north] = [Math.max(-85, Math.min(...norths) - padNorth), Math.min(85, Math.max(...norths) + padNorth)];
  return {
    type: 'MultiPoint',
    coordinates: [
      [west, south],
      [west, north],
      [east, south],
      [east, north],
    ],
  };
}

/** The least stretch of country shown, in degrees. */
const LEAST = 5;

function fitted(mints: readonly Sited[], shape: GeoProjection, width: number, height: number): GeoProjection {
  const room = ROOM * Math.min(width, height);
  return shape.fitExtent(
    [
      [room, room],
      [width - room, height - room],
    ],
    cornersOf(mints),
  );
}

/** As high as the mints ask at this width, within reason. */
function heightFor(mints: readonly Sited[], shape: GeoProjection, width: number): number {
  shape.fitWidth(width, cornersOf(mints));
  const bounds = geoPath(shape).bounds(cornersOf(mints));
  const asked = bounds[1][1] - bounds[0][1];
  return Math.round(Math.min(width * 1.35, Math.max(width * 0.36, asked)));
}

function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}

/** A dot on a map with a name to be written beside it, in the units of the drawing. */
type Dot = { readonly x: number; readonly y: number; readonly name: string; readonly r?: number };

/** Where a name begins or ends; null where there is no room for it. */
type PlacedLabel = {
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
} | null;

export type Frame = { readonly width: number; readonly height: number; readonly letter: number; readonly line: number };

type Box = { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };

const CLEAR = 9;
/** The radius of a dot that has one piece, about. */
const USUAL = 4.5;

/**
 * Finds room for each name to the right of its dot, to the left, above or below, without covering a dot or another name or
 * leaving the frame. Names are tried in the order given, so the more important come first.
 */
export function placeLabels(dots: readonly Dot[], frame: Frame): readonly PlacedLabel[] {
  const taken: Box[] = dots.map(({ x, y, r = USUAL }) => {
    const half = r + 1.5;
    return { left: x - half, right: x + half, top: y - half, bottom: y + half };
  });
  return dots.map((dot, at) => {
    const own = taken[at];
    for (const { label, box } of choicesOf(dot, frame)) {
      const inside = box.left >= 0 && box.right <= frame.width && box.top >= 0 && box.bottom <= frame.height;
      if (!inside || taken.some((other) => other !== own && overlap(box, other))) continue;
      taken.push(box);
      return label;
    }
    return null;
  });
}

/** How wide letters of the reading face are, in ems: in all, and one of them about. */
function emsOf(text: string): number {
  return widthOfText(text, POINTS_PER_INCH) / MILLIMETRES_PER_INCH;
}
const USUAL_LETTER = 0.42;
const POINTS_PER_INCH = 72;
const MILLIMETRES_PER_INCH = 25.4;

function choicesOf(
  { x, y, name, r = USUAL }: Dot,
  { letter, line }: Frame,
): readonly { label: PlacedLabel; box: Box }[] {
  const width = (letter / USUAL_LETTER) * emsOf(name);
  const at = (anchor: 'start' | 'middle' | 'end', dx: number, dy: number): { label: PlacedLabel; box: Box } => {
    const from = anchor === 'start' ? x + dx : anchor === 'end' ? x + dx - width : x + dx - width / 2;
    const base = y + dy;
    return {
      label: { x: x + dx, y: base, anchor },
      box: { left: from, right: from + width, top: base - line * 0.62, bottom: base + line * 0.12 },
    };
  };
  const half = line * 0.3;
  const clear = CLEAR + Math.max(0, r - USUAL);
  return [
    at('start', clear, half), at('end', -clear, half), at('middle', 0, -clear), at('middle', 0, clear + line * 0.7),
    at('start', clear * 0.7, -clear * 0.6), at('start', clear * 0.7, clear + half), at('end', -clear * 0.7, -clear * 0.6),
    at('end', -clear * 0.7, clear + half),
  ]; // prettier-ignore
}

function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}
