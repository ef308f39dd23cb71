import { readFile } from 'node:fs/promises';
import { expect, test } from 'vitest';
import { acrossClass, faceOf } from '../../../../src/site/models/shared/face.ts';
import { extentOf, heightClass, widthClass } from '../../../../src/site/models/shared/sizes.ts';
import { wholeCabinet } from '../../whole-cabinet.ts';

test('the widest row of a board counts a disc with the margin it keeps, so that it fits a narrow screen', async () => {
  const { listed } = await wholeCabinet('tests/cabinets/marked');
  const widest = Math.max(20, ...listed.map((piece) => extentOf(piece)?.width ?? 20));
  // Face.astro: 0.07 of its width on either side.
  expect(acrossClass(listed.map((piece) => [faceOf(piece, 'obverse', {})]))).toBe(widthClass(widest * 1.14));
});

test.for([
  [18.6, 'mm-10 mm-8 mm-06'],
  [118.6, 'mm-100 mm-10 mm-8 mm-06'],
  [20, 'mm-20'],
  [100.04, 'mm-100'],
  [0.9, 'mm-09'],
] as const)('%d mm is one class a digit, and the style sheet has each of them: %s', async ([millimetres, classes]) => {
  expect(widthClass(millimetres)).toBe(classes);
  const rules = await readFile('src/site/styles/sizes.css', 'utf8');
  const all = [...widthClass(millimetres).split(' '), ...heightClass(millimetres).split(' ')];
  // What the digits of the classes add up to is the size itself.
  const sum = all.slice(0, all.length / 2).map((name) => Number(new RegExp(`\\.${name} \\{\\s*--mm-\\w+: ([\\d.]+);`).exec(rules)?.[1] ?? NaN)); // prettier-ignore
  expect(sum.reduce((one, other) => one + other, 0)).toBeCloseTo(millimetres, 1);
  for (const name of all) expect(rules).toContain(`.${name} {`);
});
