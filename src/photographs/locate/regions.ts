import type { Box, Extent } from './pixels.ts';

/** Joins what lies within this reach of each other: grown by it, then shrunk by it. Masks are one byte a pixel, 1 where something is. */
export function close(mask: Uint8Array, size: Extent, reach: number): Uint8Array {
  // With room all round: what is grown over the rim of the picture must be there to be shrunk back.
  const roomy = { width: size.width + 2 * reach, height: size.height + 2 * reach };
  const laid = new Uint8Array(roomy.width * roomy.height);
  for (let y = 0; y < size.height; y += 1)
    laid.set(mask.subarray(y * size.width, (y + 1) * size.width), (y + reach) * roomy.width + reach);
  const closed = shrink(grow(laid, roomy, reach), roomy, reach);
  const out = new Uint8Array(mask.length);
  for (let y = 0; y < size.height; y += 1) {
    const from = (y + reach) * roomy.width + reach;
    out.set(closed.subarray(from, from + size.width), y * size.width);
  }
  return out;
}

/** Takes away what is thinner than twice this reach: shrunk by it, then grown by it. */
export function open(mask: Uint8Array, size: Extent, reach: number): Uint8Array {
  return grow(shrink(mask, size, reach), size, reach);
}

export function grow(mask: Uint8Array, size: Extent, reach: number): Uint8Array {
  return spread(mask, size, reach, 1);
}

export function shrink(mask: Uint8Array, size: Extent, reach: number): Uint8Array {
  return spread(mask, size, reach, 0);
}

/** A mask with every pixel of this value spread so far along its row, and then along its column. */
function spread(mask: Uint8Array, { width, height }: Extent, reach: number, value: 0 | 1): Uint8Array {
  const across = mask.slice();
  for (let row = 0; row < mask.length; row += width) spreadRow(mask, across, row, row + width, reach, value);
  // Row by row, with the last row of this value kept for every column: memory is read in its order.
  const out = across.slice();
  const near = new Int32Array(width).fill(-reach - 1);
  for (let y = 0; y < height; y += 1) spreadDown(across, out, y * width, near, y, reach, value);
  near.fill(-reach - 1);
  for (let y = 0; y < height; y += 1) spreadDown(across, out, (height - 1 - y) * width, near, y, reach, value);
  return out;
}

// Functions of a row: what is called often is made fast, and what loops long is not.
function spreadRow(mask: Uint8Array, across: Uint8Array, from: number, to: number, reach: number, value: 0 | 1): void {
  let until = -1;
  for (let at = from; at < to; at += 1) {
    if (mask[at] === value) until = at + reach;
    else if (at <= until) across[at] = value;
  }
  until = to;
  for (let at = to - 1; at >= from; at -= 1) {
    if (mask[at] === value) until = at - reach;
    else if (at >= until) across[at] = value;
  }
}

/** `near` is the row of each column, so many rows down, in which the value was seen last. */
function spreadDown(
  across: Uint8Array,
  out: Uint8Array,
  from: number,
  near: Int32Array,
  down: number,
  reach: number,
  value: 0 | 1,
): void {
  for (let x = 0; x < near.length; x += 1) {
    if (across[from + x] === value) near[x] = down;
    else if (down - (near[x] ?? 0) <= reach) out[from + x] = value;
  }
}

/** Joined pixels, and the box they are in. */
export type Region = { readonly box: Box; readonly pixels: Int32Array };

/** Every region of joined pixels that has at least so many. */
export function regionsOf(mask: Uint8Array, size: Extent, least: number): readonly Region[] {
  const left = Uint8Array.from(mask);
  const regions: Region[] = [];
  for (let start = 0; start < left.length; start += 1) {
    if (left[start] !== 1) continue;
    const pixels = flood(start, size, left, 1, 0);
    if (pixels.length >= least) regions.push({ box: boxAround(pixels, size), pixels: pixels.slice() });
  }
  return regions;
}

/** A region with everything that the outside does not reach. A piercing is filled too: it lies within the outline. */
export function filled({ pixels, box }: Region, { width, height }: Extent): Uint8Array {
  // The region alone, with one pixel of the outside all round.
  const size = { width: box.width + 2, height: box.height + 2 };
  const near = new Uint8Array(size.width * size.height);
  for (const at of pixels) {
    const x = at % width;
    near[((at - x) / width - box.top + 1) * size.width + x - box.left + 1] = 1;
  }
  flood(0, size, near, 0, 2);
  for (let at = 0; at < near.length; at += 1) near[at] = near[at] === 2 ? 0 : 1;
  const mask = new Uint8Array(width * height);
  for (let y = 0; y < box.height; y += 1) {
    const from = (y + 1) * size.width + 1;
    mask.set(near.subarray(from, from + box.width), (y + box.top) * width + box.left);
  }
  return mask;
}

/** The pixels of this value joined to one, from it outwards; each is given another value. */
function flood(start: number, size: Extent, mask: Uint8Array, value: number, then: number): Int32Array {
  const { width, height } = size;
  const last = width * (height - 1);
  const region = roomFor(mask.length);
  let [next, end] = [0, 1];
  region[0] = start;
  mask[start] = then;
  for (; next < end; next += 1) {
    const at = region[next] ?? 0;
    const x = at % width;
    // Written out: this is asked of every pixel, and a loop over the four sides takes three times as long.
    if (x > 0 && mask[at - 1] === value) {
      mask[at - 1] = then;
      region[end++] = at - 1;
    }
    if (x < width - 1 && mask[at + 1] === value) {
      mask[at + 1] = then;
      region[end++] = at + 1;
    }
    if (at >= width && mask[at - width] === value) {
      mask[at - width] = then;
      region[end++] = at - width;
    }
    if (at < last && mask[at + width] === value) {
      mask[at + width] = then;
      region[end++] = at + width;
    }
  }
  return region.subarray(0, end);
}

/** Room for the pixels of one region at a time, kept between them: it is large, and regions are many. */
let room = new Int32Array(0);
function roomFor(length: number): Int32Array {
  if (room.length < length) room = new Int32Array(length);
  return room;
}

function boxAround(region: Int32Array, { width }: Extent): Box {
  let [left, top, right, bottom] = [Infinity, Infinity, -1, -1];
  for (const at of region) {
    const x = at % width;
    const y = (at - x) / width;
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }
  return { left, top, width: right - left + 1, height: bottom - top + 1 };
}

/** The box of everything in a mask; null when it is empty. */
export function boxOf(mask: Uint8Array, { width, height }: Extent): Box | null {
  let [left, top, right, bottom] = [width, -1, -1, -1];
  for (let y = 0; y < height; y += 1) {
    const row = mask.subarray(y * width, (y + 1) * width);
    const first = row.indexOf(1);
    if (first === -1) continue;
    if (top === -1) top = y;
    bottom = y;
    left = Math.min(left, first);
    right = Math.max(right, row.lastIndexOf(1));
  }
  return right === -1 ? null : { left, top, width: right - left + 1, height: bottom - top + 1 };
}

/** How many pixels of a mask are 1. */
export function count(mask: Uint8Array): number {
  let sum = 0;
  for (let at = 0; at < mask.length; at += 1) sum += mask[at] ?? 0;
  return sum;
}

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
