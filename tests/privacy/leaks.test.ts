import { describe, expect, test } from 'vitest';
import { guardOf, guarded } from '../../src/privacy/guard.ts';
import { lettersOf } from '../../src/privacy/letters.ts';
import { lacksIn, loadsFrom } from '../../src/privacy/page-policy.ts';
import { checkPrivateFiles, unreadSheets } from '../../src/privacy/private-files.ts';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import { storyHtml } from '../../src/site/markdown.ts';
import { changed, markedCabinet, problemsOf } from '../catalogue/small-cabinet.ts';

const PENNY = 'pieces/plain-penny/piece.md';
const LEDGER = 'private/ledger.csv';
const HEAD = 'piece,cost,value,insured,storage,seller,find-spot,certificate,acquired,notes,Paid';

/** The marked cabinet with one row in its ledger, and these words in a story. */
async function telling(row: string, story: string, more: Readonly<Record<string, string>> = {}) {
  const folder = changed(await markedCabinet(), {
    [LEDGER]: `${HEAD}\nplain-penny,${row}\n`,
    [PENNY]: (text) => `${text}\n${story}\n`,
    ...more,
  });
  return problemsOf(folder)
    .filter(({ file }) => file === PENNY)
    .map(({ kind }) => kind);
}

// Row, story, whether it is told. The cells: cost, value, insured, storage, seller, find-spot, certificate, acquired, notes, Paid.
const TOLD: readonly (readonly [row: string, story: string, found: boolean])[] = [
  [',,,,From Tolland,,,,,', 'Old Tolland let me have it.', true],
  [',,,,"Brocklebank, Marjorie",,,,,', 'She was a Brocklebank.', true],
  [',,,,"Brocklebank, Marjorie",,,,,', 'The Brocklebanks had it for long.', true],
  [',,,,"Brocklebank, Marjorie",,,,,', 'A plain story of a king.', false],
  [',,,,ditto,,,,,', 'The reverse is ditto.', false],
  [',,,,Dealer,,,,,', 'A dealer sold it.', false],
  [',,,tray 1,,,,,,', 'It lies in Tray 1.', true],
  [',,,BANK,,,,,,', 'A bank token.', false],
  [',,,,,,AB-1234567,,,', 'Certified as 1234567 they say.', true],
  [',,,,,,AB-1234567,,,', 'Certified as AB 1234 567.', true],
  [',,,,,,AB-1234567,,,', 'Certified as 1 234 567, they say.', true],
  [',,,,,"Kettle Bottom, Wetwang",,,,', 'It came from Kettle Bottom.', true],
  [',,,,,,,,Swapped near Brocklehurst one night.,', 'I walked through Brocklehurst once.', true],
  [',,,,,,,,Wonderful strike.,', 'A wonderful strike indeed? Wonderful!', false],
  [',,,,,,,,"Haggled him down to £85, in the rain.",', 'For £85 it was mine.', true],
  [',,,,,,,,,145', 'I paid 145 GBP.', true],
  [',,,,,,,,,145', 'It weighs 145 grains.', false],
  [',,86 GBP,,,,,,,', 'Insured at £86 it was.', true],
  [',87 GBP,,,,,,,,', 'One like it went for £87.', true],
  [',,,"The hall, behind the boiler",,,,,,', 'It lies behind the boiler.', true],
  ['16.00 GBP,,,,,,,,,', '720 pence to the troy pound. 16 grains for this piece.', false],
  ['16.00 GBP,,,,,,,,,', 'It was 16 pounds.', true],
]; // prettier-ignore
test.for(TOLD)('a ledger row %s and “%s”: told, %s', async ([row, story, found]) => {
  expect((await telling(row, story)).includes('private-in-text')).toBe(found);
});

test('what is found is told by where it is kept, and by no more of it than its ends', async () => {
  const row = 'plain-penny,85 GBP,,,Box #9!,"– From Tolland, by the mill –",,,,,';
  const folder = changed(await markedCabinet(), { [LEDGER]: `${HEAD}\n\n${row}\n` });
  const found = guarded(lettersOf('In Box #9! from Tolland, by the mill, for £85.'), guardOf(folder, readCabinet(folder).records));
  const spot = { from: LEDGER, line: 3 };
  expect(found).toEqual([
    { ...spot, column: 'storage', hint: 'b… (7 signs)' },
    { ...spot, column: 'seller', hint: 'f…l (25 signs)' },
    { ...spot, column: 'cost', hint: 'a sum of money' },
  ]);
}); // prettier-ignore

test('a cell of dashes and blanks guards nothing', async () => {
  expect(await telling(',,,— — — —,_________,,,,,', 'A story of — — — — and _________.')).toEqual([]);
});

