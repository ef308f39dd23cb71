import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { beforeEach, describe, expect, test } from 'vitest';
import { changeCabinet, recoverCabinet } from '../../../src/catalogue/keep/change-cabinet.ts';
import type { Changes } from '../../../src/catalogue/keep/change-cabinet.ts';
import { countedRuns, lastRunOf, runsOf, undoRun } from '../../../src/catalogue/keep/undo.ts';
import { good, refuse } from '../../../src/core/outcome.ts';
import { folderTexts } from './folder-texts.ts';
import { changesSeen, stopAt } from './stop-at.mjs';

const BEFORE = {
  'cabinet.yaml': 'title: T\n',
  'pieces/gone/piece.md': 'goes',
  'private/ledger.csv': 'piece,cost\nold,1\n',
};
const AFTER = {
  'cabinet.yaml': 'title: T\n',
  'pieces/new/piece.md': 'new piece',
  'private/ledger.csv': 'piece,cost\nold,1\nnew,2\n',
  'rulers/john.yaml': 'label: John\n',
};

let at = '';
const file = (name: string): string => join(at, name);
function begin(): string {
  const folder = mkdtempSync(join(tmpdir(), 'keep-'));
  for (const [name, text] of Object.entries(BEFORE)) {
    mkdirSync(join(folder, name, '..'), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  return folder;
}
beforeEach(() => {
  at = begin();
});
const change = (work: (changes: Changes) => Promise<void>, command = 'npm run add') =>
  changeCabinet(at, { command, tell: () => undefined }, async (changes) => {
    await work(changes);
    return good(null);
  });
const problemOf = (outcome: { ok: true } | { ok: false; problem: string }): string =>
  outcome.ok ? '' : outcome.problem;

/** Changes one file, makes two, removes one. */
const changeFour = (folder: string) =>
  changeCabinet(folder, { command: 'npm run add', tell: () => undefined }, async (changes) => {
    await changes.create('pieces/new/piece.md', AFTER['pieces/new/piece.md']);
    await changes.put('private/ledger.csv', AFTER['private/ledger.csv']);
    await changes.put('rulers/john.yaml', AFTER['rulers/john.yaml']);
    await changes.remove('pieces/gone/piece.md');
    return good(null);
  });
const dead = String(spawnSync(process.execPath, ['--version']).pid);
/** As the next process finds it: the holder of the lock has died, and no process of that number writes any more. */
function asLeftByTheDead(folder: string): void {
  for (const name of readdirSync(folder, { recursive: true, encoding: 'utf8' })) {
    const path = join(folder, name);
    if (!statSync(path).isFile()) continue;
    if (/[.]lock.\d+$/.test(name))
      writeFileSync(path, readFileSync(path, 'utf8').replace(`"pid":${process.pid}`, `"pid":${dead}`));
    if (name.includes(`.${process.pid}.`)) renameSync(path, path.replace(`.${process.pid}.`, `.${dead}.`));
  }
}

describe('stopped at every point at which it writes', async () => {
  const counted = begin();
  stopAt(counted, Infinity, '');
  const whole = await changeFour(counted);
  const points = changesSeen();
  stopAt('', Infinity, '');
  test('there are such points, and without a stop all is done', () => {
    expect(whole).toEqual(good(null));
    expect(points).toBeGreaterThan(25);
    expect(folderTexts(counted)).toEqual(AFTER);
  });
  test.for(['gone', 'ENOSPC', 'EROFS', 'EACCES'] as const)(
    '%s leaves all or nothing, and the next run goes on',
    async (how) => {
      const seen = { before: 0, after: 0 };
      for (let point = 1; point <= points; point += 1) {
        const folder = begin();
        stopAt(folder, point, how);
        const ended = await changeFour(folder);
        stopAt('', Infinity, '');
        asLeftByTheDead(folder);
        await recoverCabinet(folder, () => undefined);
        const found = folderTexts(folder);
        const isAfter = 'pieces/new/piece.md' in found;
        expect(found, `${how} at ${point}`).toEqual(isAfter ? AFTER : BEFORE);
        expect(problemOf(ended)).not.toMatch(/unfinished|\n/);
        if (how !== 'gone') expect(ended.ok, problemOf(ended)).toBe(isAfter);
        if (how === 'ENOSPC' && !ended.ok) expect(ended.problem).toMatch(/Nothing was changed\.$/);
        seen[isAfter ? 'after' : 'before'] += 1;
        // The next command finds the cabinet free.
        expect((await changeFour(folder)).ok).toBe(!isAfter);
        expect(folderTexts(folder)).toEqual(AFTER);
        rmSync(folder, { recursive: true });
      }
      expect(seen.before).toBeGreaterThan(5);
      expect(seen.after).toBeGreaterThan(0);
    },
  );
});

describe('what a stroke refuses', () => {
  const NEVER: readonly (readonly [string, () => ReturnType<typeof change>, RegExp])[] = [
    ['a new file where one is', () => change(async ({ create }) => create('cabinet.yaml', 'mine')), /cabinet\.yaml is there already/],
    ['a text that was changed meanwhile', () => change(async ({ put }) => put('cabinet.yaml', 'new', 'title: older\n')), /has been changed while/],
    ['a place outside', () => change(async ({ put }) => put('../out.md', 'x')), /lies outside the cabinet/],
    ['what its work refuses', () => changeCabinet(at, { command: 'npm run add' }, async ({ put }) => { await put('cabinet.yaml', 'new'); return refuse('Not so.'); }), /^Not so\.$/],
    ['a file where another wrote while it worked', () => change(async ({ put }) => { await put('cabinet.yaml', 'new'); writeFileSync(file('cabinet.yaml'), 'theirs'); }), /has been changed while/],
    ['a new file that another made while it worked', () => change(async ({ create }) => { await create('rulers/john.yaml', 'new'); mkdirSync(file('rulers'), { recursive: true }); writeFileSync(file('rulers/john.yaml'), 'theirs'); }), /is there already/],
  ]; // prettier-ignore
  test.for(NEVER)('%s', async ([, attempt, says]) => {
    expect(problemOf(await attempt())).toMatch(says);
    const theirs = Object.fromEntries(Object.entries(folderTexts(at)).filter(([, text]) => text === 'theirs'));
    expect(folderTexts(at)).toEqual({ ...BEFORE, ...theirs });
    expect(readdirSync(file('private/undo'))).toEqual([]);
  });
  test('a private folder on a disk that is not there', async () => {
    rmSync(file('private'), { recursive: true });
    symlinkSync('/nowhere/at/all', file('private'));
    expect(problemOf(await change(async ({ put }) => put('a.md', 'x')))).toMatch(
      /^private is no folder that can be opened/,
    );
  });
  test('a fault of the work is thrown as it is, and nothing is left of it', async () => {
    await expect(
      change(async ({ put }) => {
        await put('cabinet.yaml', 'new');
        throw new TypeError('a fault');
      }),
    ).rejects.toThrow('a fault');
    expect(folderTexts(at)).toEqual(BEFORE);
  });
});

test('private files are their owner’s alone, and a mode that a keeper chose is kept', async () => {
  chmodSync(file('private/ledger.csv'), 0o640);
  chmodSync(file('cabinet.yaml'), 0o600);
  await change(async ({ put }) => {
    await put('private/ledger.csv', 'piece\n');
    await put('private/guide.csv', 'set\n');
    await put('cabinet.yaml', 'title: U\n');
    await put('rulers/john.yaml', 'label: John\n');
  });
  const mode = (name: string): number => statSync(file(name)).mode & 0o777;
  expect([mode('private/ledger.csv'), mode('private/guide.csv'), mode('cabinet.yaml')]).toEqual([0o640, 0o600, 0o600]);
  expect(mode('rulers/john.yaml') & 0o040).toBe(0o040);
  expect([mode('private/undo'), mode('private/.lock')]).toEqual([0o700, 0o700]);
});

test('a private folder that is made is one git leaves alone; one that is there stays as it is', async () => {
  await change(async ({ put }) => put('cabinet.yaml', 'title: U\n'));
  expect(existsSync(file('private/.gitignore'))).toBe(false);
  rmSync(file('private'), { recursive: true });
  await change(async ({ put }) => put('cabinet.yaml', 'title: V\n'));
  expect(readFileSync(file('private/.gitignore'), 'utf8')).toBe('*\n');
});

describe('undo', () => {
  const edit = (name: string, text: string, command?: string) => change(async ({ put }) => put(name, text), command);
  test('puts back, removes and brings back, and can itself be undone', async () => {
    await change(async ({ put, create, remove }) => {
      await put('cabinet.yaml', 'title: U\n');
      await create('pieces/new/piece.md', 'new');
      await remove('pieces/gone/piece.md');
    });
    const after = folderTexts(at);
    const run = await lastRunOf(at, 'npm run add');
    expect(await undoRun(at, run ?? expect.fail(), false)).toEqual(good({ removed: 1, restored: 2, leftAlone: [] }));
    expect(folderTexts(at)).toEqual(BEFORE);
    expect(existsSync(file('pieces/new'))).toBe(false);
    const [undo, undone] = await runsOf(at);
    expect([undo?.undoes, undo?.undoneBy, undone?.undoneBy]).toEqual([undone?.run, null, undo?.run]);
    expect(countedRuns(await runsOf(at))).toEqual([undone]);
    expect(problemOf(await undoRun(at, run ?? expect.fail()))).toBe('This has been undone already.');
    expect(folderTexts(at)).toEqual(BEFORE);
    await undoRun(at, undo ?? expect.fail());
    expect(folderTexts(at)).toEqual(after);
    expect(problemOf(await undoRun(at, undo ?? expect.fail()))).toBe('This has been done again already.');
    expect((await lastRunOf(at, 'npm run add'))?.undoneBy).toBeNull();
    expect(countedRuns(await runsOf(at)).map(({ run: name }) => name)).toEqual([run?.run]);
  });
  test('a run that went on after its undo can be undone again', async () => {
    const copy = (name: string) =>
      changeCabinet(at, { command: 'npm run photos', run: 'one' }, async ({ put }) => {
        await put(name, '1');
        return good(null);
      });
    await copy('a.md');
    await undoRun(at, (await lastRunOf(at, 'npm run photos')) ?? expect.fail(), true);
    await copy('b.md');
    const run = (await lastRunOf(at, 'npm run photos')) ?? expect.fail();
    expect(run.undoneBy).toBeNull();
    expect(await undoRun(at, run, true)).toEqual(good({ removed: 1, restored: 0, leftAlone: ['a.md'] }));
    expect(folderTexts(at)).toEqual(BEFORE);
  });
  test('an undo whose run is forgotten counts by itself, and can be undone', async () => {
    await edit('cabinet.yaml', 'title: first\n');
    await undoRun(at, (await lastRunOf(at, 'npm run add')) ?? expect.fail());
    for (let step = 0; step < 9; step += 1) await edit('rulers/john.yaml', `label: ${step}\n`);
    const last = countedRuns(await runsOf(at)).at(-1) ?? expect.fail();
    expect([last.command, countedRuns(await runsOf(at)).length]).toEqual(['npm run undo', 10]);
    expect((await undoRun(at, last)).ok).toBe(true);
    expect(readFileSync(file('cabinet.yaml'), 'utf8')).toBe('title: first\n');
  });
  test('refuses where a file has been changed since, or leaves that one alone', async () => {
    await change(async ({ put }) => {
      await put('cabinet.yaml', 'title: U\n');
      await put('rulers/john.yaml', 'label: John\n');
    });
    writeFileSync(file('cabinet.yaml'), 'title: by hand\n');
    const run = (await lastRunOf(at, 'npm run add')) ?? expect.fail();
    const texts = folderTexts(at);
    expect(problemOf(await undoRun(at, run))).toMatch(/^cabinet\.yaml has been changed since, so nothing was undone/);
    expect(folderTexts(at)).toEqual(texts);
    expect(await undoRun(at, run, true)).toEqual(good({ removed: 1, restored: 0, leftAlone: ['cabinet.yaml'] }));
    expect(folderTexts(at)).toEqual({ ...BEFORE, 'cabinet.yaml': 'title: by hand\n' });
  });
  test('strokes of one run are undone together', async () => {
    for (const [name, text] of [
      ['a.md', '1'],
      ['b.md', '1'],
      ['a.md', '2'],
    ] as const)
      // prettier-ignore
      await changeCabinet(at, { command: 'npm run photos', run: 'one' }, async ({ put }) => {
        await put(name, text);
        return good(null);
      });
    const runs = await runsOf(at);
    expect(runs.map(({ files }) => files.length)).toEqual([2]);
    await undoRun(at, runs[0] ?? expect.fail());
    expect(folderTexts(at)).toEqual(BEFORE);
  });
  test('the last ten commands are kept, and saves for thirty days', async () => {
    await changeCabinet(at, { command: 'a save', kind: 'save' }, async ({ put }) => {
      await put('rulers/john.yaml', 'saved');
      return good(null);
    });
    for (let step = 0; step < 14; step += 1) await edit('cabinet.yaml', `title: ${step}\n`, `npm run add`);
    const runs = await runsOf(at);
    expect(runs.map(({ kind }) => kind)).toEqual([...Array.from({ length: 10 }, () => 'command'), 'save']);
    const saved = runs.at(-1)?.run ?? '';
    const entry = file(`private/undo/${saved}/entry.json`);
    const old = JSON.parse(readFileSync(entry, 'utf8')) as { when: number };
    writeFileSync(entry, JSON.stringify({ ...old, when: old.when - 31 * 24 * 3600 * 1000 }));
    await edit('cabinet.yaml', 'title: last\n');
    expect((await runsOf(at)).every(({ kind }) => kind === 'command')).toBe(true);
  });
  test('what is the same as before is no change, and no entry', async () => {
    await edit('cabinet.yaml', BEFORE['cabinet.yaml']);
    expect(await runsOf(at)).toEqual([]);
  });
});
