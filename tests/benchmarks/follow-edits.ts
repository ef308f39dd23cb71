// How soon `npm run dev` shows an edited piece, by the clock: from the moment its file is written until its page says it, in
// cabinets of growing size. Writes results-follow-edits.md, and ends with 1 when a bound is passed. SIZES=1000,10000 chooses.
import { spawn } from 'node:child_process';
import { appendFileSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { setTimeout } from 'node:timers/promises';
import { writeLargeCabinet } from './large-cabinet.ts';

const SIZES = (process.env['SIZES'] ?? '1000,10000').split(',').map(Number);
const ROUNDS = 5;
/** Milliseconds after which an edit will never be shown. */
const PATIENCE = 20_000;
/** Seconds, by the size of the cabinet up to which they hold. */
const BOUNDS: readonly (readonly [pieces: number, seconds: number])[] = [
  [1000, 1],
  [10_000, 3],
];

const middle = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1] ?? NaN;

/** Seconds until an edited piece is shown, each of several edits. */
async function secondsToShow(cabinet: string): Promise<readonly number[]> {
  const dev = spawn(process.execPath, ['src/commands/run.mjs', 'dev', '--cabinet', cabinet], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  try {
    const place = await new Promise<string>((found, failed) => {
      dev.stdout.setEncoding('utf8').on('data', (said: string) => {
        const told = /Open (http:\/\/localhost:\d+)/.exec(said)?.[1];
        if (told !== undefined) found(told);
      });
      dev.on('exit', () => failed(new Error('The server ended.')));
    });
    const shown = async (): Promise<string> => (await fetch(`${place}/pieces/piece-7/`)).text();
    // Until every folder is watched.
    await shown();
    await setTimeout(PATIENCE / 4);
    const taken: number[] = [];
    // The first two make the program ready.
    for (let round = -2; round < ROUNDS; round += 1) {
      const word = `Seen-again-${round + 2}`;
      const from = performance.now();
      appendFileSync(join(cabinet, 'pieces/piece-7/piece.md'), `\n${word}.\n`);
      // A browser asks when it is told to, a moment after the file has been read.
      while (!(await shown()).includes(word)) {
        if (performance.now() - from > PATIENCE) throw new Error(`An edit of ${cabinet} was not shown.`);
        await setTimeout(20);
      }
      if (round >= 0) taken.push((performance.now() - from) / 1000);
      // What is checked beside it is over before the next edit.
      await setTimeout(3000);
    }
    return taken;
  } finally {
    dev.kill();
  }
}

const rows: string[] = [];
for (const size of SIZES) {
  const cabinet = join(mkdtempSync(join(tmpdir(), 'bench-dev-')), 'cabinet');
  writeLargeCabinet(cabinet, 'content', { pieces: size });
  const taken = await secondsToShow(cabinet);
  rmSync(join(cabinet, '..'), { recursive: true, force: true });
  const bound = BOUNDS.find(([pieces]) => size <= pieces)?.[1] ?? null;
  const isKept = bound === null || middle(taken) <= bound;
  rows.push(`| ${size} | ${middle(taken).toFixed(2)} | ${Math.max(...taken).toFixed(2)} | ${bound ?? 'none'} |`);
  process.stdout.write(
    `  ${`an edited piece of ${size} is shown`.padEnd(44)}${`${middle(taken).toFixed(2)} s`.padEnd(34)}bound ${`${bound ?? 'none'} s`.padEnd(9)}${isKept ? 'kept' : 'EXCEEDED'}\n`,
  );
  if (!isKept) process.exitCode = 1;
}

const [processor] = cpus();
writeFileSync(
  'tests/benchmarks/results-follow-edits.md',
  `# Following edits

\`npm run bench -- --only follow-edits\`; medians of ${ROUNDS} by the clock on ${processor?.model ?? 'an unknown processor'}, ${cpus().length} cores, Node ${process.version}: from the moment a piece's file is written until \`npm run dev\` gives out its page with the edit.

| pieces | median, s | longest, s | bound, s |
| --- | --- | --- | --- |
${rows.join('\n')}
`,
);
