import { readFile } from 'node:fs/promises';
import { connect } from 'node:net';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { formHeaders, openTestDesk } from './open-desk.ts';
import type { TestDesk } from './open-desk.ts';
import { untouchedForm } from './read-form.ts';

const PIECE = 'plain-penny';
let desk: TestDesk;
let form: URLSearchParams;
beforeAll(async () => {
  desk = await openTestDesk('tests/cabinets/marked');
  form = untouchedForm((await desk.ask(`/pieces/${PIECE}`)).text, `/pieces/${PIECE}`);
  form.set('title', 'Another title');
}, 120_000);
afterAll(() => desk.close(), 60_000);

const written = () => readFile(join(desk.at, `pieces/${PIECE}/piece.md`), 'utf8');
/** What the keeper's own browser sends, with some of it changed or, where it is null, left out. */
function headers(change: Readonly<Record<string, string | null>>): Readonly<Record<string, string>> {
  const all: Readonly<Record<string, string | null>> = {
    cookie: desk.cookie,
    ...formHeaders(desk.host, form.toString()),
    ...change,
  };
  return Object.fromEntries(Object.entries(all).filter((one): one is [string, string] => one[1] !== null));
}

describe('a form that was not sent by a page of the desk changes nothing', () => {
  // Browsers send `null` from sandboxed frames and from pages that tell no referrer (Fetch, "append a request Origin header").
  test.for([
    ['a foreign origin', { origin: 'https://example.org' }],
    ['no origin', { origin: null }],
    ['the origin null', { origin: 'null' }],
    ['the origin of another port', { origin: 'http://127.0.0.1:1' }],
    ['the name localhost as its origin', { origin: 'http://localhost' }],
    ['another site', { 'sec-fetch-site': 'cross-site' }],
    ['another port of this machine', { 'sec-fetch-site': 'same-site' }],
    ['nobody at all', { 'sec-fetch-site': 'none' }],
    ['no cookie', { cookie: null }],
    ['a cookie of chance', { cookie: 'desk-1=x' }],
    ['a foreign host, as after a name that was bound anew', { host: 'example.org' }],
    ['the host without its port', { host: '127.0.0.1' }],
    ['the host localhost', { host: 'localhost' }],
    ['a body of JSON', { 'content-type': 'application/json' }],
    ['a body of plain text, which needs no permission', { 'content-type': 'text/plain' }],
  ] as const)('from %s', async ([, change]) => {
    const before = await written();
    const { status, text } = await desk.send(`/pieces/${PIECE}`, {
      method: 'POST',
      headers: headers(change),
      body: form.toString(),
    });
    expect([400, 403]).toContain(status);
    expect(text).toMatch(/\.\n$/);
    expect(await written()).toBe(before);
  });

  test('with the token of another desk, or without one', async () => {
    const before = await written();
    for (const token of [null, '', 'x'.repeat(43)]) {
      const other = new URLSearchParams(form);
      if (token === null) other.delete('form-token');
      else other.set('form-token', token);
      expect((await desk.ask(`/pieces/${PIECE}`, other)).status).toBe(403);
    }
    expect(await written()).toBe(before);
  });

  test('and the same form from the page itself is written', async () => {
    expect((await desk.ask(`/pieces/${PIECE}`, form)).status).toBe(303);
    expect(await written()).toContain('title: Another title\n');
  });
});

