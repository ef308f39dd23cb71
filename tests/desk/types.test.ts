import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { runsOf, undoRun } from '../../src/catalogue/keep/undo.ts';
import { boxesOf, editType, readTypesTable } from '../../src/desk/change-type.ts';
import type { TypesOnDesk } from '../../src/desk/change-type.ts';
import { openTestDesk } from './open-desk.ts';
import type { Answer, TestDesk } from './open-desk.ts';
import { untouchedForm } from './read-form.ts';

const SERIES = 'edward-i-pence';
const FILE = `types/${SERIES}/types.csv`;
let desk: TestDesk;
beforeAll(async () => {
  desk = await openTestDesk('content');
}, 120_000);
afterAll(() => desk.close(), 60_000);
const bytes = (file: string) => readFile(join(desk.at, file), 'utf8').catch(() => null);
const table = async (id = SERIES): Promise<TypesOnDesk> => (await readTypesTable(desk.state, id)) ?? expect.fail();
async function fill(page: string, words: Readonly<Record<string, string>>, action = page): Promise<Answer> {
  const form = untouchedForm((await desk.ask(page)).text, action);
  for (const [name, text] of Object.entries(words)) form.set(name, text);
  return desk.ask(action, form);
}
async function undoLast(): Promise<void> {
  expect((await undoRun(desk.at, (await runsOf(desk.at))[0] ?? expect.fail())).ok).toBe(true);
  await desk.state.readAgain();
}

describe('the types of the demo', () => {
  test('opened and saved unchanged keep every byte, and every cell is in a box', { timeout: 240_000 }, async () => {
    const held = await table();
    const rows = held.series.tables.types?.rows ?? [];
    expect(rows.length).toBeGreaterThan(30);
    for (const { cells } of rows) {
      const id = cells['id'] ?? '';
      const boxes = boxesOf(desk.state, held, id);
      const words = new Map(boxes.map(({ name, text }) => [name, text]));
      expect(editType(desk.state, held, id, boxes, { get: (name) => words.get(name) ?? null })).toEqual({ ok: true, value: null }); // prettier-ignore
      const inForm = new Map(boxes.map(({ column, text }) => [column, text]));
      for (const [column, cell] of Object.entries(cells)) if (column !== 'id') expect([id, column, inForm.get(column)]).toEqual([id, column, cell]); // prettier-ignore
    }
    const page = `/types/${SERIES}/lc-3b`;
    const saved = await fill(page, {});
    expect([saved.status, saved.headers['location']]).toEqual([303, `${page}?told=nothing`]);
    expect(await bytes(FILE)).toBe(held.text);
  });

  test(
    'changed in any column write one line and no other, and come back to the byte',
    { timeout: 240_000 },
    async () => {
      const held = await table();
      const boxes = boxesOf(desk.state, held, 'lc-3b');
      for (const { name, column } of boxes) {
        const edited = editType(desk.state, held, 'lc-3b', boxes, { get: (asked) => (asked === name ? 'some, "other" words' : null) }); // prettier-ignore
        const text = edited.ok ? (edited.value?.text ?? '') : expect.fail();
        const [before, after] = [held.text.split('\n'), text.split('\n')];
        const differ = after.flatMap((line, at) => (line === before[at] ? [] : [at]));
        const isNew = !(before[0] ?? '').split(',').includes(column);
        expect([column, differ.length]).toEqual([column, isNew ? 2 : 1]);
      }
      const page = `/types/${SERIES}/lc-3b`;
      expect((await fill(page, { 'cell.note': 'Seen at the desk.', 'cell.ruler': 'Edward I' })).status).toBe(303);
      expect(await bytes(FILE)).toContain('Seen at the desk.');
      expect(await bytes(FILE)).toMatch(/^lc-3b,.*,edward-i,/m);
      await undoLast();
      expect(await bytes(FILE)).toBe(held.text);
    },
  );

  test('say what is inherited, and what is wrong in the words of the check', async () => {
    const page = `/types/${SERIES}/lc-3b`;
    expect((await desk.ask(page)).text).toContain('925/1000 (from the series)');
    const before = await bytes(FILE);
    const refused = await fill(page, { 'cell.broader': 'lc-99', 'cell.date': 'when it rained' });
    expect(refused.status).toBe(422);
    expect(refused.text).toContain('There is no type lc-99 in this series.');
    expect(refused.text).toContain('value="when it rained"');
    const circle = await fill(`/types/${SERIES}/lc-1`, { 'cell.broader': 'lc-1a' });
    expect([circle.status, circle.text.includes('a circle')]).toEqual([422, true]);
    expect(await bytes(FILE)).toBe(before);
  });

  test('are added, and removed only where nothing names them', { timeout: 120_000 }, async () => {
    const before = await bytes(FILE);
    const page = `/types/${SERIES}`;
    expect((await fill(page, { id: 'Not An Id', label: 'x' })).status).toBe(422);
    expect((await fill(page, { id: 'lc-3b', label: 'twice' })).status).toBe(422);
    expect(await bytes(FILE)).toBe(before);
    const added = await fill(page, { id: 'lc-3z', label: 'Class 3z, invented', broader: 'lc-3' });
    expect([added.status, added.headers['location']]).toEqual([303, `${page}/lc-3z?told=new`]);
    expect((await bytes(FILE))?.startsWith(before ?? '')).toBe(true);
    const remove = async (id: string): Promise<Answer> => {
      const form = untouchedForm((await desk.ask(`${page}/${id}`)).text, `${page}/${id}`);
      form.set('do', 'remove');
      return desk.ask(`${page}/${id}`, form);
    };
    expect((await remove('lc-3z')).status).toBe(303);
    expect(await bytes(FILE)).toBe(before);
    const refused = await remove('lc-3');
    expect([refused.status, refused.text.includes('There is no type lc-3 in this series')]).toEqual([422, true]);
    // A piece that is of a type keeps it there.
    const named = desk.state.records().pieces.find(({ fields }) => fields.type?.startsWith('lc-') === true);
    const kept = await remove(named?.fields.type ?? expect.fail());
    expect(kept.status).toBe(422);
    expect(await bytes(FILE)).toBe(before);
  });

  test('are refused when the table was changed meanwhile, or the form is of another desk', async () => {
    const page = `/types/${SERIES}/lc-3b`;
    const form = untouchedForm((await desk.ask(page)).text, page);
    const before = (await bytes(FILE)) ?? '';
    await writeFile(join(desk.at, FILE), before.replace('Class 3b', 'Class 3 b'));
    form.set('cell.note', 'Too late.');
    const stale = await desk.ask(page, form);
    expect([stale.status, stale.text.includes('Too late.')]).toEqual([409, true]);
    expect(await bytes(FILE)).not.toContain('Too late.');
    await writeFile(join(desk.at, FILE), before);
    form.delete('form-token');
    expect((await desk.ask(page, form)).status).toBe(403);
    for (const path of [`${page}x`, '/types/..%2f..', '/types/none/lc-3b'])
      expect((await desk.ask(path)).status).toBe(404);
  });
});

