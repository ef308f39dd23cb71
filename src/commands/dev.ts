import process from 'node:process';
import { formatProblem } from '../catalogue/problem.ts';
import { makePhotographs } from '../photographs/render/make-photographs.ts';
import { formatRemarks } from '../photographs/verify/remarks.ts';
import { cacheFolder } from './parts/cache-folder.ts';
import { checkWhole } from './parts/check-whole.ts';
import { readWords } from './parts/command-line.ts';
import { progressLine } from './parts/progress-line.ts';

const HELP = `npm run dev                      serve the cabinet in content/ and follow every edit
npm run dev -- --cabinet DIR     another cabinet

Problems are said in this window; the last good state stays on show. Ctrl+C ends it.
`;

const { cabinet } = readWords(HELP, { cabinet: { type: 'string' } });
const { records, problems } = await checkWhole(cabinet.at);
for (const found of problems) process.stdout.write(`${formatProblem(found, cabinet.shown)}\n\n`);
const folder = cacheFolder('photographs', cabinet.at);
// A photograph that cannot be used has been told of; the rest is shown without it.
const refused = new Set(problems.map(({ file }) => file));
const pieces = records.pieces.map((piece) => ({
  ...piece,
  pictures: piece.pictures.filter(({ file }) => !refused.has(file)),
}));
const run = await makePhotographs(pieces, cabinet.at, folder, progressLine('Photographs'));
for (const found of run.problems) process.stdout.write(`${formatProblem(found, cabinet.shown)}\n\n`);
process.stdout.write(formatRemarks(run.remarks, cabinet.shown));
Object.assign(process.env, {
  CABINET: cabinet.at,
  PHOTOGRAPHS: folder,
  STORE: cacheFolder('store', cabinet.at),
  ASTRO_TELEMETRY_DISABLED: '1',
});
const { dev } = await import('astro');
const server = await dev({ logLevel: 'info' });
process.stdout.write(`Open http://localhost:${server.address.port}/\n`);
