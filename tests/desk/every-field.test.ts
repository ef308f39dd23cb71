import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { runsOf, undoRun } from '../../src/catalogue/keep/undo.ts';
import { PIECE_ROWS } from '../../src/catalogue/fields/piece-fields.ts';
import { PIECE_ORDER } from '../../src/catalogue/write/write-piece.ts';
import { editFields } from '../../src/catalogue/write/edit-fields.ts';
import { changesIn, leavesOf, nameOf } from '../../src/desk/form/leaves.ts';
import { readPiece } from '../../src/desk/save-piece.ts';
import { openTestDesk } from './open-desk.ts';
import type { TestDesk } from './open-desk.ts';
import { untouchedForm } from './read-form.ts';

let desk: TestDesk;
beforeAll(async () => {
  desk = await openTestDesk('content');
}, 120_000);
afterAll(() => desk.close(), 60_000);
const bytes = (file: string) => readFile(join(desk.at, file), 'utf8');

test(
  'every piece of the demo, opened and saved unchanged, leaves every byte and writes nothing',
  { timeout: 240_000 },
  async () => {
    const ids = desk.state.records().named.pieces;
    expect(ids.length).toBeGreaterThan(70);
    const ledger = await bytes('private/ledger.csv');
    for (const id of ids) {
      const before = await bytes(`pieces/${id}/piece.md`);
      const page = await desk.ask(`/pieces/${id}`);
      const form = untouchedForm(page.text, `/pieces/${id}`);
      const saved = await desk.ask(`/pieces/${id}`, form);
      expect([id, saved.status, saved.headers['location']]).toEqual([id, 303, `/pieces/${id}?told=nothing`]);
      expect(await bytes(`pieces/${id}/piece.md`)).toBe(before);
    }
    expect(await bytes('private/ledger.csv')).toBe(ledger);
    expect(await runsOf(desk.at)).toEqual([]);
  },
);

test('every field that a piece of the demo has is in its form', async () => {
  for (const id of desk.state.records().named.pieces) {
    const piece = await readPiece(desk.state, id);
    expect([id, piece?.unknown]).toEqual([id, []]);
    const names = new Set(piece?.leaves.map(({ path }) => path[0]));
    for (const name of Object.keys(piece?.facts ?? {})) expect([id, names.has(name)]).toEqual([id, true]);
    expect([...names]).toEqual(Object.keys(PIECE_ROWS));
  }
});

test(
  'every field of every piece of the demo changes its own lines and nothing else',
  { timeout: 240_000 },
  async () => {
    let tried = 0;
    for (const id of desk.state.records().named.pieces) {
      const piece = await readPiece(desk.state, id);
      if (piece === null) throw new Error(id);
      for (const leaf of piece.leaves) {
        if (leaf.held === undefined || !('text' in leaf) || leaf.kind === 'raw') continue;
        const name = nameOf(leaf);
        const said = (text: string) => ({ get: (asked: string) => (asked === name ? text : null) });
        const there = changesIn([leaf], said(`${leaf.text} and more`));
        const edited = editFields(piece.text, there.changes, PIECE_ORDER);
        if (!edited.ok) throw new Error(`${id} ${name}: ${edited.problem}`);
        expect([id, name, edited.value === piece.text]).toEqual([id, name, false]);
        // Only the lines of that field are another.
        const others = leavesOf(PIECE_ROWS, piece.facts ?? {}).filter((one) => nameOf(one) !== name);
        const facts = (await reread(edited.value)) ?? {};
        expect(leavesOf(PIECE_ROWS, facts).filter((one) => nameOf(one) !== name)).toEqual(others);
        tried += 1;
      }
    }
    expect(tried).toBeGreaterThan(1500);
  },
);

describe('a change at the desk', () => {
  test('is written in its own line and undone to the byte', { timeout: 240_000 }, async () => {
    const file = 'pieces/york-penny-3b/piece.md';
    const before = await bytes(file);
    for (const [name, to] of [
      ['weight', '1.39 g'],
      ['obverse.legend', "+EDW R' ANGL' DNS hYB"],
      ['provenance.1.says', 'lot 319'],
      ['sure.mint', 'probable'],
      ['tags', 'favourite\nsecond'],
      ['photographs.obverse.crop', '10 8 60 60 %'],
      ['story', 'A new story.'],
      ['ledger.notes', 'a new note, "so"'],
      ['as-written.0.words', ''],
    ] as const) {
      const ledger = await bytes('private/ledger.csv');
      const form = untouchedForm((await desk.ask('/pieces/york-penny-3b')).text, '/pieces/york-penny-3b');
      form.set(name, to);
      const saved = await desk.ask('/pieces/york-penny-3b', form);
      expect([name, saved.status]).toEqual([name, 303]);
      if (name === 'as-written.0.words') continue;
      expect([name, (await bytes(file)) === before && (await bytes('private/ledger.csv')) === ledger]).toEqual([
        name,
        false,
      ]);
      const [run] = await runsOf(desk.at);
      if (run === undefined) throw new Error('No run.');
      expect((await undoRun(desk.at, run)).ok).toBe(true);
      expect([name, await bytes(file)]).toEqual([name, before]);
      expect(await bytes('private/ledger.csv')).toBe(ledger);
      await desk.state.readAgain();
    }
  });

  test('from a form that has been overtaken is not written, and both texts are shown', async () => {
    const file = 'pieces/hadrian-as/piece.md';
    const open = async () => untouchedForm((await desk.ask('/pieces/hadrian-as')).text, '/pieces/hadrian-as');
    const [one, other] = [await open(), await open()];
    one.set('shape', 'nearly round');
    other.set('shape', 'oval & worn');
    expect((await desk.ask('/pieces/hadrian-as', one)).status).toBe(303);
    const stale = await desk.ask('/pieces/hadrian-as', other);
    expect(stale.status).toBe(409);
    expect(stale.text).toContain('shape: nearly round');
    expect(stale.text).toContain('value="oval &amp; worn"');
    expect(await bytes(file)).toContain('shape: nearly round');
  });

  test('that cannot be read is told at its field in the words of check, and nothing is written', async () => {
    const file = 'pieces/vespasian-denarius/piece.md';
    const before = await bytes(file);
    const form = untouchedForm((await desk.ask('/pieces/vespasian-denarius')).text, '/pieces/vespasian-denarius');
    form.set('axis', '13h');
    form.set('title', 'Kept while the axis is wrong');
    const saved = await desk.ask('/pieces/vespasian-denarius', form);
    expect(saved.status).toBe(422);
    expect(saved.text).toContain('A die axis is a clock hour from 1h to 12h; this says &quot;13h&quot;. Write 1h.');
    expect(saved.text).toContain('value="Kept while the axis is wrong"');
    expect(await bytes(file)).toBe(before);
  });

  test('that would publish what the ledger keeps is refused', async () => {
    const form = untouchedForm((await desk.ask('/pieces/hadrian-as')).text, '/pieces/hadrian-as');
    form.set('story', 'I paid 71.35 GBP for it to Aunt Winifred Ogleforth.');
    const saved = await desk.ask('/pieces/hadrian-as', form);
    expect(saved.status).toBe(422);
    expect(await bytes('pieces/hadrian-as/piece.md')).not.toContain('71.35');
  });
});

async function reread(text: string) {
  const { splitFrontMatter } = await import('../../src/catalogue/front-matter.ts');
  const { readYaml } = await import('../../src/catalogue/yaml.ts');
  const read = readYaml(splitFrontMatter(text)?.facts ?? '');
  return read.ok ? (read.value as Parameters<typeof leavesOf>[1]) : null;
}
