import { expect, test } from 'vitest';
import { extentOf, sizeRules } from '../../../src/site/models/shared/sizes.ts';
import { wholeCabinet } from '../whole-cabinet.ts';

test('the widest thing on a page counts a disc with the margin it keeps, so that it fits a narrow screen', async () => {
  const { listed } = await wholeCabinet('tests/cabinets/marked');
  const widest = Math.max(...listed.map((piece) => extentOf(piece)?.width ?? 20));
  const [, told = '0'] = /--widest:(\d+)/.exec(sizeRules(listed, {})) ?? [];
  // Face.astro: 0.07 of its width on either side.
  expect(Number(told)).toBe(Math.ceil(widest * 1.14));
});