test('a word of the ledger that is all over the public texts is the cabinet’s subject, and tells nothing', async () => {
  const row = ',,,,From Tolland,,,,,';
  const stories = ['pieces/old-medal/piece.md', 'pieces/unlisted-groat/piece.md', 'exhibits/small-show/exhibit.md'];
  const folder = changed(await markedCabinet(), {
    [LEDGER]: `${HEAD}\nplain-penny,${row}\n`,
    ...Object.fromEntries([...stories, PENNY].map((file) => [file, (text: string) => `${text}\nTolland again.\n`])),
  });
  expect(problemsOf(folder).map(({ kind }) => kind)).not.toContain('private-in-text');
});

test('a name of the ledger in the name of a file is told of, by that name', async () => {
  const row = `${HEAD}\nplain-penny,,,,,From Tolland,,,,,\n`;
  const folder = changed(await markedCabinet(), { [LEDGER]: row, 'works/from-tolland.yaml': 'title: X\n' });
  expect(problemsOf(folder).map(({ kind, file, line }) => [kind, file, line])).toEqual([
    ['private-in-name', 'works/from-tolland.yaml', null],
  ]);
});

test('what stands in several lines is told of at the first', async () => {
  const row = `${HEAD}\nplain-penny,,,,,From Tolland,,,,,\n`;
  const story = 'Old Tolland had it.\n\nA line.\n\nOld Tolland again.\n';
  const penny = (await markedCabinet()).files.find(({ file }) => file === PENNY)?.text ?? '';
  const folder = changed(await markedCabinet(), { [LEDGER]: row, [PENNY]: (text) => `${text}\n${story}` });
  const [told] = problemsOf(folder).filter(({ kind }) => kind === 'private-in-text');
  expect(told?.line).toBe(`${penny}\n`.split('\n').length);
});

describe('guide prices', () => {
  test('are looked for as sums are, with their currency', async () => {
    const folder = await markedCabinet();
    const guard = guardOf(folder, readCabinet(folder).records);
    const line = (text: string) => guarded(lettersOf(text), guard).map(({ from, column }) => `${from} ${column}`);
    expect(line('The guide says 120 GBP.')).toEqual(['private/guide.csv low']);
    expect(line('A weight of 120 grains.')).toEqual([]);
  });
});

describe('an alarm is answered once, in private/not-secret.csv', () => {
  const ANSWERS: readonly (readonly [row: string, story: string, answer: string])[] = [
    [',,,,From Tolland,,,,,', 'Old Tolland let me have it.', 'seller,From Tolland,2026-11-29'],
    ['£85,,,,,,,,,', 'For £85.00 it was mine.', 'cost,85 GBP,'],
    [',,,,,,,,,', 'At SE 603 523.', 'place,SE 603 523,'],
    [',,,,,,,,"Haggled to £85, in the rain.",', 'For £85 it was mine.', 'notes,"Haggled to £85, in the rain.",'],
  ]; // prettier-ignore
  test('covers no other value of its column, and a value with a dash before it', async () => {
    const answered = { 'private/not-secret.csv': 'column,value,date\nseller,From Tolland,\ncost, 86 GBP ,\n' };
    expect(await telling(',,,,From Borrowash,,,,,', 'Old Borrowash had it.', answered)).not.toEqual([]);
    expect(await telling(',,,,– From Tolland,,,,,', 'It came from Tolland.', answered)).toEqual([]);
    expect(await telling('£86,,,,,,,,,', 'It was £86.', answered)).toEqual([]);
    expect(await telling('£87,,,,,,,,,', 'It was £87.', answered)).not.toEqual([]);
  });
  test('blanks round an answer do not matter', async () => {
    const table = 'column,value,date\n seller , From Tolland ,\n cost , * ,\n';
    expect(await telling('£85,,,,From Tolland,,,,,', 'Old Tolland had £85 for it.', { 'private/not-secret.csv': table })).toEqual([]);
  }); // prettier-ignore
  test.for(ANSWERS)('%s, “%s”, answered by %s', async ([row, story, answer]) => {
    const table = `column,value,date\n${answer}\n`;
    expect(await telling(row, story)).not.toEqual([]);
    expect(await telling(row, story, { 'private/not-secret.csv': table })).toEqual([]);
    const other = table.replace(/\n\w+,/, '\ncertificate,');
    expect(await telling(row, story, { 'private/not-secret.csv': other })).not.toEqual([]);
  });
  test('is a table like any other: its columns and days are read', async () => {
    const folder = changed(await markedCabinet(), { 'private/not-secret.csv': 'colum,value,date\nx,y,one fine day\n' });
    expect(problemsOf(folder).map(({ kind }) => kind)).toEqual(['column-unknown', 'column-missing', 'cell-unreadable']);
  });
});

