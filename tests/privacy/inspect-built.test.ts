import { mkdir, mkdtemp, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import process from 'node:process';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import { inspectAgain, inspectBuilt } from '../../src/privacy/inspect-built.ts';
import { changed, markedCabinet } from '../catalogue/small-cabinet.ts';

const CABINET = { ...(await markedCabinet()), at: resolve('tests/cabinets/marked') };
const POLICY = `<meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="default-src 'none'; img-src 'self'; base-uri 'none'; form-action 'self'"><meta name="referrer" content="no-referrer">`;
const page = (text: string): string => `<!doctype html>${POLICY}<title>x</title><p>${text}</p>`;

/** What slips into a site, in which file, and the kind of problem that names it. */
const LEAKS = [
  { kind: 'leak-private', file: 'index.html', text: page('kept in the MARK-STORAGE bank box') },
  { kind: 'leak-private', file: 'index.html', text: page('bought for 431.17 GBP') },
  {
    kind: 'leak-private',
    file: 'data/pieces.json',
    text: JSON.stringify({ a: 'MARK-NOTES, with "quotes" & an ampersand' }),
  },
  { kind: 'leak-private', file: 'index.html', text: page('MARK-NOTES, with &quot;quotes&quot; &amp; an ampersand') },
  { kind: 'leak-private', file: 'index.html', text: page('kept in the MARK-STORAGE bank\u00a0box') },
  { kind: 'leak-unpublished', file: 'index.html', text: page('Noble&nbsp;that must not be\u00a0seen') },
  { kind: 'leak-unpublished', file: 'index.html', text: page('see hidden-noble') },
  { kind: 'leak-unpublished', file: 'index.html', text: page('Noble that must not be seen') },
  { kind: 'leak-unpublished', file: 'index.html', text: page('NOBLE THAT must not be seen') },
  { kind: 'leak-unpublished', file: 'index.html', text: page('no. hidden-0003') },
  { kind: 'leak-unpublished', file: 'pieces/hidden-noble/index.html', text: page('x') },
  { kind: 'leak-unlisted', file: 'data/search.json', text: '["unlisted-groat"]' },
  { kind: 'leak-path', file: 'index.html', text: page(`${process.cwd()}/content`) },
  { kind: 'leak-path', file: 'index.html', text: page('file:///home/jane/coins.ods') },
  { kind: 'leak-path', file: 'index.html', text: page('file:///srv/coins.ods') },
  { kind: 'leak-path', file: 'index.html', text: page('C:\\Documents and Settings\\Jane\\coins.xls') },
  { kind: 'leak-path', file: 'index.html', text: page('D:/Documents and Settings/Jane/coins.xls') },
  { kind: 'leak-path', file: 'data/a.json', text: JSON.stringify(['C:\\Users\\Jane\\coins.xlsx']) },
  { kind: 'leak-private', file: 'index.html', text: page('in the MARK-STORAGE <em>bank</em> box') },
  { kind: 'leak-private', file: 'index.html', text: '<p title="mark-storage%20BANK&#32;box">x</p>' },
  { kind: 'leak-private', file: 'index.html', text: page('in the MARK-STOR\u00adAGE bank\u2009box') },
  // In a remark, in an attribute without a value, in the end of an element and in its name; HTML 13.1.2 lets the first two be.
  { kind: 'leak-private', file: 'index.html', text: page('x<!-- in the MARK-STORAGE bank box -->') },
  { kind: 'leak-private', file: 'index.html', text: page('<b mark-storage bank box>x</b>') },
  { kind: 'leak-private', file: 'index.html', text: page('x</p mark-storage bank box>') },
  { kind: 'leak-private', file: 'index.html', text: page('<mark-storage-bank-box>x') },
  { kind: 'leak-path', file: 'index.html', text: page('x<!-- /home/jane/coins.ods -->') },
  { kind: 'leak-path', file: 'index.html', text: page('x<style>p { --x: /home/jane/coins.ods }</style>') },
  { kind: 'leak-unpublished', file: 'index.html', text: page('<b>hidden-noble</b>0003') },
  { kind: 'leak-private', file: 'photographs/plain-penny/detail-mark-storage-bank-box.txt', text: 'x' },
  { kind: 'leak-private', file: 'data/a.json', text: '{"a":"for \\u00a3431.17"}' },
  { kind: 'leak-unpublished', file: 'index.html', text: '<a href="../hidden%2Dnoble/">x</a>' },
  { kind: 'leak-unknown-file', file: 'IMG_1234.mov', text: 'x' },
  { kind: 'leak-picture-unread', file: 'photographs/a.jpg', text: 'not a picture' },
  { kind: 'leak-unlisted', file: 'index.html', text: page('see unlisted-groat') },
  { kind: 'leak-unlisted', file: 'pieces/plain-penny/index.html', text: page('see unlisted-groat') },
  { kind: 'leak-unlisted', file: 'index.html', text: page('the Groat that stands in no list') },
  { kind: 'leak-remote', file: 'index.html', text: page('<img src="https://example.org/a.jpg" alt="">') },
  { kind: 'leak-policy', file: 'index.html', text: page('x').replace(/<meta http-equiv[^>]*>/, '') },
  { kind: 'leak-policy', file: 'index.html', text: page('x').replace("img-src 'self'", "script-src 'unsafe-inline'") },
  { kind: 'leak-policy', file: 'index.html', text: page('x').replace(/<meta name="referrer"[^>]*>/, '') },
] as const;

async function built(files: Readonly<Record<string, string | Buffer>>): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'built-'));
  for (const [file, text] of Object.entries(files)) {
    await mkdir(dirname(join(folder, file)), { recursive: true });
    await writeFile(join(folder, file), text);
  }
  return folder;
}

