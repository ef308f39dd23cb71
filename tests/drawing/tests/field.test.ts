import { expect, test } from 'vitest';
import { chanceFrom, seedOf } from '../chance.ts';
import { blank, blurred, depthWithin, SIDE } from '../field.ts';

/** Test vectors of the authors of the hash: IETF draft-eastlake-fnv, appendix of 32-bit FNV-1a values. */
const FNV1A: readonly (readonly [string, number])[] = [
  ['', 0x811c9dc5],
  ['a', 0xe40c292c],
  ['b', 0xe70c2de5],
  ['foobar', 0xbf9cf968],
];

test.each(FNV1A)('the seed of "%s" is its published FNV-1a hash', (name, hash) => {
  expect(seedOf(name)).toBe(hash);
});

test('the same name gives the same row of numbers, another name another', () => {
  const row = (name: string): number[] => Array.from({ length: 20 }, chanceFrom(name));
  expect(row('york obverse')).toEqual(row('york obverse'));
  expect(row('york obverse')).not.toEqual(row('york reverse'));
  expect(row('york obverse').every((one) => one >= 0 && one < 1)).toBe(true);
});

test.each([0.5, 1.5, 2.5, 7, 15, 30])(
  'a level field stays level under a blur of %d pixels, to its corners',
  (sigma) => {
    const field = blurred(blank().fill(5), sigma);
    for (const at of [0, SIDE - 1, SIDE * SIDE - 1, (SIDE / 2) * SIDE + SIDE / 2]) expect(field[at]).toBeCloseTo(5, 3);
  },
);

test.each([1.5, 7, 15])('a blur of %d pixels spreads a speck to a bell of that width', (sigma) => {
  const speck = blank();
  const middle = (SIDE / 2) * SIDE + SIDE / 2;
  speck[middle] = 1;
  const bell = blurred(speck, sigma);
  let [sum, spread] = [0, 0];
  for (let y = 0; y < SIDE; y += 1)
    for (let x = 0; x < SIDE; x += 1) {
      sum += bell[y * SIDE + x] ?? 0;
      spread += (bell[y * SIDE + x] ?? 0) * (x - SIDE / 2) ** 2;
    }
  expect(sum).toBeCloseTo(1, 3);
  // Three box passes come within a few per cent of the true width (P. Kovesi, DICTA 2010).
  expect(Math.sqrt(spread / sum) / sigma).toBeGreaterThan(0.93);
  expect(Math.sqrt(spread / sum) / sigma).toBeLessThan(1.07);
});

test('the depth within a mask is the distance to the nearest pixel outside, as counted pixel by pixel', () => {
  const chance = chanceFrom('depth');
  const mask = blank();
  const [left, top, size] = [400, 500, 40];
  for (let y = 0; y < size; y += 1)
    for (let x = 0; x < size; x += 1) mask[(top + y) * SIDE + left + x] = chance() < 0.94 ? 1 : 0;
  const depth = depthWithin(mask);
  for (let y = 0; y < size; y += 3) {
    for (let x = 0; x < size; x += 3) {
      let nearest = Infinity;
      for (let v = -1; v <= size; v += 1)
        for (let u = -1; u <= size; u += 1)
          if ((mask[(top + v) * SIDE + left + u] ?? 0) <= 0.5) nearest = Math.min(nearest, Math.hypot(u - x, v - y));
      expect(depth[(top + y) * SIDE + left + x]).toBeCloseTo(nearest, 4);
    }
  }
});
