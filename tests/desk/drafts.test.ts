import { access, readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { checkCabinet } from '../../src/catalogue/check-cabinet.ts';
import { PRIVACY } from '../../src/privacy/privacy.ts';
import { openTestDesk } from './open-desk.ts';
import type { TestDesk } from './open-desk.ts';
import { untouchedForm } from './read-form.ts';

let desk: TestDesk;
beforeAll(async () => {
  desk = await openTestDesk('tests/cabinets/marked');
}, 120_000);
afterAll(() => desk.close(), 60_000);

const PIECE = '/pieces/plain-penny';
const draft = () => join(desk.at, 'private/desk/pieces--plain-penny.json');
const keep = (of: string, form: URLSearchParams) =>
  desk.ask('/draft', new URLSearchParams([...form, ['draft-of', of]]));

test('words that were typed and not saved are offered again, and gone once they are saved', async () => {
  const problems = (await checkCabinet(desk.at, PRIVACY)).problems.length;
  const form = untouchedForm((await desk.ask(PIECE)).text, PIECE);
  form.set('shape', 'oval, not saved');
  form.set('ledger.notes', 'a note not saved');
  expect((await keep(PIECE, form)).status).toBe(200);
  expect(await readFile(join(desk.at, 'pieces/plain-penny/piece.md'), 'utf8')).not.toContain('not saved');
  expect((await stat(draft())).mode & 0o077).toBe(0);
  // It is nothing that the check minds.
  expect((await checkCabinet(desk.at, PRIVACY)).problems.length).toBe(problems);
  expect((await desk.ask(PIECE)).text).toContain(`href="${PIECE}?draft=yes"`);
  const again = untouchedForm((await desk.ask(`${PIECE}?draft=yes`)).text, PIECE);
  expect([again.get('shape'), again.get('ledger.notes')]).toEqual(['oval, not saved', 'a note not saved']);
  expect((await desk.ask(PIECE, again)).headers['location']).toBe(`${PIECE}?told=saved`);
  expect(await readFile(join(desk.at, 'pieces/plain-penny/piece.md'), 'utf8')).toMatch(/^shape: "?oval, not saved"?$/m);
  await expect(access(draft())).rejects.toThrow();
});

test('a draft is thrown away when that is asked, and kept for nothing that is no form of the cabinet', async () => {
  const form = untouchedForm((await desk.ask(PIECE)).text, PIECE);
  await keep(PIECE, form);
  form.set('do', 'forget');
  expect((await keep(PIECE, form)).status).toBe(303);
  await expect(access(draft())).rejects.toThrow();
  form.delete('do');
  for (const of of [
    '/pieces/../../x',
    '/pieces/not-there',
    '/lists/private/ledger',
    '/lists/rulers/../x',
    '',
    '/',
    '/pieces/plain-penny/text',
  ])
    expect([of, (await keep(of, form)).status]).toEqual([of, 404]);
});