describe('what is asked for', () => {
  test.for([
    '/pieces/%2e%2e%2f%2e%2e%2fprivate%2fledger.csv',
    '/pieces/../../private/ledger.csv',
    '//pieces/plain-penny',
    '/pieces//plain-penny',
    '/pieces/plain-penny/..%5c..%5cprivate',
    '/fonts/..%2f..%2fpackage.json',
    '/pieces/plain-penny/text/..',
    '/lists/private/ledger',
    '/lists/__proto__/x',
    '/lists/constructor/name',
    '/lists/rulers/constructor',
    '/lists/rulers/__proto__/text',
    '/exhibits/constructor',
    '/pieces/constructor',
    '/pieces/__proto__',
    '/pieces/tostring/text',
    '/pieces/constructor/photographs',
    '/pieces/plain-penny/constructor.webp',
    '/pieces/not-there',
    `/${'a'.repeat(5000)}`,
  ])('%s is no page', async (path) => {
    const { status, text } = await desk.send(path, { headers: { cookie: desk.cookie } });
    expect(status).toBe(404);
    expect(text).not.toContain('GBP');
  });

  // Names that every object of JavaScript has.
  test('a form for such a name changes nothing, whatever its boxes are called', async () => {
    const token = form.get('form-token') ?? '';
    for (const name of ['constructor', '__proto__', 'toString', 'hasOwnProperty']) {
      const to = new URLSearchParams({
        'form-token': token,
        [name]: 'x',
        'draft-of': `/pieces/${name}`,
        field: name,
        to: 'x',
      });
      to.append('piece', name);
      for (const [path, statuses] of [
        [`/pieces/${name.toLowerCase()}`, [404]],
        [`/exhibits/${name.toLowerCase()}`, [404]],
        [`/lists/${name.toLowerCase()}`, [404]],
        ['/draft', [404]],
        ['/change', [422]],
        ['/life', [409, 422]],
        ['/undo', [404]],
      ] as const)
        expect([path, statuses.includes((await desk.ask(path, to)).status as never)]).toEqual([path, true]);
    }
    expect(Object.hasOwn(Object.prototype, 'x')).toBe(false);
    const with_ = new URLSearchParams(form);
    for (const name of ['__proto__', 'constructor', 'sure.__proto__', 'provenance.0.constructor']) with_.set(name, 'x');
    with_.set('title', 'A penny of a plain king');
    await desk.ask(`/pieces/${PIECE}`, with_);
    expect(await written()).not.toMatch(/__proto__|constructor/);
  });

  test('without the cookie nothing is shown, and the first address works once', async () => {
    for (const path of ['/', `/pieces/${PIECE}`, '/desk.css', '/undo'])
      expect((await desk.send(path)).status).toBe(403);
    const again = await desk.send(desk.open.address.slice(desk.open.address.indexOf('/open')));
    expect([again.status, again.headers['set-cookie']]).toEqual([403, undefined]);
    expect((await desk.send('/open?token=')).status).toBe(403);
  });

  test('other ways of asking are refused', async () => {
    for (const method of ['PUT', 'DELETE', 'OPTIONS', 'PATCH', 'HEAD', 'TRACE'])
      expect((await desk.send('/', { method, headers: { cookie: desk.cookie } })).status).toBe(405);
  });

  test('two hosts in one request are refused', async () => {
    const answer = await raw(
      `GET / HTTP/1.1\r\nHost: ${desk.host}\r\nHost: example.org\r\nCookie: ${desk.cookie}\r\n\r\n`,
    );
    expect(answer).toMatch(/^(HTTP\/1\.1 4|$)/);
  });

  test('every answer forbids framing, keeping and scripts from elsewhere', async () => {
    for (const path of ['/', '/not-there', '/desk.css']) {
      const { headers: told } = await desk.ask(path);
      expect(told['cache-control']).toBe('no-store');
      expect(told['content-security-policy']).toContain("frame-ancestors 'none'");
      expect(told['content-security-policy']).toContain("default-src 'none'");
      expect(told['referrer-policy']).toBe('same-origin');
      expect(told['cross-origin-resource-policy']).toBe('same-origin');
      expect(told['x-content-type-options']).toBe('nosniff');
      expect(told['access-control-allow-origin']).toBeUndefined();
    }
  });

  test('the cookie is for this desk alone, and no script reads it', async () => {
    const one = await openTestDesk('tests/cabinets/marked');
    const { headers: told } = await one.send('/', {});
    expect(one.cookie).toMatch(new RegExp(`^desk-${one.open.port}=[\\w-]{43}$`));
    expect(told['set-cookie']).toBeUndefined();
    await one.close();
  });
});

