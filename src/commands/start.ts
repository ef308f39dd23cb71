import process from 'node:process';
import { buildSite } from './parts/build-site.ts';
import { endWith, readWords } from './parts/command-line.ts';
import { serveFolder } from './parts/serve-folder.ts';

const HELP = `npm start                        build the cabinet in content/ and serve it on this machine
npm start -- --cabinet DIR       another cabinet
npm start -- --port 8080         another port than 4321

Prints the address to open. Only this machine can see it. Ctrl+C ends it.
`;

const { values, cabinet } = readWords(HELP, { cabinet: { type: 'string' }, port: { type: 'string', default: '4321' } });
const port = Number(values.port);
if (!Number.isInteger(port) || port < 1 || port > 65535)
  endWith(`A port is a whole number from 1 to 65535; this says "${values.port}". Write --port 8080.`);
const outcome = await buildSite({ cabinet, out: 'dist', address: null });
if (!outcome.ok) endWith(outcome.problem);
process.stdout.write(`${outcome.value.says}\n`);
const served = await serveFolder(outcome.value.out, outcome.value.base, port);
if (!served.ok) endWith(served.problem);
process.stdout.write(`Open ${served.value.address}\n`);
if (process.env['CABINET'] !== undefined)
  process.stdout.write(`To edit this cabinet in the browser: npm run desk -- --cabinet ${cabinet.shown}\n`);