// Postcodes as BS 7666 writes them; streets as common usage has them; the rest as their own published forms.
test.for([
  ['The letter went to YO24 1AB.', true],
  ['He lives at 14 Low Petergate Lane, York.', true],
  ['Er wohnt in der Hauptstraße 12.', true],
  ['It was ///stone.river.lamp exactly.', true],
  ['Dug at S.E. 603 523.', true],
  ['At SE.603.523 in the clay.', true],
  ['See https://example.org/a.b.c for more.', false],
  ['North 1022 and BMC 12 are cited; VF 20, 3 AB.', false],
  ['Struck at 12 grains, 1279 AD.', false],
  ['The High Street was long.', false],
] as const)('%s A place too exact: %s', async ([story, found]) => {
  expect((await telling(',,,,,,,,,', story)).includes('spot-too-exact')).toBe(found);
});

test('the title of an unlisted piece stands in no other text', async () => {
  const title = /^title: (.*)$/m.exec((await markedCabinet()).files.find(({ file }) => file.startsWith('pieces/unlisted'))?.text ?? '')?.[1] ?? ''; // prettier-ignore
  expect(title.length).toBeGreaterThan(5);
  expect(await telling(',,,,,,,,,', `Its sister is the ${title}.`)).toEqual(['unlisted-in-text']);
});

test('an area that is the most exact part of the find spot is told of; the parish it lies in is not', async () => {
  const area = (found: string) => ({
    [PENNY]: (text: string) => text.replace(/^---\n/, `---\nfound: { area: ${found} }\n`),
  });
  const kinds = async (found: string) => {
    const folder = changed(await markedCabinet(), { [LEDGER]: `${HEAD}\nplain-penny,,,,,,"Kettle Bottom, Wetwang",,,,\n`, ...area(found) });
    return problemsOf(folder).map(({ kind }) => kind);
  }; // prettier-ignore
  expect(await kinds('Kettle Bottom')).toContain('private-in-text');
  expect(await kinds('Wetwang')).toEqual([]);
});

describe('files of private/', () => {
  const files = (...names: readonly string[]) => ({ files: names.map((file) => ({ file: `private/${file}`, text: null })) });
  test.for(['Ledger.csv', 'ledger.CSV', 'ledger.xlsx', 'LEDGER.ods', 'ledgers.csv', 'legder.csv', 'Guide.csv', 'not_secret.csv', 'ledger.csv.txt'])('%s is told of', (name) => {
    const told = checkPrivateFiles(files(name));
    expect(told).toHaveLength(name === 'legder.csv' ? 0 : 1);
    for (const { says } of told) expect(says).toContain(`Nothing reads ${name},`);
    expect(unreadSheets(files(name))).toHaveLength(name === 'legder.csv' ? 1 : 0);
  }); // prettier-ignore
  test('are told of by check beside everything else', async () => {
    const folder = changed(await markedCabinet(), { 'private/Guide.csv': 'set,place\n' });
    expect(problemsOf(folder).map(({ kind }) => kind)).toEqual(['private-misspelt']);
  });
  test('those that are read, and what the program writes, are not; a sheet that nobody reads is', () => {
    const known = ['ledger.csv', 'guide.csv', 'life.csv', 'prices.csv', 'fees.csv', 'indices.csv', 'not-secret.csv', 'inventory.csv', 'inventory.html', 'tickets.html', 'photographs.html', 'import/a/rows.csv', 'plan.md', 'deleted.csv'];
    expect([...checkPrivateFiles(files(...known)), ...unreadSheets(files(...known))]).toEqual([]);
    for (const copy of ['ledger (1).csv', 'Copy of ledger.csv', 'ledger_old.csv', 'sub/ledger.csv', 'ledger.csv.bak', 'ledger.csv~', '~$ledger.xlsx', 'ledger.docx', 'ledger.json', 'coins.fods', 'coins.accdb'])
      expect([...unreadSheets(files(copy)), ...checkPrivateFiles(files(copy))]).toHaveLength(1);
    expect(unreadSheets(files('old coins.xlsx', 'letter.pdf', 'sub/x.ods'))).toEqual(['private/old coins.xlsx', 'private/sub/x.ods']);
  });
}); // prettier-ignore

// A link to what is private shows nothing, but tells that it is there, and is dead on the site.
test.for([
  ['See [my list](../../private/ledger.csv).', true],
  ['See [my list](</private/ledger.csv>).', true],
  ['See <a href="private/ledger.csv">it</a>.', true],
  ['See [the museum](https://example.org/private/collection).', false],
  ['From a private collection (in private/public talk).', false],
] as const)('a link into the private folder: %s', async ([story, found]) => {
  expect(await telling(',,,,,,,,,', story)).toEqual(found ? ['path-in-text'] : []);
});