test(
  'a series of one’s own is made, and a small one keeps its types in series.yaml',
  { timeout: 120_000 },
  async () => {
    const made = await fill('/lists', { title: 'Pence of my own' }, '/types');
    expect([made.status, made.headers['location']]).toEqual([303, '/types/pence-of-my-own?told=new']);
    const page = '/types/pence-of-my-own';
    expect((await fill(page, { id: 'a', label: 'The first' })).status).toBe(303);
    expect(await bytes('types/pence-of-my-own/types.csv')).toBe('id,broader,label\na,,The first\n');
    // The rows of a small series, in the form that the schema gives.
    const yaml =
      'title: Small # of two\ntypes:\n  - { id: b, label: The second }\n  - id: c # last\n    label: The third\n';
    await writeFile(join(desk.at, 'types/pence-of-my-own/series.yaml'), 'title: Pence of my own\n');
    await mkdir(join(desk.at, 'types/small'));
    await writeFile(join(desk.at, 'types/small/series.yaml'), yaml);
    await desk.state.readAgain();
    expect((await fill('/types/small/c', { 'cell.metal': 'silver' })).status).toBe(303);
    expect(await bytes('types/small/series.yaml')).toBe(`${yaml}    metal: silver\n`);
    expect((await fill('/types/small', { id: 'd', label: 'The fourth' })).status).toBe(303);
    expect((await bytes('types/small/series.yaml'))?.startsWith(`${yaml}    metal: silver\n`)).toBe(true);
    expect((await bytes('types/small/series.yaml'))?.includes('The fourth')).toBe(true);
  },
);
