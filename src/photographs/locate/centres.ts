import type { Extent, Pixels } from './pixels.ts';
import { reduced } from './pixels.ts';

/** Where a round thing may lie: its middle and about its radius, in pixels, and how much of a circle speaks for it. */
export type Centre = { readonly x: number; readonly y: number; readonly radius: number; readonly votes: number };

/** The longest side of the copy in which votes are counted, when one thing is sought and when many smaller ones are. */
export const VOTES = { forOne: 96, forMany: 200 } as const;
/** The smallest and largest radius, as a part of the shorter side; and into how many sizes they are divided. */
const RADIUS = { least: 0.05, most: 0.52 };
const SIZES = 16;
/** How much steeper than usual round about (within so large a part of the shorter side) a pixel must be to vote. */
const ROUND_ABOUT = 0.06;
const STEEP = { least: 0.9, most: 3 };
/** How far the votes for one centre may scatter, as a part of its radius. */
const SCATTER = 0.05;
const DARK = 12;
const LOG = Float32Array.from({ length: 256 }, (_, value) => Math.log(value + DARK));

/**
 * Where round things may lie, best first: every steep pixel votes for the places its slope points to, on both sides (after
 * C. Kimme, D. Ballard and J. Sklansky, Communications of the ACM 18, 1975). A slope counts by how much steeper it is
 * than what is round about, so a pattern has few votes and a faint rim on a plain board has many.
 */
export function centresIn(pixels: Pixels, most: number, side: number): readonly Centre[] {
  const look = reduced(pixels, side);
  const times = pixels.width / look.width;
  const slopes = slopesOf(look);
  const shorter = Math.min(look.width, look.height);
  const [least, greatest] = [Math.max(4, Math.round(shorter * RADIUS.least)), Math.ceil(shorter * RADIUS.most)];
  const growth = Math.log(greatest / least);
  const sizeOf = (radius: number): number =>
    Math.min(SIZES - 1, Math.floor((SIZES * Math.log(radius / least)) / growth));
  const votes = new Float32Array(SIZES * look.width * look.height);
  for (let radius = least; radius < greatest; radius += 1)
    voteAt(slopes, look, radius, votes.subarray(sizeOf(radius) * look.width * look.height));
  const found: Centre[] = [];
  for (let size = 0; size < SIZES; size += 1) {
    const radius = least * Math.exp((growth * (size + 0.5)) / SIZES);
    const from = size * look.width * look.height;
    found.push(...peaks(votes.subarray(from, from + look.width * look.height), look, radius));
  }
  const kept: Centre[] = [];
  for (const one of found.sort((a, b) => b.votes - a.votes)) {
    if (kept.length === most) break;
    const isKnown = kept.some(
      ({ x, y, radius }) => Math.hypot(x - one.x, y - one.y) < 0.15 * radius && isAlike(radius, one.radius),
    );
    if (!isKnown) kept.push(one);
  }
  return kept.map(({ x, y, radius, votes: all }) => ({
    x: (x + 0.5) * times,
    y: (y + 0.5) * times,
    radius: radius * times,
    votes: all,
  }));
}

function isAlike(one: number, other: number): boolean {
  return Math.abs(Math.log(one / other)) < 0.1;
}

/** Steep pixels: where each is, the direction of its slope, and how much its vote counts. */
type Slopes = {
  readonly at: Int32Array;
  readonly across: Float32Array;
  readonly down: Float32Array;
  readonly weight: Float32Array;
};

function slopesOf({ width, height, rgb }: Pixels): Slopes {
  const size = { width, height };
  const across = new Float32Array(width * height);
  const down = new Float32Array(width * height);
  const steep = new Float32Array(width * height);
  const light = new Float32Array(width * height);
  for (let colour = 0; colour < 3; colour += 1) {
    for (let at = 0; at < light.length; at += 1) light[at] = LOG[rgb[at * 3 + colour] ?? 0] ?? 0;
    const soft = blurred(light, size, 1, 2);
    for (let y = 1; y < height - 1; y += 1) steepestOfRow(soft, y * width + 1, width, across, down, steep);
  }
  const around = blurred(steep, size, Math.round(Math.min(width, height) * ROUND_ABOUT));
  let mean = 0;
  for (const one of steep) mean += one / steep.length;
  return steepOnes({ across, down, steep, around, floor: 0.6 * mean + 0.01 });
}

type AllSlopes = { readonly [name in 'across' | 'down' | 'steep' | 'around']: Float32Array } & {
  readonly floor: number;
};

function steepOnes({ across, down, steep, around, floor }: AllSlopes): Slopes {
  const at = new Int32Array(steep.length);
  const [x, y, weight] = [
    new Float32Array(steep.length),
    new Float32Array(steep.length),
    new Float32Array(steep.length),
  ];
  let count = 0;
  for (let pixel = 0; pixel < steep.length; pixel += 1) {
    const here = steep[pixel] ?? 0;
    const counts = here / ((around[pixel] ?? 0) + floor);
    if (counts < STEEP.least) continue;
    at[count] = pixel;
    x[count] = (across[pixel] ?? 0) / here;
    y[count] = (down[pixel] ?? 0) / here;
    weight[count] = Math.min(STEEP.most, counts);
    count += 1;
  }
  return { at: at.subarray(0, count), across: x, down: y, weight };
}

