import { spawn } from 'node:child_process';
import process from 'node:process';
import { readWords } from './parts/command-line.ts';
import { missingPrograms } from './parts/missing-programs.ts';

const HELP = `npm test                 everything: format, lint, types, dead code, tests, the demo built, looked through and opened
npm test -- --only lint  one step: pages, markup, lint, format, unused, unit, oracle, build, built, commands, browser
`;

type Step = readonly [name: string, words: readonly string[]];

/** What is tried, in the order of the rows; the two columns of a row go on side by side, as each keeps one core busy. */
const ROWS: readonly (readonly [readonly Step[], readonly Step[]])[] = [
  [
    [
      // The pages first: this makes the declarations of the collections, which the linter reads.
      [
        'pages',
        ['astro', 'check', '--minimumFailingSeverity', 'hint', '--tsconfig', 'tests/house/pages.tsconfig.json'],
      ],
      ['markup', ['eslint', '--max-warnings', '0', 'src']],
      ['lint', ['oxlint']],
      ['format', ['prettier', '--check', '--log-level', 'warn', '.']],
      ['unused', ['knip']],
      ['unit', ['vitest', 'run', '--project', 'unit']],
      ['oracle', ['vitest', 'run', '--project', 'oracle']],
    ],
    [
      ['build', ['node', 'src/commands/build.ts']],
      ['built', ['vitest', 'run', '--project', 'built']],
    ],
  ],
  // A browser waits for its page half of its time: what a command does fits in between.
  [
    [['commands', ['vitest', 'run', '--project', 'commands']]],
    [['browser', ['vitest', 'run', '--project', 'browser']]],
  ],
];

const { values } = readWords(HELP, { only: { type: 'string' } });
const isChosen = ([name]: Step): boolean => values.only === undefined || name === values.only;
const chosen = ROWS.flat(2).filter(isChosen);
if (chosen.length === 0) {
  process.stderr.write(`There is no step ${String(values.only)}. ${HELP}`);
  process.exit(1);
}
const missing = missingPrograms(
  chosen.map(([name]) => name),
  process.env,
);
if (missing !== null) {
  process.stderr.write(`${missing}\n`);
  process.exit(1);
}
const failed: string[] = [];
for (const row of ROWS) {
  const columns = row.map((steps) => steps.filter(isChosen));
  // Alone, a step shows what it does as it does it; beside another it tells it at its end, so that the two do not mix.
  const isAlone = columns.filter(({ length }) => length > 0).length < 2;
  await Promise.all(
    columns.map(async (steps) => {
      for (const step of steps) await run(step, isAlone);
    }),
  );
}
process.stdout.write(`${chosen.length - failed.length} passed, ${failed.length} failed\n`);
if (failed.length > 0) process.stdout.write(`Failed: ${failed.join(', ')}\n`);
process.exitCode = failed.length === 0 ? 0 : 1;

async function run([name, [program = '', ...said]]: Step, isAlone: boolean): Promise<void> {
  const started = performance.now();
  // Beside another step, tests keep to one core; two browsers at once do.
  const words = program === 'vitest' && name !== 'browser' && !isAlone ? [...said, '--maxWorkers', '1'] : said;
  const own = program === 'node';
  const child = spawn(own ? process.execPath : 'npx', own ? words : ['--no-install', program, ...words], {
    stdio: isAlone ? 'inherit' : ['ignore', 'pipe', 'pipe'],
    shell: !own && process.platform === 'win32',
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' },
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
  if (status !== 0) failed.push(name);
}
