/** A grey or colour picture as plain numbers: rows of red, green, blue. */
export type Pixels = { readonly width: number; readonly height: number; readonly rgb: Uint8Array };

/** The piece in a picture: its box in pixels, and one byte a pixel, 1 where the piece is. */
export type FoundPiece = {
  readonly box: { readonly left: number; readonly top: number; readonly width: number; readonly height: number };
  readonly mask: Uint8Array;
};

/**
 * Finds the largest thing that differs from the board. The board is taken from the picture's edge, as a slope of
 * light in each colour; what differs is parted from it by Otsu's threshold (IEEE Trans. SMC 9, 1979).
 * Null when nothing stands out, or when what stands out touches two opposite edges.
 */
export function findPiece(pixels: Pixels): FoundPiece | null {
  const { width, height } = pixels;
  const away = distanceFromBoard(pixels);
  const threshold = otsu(away);
  if (threshold < 6) return null;
  const mask = largestRegion(
    away.map((distance) => (distance > threshold ? 1 : 0)),
    width,
    height,
  );
  fillHoles(mask, width, height);
  const box = boxOf(mask, width, height);
  if (box === null || box.width * box.height < width * height * 0.01) return null;
  if ((box.left === 0 && box.width === width) || (box.top === 0 && box.height === height)) return null;
  return { box, mask };
}

/** How far each pixel is from the board's own colour there, 0–255. */
function distanceFromBoard({ width, height, rgb }: Pixels): Uint8Array {
  const rim = Math.max(2, Math.round(Math.min(width, height) * 0.03));
  const edge = (x: number, y: number): boolean => x < rim || y < rim || x >= width - rim || y >= height - rim;
  const slopes = [0, 1, 2].map((channel) => {
    const samples: [number, number, number][] = [];
    for (let y = 0; y < height; y += 1)
      for (let x = 0; x < width; x += 1)
        if (edge(x, y)) samples.push([x / width - 0.5, y / height - 0.5, rgb[(y * width + x) * 3 + channel] ?? 0]);
    return slopeOf(samples);
  });
  const away = new Uint8Array(width * height);
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      const [red = 0, green = 0, blue = 0] = slopes.map(
        ({ level, across, down }, channel) =>
          (rgb[(y * width + x) * 3 + channel] ?? 0) - level - across * (x / width - 0.5) - down * (y / height - 0.5),
      );
      const light = (red + green + blue) / 3;
      const colour = Math.max(Math.abs(red - light), Math.abs(green - light), Math.abs(blue - light));
      away[y * width + x] = Math.min(255, Math.round(Math.abs(light) + 2 * colour));
    }
  }
  return away;
}

/** The plane through samples on a frame: x and y are centred, so the three sums part. */
function slopeOf(samples: readonly (readonly [number, number, number])[]): {
  level: number;
  across: number;
  down: number;
} {
  let [sum, sx, sy, sxx, syy] = [0, 0, 0, 1e-9, 1e-9];
  for (const [x, y, value] of samples) {
    sum += value;
    sx += x * value;
    sy += y * value;
    sxx += x * x;
    syy += y * y;
  }
  const level = sum / Math.max(1, samples.length);
  return { level, across: sx / sxx, down: sy / syy };
}

/** The level that parts the values into two groups with the greatest variance between them. */
function otsu(values: Uint8Array): number {
  const counts = new Float64Array(256);
  for (const value of values) counts[value] = (counts[value] ?? 0) + 1;
  const all = counts.reduce((sum, count, value) => sum + count * value, 0);
  let [below, sumBelow, best, at] = [0, 0, -1, 0];
  for (let level = 0; level < 256; level += 1) {
    below += counts[level] ?? 0;
    sumBelow += level * (counts[level] ?? 0);
    const above = values.length - below;
    if (below === 0 || above === 0) continue;
    const between = below * above * (sumBelow / below - (all - sumBelow) / above) ** 2;
    if (between > best) [best, at] = [between, level];
  }
  return at;
}

function largestRegion(on: Uint8Array, width: number, height: number): Uint8Array {
  const label = new Int32Array(on.length);
  let [next, best, most] = [0, 0, 0];
  for (let start = 0; start < on.length; start += 1) {
    if (on[start] !== 1 || label[start] !== 0) continue;
    next += 1;
    const size = flood(
      start,
      width,
      height,
      (at) => on[at] === 1 && label[at] === 0,
      (at) => (label[at] = next),
    );
    if (size > most) [most, best] = [size, next];
  }
  return Uint8Array.from(label, (one) => (one === best && best !== 0 ? 1 : 0));
}

/** What the board does not reach from the edge belongs to the piece. A piercing is filled too: it lies within the outline. */
function fillHoles(mask: Uint8Array, width: number, height: number): void {
  const outside = new Uint8Array(mask.length);
  const open = (at: number): boolean => mask[at] === 0 && outside[at] === 0;
  for (let x = 0; x < width; x += 1)
    for (const at of [x, (height - 1) * width + x])
      if (open(at)) flood(at, width, height, open, (one) => (outside[one] = 1));
  for (let y = 0; y < height; y += 1)
    for (const at of [y * width, y * width + width - 1])
      if (open(at)) flood(at, width, height, open, (one) => (outside[one] = 1));
  for (let at = 0; at < mask.length; at += 1) if (outside[at] === 0) mask[at] = 1;
}

function flood(
  start: number,
  width: number,
  height: number,
  may: (at: number) => boolean,
  mark: (at: number) => void,
): number {
  const stack = [start];
  mark(start);
  let size = 0;
  for (let at = stack.pop(); at !== undefined; at = stack.pop()) {
    size += 1;
    const x = at % width;
    const y = (at - x) / width;
    const beside = [
      x > 0 ? at - 1 : -1,
      x < width - 1 ? at + 1 : -1,
      y > 0 ? at - width : -1,
      y < height - 1 ? at + width : -1,
    ];
    for (const next of beside) {
      if (next < 0 || !may(next)) continue;
      mark(next);
      stack.push(next);
    }
  }
  return size;
}

function boxOf(mask: Uint8Array, width: number, height: number): FoundPiece['box'] | null {
  let [left, top, right, bottom] = [width, height, -1, -1];
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      if (mask[y * width + x] === 0) continue;
      left = Math.min(left, x);
      right = Math.max(right, x);
      top = Math.min(top, y);
      bottom = Math.max(bottom, y);
    }
  }
  return right < 0 ? null : { left, top, width: right - left + 1, height: bottom - top + 1 };
}
