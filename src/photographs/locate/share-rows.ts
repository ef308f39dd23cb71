type Measured = { readonly wide: number; readonly high: number };

/** Pictures in their order, parted into rows, and the scale at which they fit: pixels a millimetre. */
export type Rows<T> = { readonly rows: readonly (readonly T[])[]; readonly scale: number };

/**
 * The way to lay pictures in at most three rows at which they can be largest, in their order: `room` and `gap` are pixels,
 * pictures are measured in millimetres, and no scale is above `largest`.
 */
export function balancedRows<T extends Measured>(
  pictures: readonly T[],
  room: { readonly width: number; readonly height: number },
  gap: number,
  largest: number,
): Rows<T> {
  const ways = [1, 2, 3].flatMap((count) => (count <= pictures.length ? partings(pictures, count) : []));
  const scaled = ways.map((rows) => ({ rows, scale: Math.min(largest, scaleOf(rows, room, gap)) }));
  // Of ways that allow one scale the first has the fewest rows.
  return scaled.reduce((best, way) => (way.scale > best.scale ? way : best), scaled[0] ?? { rows: [], scale: largest });
}

/** Every way to cut a row into so many, keeping its order. */
function partings<T>(all: readonly T[], count: number): readonly (readonly (readonly T[])[])[] {
  if (count === 1) return [[all]];
  return Array.from({ length: all.length - count + 1 }, (_, at) => at + 1).flatMap((cut) =>
    partings(all.slice(cut), count - 1).map((rest) => [all.slice(0, cut), ...rest]),
  );
}

function scaleOf(
  rows: readonly (readonly Measured[])[],
  room: { readonly width: number; readonly height: number },
  gap: number,
): number {
  const across = rows.map(
    (row) => (room.width - (row.length + 1) * gap) / row.reduce((sum, { wide }) => sum + wide, 0),
  );
  const down =
    (room.height - (rows.length - 1) * gap) /
    rows.reduce((sum, row) => sum + Math.max(...row.map(({ high }) => high)), 0);
  return Math.min(down, ...across);
}
