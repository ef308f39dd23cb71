import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { untouchedForm } from './read-form.ts';
import { openTestDesk } from './open-desk.ts';
import type { TestDesk } from './open-desk.ts';

let desk: TestDesk;
let token = '';
beforeAll(async () => {
  desk = await openTestDesk('content');
  token = untouchedForm((await desk.ask('/new')).text, '/new').get('form-token') ?? '';
}, 120_000);
afterAll(() => desk.close(), 60_000);
const bytes = (file: string) => readFile(join(desk.at, file), 'utf8').catch(() => null);

/** What is said under a box while it is typed. */
async function read(field: string, words: string, beside: Readonly<Record<string, string>> = {}) {
  const answer = await desk.ask('/read', new URLSearchParams({ 'form-token': token, field, words, ...beside }));
  return JSON.parse(answer.text) as { readonly ok: boolean; readonly says: string };
}

describe('what is typed is read as the file will be read', () => {
  // A range with a shortened end, two ends of a grade and clock hours are common practice; year and month is ISO 8601-1, 5.2.2.2.
  test.for([
    ['date', '1413-22', '1413–22: 1413 to 1422.'],
    ['date', 'c. 1279-81', 'about 1279–81: about 1279 to 1281.'],
    ['date', 'before 1351', 'before 1351.'],
    ['date', '44 BC', '44 BC.'],
    ['provenance.0.when', '1902-10', 'October 1902 (1902-10-01 to 1902-10-31).'],
    ['found.when', '1998-11', 'November 1998 (1998-11-01 to 1998-11-30).'],
    ['ledger.acquired', '2003', '2003.'],
    ['ledger.acquired', '2003-05', 'May 2003 (2003-05-01 to 2003-05-31).'],
    ['axis', '6h', '6h: the reverse is turned 180 degrees.'],
    ['diameter', '9 x 24 mm', '9 mm high and 24 mm wide.'],
    ['ledger.cost', '£45', 'GBP 45.00.'],
    ['ruler', 'edward-i', 'Edward I, 1272-11-20 to 1307-07-07.'],
    ['references', 'North 1018', 'north 1018 in English Hammered Coinage.'],
    ['type', 'lc-3b', 'Class 3b, The pennies of Edward I'],
  ])('%s: %s', async ([field, words, says]) => {
    const found = await read(field ?? '', words ?? '');
    expect([found.ok, found.says.startsWith(says ?? '')]).toEqual([true, true]);
  });

  // 1 grain = 0.06479891 g exactly (international yard and pound agreement, 1959).
  test('a weight in grains is told in grams', async () => {
    expect((await read('weight', '21.3 grains')).says).toContain(
      `${String(Math.round(21.3 * 0.06479891 * 1e4) / 1e4)} g`,
    );
  });

  test.for([
    ['date', '1902-10', /1902\/1910 or October 1902/],
    ['weight', '1.38', /has no unit/],
    ['mint', 'Yorkk', /“Yorkk” is not in your list of mints. Is it York\?/],
    ['references', 'Grubbage 17', /“Grubbage” is not in your list of books/],
    ['type', 'lc-99', /lc-99/],
  ] as const)('%s: %s is asked about', async ([field, words, says]) => {
    const found = await read(field, words);
    expect(found.ok).toBe(false);
    expect(found.says).toMatch(says);
  });

  test('the scale settles a grade, and names with a prototype of scripts are no fields', async () => {
    expect((await read('grade', 'Fr', { scale: 'us' })).says).not.toBe((await read('grade', 'Fr')).says);
    for (const field of ['constructor', '__proto__', 'ledger.constructor', 'toString.0.when'])
      expect(await read(field, '1902-10')).toEqual({ ok: true, says: '' });
  });
});

describe('a piece of a type', () => {
  test('is made with its type, and the form shows what the type says', async () => {
    const form = untouchedForm((await desk.ask('/new?type=lc-3b')).text, '/new');
    form.set('title', '');
    const made = await desk.ask('/new', form);
    expect(made.status).toBe(303);
    const page = String(made.headers['location']).split('?')[0] ?? '';
    expect(await bytes(`${page.slice(1)}/piece.md`)).toMatch(/^type: lc-3b$/m);
    const shown = (await desk.ask(page)).text;
    expect(shown).toContain('From its type: <b>Edward I</b>');
    expect(shown).toMatch(/id="preview"[^]*class="ruler">Edward I</);
    // What is the piece's own is never the type's.
    const weight = shown.slice(shown.indexOf('for="weight"'), shown.indexOf('for="diameter"'));
    expect(weight).not.toContain('From its type');
  });

  test('and like another one at once is asked about', async () => {
    const form = untouchedForm((await desk.ask('/new?type=lc-3b&like=york-penny-3b')).text, '/new');
    expect((await desk.ask('/new', form)).text).toContain('Choose a type or another piece, not both.');
  });
});

test('the page of a piece shows its ticket as the words in the form would make it', async () => {
  const page = '/pieces/york-penny-3b';
  const form = untouchedForm((await desk.ask(page)).text, page);
  form.set('date', '1302');
  form.set('mint', 'Durham');
  form.set('weight', '1.4');
  const seen = (await desk.ask(`${page}/preview`, form)).text;
  expect(seen).toContain('<p>1302</p>');
  expect(seen).toContain('<p>Durham</p>');
  expect(await bytes('pieces/york-penny-3b/piece.md')).toContain('mint: york');
});

describe('one field of several pieces', () => {
  const change = async (field: string, to: string, ids: readonly string[], isSure = false) => {
    const form = new URLSearchParams({ 'form-token': token, field, to, ...(isSure ? { sure: 'yes' } : {}) });
    for (const id of ids) form.append('piece', id);
    return desk.ask('/change', form);
  };

  test('may be a private one: the rows of the ledger are shown before and after, and then written', async () => {
    const ids = ['york-penny-3b', 'hadrian-as'];
    const before = await bytes('private/ledger.csv');
    const seen = await change('ledger.storage', 'Cabinet N, tray 9', ids);
    expect(seen.text).toContain('Cabinet N, tray 9');
    expect(await bytes('private/ledger.csv')).toBe(before);
    expect((await change('ledger.storage', 'Cabinet N, tray 9', ids, true)).status).toBe(303);
    for (const id of ids) expect(desk.state.ledger().get(id)?.['storage']).toBe('Cabinet N, tray 9');
    const others = ((await bytes('private/ledger.csv')) ?? '')
      .split('\n')
      .filter((line) => !ids.some((id) => line.startsWith(`${id},`)));
    expect(others).toEqual((before ?? '').split('\n').filter((line) => !ids.some((id) => line.startsWith(`${id},`))));
  });

  test.for([
    ['ledger.cost', 'twelve', /currency|amount/i],
    ['ledger.piece', 'x', /Choose a field/],
    ['ledger.constructor', 'x', /Choose a field/],
    ['__proto__', 'x', /Choose a field/],
    ['number', '1', /Choose a field/],
  ] as const)('%s: %s is not written', async ([field, to, says]) => {
    const before = await bytes('private/ledger.csv');
    const answer = await change(field, to, ['york-penny-3b'], true);
    expect([answer.status, says.test(answer.text)]).toEqual([422, true]);
    expect(await bytes('private/ledger.csv')).toBe(before);
  });
});