describe('a body that is too large', () => {
  test('is refused by its length, before it is read', async () => {
    const long = { cookie: desk.cookie, ...formHeaders(desk.host, ''), 'content-length': String(100_000_000) };
    const asked = await desk.send(`/pieces/${PIECE}`, { method: 'POST', headers: long }).catch(() => null);
    if (asked !== null) expect(asked.status).toBe(413);
    expect((await desk.ask('/')).status).toBe(200);
  });

  test('is refused where its length is not told', async () => {
    const head = `POST /pieces/${PIECE} HTTP/1.1\r\nHost: ${desk.host}\r\nCookie: ${desk.cookie}\r\nOrigin: http://${desk.host}\r\nContent-Type: application/x-www-form-urlencoded\r\nTransfer-Encoding: chunked\r\n\r\n`;
    expect(await raw(`${head}5\r\na=bcd\r\n0\r\n\r\n`)).toMatch(/^HTTP\/1\.1 411/);
  });

  test('is read no further than it said', async () => {
    const body = form.toString();
    const short = { ...headers({}), 'content-length': '10' };
    const { status } = await desk.send(`/pieces/${PIECE}`, { method: 'POST', headers: short, body: body.slice(0, 10) });
    expect(status).toBe(403);
  });
});

describe('two windows at once', () => {
  const page = '/pieces/old-medal';
  const file = 'pieces/old-medal/piece.md';
  const held = (): Promise<string> => readFile(join(desk.at, file), 'utf8');

  test('that save the same piece: one is written whole, the other is told and has lost nothing', async () => {
    const forms = await Promise.all([1, 2].map(async () => untouchedForm((await desk.ask(page)).text, page)));
    forms.forEach((one, at) => one.set('shape', `shape ${at}`));
    const answers = await Promise.all(forms.map((one) => desk.ask(page, one)));
    expect(answers.map(({ status }) => status).toSorted((a, b) => a - b)).toEqual([303, 409]);
    const lost = answers.findIndex(({ status }) => status === 409);
    expect(answers[lost]?.text).toContain(`value="shape ${lost}"`);
    expect(await held()).toContain(`shape: shape ${1 - lost}\n`);
  });

  test('that make pieces with the same title and number: two folders, or one is told', async () => {
    const forms = await Promise.all([1, 2].map(async () => untouchedForm((await desk.ask('/new')).text, '/new')));
    for (const one of forms) one.set('title', 'Made twice');
    const answers = await Promise.all(forms.map((one) => desk.ask('/new', one)));
    expect(answers.map(({ status }) => status).toSorted((a, b) => a - b)).toEqual([303, 422]);
    expect(desk.state.records().named.pieces.filter((id) => id.startsWith('made-twice'))).toEqual(['made-twice']);
  });
});

test('words from a file are words on the page, and never its markup', async () => {
  const other = await openTestDesk('tests/cabinets/marked');
  const page = untouchedForm((await other.ask(`/pieces/${PIECE}`)).text, `/pieces/${PIECE}`);
  page.set('title', '"><script>alert(1)</script>');
  page.set('story', '</textarea><script>alert(2)</script>');
  await other.ask(`/pieces/${PIECE}`, page);
  for (const path of ['/', `/pieces/${PIECE}`, `/pieces/${PIECE}/text`]) {
    const { text } = await other.ask(path);
    expect(text).not.toContain('<script>alert');
    expect(text).toContain('&lt;script&gt;alert(1)');
  }
  await other.close();
});

test('a desk that nobody uses closes by itself', async () => {
  const idle = await openTestDesk('tests/cabinets/marked', 150);
  await idle.open.closed;
  await expect(idle.send('/')).rejects.toThrow();
  await idle.state.close();
});

/** What comes back for these bytes; empty when the line is cut. */
function raw(bytes: string): Promise<string> {
  return new Promise((done) => {
    const socket = connect(desk.open.port, '127.0.0.1', () => socket.write(bytes));
    let got = '';
    socket.setEncoding('utf8').on('data', (part: string) => {
      got += part;
      socket.end();
    });
    socket.on('close', () => done(got));
    socket.on('error', () => done(got));
  });
}
