import { expect, test } from 'vitest';
import { decidingFiles } from '../../../src/photographs/cache/picture-settings.ts';

test('whatever finds, cuts out or scales a piece is in the name of its pictures, and no page is', async () => {
  const files = (await decidingFiles()).map(({ pathname }) => pathname.slice(pathname.indexOf('/src/') + 1));
  for (const file of ['render/make-face.ts', 'render/cut-out.ts', 'locate/find-piece.ts', 'cache/picture-settings.ts'])
    expect(files).toContain(`src/photographs/${file}`);
  expect(files.filter((file) => /^src\/(site|commands|publish)\//.test(file))).toEqual([]);
});
