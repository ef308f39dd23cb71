import { spawnSync } from 'node:child_process';
import { mkdir, mkdtemp, readdir, readFile, stat, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { beforeEach, expect, test } from 'vitest';
import { parse } from 'yaml';
import { checkCabinet } from '../../src/catalogue/check-cabinet.ts';
import { PRIVACY } from '../../src/privacy/privacy.ts';
import { runHere } from './run-here.ts';
import type { Ran } from './run-here.ts';

type Workflow = {
  readonly env: { readonly COMMIT: string };
  readonly jobs: { readonly publish: { readonly steps: readonly { readonly uses?: string; readonly run?: string }[] } };
};

let into = '';
beforeEach(async () => {
  into = join(await mkdtemp(join(tmpdir(), 'begin-')), 'my cabinet');
});

const begin = (...words: readonly string[]): Promise<Ran> => runHere('begin', ...words);

test('a new cabinet has no problems, keeps its private folder out of git, and publishes nothing of the example', async () => {
  const { status, stdout } = await begin(
    into,
    '--title',
    'Coins: mine',
    '--keeper',
    'A. N. Other',
    '--currency',
    'EUR',
  );
  expect(status).toBe(0);
  expect(stdout).toContain('Three things to do next:');
  const { records, problems } = await checkCabinet(into, PRIVACY);
  expect(problems).toEqual([]);
  expect(records.cabinet?.fields).toMatchObject({ title: 'Coins: mine', keeper: 'A. N. Other', currency: 'EUR' });
  expect(records.pieces.map(({ fields }) => fields.publish)).toEqual(['no']);
  expect(await readFile(join(into, '.gitignore'), 'utf8')).toMatch(/^private\/$/m);
  expect(await readFile(join(into, 'private/ledger.csv'), 'utf8')).toContain('45 EUR');
});

test('a workflow publishes it, with every version pinned, and refuses private files and what was not inspected', async () => {
  await begin(into, '--title', 'Coins', '--keeper', 'A. N. Other');
  const workflow = parse(await readFile(join(into, '.github/workflows/publish.yaml'), 'utf8')) as Workflow;
  const steps = workflow.jobs.publish.steps;
  expect(steps.flatMap(({ uses }) => uses ?? []).filter((uses) => !/@[0-9a-f]{40}$/.test(uses))).toEqual([]);
  expect(workflow.env.COMMIT).toMatch(/^[0-9a-f]{40}$/);
  const commands = steps.flatMap(({ run }) => run ?? []);
  expect(commands.join('\n')).toContain('--only-inspected');
  // What it runs of this program is in package.json, and every flag is one that the command itself names.
  const { scripts } = JSON.parse(await readFile('package.json', 'utf8')) as {
    scripts: Readonly<Record<string, string>>;
  };
  const runs = commands.flatMap((command) => [...command.matchAll(/npm run (\S+)(?: -- (.*))?/g)]);
  expect(runs.map(([, name]) => name)).toEqual(['build']);
  for (const [, name = '', flags = ''] of runs) {
    const [program = '', ...words] = (scripts[name] ?? '').split(' ');
    const help = spawnSync(program === 'node' ? process.execPath : program, [...words, '--help'], { encoding: 'utf8' });
    expect(help.status, help.stderr).toBe(0);
    for (const [flag] of flags.matchAll(/--[a-z-]+/g)) expect(help.stdout).toMatch(new RegExp(`${flag}\\b`));
  }
  // The cabinet as it is pushed: `private/` is ignored, and one that is not is refused by the first command.
  const git = (...words: readonly string[]) => spawnSync('git', ['-C', into, ...words], { encoding: 'utf8' });
  git('init', '-q');
  git('add', '--all');
  const refuse = () => spawnSync('/bin/sh', ['-c', commands[0] ?? ''], { cwd: join(into, '..') });
  await symlink(into, join(into, '..', 'cabinet'));
  expect(git('ls-files').stdout).not.toContain('private/');
  expect(refuse().status).toBe(0);
  git('add', '--force', 'private/ledger.csv');
  expect(refuse().status).toBe(1);
});

test('each list file names the schema of its kind in its first line, and the schema is there', async () => {
  await begin(into, '--title', 'Coins', '--keeper', 'A. N. Other', '--lists');
  const files = (await readdir(into, { recursive: true })).filter((file) =>
    /^(rulers|mints|denominations|works|eras|sets)[/\\].*\.yaml$/.test(file),
  );
  expect(files.length).toBeGreaterThan(50);
  for (const file of files) {
    const [, schema = ''] =
      /^# yaml-language-server: \$schema=(\S+)\n/.exec(await readFile(join(into, file), 'utf8')) ?? [];
    const { title } = JSON.parse(await readFile(join(into, file, '..', schema), 'utf8')) as { title?: string };
    expect(schema, `${file} ${title ?? ''}`).toBe(`../.schemas/${file.replace(/[/\\].*/, '').replace(/s$/, '')}.json`);
  }
});

test('with the lists it holds those of the demo, and still no problem', async () => {
  await begin(into, '--title', 'Coins', '--keeper', 'A. N. Other', '--lists');
  const { records, problems } = await checkCabinet(into, PRIVACY);
  expect(problems).toEqual([]);
  expect(records.named.rulers).toEqual((await checkCabinet('content', PRIVACY)).records.named.rulers);
});

test('what a begin that was stopped leaves is in nobody’s way', async () => {
  for (const folder of ['rulers', 'pieces/example', 'private/.lock', 'private/undo']) await mkdir(join(into, folder), { recursive: true }); // prettier-ignore
  await writeFile(join(into, 'private/.gitignore'), '*\n');
  expect(await begin(into, '--title', 'Coins', '--keeper', 'A. N. Other')).toMatchObject({ status: 0, stderr: '' });
});

test('a folder that holds something is left as it is', async () => {
  await mkdir(into);
  await writeFile(join(into, 'list.txt'), 'mine');
  const { status, stderr } = await begin(into, '--title', 'Coins', '--keeper', 'A. N. Other');
  expect(status).toBe(1);
  expect(stderr).toMatch(/holds something already, and nothing was written\. Choose a new one\.\n$/);
  expect(await readdir(into)).toEqual(['list.txt']);
});

test.for([
  [['--title', 'Coins'], 'Say --keeper: there is nobody here to ask.'],
  [
    ['--title', 'Coins', '--keeper', 'A', '--currency', 'pounds'],
    '--currency: A currency is three capitals, like GBP.',
  ],
  [['--title', ' ', '--keeper', 'A'], '--title: This wants a few words.'],
  [['--title', 'Coins', '--keeper', 'A', '--address', 'example'], '--address: An address begins with https://'],
] as const)('without an answer that will do, %j is told and nothing is written', async ([words, says]) => {
  const { status, stderr } = await begin(into, ...words);
  expect(status).toBe(1);
  expect(stderr).toContain(says);
  await expect(readdir(into)).rejects.toThrow('ENOENT');
});

test('the files for a double click say in plain words when Node or the program is missing', async () => {
  await begin(into, '--title', 'Coins', '--keeper', 'A. N. Other');
  const starter = join(into, 'open-the-desk.sh');
  const text = await readFile(starter, 'utf8');
  const moved = join(into, 'moved.sh');
  await writeFile(moved, text.replace(/^PROGRAM=.*$/m, "PROGRAM='/nowhere'"));
  const ran = (file: string, path: string) =>
    spawnSync('/bin/sh', [file], { encoding: 'utf8', input: '\n', env: { PATH: path } });
  expect(ran(moved, process.env['PATH'] ?? '')).toMatchObject({ status: 1 });
  expect(ran(moved, process.env['PATH'] ?? '').stdout).toContain('The program is not in this folder any more.');
  expect(ran(starter, '/bin-of-nothing').stdout).toContain('Node.js is not on this machine.');
  const windows = await readFile(join(into, 'open-the-desk.cmd'), 'utf8');
  expect(windows.split('\r\n').length).toBe(windows.split('\n').length);
  expect((await stat(join(into, 'open-the-desk.command'))).mode & 0o111).not.toBe(0);
});
