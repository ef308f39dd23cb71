import { expect, test } from 'vitest';
import { openData } from '../../../../src/site/models/open-data/open-data.ts';
import { wholeCabinet } from '../../whole-cabinet.ts';

const demo = await wholeCabinet('content');

test('the files of each piece are named while a page can hold them, and where they lie when it cannot', () => {
  const few = openData(demo);
  expect(few.elsewhere).toBeNull();
  expect(few.pieces.map(({ linked }) => linked)).toContain('/data/pieces/york-penny-3b.json');
  const many = openData({ ...demo, listed: Array.from({ length: 20 }, () => demo.listed).flat() });
  expect(many.pieces).toEqual([]);
  expect(many.elsewhere).toContain(`The ${20 * demo.listed.length} pieces`);
  expect(many.elsewhere).toContain('/data/pieces/<id>.json');
});
