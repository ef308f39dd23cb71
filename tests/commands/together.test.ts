import { spawn } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { expect, test } from 'vitest';
import { checkCabinet } from '../../src/catalogue/check-cabinet.ts';
import { changeCabinet } from '../../src/catalogue/keep/change-cabinet.ts';
import { readCsv } from '../../src/catalogue/csv.ts';
import { digestOf, fileAt } from '../../src/catalogue/keep/flush.ts';
import { readEntries } from '../../src/catalogue/keep/journal.ts';
import { good } from '../../src/core/outcome.ts';
import { PRIVACY } from '../../src/privacy/privacy.ts';
import { folderTexts } from '../catalogue/keep/folder-texts.ts';
import { openTestDesk } from '../desk/open-desk.ts';
import { untouchedForm } from '../desk/read-form.ts';

const SHEET = 'No.,Ruler,Weight (g),Paid\n71,Edward I,1.38,£5.50\n72,Edward II,1.40,£6.50\n';
const MAPPING = `title: "Coin of {ruler}"
always: { kind: coin }
columns: { No.: number, Ruler: ruler, Weight (g): weight in g, Paid: ledger cost }
`;
const ADD = ['add', '--title', 'Penny of Nobody', '--cost', '7.70 GBP'];
const IMPORT = ['import', '../coins.csv', '--mapping', '../coins.mapping.yaml', '--write', '--yes'];
const UNDO = ['undo', '1', '--restore'];
/** What a command that waits may say. */
const WAITS = /^The cabinet .* is being changed by npm run (add|import|undo|begin), .* Waiting for it to end\.\n/;

/** A cabinet of four pieces with a sheet of two beside it. */
function begin(): string {
  const at = join(mkdtempSync(join(tmpdir(), 'together-')), 'cabinet');
  cpSync('tests/cabinets/marked', at, { recursive: true });
  writeFileSync(join(at, '..', 'coins.csv'), SHEET);
  writeFileSync(join(at, '..', 'coins.mapping.yaml'), MAPPING);
  return at;
}

