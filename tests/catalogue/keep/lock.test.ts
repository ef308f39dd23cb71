import { spawn, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { hostname, tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { beforeEach, expect, test } from 'vitest';
import { holderNow } from '../../../src/catalogue/keep/lock-owner.ts';
import type { Holder } from '../../../src/catalogue/keep/lock-owner.ts';
import { isHeld, withLock } from '../../../src/catalogue/keep/lock.ts';

let folder = '';
beforeEach(() => {
  folder = join(mkdtempSync(join(tmpdir(), 'lock-')), 'lock');
});
const tryIt = (wait = 0) =>
  withLock({ folder, thing: 'The cabinet', wait }, 'npm run add', () => Promise.resolve('done'));
function heldBy(change: Partial<Holder>): void {
  mkdirSync(folder);
  writeFileSync(join(folder, '7'), JSON.stringify({ ...holderNow('npm run import'), ...change }));
}
/** A process that has ended. */
const dead = spawnSync(process.execPath, ['--version']).pid;

test('one at a time: twenty at once add to a number and none is lost', async () => {
  let number = 0;
  const all = await Promise.all(
    Array.from({ length: 20 }, () =>
      withLock({ folder, thing: 'The cabinet' }, 'npm run add', async () => {
        const seen = number;
        await new Promise((go) => setTimeout(go, 1));
        number = seen + 1;
      }),
    ),
  );
  expect(all.every(({ ok }) => ok)).toBe(true);
  expect(number).toBe(20);
  expect(readdirSync(folder)).toHaveLength(1);
  expect(await isHeld(folder)).toBe(false);
});

test('who holds it is told: the command, since when, and its process', async () => {
  heldBy({});
  const refused = await tryIt(60);
  expect(refused.ok ? '' : refused.problem).toMatch(
    new RegExp(
      `^The cabinet is being changed by npm run import, which began at \\d\\d:\\d\\d \\(process ${process.pid}\\)\\.`,
    ),
  );
});

test('a lock of another computer is never taken over, and the sentence says what to remove', async () => {
  heldBy({ host: `${hostname()}-other`, pid: dead });
  const refused = await tryIt();
  expect(refused.ok ? '' : refused.problem).toContain(`remove the folder ${folder}`);
});

test.for<readonly [string, Partial<Holder>]>([
  ['a process that has ended', { pid: dead }],
  ['a process whose number another has now', { began: 'another beginning' }],
])('the lock of %s is taken over', async ([, change]) => {
  heldBy(change);
  expect(await tryIt()).toEqual({ ok: true, value: 'done' });
  expect(readdirSync(folder)).toEqual(['8']);
});

test('a lock that was being written when its writer died is taken over after a while, not at once', async () => {
  mkdirSync(folder);
  writeFileSync(join(folder, '3'), '');
  expect((await tryIt()).ok).toBe(false);
});

test('work that fails, and a process that ends by itself, give the lock back', async () => {
  await expect(
    withLock({ folder, thing: 'The cabinet' }, 'npm run add', () => Promise.reject(new Error('no'))),
  ).rejects.toThrow('no');
  expect(await isHeld(folder)).toBe(false);
  const program = `import { withLock } from './src/catalogue/keep/lock.ts';
    await withLock({ folder: ${JSON.stringify(folder)}, thing: 'It' }, 'x', async () => process.exit(0));`;
  spawnSync(process.execPath, ['--input-type=module', '-e', program]);
  expect(readFileSync(join(folder, readdirSync(folder)[0] ?? ''), 'utf8')).toBe('free');
});

test('sixty processes, some killed while they hold it, count to what the others did', async () => {
  const counter = `${folder}.number`;
  writeFileSync(counter, '0');
  const program = `import { readFileSync, writeFileSync } from 'node:fs';
    import { withLock } from './src/catalogue/keep/lock.ts';
    const done = await withLock({ folder: ${JSON.stringify(folder)}, thing: 'It', wait: 120000 }, 'x', async () => {
      const seen = Number(readFileSync(${JSON.stringify(counter)}, 'utf8'));
      if (process.argv.at(-1) === 'dies') process.kill(process.pid, 'SIGKILL');
      await new Promise((go) => setTimeout(go, 2));
      writeFileSync(${JSON.stringify(counter)}, String(seen + 1));
    });
    process.exitCode = done.ok ? 0 : 1;`;
  const rounds = process.env['SAFETY'] === 'long' ? 60 : 12;
  const ends = await Promise.all(
    Array.from({ length: rounds }, (_, index) => {
      const dies = index % 4 === 3;
      const child = spawn(process.execPath, ['--input-type=module', '-e', program, dies ? 'dies' : 'lives'], {
        stdio: 'ignore',
      });
      return new Promise<string>((done) => child.on('exit', (code, signal) => done(signal ?? String(code))));
    }),
  );
  const lived = ends.filter((end) => end === '0').length;
  expect(ends.filter((end) => end === 'SIGKILL')).toHaveLength(rounds / 4);
  expect(lived).toBe((rounds * 3) / 4);
  expect(Number(readFileSync(counter, 'utf8'))).toBe(lived);
}, 180_000);

test('whoever waits longer than a moment is told for whom, once, and goes on when it has ended', async () => {
  heldBy({});
  const told: string[] = [];
  setTimeout(() => writeFileSync(join(folder, '7'), 'free'), 2_300);
  const lock = { folder, thing: 'The cabinet', tell: (sentence: string) => void told.push(sentence) };
  expect(await withLock(lock, 'npm run add', () => Promise.resolve('done'))).toEqual({ ok: true, value: 'done' });
  expect(told).toEqual([expect.stringMatching(/^The cabinet is being changed by npm run import, which began at .* Waiting for it to end\.$/)]);
}); // prettier-ignore
