import process from 'node:process';
import { buildOfflineCopy } from './build/build-offline-copy.ts';
import { buildSite } from './parts/build-site.ts';
import { howToPublish, isHostKind } from './build/how-to-publish.ts';
import { endWith, readWords } from './parts/command-line.ts';

const HELP = `npm run build                            check, compute and publish content/ to dist/, then inspect every byte
npm run build -- --cabinet DIR           another cabinet
npm run build -- --out DIR               into another folder
npm run build -- --address URL           for another public address than cabinet.yaml gives, like https://example.org/coins/
npm run build -- --to KIND               then says how to put it on the web: git (a git host), files (any web space), stick
npm run build -- --forward DIR           pages to leave where the site stood before, which lead to where it stands now
npm run build -- --only-inspected        refuses what was not built before on a machine that has private/: for a git host
npm run build -- --hall EXHIBIT          a folder hall-EXHIBIT/ for a stick: the exhibit and the whole catalogue, opened without a network
npm run build -- --copy                  a folder whole-catalogue/ for one friend: the whole catalogue, opened without a network
npm run build -- --copy --unlisted       the same, with the pieces that are on no list

Refuses to publish a cabinet with problems, and refuses what it made when anything private is found in it.
`;

const { values, cabinet } = readWords(HELP, {
  cabinet: { type: 'string' },
  out: { type: 'string' },
  address: { type: 'string' },
  hall: { type: 'string' },
  copy: { type: 'boolean' },
  unlisted: { type: 'boolean' },
  to: { type: 'string' },
  forward: { type: 'string' },
  'only-inspected': { type: 'boolean' },
});
if (values.to !== undefined && !isHostKind(values.to))
  endWith(`There is no way "${values.to}". Write --to git, --to files or --to stick.`);
if (values.copy === true && values.hall !== undefined)
  endWith('A copy begins with an exhibit or with the whole catalogue. Write --hall EXHIBIT or --copy.');
if (values.unlisted === true && values.copy !== true)
  endWith('Pieces that are on no list go into a copy for one friend alone. Write --copy --unlisted.');
const address = values.address ?? null;
if (values.hall === undefined && values.copy !== true) {
  const outcome = await buildSite({
    cabinet,
    out: values.out ?? 'dist',
    address,
    isKept: true,
    onlyInspected: values['only-inspected'] === true,
    forward: values.forward ?? null,
  });
  if (!outcome.ok) endWith(outcome.problem);
  process.stdout.write(`${outcome.value.says}\n`);
  if (values.to !== undefined && isHostKind(values.to))
    process.stdout.write(`\n${howToPublish(values.to, outcome.value, cabinet.shown)}\n`);
} else {
  const outcome = await buildOfflineCopy({
    cabinet,
    out: values.out ?? null,
    address,
    exhibit: values.hall ?? null,
    withUnlisted: values.unlisted === true,
  });
  if (!outcome.ok) endWith(outcome.problem);
  process.stdout.write(`${outcome.value}\n`);
}
