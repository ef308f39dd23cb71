import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
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

test('a book whose name no file can have is made under another, and cited by its own', async () => {
  const page = '/pieces/a-second-penny';
  // Hävernick: W. Hävernick, Die Münzen von Köln (1935).
  const words = { references: 'Hävernick 712', mint: 'Köln', 'mint.make': 'yes', 'references.make': 'yes' };
  expect((await fill(page, page, words)).status).toBe(303);
  expect(await bytes('works/havernick.yaml')).toBe('title: Hävernick\nshort: Hävernick\n');
  expect(await bytes('mints/koln.yaml')).toBe('name: Köln\n');
  expect((await fill(page, page, { references: 'Hävernick 713' })).status).toBe(303);
});

test('a tick that makes a new name is kept while something else is wrong', async () => {
  const page = '/pieces/a-second-penny';
  const refused = await fill(page, page, { mint: 'Reading', 'mint.make': 'yes', weight: '1.3' });
  expect(refused.status).toBe(422);
  expect(untouchedForm(refused.text, page).get('mint.make')).toBe('yes');
});

test('a sum without a currency is in that of the cabinet, and written with it', async () => {
  const page = '/pieces/a-second-penny';
  expect((await fill(page, page, { 'ledger.cost': '12.50', 'ledger.value': '1,200' })).status).toBe(303);
  expect(await bytes('private/ledger.csv')).toMatch(/^a-second-penny,12\.50 GBP,"1,200 GBP"/m);
  expect((await fill('/life', '/life', { piece: 'a-second-penny', date: '2001', event: 'lent', amount: '3' })).status).toBe(303); // prettier-ignore
  expect(await bytes('private/life.csv')).toContain('3 GBP');
  // A line that was wrong is removed where it stands.
  const form = untouchedForm((await desk.ask('/life')).text, '/life/remove');
  expect((await desk.ask('/life/remove', form)).status).toBe(303);
  expect(await bytes('private/life.csv')).not.toContain('3 GBP');
  expect((await desk.ask('/life/remove', form)).status).toBe(409);
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

describe('what became of a piece', () => {
  const event = (piece: string, words: Readonly<Record<string, string>>) => fill('/life', '/life', { piece, ...words });

  test('is written into its table, by its title or its number, and what cannot have been is refused', async () => {
    expect((await event('0004', { date: '2003-05', event: 'lent', due: '2004-01' })).status).toBe(303);
    const refused = await event('old-medal', { date: '2003-06', event: 'sold', amount: '60 GBP' });
    expect(refused.status).toBe(422);
    expect(refused.text).toContain('Write returned first.');
    expect((await event('old-medal', { date: '2003-12', event: 'returned' })).status).toBe(303);
    expect((await event('old-medal', { date: '2004', event: 'sold', amount: '600 GBP', note: 'gladly, "so"' })).status).toBe(303); // prettier-ignore
    expect((await event('no such piece', { date: '2004', event: 'sold' })).text).toContain(
      '“no such piece” is not in your list of pieces.',
    );
    expect((await bytes('private/life.csv'))?.trim().split('\n')).toHaveLength(4);
    expect((await desk.ask('/?fact=status&is=sold')).text).toContain('1 of 5 pieces');
  });

  test('that is sold out of an exhibit is said at once, and set right in the same save', async () => {
    const sold = { date: '2005', event: 'sold' };
    const before = await bytes('private/life.csv');
    const told = await event('a-second-penny', sold);
    expect([told.status, told.text.includes('It lies in the exhibit “Two cases”')]).toEqual([422, true]);
    expect(await bytes('private/life.csv')).toBe(before);
    expect((await event('a-second-penny', { ...sold, 'take-out': 'yes' })).status).toBe(303);
    expect(await bytes('exhibits/two-cases/exhibit.md')).not.toContain('a-second-penny');
    expect(await bytes('exhibits/two-cases/exhibit.md')).toContain('plain-penny');
    const undo = untouchedForm((await desk.ask('/undo')).text, '/undo');
    expect((await desk.ask('/undo', undo)).status).toBe(303);
    expect([await bytes('private/life.csv'), (await bytes('exhibits/two-cases/exhibit.md'))?.includes('a-second-penny')]).toEqual([before, true]); // prettier-ignore
  });

  test.for([
    ['status', 'sold', /is sold and no longer with you/],
    ['publish', 'no', /exhibit/],
  ] as const)('or a %s of %s in the form of a piece that is exhibited, is not saved', async ([field, to, says]) => {
    const page = '/pieces/plain-penny';
    const refused = await fill(page, page, { [field]: to });
    expect([refused.status, says.test(refused.text)]).toEqual([422, true]);
    expect(await bytes('pieces/plain-penny/piece.md')).not.toMatch(new RegExp(`^${field}: ${to}$`, 'm'));
  });

  test('leaves the only piece of an exhibit where it is, and says why', async () => {
    const alone = await event('plain-penny', { date: '2005', event: 'sold', 'take-out': 'yes' });
    expect([alone.status, alone.text.includes('It is the only piece of')]).toEqual([422, true]);
  });

  test('may put the year it came on its page, and neither the day nor from whom nor for how much', async () => {
    const came = { date: '2003-05-14', event: 'bought', amount: '45 GBP', with: 'Aunt Winifred Ogleforth', 'publish-year': 'yes' }; // prettier-ignore
    expect((await event('plain-penny', came)).status).toBe(303);
    const piece = (await bytes('pieces/plain-penny/piece.md')) ?? '';
    expect(piece).toMatch(/\{ when: 2003, how: purchase \}/);
    expect(piece).not.toMatch(/Winifred|2003-05|45 GBP/);
    expect(await bytes('private/life.csv')).toContain('Aunt Winifred Ogleforth');
    const left = await event('plain-penny', { date: '2004', event: 'lent', 'publish-year': 'yes' });
    expect([left.status, left.text.includes('Only the year in which a piece came')]).toEqual([422, true]);
    const when = await event('plain-penny', { date: '2003/2006', event: 'bought', 'publish-year': 'yes' });
    expect([when.status, when.text.includes('The year it came must be known')]).toEqual([422, true]);
  });
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
