import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readDrawing } from '../../../src/catalogue/types/read-drawing.ts';
import { drawnMarks } from '../marks/marks.ts';

const SERIES = join(import.meta.dirname, '../../../content/types/edward-i-pence');

test('the drawn marks of the demo are those that the program draws, and each can be read', () => {
  const files = readdirSync(SERIES).filter((name) => name.endsWith('.svg'));
  const drawn = drawnMarks();
  expect(files.toSorted()).toEqual([...drawn.keys()].toSorted());
  for (const [name, text] of drawn) {
    expect(readFileSync(join(SERIES, name), 'utf8'), name).toBe(text);
    expect(readDrawing(text), name).toMatchObject({ ok: true });
  }
});

test('no two marks are drawn alike, but for the usual one that several have', () => {
  const drawn = [...drawnMarks()];
  const alike = drawn.filter(([, text], at) => drawn.findIndex(([, other]) => other === text) !== at);
  expect(alike.map(([name]) => name)).toEqual([]);
});