/** Starts a command and waits for its end: its code, and what it said on the error output that is no waiting. */
function start(
  at: string | null,
  [command = '', ...words]: readonly string[],
): Promise<readonly [number | null, string]> {
  const named = at === null ? [] : ['--cabinet', at];
  const inside = words.map((word) => (at !== null && word.startsWith('../') ? join(at, word) : word));
  const child = spawn(process.execPath, [`src/commands/${command}.ts`, ...named, ...inside], {
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  let said = '';
  child.stderr.on('data', (part: Buffer) => (said += part.toString()));
  return new Promise((done) => child.on('close', (code) => done([code, said.replace(WAITS, '')])));
}

/** Every piece has a number of its own, and every row of the ledger its piece. */
function found(at: string): { readonly rows: number; readonly pieces: number } {
  const pieces = readdirSync(join(at, 'pieces'));
  const { rows } = readCsv(readFileSync(join(at, 'private/ledger.csv'), 'utf8'));
  for (const row of rows) expect(pieces).toContain(row['piece']);
  const numbers = pieces.map((id) => /^number: (.*)$/m.exec(readFileSync(join(at, 'pieces', id, 'piece.md'), 'utf8'))?.[1]);
  expect(new Set(numbers).size).toBe(pieces.length);
  return { rows: rows.length, pieces: pieces.length };
} // prettier-ignore

test('three commands at once lose no row and no piece, and give no number twice', async () => {
  const at = begin();
  const before = found(at);
  expect(await Promise.all([ADD, ADD, IMPORT].map((words) => start(at, words)))).toEqual([[0, ''], [0, ''], [0, '']]); // prettier-ignore
  expect(found(at)).toEqual({ rows: before.rows + 4, pieces: before.pieces + 4 });
  rmSync(join(at, '..'), { recursive: true });
}, 180_000);

test('a piece made at the desk does not take the number that a command has given meanwhile', async () => {
  const desk = await openTestDesk('tests/cabinets/marked');
  const makes = async (words: Readonly<Record<string, string>>) => {
    const form = untouchedForm((await desk.ask('/new')).text, '/new');
    for (const [name, text] of Object.entries(words)) form.set(name, text);
    return form;
  };
  const form = await makes({ title: 'A groat' });
  const number = form.get('number') ?? '';
  const text = `---\nnumber: "${number}"\ntitle: Penny of Nobody\nkind: coin\n---\n`;
  await changeCabinet(desk.at, { command: 'npm run add' }, async ({ create }) => {
    await create('pieces/penny-of-nobody/piece.md', text);
    return good(null);
  });
  expect(await desk.ask('/new', form)).toMatchObject({ status: 422 });
  expect(readdirSync(join(desk.at, 'pieces'))).not.toContain('a-groat');
  expect((await desk.ask('/')).text).toContain('Penny of Nobody');
  const again = await makes({ title: 'A groat' });
  expect(again.get('number')).not.toBe(number);
  expect((await desk.ask('/new', again)).status).toBe(303);
  expect(found(desk.at).pieces).toBe(6);
  await desk.close();
}, 60_000);

/** What a command of a mixture may refuse with: what it wanted to change has been changed by another meanwhile. */
const MEANWHILE =
  /changed since|changed while|changed meanwhile|undone already|forgotten|goes from 1 to|nothing to undo|is being changed/;

/** What each file was left as, by the strokes that were looked at: digests, null where there is none. */
type Left = { readonly strokes: Set<string>; readonly files: Map<string, string | null> };

/** Holds the journal against the disk: each stroke began with what the one before it had left, and the last of each file is there. */
async function unbroken(at: string, { strokes, files: now }: Left): Promise<void> {
  for (const { id, files } of await readEntries(at)) {
    if (strokes.has(id)) continue;
    strokes.add(id);
    for (const { file, before, after } of files) {
      if (now.has(file)) expect([id, file, before]).toEqual([id, file, now.get(file)]);
      now.set(file, after);
    }
  }
  for (const [file, digest] of now) {
    const found = await fileAt(join(at, file));
    expect([file, found === null ? null : digestOf(found.bytes)]).toEqual([file, digest]);
  }
}

test('a second start of the same undo, redo or undo of an import takes nothing more back', async () => {
  const at = begin();
  expect(await start(at, ADD)).toEqual([0, '']);
  const added = folderTexts(at);
  const twice = (words: readonly string[]) => Promise.all([start(at, words), start(at, words)]);
  const codes = (ends: readonly (readonly [number | null, string])[]) => ends.map(([code]) => code).sort();
  for (const [words, says] of [
    [UNDO, /undone already/],
    [['undo', '1', '--redo'], /not undone|done again already/],
  ] as const) {
    const ends = await twice(words);
    expect(codes(ends)).toEqual([0, 1]);
    expect(ends.map(([, said]) => said).join('')).toMatch(says);
    expect(folderTexts(at)['private/ledger.csv'] === added['private/ledger.csv']).toBe(words !== UNDO);
  }
  expect(folderTexts(at)).toEqual(added);
  expect(await start(at, IMPORT)).toEqual([0, '']);
  const imported = folderTexts(at);
  writeFileSync(join(at, '..', 'coins.csv'), SHEET.replace('5.50', '5.75'));
  expect(await start(at, IMPORT)).toEqual([0, '']);
  const ends = await twice(['import', '--undo']);
  expect(codes(ends)).toEqual([0, 1]);
  expect(ends.map(([, said]) => said).join('')).toMatch(/undone already/);
  expect(folderTexts(at)['private/ledger.csv']).toBe(imported['private/ledger.csv']);
  rmSync(join(at, '..'), { recursive: true });
}, 180_000);

test('of two that begin the same cabinet at once one does, and the other says why not', async () => {
  const folder = join(mkdtempSync(join(tmpdir(), 'begun-')), 'mine');
  const words = ['begin', folder, '--title', 'Coins', '--keeper', 'A. N. Other'];
  const [first, second] = (await Promise.all([start(null, words), start(null, words)])).toSorted(([a], [b]) => Number(a) - Number(b)); // prettier-ignore
  expect(first).toEqual([0, '']);
  expect(second).toEqual([1, expect.stringMatching(/^The folder \S+ holds something already, and nothing was written\. Choose a new one\.\n$/)]); // prettier-ignore
  expect((await checkCabinet(folder, PRIVACY)).problems).toEqual([]);
}, 180_000);

const ROUNDS = process.env['TRIES'] === 'full' ? 100 : 2;
test(`in ${ROUNDS} rounds of three at once, adding, importing, saving at the desk and undoing, nothing is lost`, async () => {
  const desk = await openTestDesk('tests/cabinets/marked', 3_600_000);
  const { at } = desk;
  writeFileSync(join(at, '..', 'coins.mapping.yaml'), MAPPING);
  const left: Left = { strokes: new Set(), files: new Map() };
  const chance = ((state) => () => (state = (state * 1_103_515_245 + 12_345) % 2 ** 31) / 2 ** 31)(1279);
  const save = async (round: number): Promise<readonly [number, string]> => {
    const form = untouchedForm((await desk.ask('/pieces/plain-penny')).text, '/pieces/plain-penny');
    form.set('ledger.cost', `${round}.25 GBP`);
    const { status, text } = await desk.ask('/pieces/plain-penny', form);
    return [status === 303 ? 0 : 1, status === 303 ? '' : text];
  };
  for (let round = 1; round <= ROUNDS; round += 1) {
    writeFileSync(join(at, '..', 'coins.csv'), SHEET.replace('5.50', `5.${10 + round}`));
    const writers = [ADD, IMPORT, null, UNDO].toSorted(() => chance() - 0.5).slice(0, 3);
    const ends = await Promise.all(writers.map((words) => (words === null ? save(round) : start(at, words))));
    for (const [code, said] of ends)
      if (code !== 0) expect(said).toMatch(MEANWHILE);
    found(at);
    await unbroken(at, left);
  }
  expect(readdirSync(at, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('unfinished'))).toEqual([]);
  await desk.close();
}, 3_600_000); // prettier-ignore