describe('a picture in a story', () => {
  test.for([
    ['![x](https://example.org/a.jpg)', '<p>x</p>'],
    ['![x *y*](obverse.jpg "t")', '<p>x y</p>'],
    ['![](//example.org/a.jpg)', '<p></p>'],
    ['![a][b]\n\n[b]: https://example.org/c.png', '<p>a</p>\n'],
  ] as const)('%s shows its words alone', ([markdown, html]) => {
    expect(storyHtml(markdown)).toBe(html);
  });
});

describe('a page', () => {
  const GOOD = `default-src 'none'; img-src 'self'; style-src 'self' 'sha256-abc='; script-src 'self'; form-action 'self'; base-uri 'none'`;
  const page = (policy: string | null, rest = '<meta name="referrer" content="no-referrer">', before = '') =>
    `<!doctype html><html><head><meta charset="utf-8">${before}${policy === null ? '' : `<meta http-equiv="Content-Security-Policy" content="${policy}">`}<style>a{}</style>${rest}</head><body></body></html>`;
  test.for([
    ['all of it', page(GOOD), null],
    ['no policy', page(null), 'content security policy'],
    ['a policy after a style', page(GOOD, undefined, '<style>b{}</style>'), 'before what it loads'],
    ['unsafe-inline', page(GOOD.replace("'sha256-abc='", "'unsafe-inline'")), 'strict'],
    ['any host', page(GOOD.replace("img-src 'self'", 'img-src *')), 'strict'],
    ['a foreign host', page(GOOD.replace("img-src 'self'", 'img-src https://example.org')), 'strict'],
    ['no default', page(GOOD.replace("default-src 'none'; ", '')), 'default-src'],
    ['no base', page(GOOD.replace("; base-uri 'none'", '')), 'base-uri'],
    ['no form', page(GOOD.replace("form-action 'self'; ", '')), 'form-action'],
    ['no referrer', page(GOOD, ''), 'referrer policy'],
    ['another referrer', page(GOOD, '<meta name="referrer" content="origin">'), 'referrer policy'],
    ['escaped quotation marks', page(GOOD.replaceAll("'", '&#39;')), null],
    ['otherwise escaped ones', page(GOOD.replaceAll("'", '&#x27;')), null],
    ['another meta before it', page(GOOD, undefined, '<meta name="viewport" content="width=device-width">'), null],
    ['no end of its head', page(GOOD).replace('</head>', ''), null],
    ['a policy far down, and no end of its head', page(null, undefined, `<!--${'x'.repeat(4000)}--><meta http-equiv="Content-Security-Policy" content="${GOOD}">`).replace('</head>', ''), 'content security policy'],
  ] as const)('with %s', ([, html, lacks]) => {
    if (lacks === null) expect(lacksIn(html)).toBeNull();
    else expect(lacksIn(html)).toContain(lacks);
  });
  test.for([
    ['a.html', '<img alt="" src="https://example.org/a.jpg">', true],
    ['a.html', '<img src=//example.org/a.jpg>', true],
    ['a.html', '<source srcset="http://example.org/a.webp 2x">', true],
    ['a.html', '<link rel="stylesheet" href="https://example.org/a.css">', true],
    ['a.html', '<link href="https://example.org/" rel="preconnect">', true],
    ['a.html', '<style>a{background:url(https://example.org/a.png)}</style>', true],
    ['a.css', '@import "https://example.org/a.css";', true],
    ['a.html', '<link rel="canonical" href="https://example.org/a/">', false],
    ['a.html', '<a href="https://example.org/">x</a><meta property="og:image" content="https://example.org/a.jpg">', false],
    ['a.html', '<img src="/photographs/a/b.webp">', false],
    ['a.html', '<img alt="a > b" src="//example.org/a.jpg">', true],
    ['a.html', '<p style="background:url(//example.org/a.png)">', true],
    ['a.html', '<style>a{background:url(//example.org/a.png)}</style><p style="color:red">', true],
    ['a.html', '<input value="<link rel=stylesheet href=//example.org/a>">', false],
    ['a.html', '<img alt="one src=https://example.org/a.jpg" src="/b.webp">', false],
    ['a.html', '<p>&lt;p style="background:url(//example.org/a.png)"></p>', false],
    ['a.json', '{"id":"https://example.org/a.jpg"}', false],
    ['a.html', '<template><img src="https://example.org/a.jpg" alt=""></template>', true],
    ['a.html', '<input value="<img src=//example.org/a>"><link rel="canonical" href="https://example.org/a/"><a rel="icon" href="https://example.org/">x</a>', false],
    ['a.svg', '<svg xmlns="http://www.w3.org/2000/svg"><image href="https://example.org/a.jpg"/></svg>', true],
    ['a.xml', '<feed><link rel="self" href="https://example.org/feed.xml"/></feed>', false],
  ] as const)('%s with %s loads from elsewhere: %s', ([file, text, loads]) => {
    expect(loadsFrom(file, text) !== null).toBe(loads);
  });
}); // prettier-ignore
