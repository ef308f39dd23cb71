import sharp from 'sharp';
import type { Pixels } from '../../../src/photographs/locate/pixels.ts';

/** Where the coin lies in a photograph: its middle and its two radii, in pixels. */
export type Coin = { readonly x: number; readonly y: number; readonly rx: number; readonly ry: number };

/** A photograph with its one coin. */
export type Taken = Pixels & { readonly coin: Coin };

/** Ways to make a photograph harder; what comes of the coin is known, or is none where the frame cuts it. */
export type Variant = { readonly kind: string; readonly picture: Pixels; readonly coin: Coin | null };

/** The one of which nothing may be cut out. */
export const CUT = 'cut by the frame';

/** Numbers from 0 to 1 by chance, the same every time (mulberry32, T. Ettinger 2017, public domain). */
export function chances(start: number): (from?: number, to?: number) => number {
  let state = (start * 0x9e3779b1) >>> 0;
  return (from = 0, to = 1) => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return from + (((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32) * (to - from);
  };
}

/** Every variant of a photograph; coins that are laid beside its own come from the other photographs. */
export async function variantsOf(taken: Taken, others: readonly Taken[], at: number): Promise<readonly Variant[]> {
  const chance = chances(at + 1);
  const { coin } = taken;
  const noise = (most: number): number => most * (chance() + chance() + chance() - 1.5) * 2;
  const of = (kind: string, picture: Pixels, now: Coin | null = coin): Variant => ({ kind, picture, coin: now });
  const channels = (times: readonly number[]): Pixels =>
    each(taken, (value, _, colour) => value * (times[colour] ?? 1));
  const way = chance(0, 2 * Math.PI);
  const far = chance(0.1, 0.25) * coin.rx;
  const turned = turnedBy(taken, chance(15, 75));
  return [
    of(
      'dark',
      each(taken, (value) => 97 * (value / 255) ** 1.3 + noise(3)),
    ),
    of('blurred', await resized(taken, 1, coin.rx * 0.02)),
    of('cool', channels([0.72, 1, 1.15])),
    of('warm', channels([1.12, 0.88, 0.5])),
    of('turned', turned, turned.coin),
    of('a third', await resized(taken, 1 / 3), scaled(coin, 1 / 3)),
    of('second coin a', beside(taken, others, chance)),
    of('second coin b', beside(taken, others, chance)),
    of('soft shadow', shaded(taken, { x: far * Math.cos(way), y: far * Math.sin(way), soft: 0.2, dark: 0.5 })),
    of(
      'hard shadow',
      shaded(taken, { x: far * Math.cos(way + 2), y: far * Math.sin(way + 2), soft: 0.04, dark: 0.55 }),
    ),
    of('shadow across', across(taken, way, coin.rx * chance(-0.6, 0.6))),
    of(
      'noise',
      each(taken, (value) => value * 0.8 + noise(12)),
    ),
    of(CUT, cutOff(taken, chance), null),
  ];
}

/** A picture with every value of it changed. */
function each(picture: Pixels, change: (value: number, pixel: number, colour: number) => number): Pixels {
  const rgb = Uint8ClampedArray.from(picture.rgb, (value, at) => change(value, Math.trunc(at / 3), at % 3));
  return { ...picture, rgb: new Uint8Array(rgb.buffer) };
}

async function resized({ width, height, rgb }: Pixels, times: number, blur = 0): Promise<Pixels> {
  const size = { width: Math.round(width * times), height: Math.round(height * times) };
  const small = sharp(rgb, { raw: { width, height, channels: 3 } }).resize(size.width, size.height, { fit: 'fill' });
  return { ...size, rgb: await (blur > 0 ? small.blur(blur) : small).raw().toBuffer() };
}

function scaled({ x, y, rx, ry }: Coin, times: number): Coin {
  return { x: x * times, y: y * times, rx: rx * times, ry: ry * times };
}

/** The colours of a picture wherever another one asks for them; beyond its rim it is mirrored. */
function drawn(
  from: Pixels,
  size: { width: number; height: number },
  where: (x: number, y: number) => readonly [number, number],
): Pixels {
  // prettier-ignore
  const rgb = new Uint8Array(size.width * size.height * 3);
  const mirrored = (place: number, length: number): number => {
    const folded = Math.abs(place % (2 * (length - 1)));
    return folded < length - 1 ? folded : 2 * (length - 1) - folded;
  };
  for (let y = 0; y < size.height; y += 1)
    for (let x = 0; x < size.width; x += 1) {
      const [column, row] = where(x, y);
      const [left, top] = [mirrored(column, from.width), mirrored(row, from.height)];
      const [first, above] = [Math.min(from.width - 2, Math.floor(left)), Math.min(from.height - 2, Math.floor(top))];
      const [right, down] = [left - first, top - above];
      for (let colour = 0; colour < 3; colour += 1) {
        const value = (dx: number, dy: number): number => from.rgb[((above + dy) * from.width + first + dx) * 3 + colour] ?? 0; // prettier-ignore
        const upper = value(0, 0) * (1 - right) + value(1, 0) * right;
        const lower = value(0, 1) * (1 - right) + value(1, 1) * right;
        rgb[(y * size.width + x) * 3 + colour] = Math.round(upper * (1 - down) + lower * down);
      }
    }
  return { ...size, rgb };
}

/** A photograph turned about its coin. */
function turnedBy(taken: Taken, degrees: number): Taken {
  const angle = (degrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const { x, y, rx, ry } = taken.coin;
  const picture = drawn(taken, taken, (column, row) => {
    const [dx, dy] = [column - x, row - y];
    return [x + dx * cos - dy * sin, y + dx * sin + dy * cos];
  });
  return { ...picture, coin: { x, y, rx: Math.hypot(rx * cos, ry * sin), ry: Math.hypot(rx * sin, ry * cos) } };
}

/** How much of a pixel lies in an ellipse whose edge is so many pixels wide. */
function share({ x, y, rx, ry }: Coin, column: number, row: number, edge: number): number {
  const off = Math.hypot((column + 0.5 - x) / rx, (row + 0.5 - y) / ry);
  const part = Math.min(1, Math.max(0, ((1 - off) * rx) / edge + 0.5));
  return part * part * (3 - 2 * part);
}

/** The shadow of the coin on the board, so far from it and so soft in parts of its radius. */
function shaded(taken: Taken, { x, y, soft, dark }: { x: number; y: number; soft: number; dark: number }): Pixels {
  const { coin, width } = taken;
  const shadow = { ...coin, x: coin.x + x, y: coin.y + y };
  const kept = Float32Array.from({ length: width * taken.height }, (_, pixel) => {
    const [column, row] = [pixel % width, Math.trunc(pixel / width)];
    return 1 - dark * share(shadow, column, row, soft * coin.rx) * (1 - share(coin, column, row, 1.5));
  });
  return each(taken, (value, pixel) => value * (kept[pixel] ?? 1));
}

/** A shadow over half of the picture, as a hand throws it. */
function across(taken: Taken, way: number, far: number): Pixels {
  const { coin, width } = taken;
  return each(taken, (value, pixel) => {
    const [column, row] = [pixel % width, Math.trunc(pixel / width)];
    const beyond = (column - coin.x) * Math.cos(way) + (row - coin.y) * Math.sin(way) - far;
    return value * (1 - 0.5 / (1 + Math.exp(-beyond / (0.06 * coin.rx))));
  });
}

/** Another coin of about the size, beside the first and half out of the picture. */
function beside(taken: Taken, others: readonly Taken[], chance: (from?: number, to?: number) => number): Pixels {
  const { coin, width, height } = taken;
  const other = others[Math.floor(chance(0, others.length))] ?? taken;
  const times = (coin.rx / other.coin.rx) * chance(0.75, 1.2);
  const laid = scaled(other.coin, times);
  const way = chance(0, 2 * Math.PI);
  const [cos, sin] = [Math.cos(way), Math.sin(way)];
  const room = Math.min((cos > 0 ? width - coin.x : -coin.x) / cos, (sin > 0 ? height - coin.y : -coin.y) / sin);
  const reach = Math.max(room + laid.rx * chance(-0.3, 0.35), coin.rx + laid.rx * 1.08);
  const now = { ...laid, x: coin.x + reach * cos, y: coin.y + reach * sin };
  const picture = drawn(other, taken, (x, y) => [(x - now.x + laid.x) / times, (y - now.y + laid.y) / times]);
  return each(taken, (value, pixel, colour) => {
    const part = share({ ...now, rx: now.rx - 1, ry: now.ry - 1 }, pixel % width, Math.trunc(pixel / width), 1.5);
    return value * (1 - part) + (picture.rgb[pixel * 3 + colour] ?? 0) * part;
  });
}

/** As much of the photograph as leaves a part of the coin out of the picture. */
function cutOff(taken: Taken, chance: (from?: number, to?: number) => number): Pixels {
  const { coin, width, height } = taken;
  const isMirrored = chance() < 0.5;
  const cut = Math.round((isMirrored ? width - coin.x : coin.x) + coin.rx * chance(-0.3, 0.8));
  return drawn(taken, { width: cut, height }, (x, y) => [isMirrored ? width - 1 - x : x, y]);
}
