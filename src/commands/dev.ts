import process from 'node:process';
import { lastingAddresses } from '../catalogue/addresses.ts';
import { handOver } from '../catalogue/handed-over.ts';
import type { Problem } from '../catalogue/problem.ts';
import { formatProblem } from '../catalogue/problem.ts';
import { makePhotographs } from '../photographs/render/make-photographs.ts';
import { formatRemarks } from '../photographs/verify/remarks.ts';
import { cacheFolder } from './parts/cache-folder.ts';
import { checkWhole } from './parts/check-whole.ts';
import { followCabinet } from './dev/follow-cabinet.ts';
import { serveOnlyPages } from './dev/serve-only-pages.ts';
import { cabinetFlag, readWords } from './parts/command-line.ts';
import { today } from '../catalogue/check-cabinet.ts';
import { progressLine } from './parts/progress-line.ts';

const HELP = `npm run dev                      serve the cabinet in content/ and follow every edit
npm run dev -- --cabinet DIR     another cabinet

Problems are said in this window; while a file cannot be read, the last good state stays on show. Ctrl+C ends it.
`;

const { cabinet } = readWords(HELP, { cabinet: { type: 'string' } });
const { records, problems, folder: texts } = await checkWhole(cabinet.at);
let told = '';
const tell = (found: readonly Problem[]): void => {
  const text = found.map((one) => `${formatProblem(one, cabinet.shown)}\n\n`).join('');
  if (text !== told) process.stdout.write(text === '' ? 'No problems.\n\n' : text);
  told = text;
};
if (problems.length > 0) tell(problems);
const folder = cacheFolder('photographs', cabinet.at);
// A photograph that cannot be used has been told of; the rest is shown without it.
const refused = new Set(problems.map(({ file }) => file));
const pieces = records.pieces.map((piece) => ({
  ...piece,
  pictures: piece.pictures.filter(({ file }) => !refused.has(file)),
}));
const run = await makePhotographs(pieces, cabinet.at, folder, progressLine('Photographs'));
tell([...problems, ...run.problems]);
process.stdout.write(formatRemarks(run.remarks, cabinet.shown, cabinetFlag(cabinet)));
handOver({ records, photographs: folder, hasAddress: false, addresses: lastingAddresses(records, texts, today()) });
process.env['ASTRO_TELEMETRY_DISABLED'] = '1';
const { dev } = await import('astro');
const server = await dev({
  logLevel: 'info',
  cacheDir: cacheFolder('store', cabinet.at),
  integrations: [serveOnlyPages(), followCabinet(texts, tell)],
});
process.stdout.write(`Open http://localhost:${server.address.port}/\n`);
