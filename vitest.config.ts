import { resolve } from 'node:path';
import process from 'node:process';
import { defineConfig } from 'vitest/config';

/** Solvers, brute force, whole centuries, hostile strings: evidence that takes its time. `TRIES=full` tries ten times as much. */
const ORACLE = [
  'tests/oracle/**/*.test.ts',
  'tests/**/{hostile,hostile-texts,read-hostile,disguises,disguised}.test.ts',
  'tests/**/{second-opinion,second-opinions,temporal,edtf-package,there-and-back,properties}.test.ts',
  'tests/core/**/{cost,speed,heaviest-matching,match-mask,best-within,plan-purchases}.test.ts',
  'tests/core/cases/{lay-out-case,advice,fixed,misfits}.test.ts',
  'tests/core/types/key/*.test.ts',
  'tests/import/sheets/none-lost.test.ts',
  'tests/catalogue/{identify-demo,types-garbled}.test.ts',
];

/** Commands as a keeper runs them, each a process of its own; and what is stopped, killed or raced. */
const COMMANDS = [
  'tests/commands/**/*.test.ts',
  'tests/catalogue/keep/*.test.ts',
  'tests/desk/*.test.ts',
  'tests/photographs/{killed,make-photographs,carried}.test.ts',
  'tests/photographs/{locate,real,bring}/**/*.test.ts',
  'tests/drawing/**/*.test.ts',
  'tests/privacy/{git,leaks,picture-segments}.test.ts',
];

/** What wants a built site. */
const BUILT = ['tests/built/**', 'tests/browser/**'];

/** `npx vitest run --project unit tests/a/b.test.ts` runs that file whatever its group. */
const isNamed = process.argv.some((word) => word.startsWith('tests/'));

/** A command that a test starts is at its first line in 0.2 s and not in 0.5. */
const ENV = { NODE_COMPILE_CACHE: resolve('.cache/compiled') };

const small = {
  // Beside other steps on a busy machine; a test that hangs still ends.
  testTimeout: 60_000,
  hookTimeout: 60_000,
  setupFiles: ['tests/same-draw.ts'],
  // Every core: left to itself one is kept free, which on a machine of two is half.
  maxWorkers: '100%',
  // Modules are loaded once a worker and not once a file: half of the time was spent on loading them.
  isolate: isNamed,
  env: ENV,
};

/**
 * `unit` needs nothing built and takes seconds; `oracle` and `commands` need nothing built either and take longer; `built` reads
 * what a build of the demo made; `browser` opens it in Chromium, the main things in Firefox and WebKit too.
 */
export default defineConfig({
  test: {
    globalSetup: 'tests/temporary-folder.ts',
    projects: [
      {
        test: {
          ...small,
          name: 'unit',
          include: ['tests/**/*.test.ts'],
          exclude: [...BUILT, ...(isNamed ? [] : [...ORACLE, ...COMMANDS])],
        },
      },
      { test: { ...small, name: 'oracle', include: ORACLE, exclude: [...COMMANDS, ...BUILT] } },
      { test: { ...small, name: 'commands', include: COMMANDS } },
      {
        test: {
          name: 'built',
          env: ENV,
          include: ['tests/built/**/*.test.ts'],
          testTimeout: 120_000,
          hookTimeout: 240_000,
          maxWorkers: '100%',
        },
      },
      {
        test: {
          name: 'browser',
          env: ENV,
          include: ['tests/browser/**/*.test.ts'],
          testTimeout: 90_000,
          hookTimeout: 120_000,
          // A picture that is decoded beside two browsers and a build takes longer than the second that vitest waits.
          expect: { poll: { timeout: 60_000 } },
          // Two browsers at once: a test waits for its page, or for what moves on it, more than half of its time.
          maxWorkers: 2,
        },
      },
    ],
  },
});