test.for(LEAKS)('$kind is found in $file: $text', async ({ kind, file, text }) => {
  const { records } = readCabinet(await markedCabinet());
  const found = inspectBuilt(await built({ [file]: text }), records, CABINET);
  expect(found.map((problem) => `${problem.kind} ${problem.file}`)).toContain(`${kind} ${file}`);
});

test.for([
  [
    '<a title="the Groat that stands in no list">x</a>',
    'leak-unlisted',
    'z/index.html',
    'pieces/unlisted-groat/index.html',
  ],
  ['<a title="in the MARK-STORAGE bank box">x</a>', 'leak-private', 'b/index.html', 'a/index.html'],
] as const)('what %s tells is found in every page that has it', async ([element, kind, file, before]) => {
  const { records } = readCabinet(await markedCabinet());
  const site = await built({ [before]: page(element), [file]: page(element), 'c/index.html': page('x') });
  const found = inspectBuilt(site, records, CABINET);
  expect(found.map((problem) => `${problem.kind} ${problem.file}`)).toContain(`${kind} ${file}`);
});

test('the folder of the cabinet is found wherever it lies on the machine, and an old id of a hidden piece as its own', async () => {
  const folder = changed(await markedCabinet(), {
    'pieces/hidden-noble/piece.md': (text) => text.replace(/^kind:/m, 'formerly: noble-of-old\nkind:'),
  });
  const { records } = readCabinet(folder);
  const site = await built({ 'a.json': '["/srv/kept/coins/pieces"]', 'b.html': page('see noble-of-old') });
  const found = inspectBuilt(site, records, { ...folder, at: '/srv/kept/coins' });
  expect(found.map(({ kind, file }) => `${kind} ${file}`)).toEqual(['leak-path a.json', 'leak-unpublished b.html']);
});

test('an unlisted piece may stand on its pages at old ids too, for as long as they are its own', async () => {
  const GROAT = 'pieces/unlisted-groat/piece.md';
  const was = (id: string) => changed(CABINET, { [GROAT]: (text) => text.replace(/^kind:/m, `formerly: ${id}\nkind:`) });
  const before = was('groat-of-old');
  const site = await built({ 'pieces/groat-of-old/index.html': page('now unlisted-groat') });
  const first = inspectAgain(site, readCabinet(before).records, before, null);
  expect(first.problems).toEqual([]);
  for (const after of [was('groat-of-yore'), CABINET]) {
    const again = inspectAgain(site, readCabinet(after).records, after, first.clean);
    expect(again.problems.map(({ kind }) => kind)).toEqual(['leak-unlisted']);
  }
}); // prettier-ignore

