import { spawnSync } from 'node:child_process';
import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import process from 'node:process';
import { endWith, readWords } from './parts/command-line.ts';

const HELP = `npm run bench                      every measurement, each in a process of its own; some minutes
npm run bench -- --only NAME      one of them, by the name of its file in tests/benchmarks

Times are told as ratios to a bare loop measured in the same run, so that they mean the same on any machine.
`;

const FOLDER = 'tests/benchmarks';
/** What measurements are made with. */
const HELPERS = ['large-cabinet.ts', 'bare-site.ts', 'measured-run.ts'];

const { values } = readWords(HELP, { only: { type: 'string' } });
const all = (await readdir(FOLDER)).filter((file) => file.endsWith('.ts') && !HELPERS.includes(file)).sort();
const chosen = all.filter((file) => values.only === undefined || file === `${values.only}.ts`);
if (chosen.length === 0)
  endWith(
    `There is no measurement ${String(values.only)}. There are: ${all.map((file) => file.replace('.ts', '')).join(', ')}.`,
  );
let failed = 0;
for (const file of chosen) {
  process.stdout.write(`\n${file.replace('.ts', '')}\n`);
  const words = ['--disable-warning=ExperimentalWarning', join(FOLDER, file)];
  if (spawnSync(process.execPath, words, { stdio: 'inherit' }).status !== 0) failed += 1;
}
process.exitCode = failed === 0 ? 0 : 1;
