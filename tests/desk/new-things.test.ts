import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openTestDesk } from './open-desk.ts';
import type { Answer, TestDesk } from './open-desk.ts';
import { untouchedForm } from './read-form.ts';

let desk: TestDesk;
beforeAll(async () => {
  desk = await openTestDesk('tests/cabinets/marked');
}, 120_000);
afterAll(() => desk.close(), 60_000);
const bytes = (file: string) => readFile(join(desk.at, file), 'utf8').catch(() => null);

/** Fills a form of a page and sends it. */
async function fill(page: string, action: string, words: Readonly<Record<string, string>>): Promise<Answer> {
  const form = untouchedForm((await desk.ask(page)).text, action);
  for (const [name, text] of Object.entries(words)) form.set(name, text);
  return desk.ask(action, form);
}

test('a new piece like another takes what a type could give it, and nothing of the specimen', async () => {
  const made = await fill('/new?like=plain-penny', '/new', { title: 'A second penny' });
  expect([made.status, made.headers['location']]).toEqual([303, '/pieces/a-second-penny?told=made']);
  const text = (await bytes('pieces/a-second-penny/piece.md')) ?? '';
  expect(text).toContain('ruler: plain-king\n');
  for (const own of ['weight:', 'grade:', 'legend:', 'provenance:', 'references:']) expect(text).not.toContain(own);
});

test('a name that is in no list is told, and made when the keeper says that it is new', async () => {
  const page = '/pieces/a-second-penny';
  const refused = await fill(page, page, { mint: 'Shaftesbury' });
  expect(refused.status).toBe(422);
  expect(refused.text).toContain('name="mint.make"');
  expect(await bytes('mints/shaftesbury.yaml')).toBeNull();
  expect((await fill(page, page, { mint: 'Shaftesbury', 'mint.make': 'yes' })).status).toBe(303);
  expect(await bytes('mints/shaftesbury.yaml')).toBe('name: Shaftesbury\n');
  expect(await bytes('pieces/a-second-penny/piece.md')).toContain('mint: shaftesbury\n');
});

test('a set and an exhibit are made by filling in a form, and pass the checks of a build', async () => {
  expect(
    (await fill('/lists', '/lists/sets', { title: 'A penny of each', denomination: 'Penny', 'one-per': 'mint' }))
      .status,
  ).toBe(303);
  expect(await bytes('sets/a-penny-of-each.yaml')).toBe(
    'title: A penny of each\none-per: mint\nwhere: { denomination: penny }\n',
  );
  const unknown = await fill('/lists', '/lists/exhibits', { title: 'Two cases', pieces: 'not-there' });
  expect([unknown.status, await bytes('exhibits/two-cases/exhibit.md')]).toEqual([422, null]);
  const made = await fill('/lists', '/lists/exhibits', { title: 'Two cases', pieces: 'plain-penny\n\na-second-penny' });
  expect(made.status).toBe(303);
  expect((await bytes('exhibits/two-cases/exhibit.md'))?.match(/inside:/g)).toHaveLength(2);
});

test('what became of a piece is written into its table, and what cannot have been is refused', async () => {
  const event = (words: Readonly<Record<string, string>>) => fill('/life', '/life', { piece: 'plain-penny', ...words });
  expect((await event({ date: '2003-05', event: 'lent', due: '2004-01' })).status).toBe(303);
  const refused = await event({ date: '2003-06', event: 'sold', amount: '60 GBP' });
  expect(refused.status).toBe(422);
  expect(refused.text).toContain('Write returned first.');
  expect((await event({ date: '2003-12', event: 'returned' })).status).toBe(303);
  expect((await event({ date: '2004', event: 'sold', amount: '600 GBP', note: 'gladly, "so"' })).status).toBe(303);
  expect((await bytes('private/life.csv'))?.trim().split('\n')).toHaveLength(4);
  expect((await desk.ask('/?fact=status&is=sold')).text).toContain('1 of 5 pieces');
});

test('a field of several pieces is changed after it has been seen, as one save', async () => {
  const form = new URLSearchParams(untouchedForm((await desk.ask('/')).text, '/change'));
  for (const id of ['plain-penny', 'old-medal']) form.append('piece', id);
  form.set('field', 'shape');
  form.set('to', 'nearly round');
  const seen = await desk.ask('/change', form);
  expect(seen.text).toContain('2 files would change');
  expect(await bytes('pieces/old-medal/piece.md')).not.toContain('nearly round');
  expect((await desk.ask('/change', untouchedForm(seen.text, '/change'))).status).toBe(303);
  for (const id of ['plain-penny', 'old-medal'])
    expect(await bytes(`pieces/${id}/piece.md`)).toContain('shape: nearly round\n');
});
