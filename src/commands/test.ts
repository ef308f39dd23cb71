import { spawn } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { resolve } from 'node:path';
import process from 'node:process';
import { readWords } from './parts/command-line.ts';
import { missingPrograms } from './test/missing-programs.ts';

const HELP = `npm test                 everything: format, lint, types, dead code, tests, the demo built, looked through and opened
npm test -- --only lint  one step: pages, markup, lint, format, unused, unit, oracle, build, built, commands, browser
`;

type Step = {
  readonly name: string;
  readonly words: readonly string[];
  /** The step whose result this one reads. */
  readonly after?: string;
};

/** All that is tried, the longest first, so that only short ones are left at the end. */
const STEPS: readonly Step[] = [
  { name: 'build', words: ['node', 'src/commands/build.ts'] },
  { name: 'commands', words: ['vitest', 'run', '--project', 'commands'] },
  // This makes the declarations of Astro's modules, which the linter reads.
  {
    name: 'pages',
    words: ['astro', 'check', '--minimumFailingSeverity', 'hint', '--tsconfig', 'tests/house/pages.tsconfig.json'],
  },
  { name: 'browser', words: ['vitest', 'run', '--project', 'browser'], after: 'build' },
  { name: 'built', words: ['vitest', 'run', '--project', 'built'], after: 'build' },
  { name: 'oracle', words: ['vitest', 'run', '--project', 'oracle'] },
  { name: 'lint', words: ['oxlint'], after: 'pages' },
  { name: 'unit', words: ['vitest', 'run', '--project', 'unit'] },
  { name: 'format', words: ['prettier', '--check', '--log-level', 'warn', '.'] },
  { name: 'markup', words: ['eslint', '--max-warnings', '0', 'src'] },
  { name: 'unused', words: ['knip'] },
];

const { values } = readWords(HELP, { only: { type: 'string' } });
const chosen = STEPS.filter(({ name }) => values.only === undefined || name === values.only);
if (chosen.length === 0) {
  process.stderr.write(`There is no step ${String(values.only)}. ${HELP}`);
  process.exit(1);
}
const missing = missingPrograms(
  chosen.map(({ name }) => name),
  process.env,
);
if (missing !== null) {
  process.stderr.write(`${missing}\n`);
  process.exit(1);
}
// One more than there are cores: a browser waits for its page, and a command for its disk, half of their time.
const cores = availableParallelism();
const waiting = [...chosen];
const unfinished = new Set(chosen.map(({ name }) => name));
const failed: string[] = [];
await new Promise<void>((end) => {
  beginWhatMay();
  /** Asked again whenever a step has ended. */
  function beginWhatMay(): void {
    if (unfinished.size === 0) end();
    while (unfinished.size - waiting.length <= cores) {
      const next = waiting.find(({ after }) => after === undefined || !unfinished.has(after));
      if (next === undefined) return;
      waiting.splice(waiting.indexOf(next), 1);
      void run(next, chosen.length === 1).then((passed) => {
        if (!passed) failed.push(next.name);
        unfinished.delete(next.name);
        beginWhatMay();
      });
    }
  }
});
process.stdout.write(`${chosen.length - failed.length} passed, ${failed.length} failed\n`);
if (failed.length > 0) process.stdout.write(`Failed: ${failed.join(', ')}\n`);
process.exitCode = failed.length === 0 ? 0 : 1;

/** Alone, a step shows what it does as it does it; beside others it tells it at its end, so that they do not mix. */
async function run({ name, words: [program = '', ...said] }: Step, isAlone: boolean): Promise<boolean> {
  const started = performance.now();
  // Beside other steps, tests keep to half of the cores; two browsers at once do.
  const half = String(Math.max(1, Math.floor(cores / 2)));
  const words = program === 'vitest' && name !== 'browser' && !isAlone ? [...said, '--maxWorkers', half] : said;
  const own = program === 'node';
  const child = spawn(own ? process.execPath : 'npx', own ? words : ['--no-install', program, ...words], {
    stdio: isAlone ? 'inherit' : ['ignore', 'pipe', 'pipe'],
    shell: !own && process.platform === 'win32',
    env: { NODE_COMPILE_CACHE: resolve('.cache/compiled'), ...process.env, ASTRO_TELEMETRY_DISABLED: '1' },
  });
  const told: Buffer[] = [];
  for (const stream of [child.stdout, child.stderr]) stream?.on('data', (part: Buffer) => told.push(part));
  const status = await new Promise<number | null>((settle) => {
    child.on('error', () => settle(null));
    child.on('close', settle);
  });
  process.stdout.write(Buffer.concat(told));
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  process.stdout.write(`${status === 0 ? 'passed' : 'FAILED'}  ${name}  ${seconds} s\n\n`);
  return status === 0;
}
