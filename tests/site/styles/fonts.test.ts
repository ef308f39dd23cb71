import { readFileSync } from 'node:fs';
import { parse } from 'postcss';
import { expect, test } from 'vitest';

/** The code points of the range of a face in the style sheet. */
function rangeOf(family: string): ReadonlySet<number> {
  const points = new Set<number>();
  parse(readFileSync('src/site/styles/fonts.css', 'utf8')).walkAtRules('font-face', (face) => {
    const told = new Map(face.nodes?.flatMap((node) => (node.type === 'decl' ? [[node.prop, node.value]] : [])));
    if (told.get('font-family') !== `'${family}'`) return;
    for (const [, from = '', to = from] of (told.get('unicode-range') ?? '').matchAll(/U\+([\dA-F]+)(?:-([\dA-F]+))?/g))
      for (let at = Number.parseInt(from, 16); at <= Number.parseInt(to, 16); at += 1) points.add(at);
  });
  return points;
}

/** Where the characters stand that dates are read from, and those with which a page shows how. */
const TABLES = [
  'src/core/calendars/reign-titles.ts',
  'src/core/dating/numerals.ts',
  'src/core/dating/eras.ts',
  'src/core/dating/date-examples.ts',
];

test.for(TABLES)('every Chinese character of %s has a face of our own', (file) => {
  const range = rangeOf('Cabinet Han');
  const characters = readFileSync(file, 'utf8').match(/\p{Script=Han}/gu) ?? [];
  expect(characters.length).toBeGreaterThan(0);
  expect(characters.filter((character) => !range.has(character.codePointAt(0) ?? 0))).toEqual([]);
});
