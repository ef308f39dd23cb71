import { SIDE } from './field.ts';
import type { Field } from './field.ts';

/** Numbers from 0 to 1, the same row of them for the same seed on every machine. */
export type Chance = () => number;

/** The 32-bit FNV-1a hash of a name in plain letters (Fowler, Noll and Vo; IETF draft-eastlake-fnv). */
export function seedOf(name: string): number {
  let hash = 0x811c9dc5;
  for (let at = 0; at < name.length; at += 1) hash = Math.imul(hash ^ name.charCodeAt(at), 0x01000193);
  return hash >>> 0;
}

/** A row of numbers from a name, by the generator called Mulberry32. */
export function chanceFrom(name: string): Chance {
  let state = seedOf(name) | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** A number between two others. */
export function between(chance: Chance, low: number, high: number): number {
  return low + (high - low) * chance();
}

/** Smooth noise from -1 to 1 whose hills are about `cell` pixels apart, with finer hills of half the height added `octaves` times. */
export function noise(chance: Chance, cell: number, octaves = 1): Field {
  const sum = new Float32Array(SIDE * SIDE);
  let [size, height, most] = [cell, 1, 0];
  for (let octave = 0; octave < octaves; octave += 1) {
    addHills(sum, chance, Math.max(1, size), height);
    most += height;
    size /= 2;
    height /= 2;
  }
  for (let at = 0; at < sum.length; at += 1) sum[at] = (sum[at] ?? 0) / most;
  return sum;
}

function addHills(sum: Field, chance: Chance, cell: number, height: number): void {
  const across = Math.ceil(SIDE / cell) + 2;
  const grid = new Float32Array(across * across);
  for (let at = 0; at < grid.length; at += 1) grid[at] = (chance() * 2 - 1) * height;
  const place = new Int32Array(SIDE);
  const part = new Float32Array(SIDE);
  for (let x = 0; x < SIDE; x += 1) {
    const exact = x / cell;
    const whole = Math.floor(exact);
    const rest = exact - whole;
    place[x] = whole;
    part[x] = rest * rest * (3 - 2 * rest);
  }
  for (let y = 0; y < SIDE; y += 1) {
    const top = (place[y] ?? 0) * across;
    const down = part[y] ?? 0;
    for (let x = 0; x < SIDE; x += 1) {
      const left = place[x] ?? 0;
      const right = part[x] ?? 0;
      const at = top + left;
      const upper = (grid[at] ?? 0) * (1 - right) + (grid[at + 1] ?? 0) * right;
      const lower = (grid[at + across] ?? 0) * (1 - right) + (grid[at + across + 1] ?? 0) * right;
      sum[y * SIDE + x] = (sum[y * SIDE + x] ?? 0) + upper * (1 - down) + lower * down;
    }
  }
}
