import process from 'node:process';
import { buildSite } from './parts/build-site.ts';
import { endWith, readWords } from './parts/command-line.ts';

const HELP = `npm run build                            check, compute and publish content/ to dist/, then inspect every byte
npm run build -- --cabinet DIR           another cabinet
npm run build -- --out DIR               into another folder
npm run build -- --address URL           for another public address than cabinet.yaml gives, like https://example.org/coins/

Refuses to publish a cabinet with problems, and refuses what it made when anything private is found in it.
`;

const { values, cabinet } = readWords(HELP, {
  cabinet: { type: 'string' },
  out: { type: 'string' },
  address: { type: 'string' },
});
const outcome = await buildSite({ cabinet, out: values.out ?? 'dist', address: values.address ?? null });
if (!outcome.ok) endWith(outcome.problem);
process.stdout.write(`${outcome.value.says}\n`);
