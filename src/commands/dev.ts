import process from 'node:process';
import { checkCabinet } from '../catalogue/check-cabinet.ts';
import { formatProblem } from '../catalogue/problem.ts';
import { makePhotographs } from '../photographs/make-photographs.ts';
import { cacheFolder } from './parts/cache-folder.ts';
import { readWords } from './parts/command-line.ts';
import { progressLine } from './parts/progress-line.ts';

const HELP = `npm run dev                      serve the cabinet in content/ and follow every edit
npm run dev -- --cabinet DIR     another cabinet

Problems are said in this window; the last good state stays on show. Ctrl+C ends it.
`;

const { cabinet } = readWords(HELP, { cabinet: { type: 'string' } });
const { records, problems } = await checkCabinet(cabinet.at);
for (const found of problems) process.stdout.write(`${formatProblem(found, cabinet.shown)}\n\n`);
const folder = cacheFolder('photographs', cabinet.at);
await makePhotographs(records.pieces, cabinet.at, folder, progressLine('Photographs'));
Object.assign(process.env, {
  CABINET: cabinet.at,
  PHOTOGRAPHS: folder,
  STORE: cacheFolder('store', cabinet.at),
  ASTRO_TELEMETRY_DISABLED: '1',
});
const { dev } = await import('astro');
const server = await dev({ logLevel: 'info' });
process.stdout.write(`Open http://localhost:${server.address.port}/\n`);
