import { resolve } from 'node:path';
import { defineConfig } from 'vitest/config';

/** `unit` needs nothing built; `built` reads what a build of the demo made; `browser` opens it in Chromium. */
export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'unit',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/built/**', 'tests/browser/**'],
          testTimeout: 30_000,
          setupFiles: ['tests/same-draw.ts'],
          // Every core: left to itself one is kept free, which on a machine of two is half.
          maxWorkers: '100%',
          // A command that a test starts is at its first line in 0.2 s and not in 0.5.
          env: { NODE_COMPILE_CACHE: resolve('.cache/compiled') },
        },
      },
      {
        test: {
          name: 'built',
          include: ['tests/built/**/*.test.ts'],
          testTimeout: 120_000,
          hookTimeout: 240_000,
          maxWorkers: '100%',
        },
      },
      {
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          testTimeout: 60_000,
          hookTimeout: 60_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
