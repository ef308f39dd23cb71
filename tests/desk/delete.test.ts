import { appendFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { withdraw } from '../../src/catalogue/addresses.ts';
import { runsOf, undoRun } from '../../src/catalogue/keep/undo.ts';
import { folderTexts } from '../catalogue/keep/folder-texts.ts';
import { openTestDesk } from './open-desk.ts';
import type { Answer, TestDesk } from './open-desk.ts';
import { untouchedForm } from './read-form.ts';

/** A photograph is whatever lies under its name: these bytes are no text. */
const PICTURE = new Uint8Array([0xff, 0xd8, 0xff, 0xe0, 0, 200, 201, 202]);
const ADDRESSES = `at https://example.org/
mints/plain-town/ 2026-01-01 0123456789ab
pieces/old-name/ now pieces/plain-penny/
pieces/plain-penny/ 2026-01-01 0123456789ab
`;

let desk: TestDesk;
beforeAll(async () => {
  desk = await openTestDesk('tests/cabinets/marked');
  await writeFile(join(desk.at, 'pieces/plain-penny/reverse.jpg'), PICTURE);
  await writeFile(join(desk.at, 'addresses.txt'), ADDRESSES);
  await writeFile(join(desk.at, 'private/life.csv'), 'piece,date,event,amount\nplain-penny,2001,bought,431.17 GBP\n');
  await desk.state.readAgain();
}, 120_000);
afterAll(() => desk.close(), 60_000);

const now = () => folderTexts(desk.at);
const gone = (before: ReturnType<typeof now>) => Object.keys(before).filter((file) => !(file in now()));
async function agree(page: string, words: Readonly<Record<string, string | null>> = {}): Promise<Answer> {
  const form = untouchedForm((await desk.ask(page)).text, page);
  for (const [name, text] of Object.entries(words)) if (text === null) form.delete(name); else form.set(name, text); // prettier-ignore
  return desk.ask(page, form);
}
async function undoLast(): Promise<void> {
  const [last] = await runsOf(desk.at);
  expect((await undoRun(desk.at, last ?? expect.fail())).ok).toBe(true);
  await desk.state.readAgain();
}

describe('a piece', () => {
  const page = '/delete/pieces/plain-penny';

  test('is deleted by a form that works without a script, and what goes with it is told first', async () => {
    const shown = (await desk.ask(page)).text;
    for (const told of [
      'reverse.jpg',
      'A small show',
      'Cost 431.17 GBP',
      'bought',
      '/pieces/plain-penny/',
      '/pieces/old-name/',
      'private/deleted.csv',
      'Undo',
    ])
      // prettier-ignore
      expect(shown).toContain(told);
    expect(shown).not.toContain('<script src="/delete');
    expect((await desk.ask('/pieces/plain-penny')).text).toContain(`href="${page}"`);
  });

  test('that is the only one of an exhibit is not deleted without a word, and never leaves an exhibit without a piece', async () => {
    const before = now();
    const refused = await agree(page);
    expect([refused.status, now()]).toEqual([422, before]);
    expect(refused.text).toContain('It is the only piece of the exhibit');
    const done = await agree(page, { 'with-exhibits': 'yes' });
    expect([done.status, done.headers['location']]).toEqual([303, '/?told=deleted']);
    expect(gone(before)).toEqual(['exhibits/small-show/exhibit.md', 'pieces/plain-penny/piece.md', 'pieces/plain-penny/reverse.jpg']); // prettier-ignore
    const after = now();
    const [heading = '', ...rows] = (before['private/ledger.csv'] ?? '').split(/(?<=\n)/);
    expect(after['private/ledger.csv']).toBe(heading + rows.filter((row) => !row.startsWith('plain-penny,')).join(''));
    expect(after['private/life.csv']).toBe('piece,date,event,amount\n');
    expect(after['private/deleted.csv']).toContain('MARK-SELLER of Nowhere');
    expect(after['addresses.txt']).toBe(ADDRESSES.replace('old-name/ now pieces/plain-penny/', 'old-name/ withdrawn').replace('plain-penny/ 2026-01-01 0123456789ab', 'plain-penny/ withdrawn')); // prettier-ignore
    expect((await desk.ask('/pieces/plain-penny')).status).toBe(404);
    expect((await desk.ask('/')).text).not.toContain('href="/pieces/plain-penny"');
    await undoLast();
    expect(now()).toEqual(before);
    expect((await desk.ask('/pieces/plain-penny')).status).toBe(200);
  });

  test('goes from an exhibit that shows others, and without its private lines when its keeper says so', async () => {
    const file = 'exhibits/small-show/exhibit.md';
    const before = now();
    await writeFile(join(desk.at, file), (before[file] ?? '').replace('[plain-penny]', '[plain-penny, old-medal]')); // prettier-ignore
    await desk.state.readAgain();
    const changed = now();
    expect(changed[file]).not.toBe(before[file]);
    expect((await desk.ask(page)).text).toContain('It is taken out of the exhibit');
    expect((await agree(page, { 'keeps-private': null })).status).toBe(303);
    expect(gone(changed)).toEqual(['pieces/plain-penny/piece.md', 'pieces/plain-penny/reverse.jpg']);
    expect(now()[file]).toBe((changed[file] ?? '').replace('[plain-penny, old-medal]', '[old-medal]'));
    expect(now()['private/deleted.csv']).toBeUndefined();
    await undoLast();
    expect(now()).toEqual(changed);
  });

  test('to which another text has a link is deleted after that was told', async () => {
    await appendFile(join(desk.at, 'pieces/old-medal/piece.md'), '\nIt lay with [a penny](../plain-penny/).\n');
    await desk.state.readAgain();
    expect((await desk.ask(page)).text).toMatch(/The text of “[^”]*[Mm]edal[^”]*” has a link to it/);
  });

  test('that was changed after it was shown is shown again and not deleted', async () => {
    const other = '/delete/pieces/old-medal';
    const form = untouchedForm((await desk.ask(other)).text, other);
    await appendFile(join(desk.at, 'pieces/old-medal/piece.md'), '\nOne more line.\n');
    const before = now();
    expect([(await desk.ask(other, form)).status, now()]).toEqual([422, before]);
    form.delete('form-token');
    expect([(await desk.ask(other, form)).status, now()]).toEqual([403, before]);
  });
});

test('a set goes with its guide prices, an exhibit alone, and a list file only when nothing names it', async () => {
  const before = now();
  expect((await desk.ask('/delete/sets/plain-set')).text).toContain('Guide prices:');
  expect((await agree('/delete/sets/plain-set')).status).toBe(303);
  expect(gone(before)).toEqual(['sets/plain-set.yaml']);
  expect(now()['private/guide.csv']).toBe(`${(before['private/guide.csv'] ?? '').split('\n')[0] ?? ''}\n`);
  await undoLast();
  expect((await agree('/delete/exhibits/small-show')).status).toBe(303);
  expect(gone(before)).toEqual(['exhibits/small-show/exhibit.md']);
  await undoLast();
  expect(now()).toEqual(before);
  const ruler = await desk.ask('/delete/rulers/plain-king');
  expect([ruler.status, ruler.text.includes('cannot be deleted yet')]).toEqual([422, true]);
  await writeFile(join(desk.at, 'mints/nowhere.yaml'), 'name: Nowhere\n');
  await desk.state.readAgain();
  expect((await agree('/delete/mints/nowhere')).status).toBe(303);
  expect(now()).toEqual(before);
  for (const path of ['/delete/pieces/..%2fcabinet', '/delete/private/ledger', '/delete/pieces/not-there'])
    expect((await desk.ask(path)).status).toBe(404);
});

test('a sale of the only piece of an exhibit says so, and deletes the exhibit when its keeper says so', async () => {
  const before = now();
  const sell = async (words: Readonly<Record<string, string>>): Promise<Answer> => {
    const form = untouchedForm((await desk.ask('/life')).text, '/life');
    for (const [name, text] of Object.entries({ piece: 'plain-penny', event: 'sold', date: '2020', amount: '9 GBP', ...words })) form.set(name, text); // prettier-ignore
    return desk.ask('/life', form);
  };
  await writeFile(join(desk.at, 'exhibits/small-show/exhibit.md'), (before['exhibits/small-show/exhibit.md'] ?? '').replace('[plain-penny, old-medal]', '[plain-penny]')); // prettier-ignore
  await desk.state.readAgain();
  const told = await sell({});
  expect(told.status).toBe(422);
  expect(told.text).toContain('It is the only piece of the exhibit');
  expect((await sell({ 'take-out': 'yes' })).status).toBe(422);
  expect((await sell({ 'delete-emptied': 'yes' })).status).toBe(303);
  expect(Object.keys(now())).not.toContain('exhibits/small-show/exhibit.md');
  expect(now()['private/life.csv']).toContain('plain-penny,2020,sold,9 GBP');
});

test('an address that was published and answers no more can be let go, which is told by the check', () => {
  const lines = [
    'pieces/a/ 2026-01-01 0123456789ab',
    'pieces/b/ now pieces/a/',
    'pieces/c/ now pieces/d/',
    '# pieces/a/ stays',
  ];
  const text = lines.join('\r\n');
  const after = ['pieces/a/ withdrawn', 'pieces/b/ withdrawn', ...lines.slice(2)].join('\r\n');
  expect(withdraw(text, 'pieces/a/')).toEqual({ text: after, letGo: ['pieces/a/', 'pieces/b/'] });
  // What leads on to another page still does; and goes when that is decided.
  expect(withdraw(text, 'pieces/c/').letGo).toEqual([]);
  expect(withdraw(text, 'pieces/c/', true).letGo).toEqual(['pieces/c/']);
  expect(withdraw(text, 'pieces/z/', true)).toEqual({ text, letGo: [] });
});
