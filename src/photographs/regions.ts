/** Pictures of one byte a pixel, 1 where something is. */
export type Extent = { readonly width: number; readonly height: number };

/** Joins what lies within this reach of each other: grown by it, then shrunk by it. */
export function close(mask: Uint8Array, size: Extent, reach: number): Uint8Array {
  return shrink(grow(mask, size, reach), size, reach);
}

function grow(mask: Uint8Array, size: Extent, reach: number): Uint8Array {
  return spread(
    spread(mask, size.width, size.height, 1, size.width, reach),
    size.height,
    size.width,
    size.width,
    1,
    reach,
  );
}

function shrink(mask: Uint8Array, size: Extent, reach: number): Uint8Array {
  const rest = Uint8Array.from(mask, (on) => 1 - on);
  return Uint8Array.from(grow(rest, size, reach), (on) => 1 - on);
}

/** Each line of a mask, along `step`, with every 1 spread to both sides. */
function spread(
  mask: Uint8Array,
  length: number,
  lines: number,
  step: number,
  between: number,
  reach: number,
): Uint8Array {
  const out = new Uint8Array(mask.length);
  for (let line = 0; line < lines; line += 1) {
    const start = line * between;
    let until = -1;
    for (let at = 0; at < length; at += 1) {
      if (mask[start + at * step] === 1) until = at + reach;
      if (at <= until) out[start + at * step] = 1;
    }
    until = length;
    for (let at = length - 1; at >= 0; at -= 1) {
      if (mask[start + at * step] === 1) until = at - reach;
      if (at >= until) out[start + at * step] = 1;
    }
  }
  return out;
}

/** The region of joined pixels whose box is the largest. */
export function largestRegion(mask: Uint8Array, size: Extent): Uint8Array {
  const left = Uint8Array.from(mask);
  let best: readonly number[] = [];
  let most = 0;
  for (let start = 0; start < left.length; start += 1) {
    if (left[start] !== 1) continue;
    const region = flood(
      start,
      size,
      (at) => left[at] === 1,
      (at) => (left[at] = 0),
    );
    const box = boxAround(region, size);
    // A long thin thing, such as a ruler beside the piece, has a large box but is no piece: its narrow side counts twice.
    const worth = box.width * box.height * Math.min(box.width, box.height);
    if (worth > most) [most, best] = [worth, region];
  }
  const out = new Uint8Array(mask.length);
  for (const at of best) out[at] = 1;
  return out;
}

/** A region with everything that the outside does not reach. A piercing is filled too: it lies within the outline. */
export function filled(mask: Uint8Array, size: Extent): Uint8Array {
  const { width, height } = size;
  const outside = new Uint8Array(mask.length);
  const isOpen = (at: number): boolean => mask[at] === 0 && outside[at] === 0;
  const enter = (at: number): void => {
    if (isOpen(at)) flood(at, size, isOpen, (one) => (outside[one] = 1));
  };
  for (let x = 0; x < width; x += 1) [x, (height - 1) * width + x].forEach(enter);
  for (let y = 0; y < height; y += 1) [y * width, y * width + width - 1].forEach(enter);
  return Uint8Array.from(outside, (out) => 1 - out);
}

/** The pixels from one outwards that a test lets pass. */
function flood(
  start: number,
  { width, height }: Extent,
  may: (at: number) => boolean,
  mark: (at: number) => void,
): readonly number[] {
  const region = [start];
  mark(start);
  for (let next = 0; next < region.length; next += 1) {
    const at = region[next] ?? 0;
    const x = at % width;
    const y = (at - x) / width;
    const beside = [
      x > 0 ? at - 1 : -1,
      x < width - 1 ? at + 1 : -1,
      y > 0 ? at - width : -1,
      y < height - 1 ? at + width : -1,
    ];
    for (const one of beside) {
      if (one < 0 || !may(one)) continue;
      mark(one);
      region.push(one);
    }
  }
  return region;
}

function boxAround(
  region: readonly number[],
  { width }: Extent,
): { left: number; top: number; width: number; height: number } {
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
export function boxOf(mask: Uint8Array, { width, height }: Extent): ReturnType<typeof boxAround> | null {
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
