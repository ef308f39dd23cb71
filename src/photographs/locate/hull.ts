import type { Extent } from './pixels.ts';

/** The convex hull of a mask, filled: Andrew's monotone chain (Information Processing Letters 9, 1979) over the ends of each row. */
export function hullOf(mask: Uint8Array, size: Extent): Uint8Array {
  const { width, height } = size;
  const ends = Array.from({ length: height }, (_, y) => {
    const row = mask.subarray(y * width, (y + 1) * width);
    return { y, first: row.indexOf(1), last: row.lastIndexOf(1) };
  }).filter(({ first }) => first !== -1);
  const left = chain(
    ends.map(({ y, first }) => ({ x: first, y })),
    1,
  );
  const right = chain(
    ends.map(({ y, last }) => ({ x: last, y })),
    -1,
  );
  const out = new Uint8Array(mask.length);
  for (const { y } of ends)
    out.fill(1, y * width + Math.ceil(along(left, y)), y * width + Math.floor(along(right, y)) + 1);
  return out;
}

type Point = { readonly x: number; readonly y: number };

/** The points of one side of the hull, from the top; `side` 1 for the left, -1 for the right. */
function chain(points: readonly Point[], side: 1 | -1): readonly Point[] {
  const kept: Point[] = [];
  for (const point of points) {
    for (
      let last = kept.at(-1), before = kept.at(-2);
      last !== undefined && before !== undefined;
      last = kept.at(-1), before = kept.at(-2)
    ) {
      const turn = (last.x - before.x) * (point.y - before.y) - (last.y - before.y) * (point.x - before.x);
      if (side * turn < 0) break;
      kept.pop();
    }
    kept.push(point);
  }
  return kept;
}

/** Where a side of the hull crosses a row. */
function along(side: readonly Point[], y: number): number {
  const at = side.findIndex((point) => point.y >= y);
  const [below, above] = [side[at], side[at - 1]];
  if (below === undefined) return side.at(-1)?.x ?? 0;
  if (above === undefined || below.y === y) return below.x;
  return above.x + ((below.x - above.x) * (y - above.y)) / (below.y - above.y);
}
