import { execFile } from 'node:child_process';
import { cp, mkdir, mkdtemp, readFile, rename, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { expect, test } from 'vitest';
import { checkCabinet } from '../../src/catalogue/check-cabinet.ts';
import { commitWithPrivate, trackedPieces } from '../../src/privacy/git.ts';
import { PRIVACY } from '../../src/privacy/privacy.ts';

const run = promisify(execFile);

/** The marked cabinet in a folder of its own and no longer a demo. */
async function ownCabinet(within = ''): Promise<string> {
  const at = join(await mkdtemp(join(tmpdir(), 'tracked-')), within);
  await mkdir(at, { recursive: true });
  await cp('tests/cabinets/marked', at, { recursive: true });
  const facts = join(at, 'cabinet.yaml');
  await writeFile(facts, (await readFile(facts, 'utf8')).replace('demo: yes\n', ''));
  return at;
}

/** The same, in the hands of git; what `ignored` names is kept from it. */
async function trackedCabinet(ignored: string): Promise<string> {
  const at = await ownCabinet();
  await writeFile(join(at, '.gitignore'), ignored);
  await run('git', ['-C', at, 'init', '--quiet']);
  await run('git', ['-C', at, 'add', '--all']);
  return at;
}

test('every private file that git tracks is a problem', async () => {
  const { problems } = await checkCabinet(await trackedCabinet(''), PRIVACY);
  expect(problems.map(({ kind, file }) => `${kind} ${file}`)).toEqual([
    'private-tracked private/guide.csv',
    'private-tracked private/ledger.csv',
  ]);
});

test('a private folder that git ignores is none', async () => {
  const { problems } = await checkCabinet(await trackedCabinet('private/\n'), PRIVACY);
  expect(problems).toEqual([]);
});

test('a folder that is not there is said to be no cabinet', async () => {
  const { problems } = await checkCabinet(join(tmpdir(), 'there-is-no-such-cabinet'), PRIVACY);
  expect(problems.map(({ kind }) => kind)).toEqual(['cabinet-missing']);
});

const kindsIn = async (at: string): Promise<readonly string[]> =>
  (await checkCabinet(at, PRIVACY)).problems.map(({ kind, file }) => `${kind} ${file}`);

test('a private folder that git would take with the next add is one problem, also where the cabinet is a folder of a repository', async () => {
  const at = await ownCabinet('of/mine');
  expect(await kindsIn(at)).toEqual([]);
  const top = join(at, '../..');
  await run('git', ['-C', top, 'init', '--quiet']);
  expect(await kindsIn(at)).toEqual(['private-not-ignored private/guide.csv']);
  await writeFile(join(top, '.gitignore'), 'private/\n');
  expect(await kindsIn(at)).toEqual([]);
  await run('git', ['-C', top, 'add', '--force', 'of/mine/private/ledger.csv']);
  expect(await kindsIn(at)).toEqual(['private-tracked private/ledger.csv']);
});

test('what a repository held once is told by its commit, when nothing is tracked any more', async () => {
  const at = await trackedCabinet('');
  const name = ['-c', 'user.name=A keeper', '-c', 'user.email=keeper@example.org'];
  expect(await commitWithPrivate(at)).toBeNull();
  await run('git', ['-C', at, ...name, 'commit', '--quiet', '-m', 'All of it']);
  await writeFile(join(at, '.gitignore'), 'private/\n');
  await run('git', ['-C', at, 'rm', '--cached', '-r', '--quiet', 'private']);
  await run('git', ['-C', at, ...name, 'commit', '--quiet', '-m', 'Less of it']);
  expect(await kindsIn(at)).toEqual([]);
  const { stdout } = await run('git', ['-C', at, 'rev-parse', '--short', 'HEAD']);
  expect(await commitWithPrivate(at)).toBe(stdout.trim());
  // A branch that knows nothing of it does not make the other one go away.
  await run('git', ['-C', at, 'checkout', '--quiet', '--orphan', 'anew']);
  await run('git', ['-C', at, ...name, 'commit', '--quiet', '-m', 'From the beginning']);
  expect(await commitWithPrivate(at)).toBe(stdout.trim());
  // A branch of that name is no file.
  await run('git', ['-C', at, 'branch', 'private']);
  expect(await commitWithPrivate(at)).toBe(stdout.trim());
  expect(await commitWithPrivate(tmpdir())).toBeNull();
});

test('of some pieces those are told that git has, and no folder of another kind', async () => {
  const at = await ownCabinet();
  await mkdir(join(at, 'types/pence'), { recursive: true });
  await writeFile(join(at, 'types/pence/types.csv'), 'id\n');
  await writeFile(join(at, '.gitignore'), 'private/\npieces/hidden-noble/\n');
  await run('git', ['-C', at, 'init', '--quiet']);
  await run('git', ['-C', at, 'add', '--all']);
  const asked = ['unlisted-groat', 'hidden-noble', 'pence', 'old-medal'];
  expect(await trackedPieces(at, asked)).toEqual(['unlisted-groat', 'old-medal']);
  expect(await trackedPieces(at, [])).toEqual([]);
});

test('of a private folder that is a link git must ignore the link itself', async () => {
  const at = await ownCabinet('mine');
  await run('git', ['-C', at, 'init', '--quiet']);
  const told = async () => (await checkCabinet(at, PRIVACY)).problems.map(({ says }) => says);
  expect(await told()).toEqual([expect.stringContaining('Write private/ into')]);
  await rename(join(at, 'private'), join(at, '../locked-disk'));
  await symlink(join(at, '../locked-disk'), join(at, 'private'), 'dir');
  await writeFile(join(at, '.gitignore'), 'private/\n');
  expect(await told()).toEqual([expect.stringContaining('Write private into')]);
  await writeFile(join(at, '.gitignore'), 'private\n');
  expect(await told()).toEqual([]);
});

test('a private folder that is a link is read, and one that leads nowhere is told of', async () => {
  const at = await ownCabinet('mine');
  const away = join(at, '../locked-disk');
  await rename(join(at, 'private'), away);
  await symlink(away, join(at, 'private'), 'dir');
  expect(await kindsIn(at)).toEqual([]);
  const penny = join(at, 'pieces/plain-penny/piece.md');
  await writeFile(penny, `${await readFile(penny, 'utf8')}\nIt lies in the MARK-STORAGE bank box.\n`);
  expect(await kindsIn(at)).toEqual(['private-in-text pieces/plain-penny/piece.md']);
  await rm(away, { recursive: true });
  expect(await kindsIn(at)).toEqual(['private-away private']);
});

test('any other link is told of and not followed', async () => {
  const at = await ownCabinet();
  await symlink('/etc/hostname', join(at, 'pieces/plain-penny/obverse.jpg'));
  await symlink(tmpdir(), join(at, 'rulers/more'), 'dir');
  expect(await kindsIn(at)).toEqual(['file-linked pieces/plain-penny/obverse.jpg', 'file-linked rulers/more']);
});