test('the bare address of what was withdrawn may name a hidden piece, and no other file may', async () => {
  const withdrawn = changed(CABINET, { 'addresses.txt': 'at https://example.org/\npieces/hidden-noble/ withdrawn\n' });
  const { records } = readCabinet(withdrawn);
  const site = await built({ 'pieces/hidden-noble/index.html': page('gone'), 'older/pieces/hidden-noble/index.html': page('gone') });
  const first = inspectAgain(site, records, withdrawn, null);
  expect(first.problems).toEqual([]);
  const told = inspectAgain(site, records, CABINET, first.clean).problems;
  expect(told.map(({ kind }) => kind)).toEqual(['leak-unpublished', 'leak-unpublished']);
  const others = await built({ 'pieces/hidden-noble/other.html': page('x'), 'apieces/hidden-noble/index.html': page('x') });
  expect(inspectBuilt(others, records, withdrawn).map(({ file }) => file)).toEqual(['apieces/hidden-noble/index.html', 'pieces/hidden-noble/other.html']);
}); // prettier-ignore

test('a site found clean is looked through again for the folder of a cabinet that was moved', async () => {
  const site = await built({ 'a.json': '["/srv/kept/coins/pieces"]' });
  const { records } = readCabinet(CABINET);
  const { clean } = inspectAgain(site, records, CABINET, null);
  const moved = inspectAgain(site, records, { ...CABINET, at: '/srv/kept/coins' }, clean);
  expect(moved.problems.map(({ kind }) => kind)).toEqual(['leak-path']);
});

/** What a cabinet may come to keep private, or to hide, after a site was found clean; what the site has said all along. */
const SECRET_NOW: readonly (readonly [what: string, change: Readonly<Record<string, string | ((text: string) => string)>>, kind: string])[] = [
  ['a text of the ledger', { 'private/ledger.csv': 'piece,storage\nplain-penny,under the floorboard\n' }, 'leak-private'],
  ['signs without a letter', { 'private/ledger.csv': 'piece,storage\nplain-penny,#*#*#*#\n' }, 'leak-private'],
  ['a sum', { 'private/ledger.csv': 'piece,cost\nplain-penny,77.35 GBP\n' }, 'leak-private'],
  ['a sum in another currency', { 'private/ledger.csv': 'piece,cost\nplain-penny,66.35 EUR\n' }, 'leak-private'],
  ['a sum with other figures', { 'private/ledger.csv': 'piece,cost\nplain-penny,66.45 GBP\n' }, 'leak-private'],
  ['a hidden piece', { 'pieces/old-medal/piece.md': (text) => text.replace(/^kind:/m, 'publish: no\nkind:') }, 'leak-unpublished'],
  ['an unlisted piece', { 'pieces/old-medal/piece.md': (text) => text.replace(/^kind:/m, 'publish: unlisted\nkind:') }, 'leak-unlisted'],
  ['the name of the keeper', { 'cabinet.yaml': (text) => text.replace(/^keeper:.*$/m, 'keeper: Ada Foss') }, 'leak-keeper'],
]; // prettier-ignore
test.for(SECRET_NOW)('a file that was found clean is looked through again for %s', async ([, change, kind]) => {
  const before = changed(await markedCabinet(), { 'private/ledger.csv': 'piece,cost\nplain-penny,66.35 GBP\n' });
  const said = 'It lay under the floorboard #*#*#*#, for 77.35 GBP or 66.45 GBP or 66.35 EUR, as the Medal of a plain occasion.';
  const site = await built({ 'a.html': page(said), 'exhibits/a/print/anonymous/index.html': page('by Ada Foss') });
  const first = inspectAgain(site, readCabinet(before).records, before, null);
  expect(first.problems).toEqual([]);
  const unchanged = inspectAgain(site, readCabinet(before).records, before, first.clean);
  expect(unchanged).toEqual(first);
  const after = changed(before, change);
  const again = inspectAgain(site, readCabinet(after).records, after, first.clean);
  expect(again.problems.map((one) => one.kind)).toEqual([kind]);
  expect(again.problems).toEqual(inspectBuilt(site, readCabinet(after).records, after));
}); // prettier-ignore

