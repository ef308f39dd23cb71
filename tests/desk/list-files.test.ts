import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { LIST_ROWS } from '../../src/catalogue/fields/list-fields.ts';
import type { ListFile } from '../../src/catalogue/fields/list-fields.ts';
import { runsOf, undoRun } from '../../src/catalogue/keep/undo.ts';
import { leavesOf, nameOf } from '../../src/desk/form/leaves.ts';
import { editedText, listFileOf, readListFile } from '../../src/desk/save-list-file.ts';
import type { ListFileOnDesk } from '../../src/desk/save-list-file.ts';
import { openTestDesk } from './open-desk.ts';
import type { TestDesk } from './open-desk.ts';
import { untouchedForm } from './read-form.ts';

let desk: TestDesk;
beforeAll(async () => {
  desk = await openTestDesk('content');
}, 120_000);
afterAll(() => desk.close(), 60_000);
const bytes = (file: string) => readFile(join(desk.at, file), 'utf8');

/** Every file of the demo that pieces share. */
async function allFiles(): Promise<readonly ListFileOnDesk[]> {
  const { named } = desk.state.records();
  const kinds = Object.keys(LIST_ROWS) as ListFile[];
  const held = kinds.flatMap((kind) =>
    (kind === 'cabinet' ? ['cabinet'] : named[kind]).map((id) => readListFile(desk.state, kind, id)),
  );
  return (await Promise.all(held)).flatMap((one) => one ?? []);
}

describe('the files of the demo that pieces share', () => {
  test('are all in a form, every field of them', async () => {
    const files = await allFiles();
    expect(files.length).toBeGreaterThan(150);
    for (const { file, facts, leaves, kind } of files) {
      expect([file, facts === null]).toEqual([file, false]);
      const inForm = new Set(leaves.map(({ path }) => path[0]));
      if (kind === 'exhibits') inForm.add('cases');
      expect([file, Object.keys(facts ?? {}).filter((name) => !inForm.has(name))]).toEqual([file, []]);
    }
  });

  test('opened and saved unchanged keep every byte', { timeout: 240_000 }, async () => {
    // Through the page itself one of each kind, and through the form of every file.
    const seen = new Set<string>();
    for (const held of await allFiles()) {
      if (seen.has(held.kind)) continue;
      seen.add(held.kind);
      const page = `/lists/${held.kind}/${held.id}`;
      const form = untouchedForm((await desk.ask(page)).text, page);
      const saved = await desk.ask(page, form);
      expect([page, saved.status, saved.headers['location']]).toEqual([page, 303, `${page}?told=nothing`]);
      expect(await bytes(held.file)).toBe(held.text);
    }
    expect(seen.size).toBe(Object.keys(LIST_ROWS).length);
    expect(await runsOf(desk.at)).toEqual([]);
  });

  test('change in the lines of the field that was changed, and in no other', async () => {
    let tried = 0;
    for (const held of await allFiles())
      for (const [name, words] of boxesOf(held)) {
        const posted = { get: (asked: string) => (asked === name ? `${words} x` : asked.endsWith('.count') ? countOf(held, asked) : null) }; // prettier-ignore
        const edited = editedText(desk.state, held, posted);
        if (!edited.ok) throw new Error(`${held.file} ${name}: ${edited.problem}`);
        const { text } = edited.value;
        expect([held.file, name, text === held.text]).toEqual([held.file, name, false]);
        const [before, after] = [held.text.split('\n'), text.split('\n')];
        const gone = before.filter((line) => !after.includes(line));
        // A comment is never lost, wherever it stands.
        expect([held.file, name, gone.filter((line) => line.trim().startsWith('#'))]).toEqual([held.file, name, []]);
        const again = listFileOf(held.kind, held.id, held.file, text);
        expect([name, others(again, name)]).toEqual([name, others(held, name)]);
        tried += 1;
      }
    expect(tried).toBeGreaterThan(1000);
  });
});

/** Every box of a form that takes words, with the words it shows. */
function boxesOf(held: ListFileOnDesk): readonly (readonly [string, string])[] {
  return held.leaves.flatMap((leaf): readonly (readonly [string, string])[] => {
    if ('text' in leaf) return leaf.held === undefined || leaf.kind === 'raw' ? [] : [[nameOf(leaf), leaf.text]];
    if (leaf.kind !== 'rows') return [];
    return leaf.entries.flatMap((entry, index) =>
      Object.entries(entry).flatMap(([part, value]) =>
        typeof value === 'string' ? [[`${nameOf(leaf)}.${index}.${part}`, value] as const] : [],
      ),
    );
  });
}

function countOf({ leaves }: ListFileOnDesk, asked: string): string {
  const leaf = leaves.find((one) => `${nameOf(one)}.count` === asked);
  return String(leaf?.kind === 'rows' ? leaf.entries.length : 0);
}

/** Everything in a file but one box. */
function others(held: ListFileOnDesk, name: string): unknown {
  const [, list, index = '', part = ''] = /^(.*)\.(\d+)\.([^.]+)$/.exec(name) ?? [];
  return leavesOf(held.rows, held.facts ?? {})
    .filter((leaf) => nameOf(leaf) !== name)
    .map((leaf) =>
      leaf.kind === 'rows' && nameOf(leaf) === list
        ? leaf.entries.map((entry, at) => (String(at) === index ? { ...entry, [part]: '' } : entry))
        : [nameOf(leaf), leaf.held],
    );
}

describe('a set', () => {
  const PAGE = '/lists/sets/mints-of-1279';
  test('shows its places beside its rule, and those of a changed rule before it is saved', async () => {
    const page = (await desk.ask(PAGE)).text;
    const form = untouchedForm(page, PAGE);
    expect(page).toContain('Filled: <b>');
    form.append('of', 'mints-of-1279');
    form.set('places.13.excused', 'not looked for');
    const before = await bytes('sets/mints-of-1279.yaml');
    const places = await desk.ask('/places', form);
    expect(places.text).toContain('not looked for');
    expect(await bytes('sets/mints-of-1279.yaml')).toBe(before);
  });

  test('gains and loses places in their own lines, and undo brings every byte back', async () => {
    const before = await bytes('sets/mints-of-1279.yaml');
    const form = untouchedForm((await desk.ask(PAGE)).text, PAGE);
    const count = Number(form.get('places.count'));
    form.set(`places.${count - 1}.is`, 'lincoln');
    form.set(`places.${count - 1}.label`, 'Lincoln, once more');
    form.set('places.0.remove', 'yes');
    form.set('source.0.pages', '17');
    expect((await desk.ask(PAGE, form)).status).toBe(422);
    form.set(`places.${count - 1}.is`, 'lincoln-again');
    form.set(`places.${count - 1}.where`, '{ mint: lincoln, issuer: Bishop of Lincoln }');
    expect((await desk.ask(PAGE, form)).headers['location']).toBe(`${PAGE}?told=saved`);
    const after = await bytes('sets/mints-of-1279.yaml');
    const lines = (text: string) => text.split('\n');
    expect(lines(before).filter((line) => !lines(after).includes(line)).length).toBeLessThanOrEqual(2);
    expect(after).toContain(
      '{ is: lincoln-again, label: "Lincoln, once more", where: { mint: lincoln, issuer: Bishop of Lincoln } }',
    );
    const [run] = await runsOf(desk.at);
    if (run === undefined) throw new Error('No run.');
    expect((await undoRun(desk.at, run)).ok).toBe(true);
    expect(await bytes('sets/mints-of-1279.yaml')).toBe(before);
    await desk.state.readAgain();
  });
});
