import { spawnSync } from 'node:child_process';
import process from 'node:process';
import { expect, test } from 'vitest';
import { faultSentence, tellFault } from '../../../src/catalogue/keep/fault-sentence.ts';

test('a fault of the program says how to report it, and nothing of what it was about', () => {
  const error = new TypeError('cannot read Marjorie Brocklebank of undefined');
  error.stack = `${error.name}: ${error.message}\n    at read (/home/marjorie/coins/src/privacy/guard.ts:12:3)\n    at x (node:internal/a:1:1)`;
  const told = tellFault(error);
  expect(told).toContain('This is a fault in Underglass and not in your cabinet');
  expect(told).toContain('at       src/privacy/guard.ts:12');
  expect(told).not.toMatch(/marjorie|Brocklebank|undefined|node:internal/i);
});

test('a fault within the bundled pages tells their files, and the page that was made', () => {
  const error = new Error('Marjorie');
  error.stack = `    at src/pages/pieces/[id]/index.astro:1\nError: Marjorie\n    at f (file:///home/marjorie/.cache/program/i9-x/program/chunks/a_Dq-1.mjs:10:8)\n    at program/prerender.C3.mjs:6:7`;
  expect(tellFault(error)).toContain('  at       src/pages/pieces/[id]/index.astro:1\n  at       program/chunks/a_Dq-1.mjs:10\n  at       program/prerender.C3.mjs:6\n');
  expect(tellFault(error)).not.toMatch(/marjorie/i);
}); // prettier-ignore

test.for([
  ['ENOSPC', 'There is no room left on the disk. Make room, and try again.'],
  ['EROFS', 'a/piece.md lies on a disk that cannot be written to.'],
  ['EACCES', 'a/piece.md may not be opened or written.'],
] as const)('%s is a sentence', ([code, says]) => {
  expect(tellFault(Object.assign(new Error('x'), { code, path: 'a/piece.md' }))).toContain(says);
});

test('what nobody catches ends a command with that, and no stack trace', () => {
  const program = `import { readWords } from './src/commands/parts/command-line.ts';
    readWords('help', {}); await Promise.resolve(); JSON.parse('{ secret');`;
  const { stderr, status } = spawnSync(process.execPath, ['--input-type=module', '-e', program], { encoding: 'utf8' });
  expect(status).toBe(2);
  expect(stderr).toContain('fault    SyntaxError');
  expect(stderr).not.toMatch(/secret|^\s+at .*\(/m);
});

// What a bundler and a process of Node's own say in their messages alone; the numbers are those of errno(3).
test.for([
  ['Failed to write file in /x/a.mjs\n\nCaused by:\n    No space left on device (os error 28)', 'no room left'],
  ['Command failed: node x\nError: ENOSPC: no space left on device, write', 'no room left'],
  ['Read-only file system (os error 30)', 'cannot be written to'],
  ['Permission denied (os error 13)', 'may not be opened or written'],
] as const)('a fault of the disk that is told in words alone is a sentence: %s', ([message, says]) => {
  expect(faultSentence(new Error(message))).toContain(says);
  expect(faultSentence(Object.assign(new Error(message), { code: 1 }))).toContain(says);
});
test('a number of another kind, and words beside a code, are no fault of the disk', () => {
  expect(faultSentence(new Error('No such thing (os error 2)'))).toBeNull();
  expect(faultSentence(new Error('The piece ENOSPC is not there.'))).toBeNull();
});