/** The figures of a rule as a board has them, of an axis, and the same figures where they are no scale. */
const MARKED = (figures: readonly number[]): string =>
  `<ol>${figures.map((one) => `<li data-astro-cid-x> <span>${one}</span> </li>`).join('')}</ol>`;
const AXIS = (figures: readonly number[]): string =>
  `<svg>${figures.map((one) => `<line/><text x="1">${one}</text>`).join('')}</svg>`;
test.for([
  ['figures of a rule', MARKED([90, 100, 110, 120]), []],
  ['figures of an axis of years', AXIS([980, 990, 1000]), []],
  ['a number in a text', '<p>It is 100 110 there.</p>', ['leak-private']],
  ['a number over two lines', '<p>It is 100<br>110 there.</p>', ['leak-private']],
  ['counts in a list of links', '<ul><li><a href="a/">Penny</a> <span>100</span></li> <li>110 as</li></ul>', []],
  ['a number of which a part is emphasised', '<p>It is <em>100</em> 110 there.</p>', ['leak-private']],
  ['a whole number on a scale', MARKED([100_110]), ['leak-private']],
] as const)('a certificate of six figures beside %s', async ([, text, kinds]) => {
  const folder = changed(CABINET, { 'private/ledger.csv': 'piece,certificate\nplain-penny,UG 100110\nold-medal,980990\nunlisted-groat,100110\n' });
  const found = inspectBuilt(await built({ 'a.html': page(text) }), readCabinet(folder).records, folder);
  expect([...new Set(found.map(({ kind }) => kind))]).toEqual(kinds);
}); // prettier-ignore

test.for([
  ['page.html', page('x').replace('</title>', '</title><style>p{font-family:serif;grid-column:2/-1}</style>'), []],
  ['style.css', 'p{font-family:serif;grid-column:2/-1}', []],
  ['named.css', 'p::before{content:"a family"}', ['leak-private']],
  ['page.html', page('a family'), ['leak-private']],
  ['own.js', 'const family = 1;', []],
  ['other.js', 'const family = 1;', ['leak-private']],
] as const)('a seller called family and a sum of 2/- in %s: %s', async ([file, text, kinds]) => {
  const ledger = 'piece,seller,cost\nplain-penny,a family,2/-\nold-medal,family,2/-\n';
  const folder = changed(CABINET, { 'private/ledger.csv': ledger });
  const program = await built({ 'own.js': 'const family = 1;' });
  const { problems } = inspectAgain(await built({ [file]: text }), readCabinet(folder).records, folder, null, program);
  expect([...new Set(problems.map(({ kind }) => kind))]).toEqual(kinds);
}); // prettier-ignore

test('the order of rows in a ledger is nothing to what was found clean', async () => {
  const ledger = (...rows: readonly string[]) => ({
    'private/ledger.csv': ['piece,cost,storage', ...rows, ''].join('\n'),
  });
  const rows = ['plain-penny,66.35 GBP,under the floorboard', 'old-medal,12.50 GBP,behind the boiler'];
  const [one, other] = [ledger(...rows), ledger(...rows.toReversed())].map((change) => changed(CABINET, change));
  if (one === undefined || other === undefined) expect.fail();
  const site = await built({ 'a.html': page('x') });
  const first = inspectAgain(site, readCabinet(one).records, one, null);
  expect(inspectAgain(site, readCabinet(other).records, other, null).clean).toEqual(first.clean);
});

test.for(['jpeg', 'png', 'webp'] as const)('leak-in-picture is found in a %s that carries a place', async (format) => {
  const picture = await sharp({ create: { width: 300, height: 300, channels: 3, background: 'red' } })
    .withExif({ IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '54/1 0/1 0/1' } })
    .toFormat(format)
    .toBuffer();
  const { records } = readCabinet(await markedCabinet());
  const found = inspectBuilt(await built({ [`a.${format}`]: picture }), records, CABINET);
  expect(found).toMatchObject([{ kind: 'leak-in-picture', file: `a.${format}` }]);
  expect(found[0]?.says).toContain('EXIF');
});

