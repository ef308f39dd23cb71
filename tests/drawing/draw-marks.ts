import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import process from 'node:process';
import { endWith, readWords } from '../../src/commands/parts/command-line.ts';
import { drawnMarks } from './marks/marks.ts';

const HELP = `Draws the marks of the demo's types: lines after the words of the series, and after no coin or book.

  node tests/drawing/draw-marks.ts             into content/types/edward-i-pence/
  node tests/drawing/draw-marks.ts --out DIR   somewhere else
`;

const { values, positionals } = readWords(HELP, { out: { type: 'string' }, cabinet: { type: 'string' } });
if (positionals.length > 0) endWith(`"${positionals.join(' ')}" means nothing here. Every mark is drawn at once.`);
const into = values.out ?? join(values.cabinet ?? 'content', 'types/edward-i-pence');
await mkdir(into, { recursive: true });
let bytes = 0;
for (const [name, text] of drawnMarks()) {
  await writeFile(join(into, name), text);
  bytes += text.length;
}
process.stdout.write(`${String(drawnMarks().size)} marks, ${String(Math.round(bytes / 1000))} kB\n`);
