import { spawn } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import process from 'node:process';
import { expect, test } from 'vitest';
import { folderTexts } from '../catalogue/keep/folder-texts.ts';
import { leftBehind } from '../catalogue/keep/left-behind.ts';
import { tries } from '../tries.ts';
import { formHeaders } from './open-desk.ts';
import { untouchedForm } from './read-form.ts';

/** Everything that writes at the desk: the page a form is on, where it goes, and what the keeper puts into it. */
type Save = readonly [page: string, action: string, words: Readonly<Record<string, string>>];
const SAVES: Readonly<Record<string, Save>> = {
  'a piece with its row of the ledger and a new mint': ['/pieces/plain-penny', '/pieces/plain-penny', { title: 'Another penny', 'ledger.cost': '8.25 GBP', mint: 'Elsewhere', 'mint.make': 'yes', story: 'Once more.' }],
  'a new piece': ['/new', '/new', { title: 'A groat' }],
  'a new set': ['/lists', '/lists/sets', { title: 'A penny of each', denomination: 'Penny', 'one-per': 'mint' }],
  'a ruler': ['/lists/rulers/plain-king', '/lists/rulers/plain-king', { name: 'Plainer king' }],
  'what became of a piece': ['/life', '/life', { piece: 'plain-penny', date: '2003-05', event: 'lent', due: '2004-01' }],
  'the text of a piece': ['/pieces/old-medal/text', '/pieces/old-medal/text', { text: '---\nnumber: "0003"\ntitle: A medal\nkind: medal\n---\n' }],
  'words that are not saved yet': ['/pieces/plain-penny', '/draft', { 'draft-of': '/pieces/plain-penny', title: 'Half a w' }],
  'a deletion with all that names the piece': ['/delete/pieces/plain-penny', '/delete/pieces/plain-penny', { 'with-exhibits': 'yes' }],
  'an undo': ['/undo', '/undo', {}],
}; // prettier-ignore

type Texts = Readonly<Record<string, string>>;
type Desk = {
  readonly get: (page: string) => Promise<string>;
  readonly save: (save: Save) => Promise<number>;
  readonly end: () => Promise<void>;
};

/** The command itself in a process of its own, whose disk stops as said, with one browser let in. */
async function openDesk(at: string, stop: Readonly<Record<string, string>>): Promise<Desk> {
  const words = ['--import', resolve('tests/catalogue/keep/stop-at.mjs'), 'src/commands/desk.ts', '--cabinet', at];
  const child = spawn(process.execPath, words, { env: { ...process.env, STOP_IN: at, ...stop } });
  const ended = new Promise<void>((done) => child.once('close', () => done()));
  const address = await new Promise<URL>((found, fail) => {
    let said = '';
    child.stderr.on('data', (part: Buffer) => fail(new Error(String(part))));
    child.stdout.on('data', (part: Buffer) => {
      const [url] = /http:\S+/.exec((said += String(part))) ?? [];
      if (url !== undefined) found(new URL(url));
    });
  });
  const first = await fetch(address, { redirect: 'manual' });
  const cookie = first.headers.get('set-cookie')?.split(';')[0] ?? '';
  const get = async (page: string): Promise<string> =>
    (await fetch(new URL(page, address), { headers: { cookie, 'sec-fetch-site': 'same-origin' } })).text();
  const save = async ([page, action, given]: Save): Promise<number> => {
    const form = action === '/draft' ? untouchedForm(await get(page), page) : untouchedForm(await get(page), action);
    for (const [name, text] of Object.entries(given)) form.set(name, text);
    const body = form.toString();
    const headers = { cookie, ...formHeaders(address.host, body) };
    // A desk that was killed answers nothing.
    return fetch(new URL(action, address), { method: 'POST', headers, body, redirect: 'manual' }).then(
      ({ status }) => status,
      () => 0,
    );
  };
  return { get, save, end: () => (child.kill('SIGKILL'), ended) };
}
function begin(): string {
  const at = join(mkdtempSync(join(tmpdir(), 'saves-')), 'cabinet');
  cpSync('tests/cabinets/marked', at, { recursive: true });
  return at;
}

test('whatever is saved at the desk, stopped at any point, is saved whole or not at all', { timeout: 300_000 }, async () => {
  const at = begin();
  const copies = mkdtempSync(join(tmpdir(), 'points-'));
  const desk = await openDesk(at, { STOP_HOW: 'copies', STOP_INTO: copies, STOP_AT: '0' });
  const saved: { readonly name: string; readonly before: Texts; readonly after: Texts; readonly last: number }[] = [];
  for (const [name, save] of Object.entries(SAVES)) {
    const before = folderTexts(at);
    expect([200, 303], name).toContain(await desk.save(save));
    const after = folderTexts(at);
    expect(after, name).not.toEqual(before);
    saved.push({ name, before, after, last: readdirSync(copies).length });
  }
  // What a process has half-written is nobody's only when it has ended.
  await desk.end();
  let point = 0;
  for (const { name, before, after, last } of saved) {
    expect(last - point, name).toBeGreaterThan(4);
    for (point += 1; point <= last; point += 1)
      await leftBehind(join(copies, String(point)), before, after, `${name} at ${point}`);
    point = last;
  }
}); // prettier-ignore

test('the desk killed while it saves leaves the old text or the new one, and opens again', { timeout: 900_000 }, async () => {
  const [save] = Object.values(SAVES);
  const at = begin();
  const before = folderTexts(at);
  const kills = tries(50, 3);
  const seen = new Set<string>();
  let after: Texts | null = null;
  for (let kill = 0; kill <= kills; kill += 1) {
    const copy = `${at}-${kill}`;
    cpSync(at, copy, { recursive: true });
    // The first time it is not killed; then at moments spread over the save by the golden ratio.
    const point = kill === 0 ? Infinity : 1 + Math.floor(((kill * 0.618034) % 1) * 45);
    const desk = await openDesk(copy, { STOP_HOW: 'kill', STOP_AT: String(point) });
    const status = await desk.save(save ?? expect.fail());
    await desk.end();
    after ??= folderTexts(copy);
    expect(status === 0 || status === 303).toBe(true);
    const left = await leftBehind(copy, before, after, `killed at ${point}`);
    if (status === 303) expect(left).toBe('after');
    seen.add(`${left} ${status}`);
    if (kill % 10 === 1) {
      const again = await openDesk(copy, { STOP_HOW: '', STOP_AT: 'Infinity' });
      expect(await again.get('/pieces/plain-penny')).toContain(left === 'after' ? 'Another penny' : 'Plain');
      await again.end();
    }
    rmSync(copy, { recursive: true });
  }
  expect(seen).toContain('before 0');
}); // prettier-ignore
