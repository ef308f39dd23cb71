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
  const across = Uint8Array.from(mask);
  for (let row = 0; row < mask.length; row += width) {
    let until = -1;
    for (let x = 0; x < width; x += 1) {
      if (mask[row + x] === value) until = x + reach;
      else if (x <= until) across[row + x] = value;
    }
    until = width;
    for (let x = width - 1; x >= 0; x -= 1) {
      if (mask[row + x] === value) until = x - reach;
      else if (x >= until) across[row + x] = value;
    }
  }
  // Row by row, with the last row of this value kept for every column: memory is read in its order.
  const out = Uint8Array.from(across);
  const near = new Int32Array(width).fill(-1);
  for (let y = 0; y < height; y += 1) {
    const row = y * width;
    for (let x = 0; x < width; x += 1) {
      if (across[row + x] === value) near[x] = y + reach;
      if (y <= (near[x] ?? -1)) out[row + x] = value;
    }
  }
  near.fill(height);
  for (let y = height - 1; y >= 0; y -= 1) {
    const row = y * width;
    for (let x = 0; x < width; x += 1) {
      if (across[row + x] === value) near[x] = y - reach;
      if (y >= (near[x] ?? height)) out[row + x] = value;
    }
  }
  return out;
}

/** Joined pixels, and the box they stand in. */
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
export function filled({ pixels }: Region, size: Extent): Uint8Array {
  const { width, height } = size;
  const mask = new Uint8Array(width * height);
  for (const at of pixels) mask[at] = 1;
  const enter = (at: number): void => {
    if (mask[at] === 0) flood(at, size, mask, 0, 2);
  };
  for (let x = 0; x < width; x += 1) [x, (height - 1) * width + x].forEach(enter);
  for (let y = 0; y < height; y += 1) [y * width, y * width + width - 1].forEach(enter);
  for (let at = 0; at < mask.length; at += 1) mask[at] = mask[at] === 2 ? 0 : 1;
  return mask;
}

/** The pixels of this value joined to one, from it outwards; each is given another value. */
function flood(start: number, size: Extent, mask: Uint8Array, value: number, then: number): Int32Array {
  const { width, height } = size;
  const region = roomFor(mask.length);
  let [next, end] = [0, 1];
  region[0] = start;
  mask[start] = then;
  for (; next < end; next += 1) {
    const at = region[next] ?? 0;
    const x = at % width;
    for (let side = 0; side < 4; side += 1) {
      const isIn =
        side === 0 ? x > 0 : side === 1 ? x < width - 1 : side === 2 ? at >= width : at < width * (height - 1);
      const beside = at + (side === 0 ? -1 : side === 1 ? 1 : side === 2 ? -width : width);
      if (!isIn || mask[beside] !== value) continue;
      mask[beside] = then;
      region[end] = beside;
      end += 1;
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