function steepestOfRow(
  soft: Float32Array,
  from: number,
  width: number,
  across: Float32Array,
  down: Float32Array,
  steep: Float32Array,
): void {
  for (let at = from; at < from + width - 2; at += 1) {
    const dx = (soft[at + 1] ?? 0) - (soft[at - 1] ?? 0);
    const dy = (soft[at + width] ?? 0) - (soft[at - width] ?? 0);
    const here = Math.sqrt(dx * dx + dy * dy);
    if (here <= (steep[at] ?? 0)) continue;
    steep[at] = here;
    across[at] = dx;
    down[at] = dy;
  }
}

/** Counts the votes for circles of one radius; a whole circle has as many whatever its size. */
function voteAt(
  { at, across, down, weight }: Slopes,
  { width, height }: Extent,
  radius: number,
  votes: Float32Array,
): void {
  const share = 1 / radius;
  for (let one = 0; one < at.length; one += 1) {
    const pixel = at[one] ?? 0;
    const row = Math.trunc(pixel / width);
    const x = pixel - row * width + 0.5;
    const y = row + 0.5;
    const dx = radius * (across[one] ?? 0);
    const dy = radius * (down[one] ?? 0);
    const vote = (weight[one] ?? 0) * share;
    addVote(votes, width, height, x + dx, y + dy, vote);
    addVote(votes, width, height, x - dx, y - dy, vote);
  }
}

function addVote(votes: Float32Array, width: number, height: number, x: number, y: number, vote: number): void {
  if (x < 0 || y < 0 || x >= width || y >= height) return;
  const place = Math.trunc(y) * width + Math.trunc(x);
  votes[place] = (votes[place] ?? 0) + vote;
}

/** The places with more votes about them than about any neighbour. */
function peaks(votes: Float32Array, size: Extent, radius: number): readonly Centre[] {
  const { width, height } = size;
  const reach = Math.max(1, Math.round(radius * SCATTER));
  const about = (2 * reach + 1) ** 2;
  const soft = blurred(votes, size, reach, 2);
  const found: Centre[] = [];
  for (let y = 1; y < height - 1; y += 1)
    for (let x = 1; x < width - 1; x += 1) {
      const here = soft[y * width + x] ?? 0;
      if (here * about >= 1 && isPeak(soft, y * width + x, width)) found.push({ x, y, radius, votes: here * about });
    }
  return found;
}

function isPeak(soft: Float32Array, at: number, width: number): boolean {
  const here = soft[at] ?? 0;
  for (let row = at - width; row <= at + width; row += width)
    for (let beside = row - 1; beside <= row + 1; beside += 1) if ((soft[beside] ?? 0) > here) return false;
  return true;
}

/** Each value replaced by the mean of those so far about it, across and then down, as often as `times` says. */
function blurred(values: Float32Array, size: Extent, reach: number, times = 1): Float32Array {
  const across = roomFor(values.length);
  let soft = values;
  for (let time = 0; time < times; time += 1) {
    const into = time === 0 ? new Float32Array(values.length) : soft;
    for (let row = 0; row < values.length; row += size.width) slideAlong(soft, across, row, size.width, reach);
    slideDown(across, into, size, reach);
    soft = into;
  }
  return soft;
}

/** Room for values that were evened in one direction alone, kept between them. */
let room = new Float32Array(0);
function roomFor(length: number): Float32Array {
  if (room.length < length) room = new Float32Array(length);
  return room;
}

function slideAlong(from: Float32Array, into: Float32Array, first: number, count: number, reach: number): void {
  const last = first + count - 1;
  const [start, end] = [from[first] ?? 0, from[last] ?? 0];
  const share = 1 / (2 * reach + 1);
  let sum = start * (reach + 1);
  for (let ahead = 1; ahead <= reach; ahead += 1) sum += from[Math.min(last, first + ahead)] ?? 0;
  let at = first;
  for (; at <= last && at - reach < first; at += 1) {
    into[at] = sum * share;
    sum += (from[Math.min(last, at + reach + 1)] ?? 0) - start;
  }
  for (const until = last - reach; at < until; at += 1) {
    into[at] = sum * share;
    sum += (from[at + reach + 1] ?? 0) - (from[at - reach] ?? 0);
  }
  for (; at <= last; at += 1) {
    into[at] = sum * share;
    sum += end - (from[at - reach] ?? 0);
  }
}

/** All columns at once, row by row: memory is read in its order. */
function slideDown(from: Float32Array, into: Float32Array, { width, height }: Extent, reach: number): void {
  const share = 1 / (2 * reach + 1);
  const sums = new Float64Array(width);
  for (let ahead = -reach; ahead <= reach; ahead += 1) addTo(sums, from, rowAt(ahead, height) * width);
  for (let y = 0; y < height; y += 1) {
    const [next, old] = [rowAt(y + reach + 1, height) * width, rowAt(y - reach, height) * width];
    const row = y * width;
    for (let x = 0; x < width; x += 1) {
      const sum = sums[x] ?? 0;
      into[row + x] = sum * share;
      sums[x] = sum + (from[next + x] ?? 0) - (from[old + x] ?? 0);
    }
  }
}

function rowAt(row: number, height: number): number {
  return Math.min(height - 1, Math.max(0, row));
}

function addTo(sums: Float64Array, from: Float32Array, row: number): void {
  for (let x = 0; x < sums.length; x += 1) sums[x] = (sums[x] ?? 0) + (from[row + x] ?? 0);
}
