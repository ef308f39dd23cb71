import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import process from 'node:process';
import { chanceFrom } from './chance.ts';
import { backOf, drawFace } from './draw-face.ts';
import type { Face } from './draw-face.ts';
import { axisOf, legendsOf } from './read-legend.ts';
import { RECIPES } from './recipes/recipes.ts';
import { endWith, readWords } from '../../src/commands/parts/command-line.ts';

const HELP = `Draws the photographs of the demo cabinet: nobody took them, a program made them.

  node tests/drawing/draw-demo.ts                      every piece, into content/pieces/
  node tests/drawing/draw-demo.ts --only york-penny-3b one piece (several: separated by commas)
  node tests/drawing/draw-demo.ts --out DIR            somewhere else
`;

const { values } = readWords(HELP, { only: { type: 'string' }, out: { type: 'string' }, cabinet: { type: 'string' } });
const cabinet = values.cabinet ?? 'content';
const into = values.out ?? join(cabinet, 'pieces');
const only = values.only?.split(',');
const unknown = only?.find((id) => RECIPES[id] === undefined);
if (unknown !== undefined)
  endWith(`There is no drawing for a piece called "${unknown}". The drawings are in tests/drawing/recipes.`);

let bytes = 0;
for (const [id, faces] of Object.entries(RECIPES)) {
  if (only !== undefined && !only.includes(id)) continue;
  const file = await readFile(join(cabinet, 'pieces', id, 'piece.md'), 'utf8').catch(() => '');
  const legends = legendsOf(file);
  const cut = (face: string, recipe: NonNullable<(typeof faces)[string]>): Face =>
    recipe({ parts: legends[face] ?? [], hand: chanceFrom(`${id} ${face} hand`) });
  await mkdir(join(into, id), { recursive: true });
  for (const [face, recipe] of Object.entries(faces)) {
    const name = `${id} ${face}`;
    const own = cut(face, recipe);
    const drawn =
      face === 'reverse' && faces['obverse'] !== undefined
        ? backOf(cut('obverse', faces['obverse']), own, axisOf(file))
        : own;
    const picture = await drawFace(name, drawn);
    await writeFile(join(into, id, `${face}.jpg`), picture);
    bytes += picture.length;
    process.stdout.write(`${name} ${Math.round(picture.length / 1000)} kB\n`);
  }
}
process.stdout.write(`${(bytes / 1e6).toFixed(1)} MB\n`);
