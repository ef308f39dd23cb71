import { spawnSync } from 'node:child_process';
import process from 'node:process';
import { readWords } from './parts/command-line.ts';

const HELP = `npm test                 everything: format, lint, types, dead code, tests, the demo built, looked through and opened
npm test -- --only lint  one step: format, core, types, lint, unused, unit, build, built, browser
`;

/** Each step with the words that run it; the order is from quick to slow. */
const STEPS: readonly (readonly [name: string, words: readonly string[]])[] = [
  ['format', ['prettier', '--check', '--log-level', 'warn', '.']],
  ['core', ['tsc', '-p', 'src/core/tsconfig.json']],
  ['types', ['astro', 'check', '--minimumFailingSeverity', 'hint']],
  // After types, which makes the declarations of the collections that the linter reads.
  ['lint', ['eslint', '--max-warnings', '0', '.']],
  ['unused', ['knip']],
  ['unit', ['vitest', 'run', '--project', 'unit']],
  ['build', ['node', 'src/commands/build.ts']],
  ['built', ['vitest', 'run', '--project', 'built']],
  ['browser', ['vitest', 'run', '--project', 'browser']],
];

const { values } = readWords(HELP, { only: { type: 'string' } });
const chosen = STEPS.filter(([name]) => values.only === undefined || name === values.only);
if (chosen.length === 0) {
  process.stderr.write(`There is no step ${String(values.only)}. ${HELP}`);
  process.exit(1);
}
const failed: string[] = [];
for (const [name, [program = '', ...words]] of chosen) {
  const started = performance.now();
  const own = program === 'node';
  const run = spawnSync(own ? process.execPath : 'npx', own ? words : ['--no-install', program, ...words], {
    stdio: 'inherit',
    shell: !own && process.platform === 'win32',
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' },
  });
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  process.stdout.write(`${run.status === 0 ? 'passed' : 'FAILED'}  ${name}  ${seconds} s\n\n`);
  if (run.status !== 0) failed.push(name);
}
process.stdout.write(`${chosen.length - failed.length} passed, ${failed.length} failed\n`);
if (failed.length > 0) process.stdout.write(`Failed: ${failed.join(', ')}\n`);
process.exitCode = failed.length === 0 ? 0 : 1;
