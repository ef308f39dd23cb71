import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import process from 'node:process';

/** One run: seconds by the clock and of the processor, and the most memory its processes had at once, in megabytes. */
export type Run = {
  readonly clock: number;
  readonly processor: number;
  readonly memory: number;
  readonly said: string;
};

// Each process of a run writes a line: what it took of the processor, and the most memory it ever had.
const TELLS = `import { appendFileSync } from 'node:fs';
process.on('exit', () => {
  const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
  appendFileSync(process.env.BENCH_TOLD, (userCPUTime + systemCPUTime) / 1e6 + ' ' + maxRSS / 1024 + '\\n');
});`;

/** Runs a program of ours as a command of ours is run, and measures it with all that it starts. */
export async function run(words: readonly string[], cwd: string): Promise<Run> {
  const told = join(mkdtempSync(join(tmpdir(), 'bench-told-')), 'told.txt');
  const from = performance.now();
  const child = spawn(
    process.execPath,
    ['--disable-warning=ExperimentalWarning', '--max-semi-space-size=32', '--heap-growing-percent=50', ...words],
    {
      cwd,
      env: {
        ...process.env,
        BENCH_TOLD: told,
        NODE_OPTIONS: `--import data:text/javascript,${encodeURIComponent(TELLS)}`,
        // As every command of ours is started; the bare site has it too.
        MALLOC_ARENA_MAX: '2',
        NODE_COMPILE_CACHE: resolve('.cache/compiled'),
      },
    },
  );
  let most = 0;
  const watch = setInterval(() => {
    most = Math.max(most, memoryOf(child.pid ?? 0));
  }, 100);
  let [said, faults] = ['', ''];
  child.stdout.on('data', (part: Buffer) => (said += part.toString()));
  child.stderr.on('data', (part: Buffer) => (faults += part.toString()));
  const status = await new Promise((ended) => child.on('close', ended));
  clearInterval(watch);
  if (status !== 0) throw new Error(said + faults);
  const clock = (performance.now() - from) / 1000;
  const lines = readFileSync(told, 'utf8').trim().split('\n');
  const each = lines.map((line) => line.split(' ').map(Number));
  const processor = each.reduce((sum, [seconds = 0]) => sum + seconds, 0);
  return { clock, processor, memory: Math.max(most, ...each.map(([, memory = 0]) => memory)), said };
}

/** What a process and those it started have of memory now, in megabytes; 0 where the system does not tell. */
function memoryOf(pid: number): number {
  try {
    const kilobytes = Number(/^VmRSS:\s*(\d+)/m.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1] ?? 0);
    const children = readFileSync(`/proc/${pid}/task/${pid}/children`, 'utf8').split(' ').filter(Boolean);
    return children.reduce((sum, child) => sum + memoryOf(Number(child)), kilobytes / 1024);
  } catch {
    return 0;
  }
}