/** A plain picture, and what may be hidden in one where a reader of pictures does not look. Sources: ITU-T T.81 table B.1; W3C PNG §11; WebP container. */
const plain = sharp({ create: { width: 300, height: 300, channels: 3, background: 'red' } });
const HOME = Buffer.from('53.95812, -1.08034 at home');
const part = (bytes: Buffer, at: number, more: Buffer): Buffer =>
  Buffer.concat([bytes.subarray(0, at), more, bytes.subarray(at)]);
const length16 = (bytes: Buffer): Buffer => Buffer.of((bytes.length + 2) >> 8, (bytes.length + 2) & 255);
const chunk = (name: string, bytes: Buffer): Buffer => {
  const size = Buffer.alloc(4);
  size.writeUInt32BE(bytes.length);
  return Buffer.concat([size, Buffer.from(name), bytes, Buffer.alloc(4)]);
};
const HIDDEN = [
  { what: 'an extension segment of a JPEG (F0)', kind: 'jpeg', hide: (b: Buffer) => part(b, 2, Buffer.concat([Buffer.of(0xff, 0xf0), length16(HOME), HOME])) },
  { what: 'a reserved segment of a JPEG (02)', kind: 'jpeg', hide: (b: Buffer) => part(b, 2, Buffer.concat([Buffer.of(0xff, 0x02), length16(HOME), HOME])) },
  { what: 'the end of a JPEG', kind: 'jpeg', hide: (b: Buffer) => Buffer.concat([b, HOME]) },
  { what: 'a long gAMA of a PNG', kind: 'png', hide: (b: Buffer) => part(b, 33, chunk('gAMA', HOME)) },
  { what: 'a long IEND of a PNG', kind: 'png', hide: (b: Buffer) => Buffer.concat([b.subarray(0, -12), chunk('IEND', HOME)]) },
  { what: 'a private chunk of a PNG', kind: 'png', hide: (b: Buffer) => part(b, 33, chunk('hoMe', HOME)) },
  { what: 'the end of a WebP', kind: 'webp', hide: (b: Buffer) => Buffer.concat([b, HOME]) },
] as const; // prettier-ignore

test.for(HIDDEN)('leak-in-picture is found in $what, in a file and within a page', async ({ kind, hide }) => {
  const { records } = readCabinet(await markedCabinet());
  const clean = await plain.clone().toFormat(kind).toBuffer();
  const laden = hide(clean);
  const within = (bytes: Buffer): string => page(`<img src="data:image/${kind};base64,${bytes.toString('base64')}">`);
  const files = { [`a.${kind}`]: laden, [`b.${kind}`]: clean, 'c.html': within(laden), 'd.html': within(clean) };
  const found = inspectBuilt(await built(files), records, CABINET);
  expect(found.map((problem) => `${problem.kind} ${problem.file}`)).toEqual([
    `leak-in-picture a.${kind}`,
    'leak-in-picture c.html',
  ]);
});

test('the keeper’s name is found in a form that is printed without it, and nowhere else', async () => {
  const named = page('Shown by <b>A&nbsp;Keeper</b>');
  const folder = await built({
    'exhibits/small-show/index.html': named,
    'exhibits/small-show/print/index.html': named,
    'exhibits/small-show/print/anonymous/index.html': named,
    'exhibits/small-show/print/letter/anonymous/index.html': named,
    'catalogue/exhibits/small-show/print/set-up/index.html': named,
    // An address may hold the name; the forms say so themselves, and print no code.
    'exhibits/small-show/print/set-up/index.html': page('<a href="https://example.org/a-keeper/">the exhibitor</a>'),
  });
  const { records } = readCabinet(await markedCabinet());
  expect(inspectBuilt(folder, records, CABINET).map((problem) => `${problem.kind} ${problem.file}`)).toEqual([
    'leak-keeper catalogue/exhibits/small-show/print/set-up/index.html',
    'leak-keeper exhibits/small-show/print/anonymous/index.html',
    'leak-keeper exhibits/small-show/print/letter/anonymous/index.html',
  ]);
});

