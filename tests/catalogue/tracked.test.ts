import { execFile } from 'node:child_process';
import { cp, mkdtemp, readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { expect, test } from 'vitest';
import { checkCabinet } from '../../src/catalogue/check-cabinet.ts';

const run = promisify(execFile);

/** The marked cabinet in a folder of its own and no longer a demo, in the hands of git; what `ignored` names is kept from it. */
async function trackedCabinet(ignored: string): Promise<string> {
  const at = await mkdtemp(join(tmpdir(), 'tracked-'));
  await cp('tests/cabinets/marked', at, { recursive: true });
  const facts = join(at, 'cabinet.yaml');
  await writeFile(facts, (await readFile(facts, 'utf8')).replace('demo: yes\n', ''));
  await writeFile(join(at, '.gitignore'), ignored);
  await run('git', ['-C', at, 'init', '--quiet']);
  await run('git', ['-C', at, 'add', '--all']);
  return at;
}

test('every private file that git tracks is a problem', async () => {
  const { problems } = await checkCabinet(await trackedCabinet(''));
  expect(problems.map(({ kind, file }) => `${kind} ${file}`)).toEqual([
    'private-tracked private/guide.csv',
    'private-tracked private/ledger.csv',
  ]);
});

test('a private folder that git ignores is none', async () => {
  const { problems } = await checkCabinet(await trackedCabinet('private/\n'));
  expect(problems).toEqual([]);
});

test('a folder that is not there is said to be no cabinet', async () => {
  const { problems } = await checkCabinet(join(tmpdir(), 'there-is-no-such-cabinet'));
  expect(problems.map(({ kind }) => kind)).toEqual(['cabinet-missing']);
});
