import { beforeAll, expect, test } from 'vitest';
import type { Cabinet } from '../../../../src/site/cabinet.ts';
import { valueRows } from '../../../../src/site/models/piece/measures.ts';
import { wholeCabinet } from '../../whole-cabinet.ts';

let demo: Cabinet;
beforeAll(async () => {
  demo = await wholeCabinet('content');
});

/** The ids of the pieces whose page shows a metal value, where cabinet.yaml says this. */
function shownFor(values: 'bullion' | 'all' | 'none', tagged?: string): readonly string[] {
  const cabinet = { ...demo, lists: { ...demo.lists, cabinet: { ...demo.lists.cabinet, 'metal-values': values } } };
  return demo.pieces
    .map((piece) => (piece.id === tagged ? { ...piece, tags: [...piece.tags, 'bullion'] } : piece))
    .filter((piece) => valueRows(piece, cabinet).length > 0)
    .map(({ id }) => id);
}

test('left out, only what is kept for its metal shows what its metal comes to', () => {
  const ids = shownFor('bullion');
  expect(ids.length).toBeGreaterThan(0);
  expect(
    ids.every((id) => ['ingot', 'hacksilver'].includes(demo.pieces.find((one) => one.id === id)?.kind ?? '')),
  ).toBe(true);
  expect(ids).not.toContain('victoria-sovereign-1872');
});

test('the tag bullion asks for one piece, all for every piece, none for no piece', () => {
  expect(shownFor('bullion', 'victoria-sovereign-1872')).toContain('victoria-sovereign-1872');
  expect(shownFor('all')).toEqual(expect.arrayContaining(['victoria-sovereign-1872', ...shownFor('bullion')]));
  expect(shownFor('none')).toEqual([]);
});

test('a line in its own file asks for one piece, or forbids it, whatever the cabinet says', () => {
  const says = (metalValue: 'yes' | 'no', values: 'bullion' | 'none', id: string): boolean => {
    const cabinet = { ...demo, lists: { ...demo.lists, cabinet: { ...demo.lists.cabinet, 'metal-values': values } } };
    return demo.pieces.some((piece) => piece.id === id && valueRows({ ...piece, metalValue }, cabinet).length > 0);
  };
  const [ingot = ''] = shownFor('bullion');
  expect(says('yes', 'none', 'victoria-sovereign-1872')).toBe(true);
  expect(says('no', 'bullion', ingot)).toBe(false);
});