test('an unlisted piece on its own page, and a listed id that begins like a hidden one, are let pass', async () => {
  const { records } = readCabinet(await markedCabinet());
  const folder = await built({
    'pieces/unlisted-groat/index.html': page('unlisted-groat'),
    'pieces/hidden-noble-two/index.html': page('hidden-noble-two'),
    'a.html': page('<a href="https://example.org/home/jane/">x</a> and https://example.org/Users/jane/'),
  });
  expect(inspectBuilt(folder, records, CABINET)).toEqual([]);
});

/** The marked cabinet with the hidden piece in a folder that is only a number, and under a title another piece has as well. */
async function withNumberedFolder() {
  const folder = await markedCabinet();
  const text = folder.files.find(({ file }) => file === 'pieces/hidden-noble/piece.md')?.text ?? '';
  const hidden = text.replace(/^title:.*$/m, 'title: Penny of a plain').replace(/^formerly:.*\n/m, '');
  return readCabinet(changed(folder, { 'pieces/hidden-noble/piece.md': null, 'pieces/12/piece.md': hidden })).records;
}

test.for([
  ['index.html', page('12 pieces of 1279/12, and a Penny of a plain king')],
  ['pieces/page/12/index.html', page('the twelfth page')],
  ['data/pieces.json', '[{"id":"plain-penny","of":12}]'],
] as const)('a hidden piece in a folder called 12 is not seen in %s: %s', async ([file, text]) => {
  expect(inspectBuilt(await built({ [file]: text }), await withNumberedFolder(), CABINET)).toEqual([]);
});

test.for([
  ['index.html', '<a href="/pieces/12/">a noble</a>'],
  ['pieces/12/index.html', page('x')],
  ['data/pieces/12.json', '{}'],
  ['data/pieces.json', '[{"id":"12"}]'],
  ['data/pieces.csv', 'id,title\n12,Noble\n'],
  ['photographs/12/obverse.txt', 'x'],
] as const)('it is found in %s: %s', async ([file, text]) => {
  const found = inspectBuilt(await built({ [file]: text }), await withNumberedFolder(), CABINET);
  expect(found.map(({ kind }) => kind)).toContain('leak-unpublished');
});

test('a word of the program is no leak where a seller has it as a name, and the whole of the seller still is', async () => {
  const folder = {
    ...changed(await markedCabinet(), { 'private/ledger.csv': 'piece,seller\nplain-penny,Vincent Price of Ghent\n' }),
    at: resolve('tests/cabinets/marked'),
  };
  const { records } = readCabinet(folder);
  const site = await built({ 'a.html': page('A price is dated.'), 'b.html': page('had from Vincent Price of Ghent') });
  const found = inspectBuilt(site, records, folder);
  expect(found.map(({ kind, file }) => `${kind} ${file}`)).toEqual(['leak-private b.html']);
});

test('what was found clean is looked through again when it was written since, or when something else is private', async () => {
  const { records } = readCabinet(CABINET);
  const site = await built({ 'index.html': page('a plain text'), 'about/index.html': page('in the bank box') });
  const first = inspectAgain(site, records, CABINET, null);
  expect(first.problems).toEqual([]);
  expect(inspectAgain(site, records, CABINET, first.clean).problems).toEqual([]);

  // The same length, written a moment later.
  await writeFile(join(site, 'index.html'), page('hidden-noble'));
  const written = inspectAgain(site, records, CABINET, first.clean);
  expect(written.problems.map(({ kind, file }) => [kind, file])).toEqual([['leak-unpublished', 'index.html']]);
  await writeFile(join(site, 'index.html'), page('a plain text'));

  const more = changed(CABINET, {
    'private/ledger.csv': (text: string) => text.replace('MARK-STORAGE bank box', 'in the bank box'),
  });
  const told = inspectAgain(site, readCabinet(more).records, { ...more, at: CABINET.at }, first.clean);
  expect(told.problems.map(({ kind, file }) => [kind, file])).toEqual([['leak-private', 'about/index.html']]);
});
