import { describe, expect, test } from 'vitest';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import { placesIn } from '../../src/catalogue/rules/rule.ts';
import { checkAsWritten, checkExactLocations } from '../../src/privacy/exact-in-text.ts';
import { checkHidden, checkPaths } from '../../src/privacy/hidden-in-text.ts';
import { changed, markedCabinet } from '../catalogue/small-cabinet.ts';
import type { Change } from '../catalogue/small-cabinet.ts';

const PENNY = 'pieces/plain-penny/piece.md';
const HIDDEN = 'pieces/hidden-noble/piece.md';
const UNLISTED = 'pieces/unlisted-groat/piece.md';
const SHOW = 'exhibits/small-show/exhibit.md';

/** What the rules say of the marked cabinet after a change, in the order of the rules: kind, file, line, field. */
async function told(change: Change): Promise<readonly string[]> {
  const folder = changed(await markedCabinet(), change);
  const { records } = readCabinet(folder);
  const place = placesIn(folder);
  return [
    ...[checkHidden, checkPaths, checkAsWritten].flatMap((rule) => rule(records, place, '2026-11-30')),
    ...checkExactLocations(records, folder),
  ].map(({ kind, file, line, field }) => [kind, file, line, field].join(' '));
}
const fact = (words: string) => (text: string) => text.replace(/^---\n/, `---\n${words}\n`);
const last = (words: string) => (text: string) => `${text.trimEnd()}\n${words}\n`;

/** Every kind of text that a visitor may read, and where a slip in it is told: file, line, field. */
const PLACES: readonly (readonly [what: string, file: string, put: (words: string) => (text: string) => string, where: string])[] = [
  ['a fact of a piece', PENNY, (words) => fact(`issuer: ${words}`), '2 issuer'],
  ['an entry of a list in a piece', PENNY, (words) => (text) => text.replace('[first]', `[first, ${words}]`), '25 tags.1'],
  ['a part of a fact of a piece', PENNY, (words) => (text) => text.replace('source: a bill', `source: ${words}`), '22 provenance.0.source'],
  ['the story of a piece', PENNY, (words) => (text) => `${text.trimEnd()}\n\n${words}\n`, '29 '],
  ['a ruler', 'rulers/plain-king.yaml', (words) => last(`note: ${words}`), '6 note'],
  ['a mint', 'mints/plain-town.yaml', (words) => last(`note: ${words}`), '4 note'],
  ['a denomination', 'denominations/penny.yaml', (words) => last(`note: ${words}`), '* note'],
  ['an era scheme', 'eras/plain-eras.yaml', (words) => last(`note: ${words}`), '* note'],
  ['a set', 'sets/plain-set.yaml', (words) => last(`note: ${words}`), '6 note'],
  ['an exhibit', SHOW, (words) => (text) => text.replace('One penny.', words), '3 scope'],
  ['the text of a group', SHOW, (words) => (text) => text.replace('There is one.', words), '8 cases.0.groups.0.text'],
  ['a label of an exhibit', SHOW, (words) => (text) => text.replace('[plain-penny]', `[{ piece: plain-penny, label: ${words} }]`), '9 cases.0.groups.0.pieces.0.label'],
  ['the statement of an exhibit', SHOW, (words) => (text) => text.replace('A statement.', words), '12 '],
  ['a book', 'works/plain-book.yaml', (words) => last(`note: ${words}`), '* note'],
  ['the cabinet itself', 'cabinet.yaml', (words) => (text) => text.replace(/about: .*/, `about: ${words}`), '5 about'],
  ['a series', 'types/pence/series.yaml', (words) => () => `title: Pence\nsource: { work: plain-book }\nlevels: [class]\nnote: ${words}\n`, '4 note'],
  ['a cell of a table of types', 'types/pence/types.csv', (words) => () => `id,broader,level,label\n1,,class,${words}\n`, '2 '],
]; // prettier-ignore
const SLIPS = [
  ['hidden-in-text', 'like hidden-noble once'],
  ['hidden-in-text', 'the Noble that *must* not be seen'],
  ['hidden-in-text', 'number HIDDEN-0003 of old'],
  ['unlisted-in-text', 'like unlisted-groat once'],
  ['unlisted-in-text', 'the Groat that stands in no list'],
  ['path-in-text', 'scanned to /home/somebody/coins/ once'],
  ['spot-too-exact', 'at SE 603 523 in clay'],
] as const;

describe.for(PLACES)('in %s', ([, file, put, where]) => {
  const more: Change = file === 'types/pence/types.csv' ? { 'types/pence/series.yaml': 'title: Pence\nsource: { work: plain-book }\nlevels: [class]\n' } : {}; // prettier-ignore
  // A rule may not look into these: a label has its piece's name beside it, and an address of the web may look like a path.
  test.for(SLIPS)('%s: “%s” is told where it stands, once', async ([kind, words]) => {
    const found = await told({ ...more, [file]: put(words) });
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(new RegExp(`^${kind} ${file} ${where.replace('*', '\\d+')}$`));
  });
  test('a plain word is told of nowhere', async () => {
    expect(await told({ ...more, [file]: put('a plain word about it') })).toEqual([]);
  });
});

describe('what is published nowhere may say all of it', () => {
  const ALL = 'hidden-noble, unlisted-groat, /home/somebody/coins/x, SE 603 523';
  test.for<readonly [string, Change]>([
    ['a hidden piece', { [HIDDEN]: (text) => `${fact(`issuer: "${ALL}"`)(text)}\n${ALL}\n` }],
    ['what a sheet said', { [PENNY]: fact('as-written: { weight: "hidden-noble, /home/somebody/coins/x" }') }],
    ['an unlisted piece of itself', { [UNLISTED]: last('unlisted-groat, the Groat that stands in no list') }],
  ])('%s', async ([, change]) => {
    expect(await told(change)).toEqual([]);
  });
  test('a piece was once called so, which no other text may say', async () => {
    const hidden = (text: string) => text.replace('publish: no', 'publish: no\nformerly: [old-noble-of-mine]');
    expect(await told({ [HIDDEN]: hidden, [PENNY]: (text) => text.replace('formerly: penny-one', 'formerly: [penny-one]') })).toEqual([]);
    expect(await told({ [HIDDEN]: hidden, [PENNY]: last('once called old-noble-of-mine') })).toEqual([`hidden-in-text ${PENNY} 28 `]);
  }); // prettier-ignore
  test('an exhibit names its pieces by their ids, which another rule judges', async () => {
    expect(await told({ [SHOW]: (text) => text.replace('[plain-penny]', '[unlisted-groat]') })).toEqual([]);
    expect(await told({ [SHOW]: (text) => text.replace('[plain-penny]', '[{ piece: unlisted-groat, side: obverse }]') })).toEqual([]);
  }); // prettier-ignore
});

describe('exact places', () => {
  test.for([
    'number: "SE 603523"',
    'references: [plain-book 12, "plain-book SE603523"]',
    'dies: { obverse: SE 603 523 }',
    // Common practice: not dated, and the letters of a square of the National Grid.
    'date: ND 1829-1835?',
  ])('figures of a list or a book are none: %s', async (words) => {
    const field = words.slice(0, words.indexOf(':'));
    const found = await told({ [PENNY]: (text) => fact(words)(text.replace(new RegExp(`^${field}:.*\\n`, 'm'), '')) });
    expect(found).toEqual([]);
  });
  test('neither is a name in another list, nor the address of a book', async () => {
    expect(await told({ 'rulers/plain-king.yaml': last('identifiers: { elsewhere: SE603523 }') })).toEqual([]);
    expect(await told({ 'works/plain-book.yaml': last('address: https://example.org/SE603523') })).toEqual([]);
  });
  test('one that is escaped is told at its line, and none is repeated', async () => {
    const folder = changed(await markedCabinet(), { [PENNY]: last('Clay.\nAt SE&nbsp;603&nbsp;523.') });
    const [found] = checkExactLocations(readCabinet(folder).records, folder);
    expect(found).toMatchObject({ line: 29, says: expect.stringContaining('"SE ··· ···"') as string });
    const sheet = changed(await markedCabinet(), { [PENNY]: fact('as-written: { ledger cost: 5 quid }') });
    expect(checkAsWritten(readCabinet(sheet).records, placesIn(sheet), '')[0]?.says).toContain('What a sheet said of cost is private');
  });
  test('a house is one in a story, and in what a keeper tells of the cabinet or an exhibit, not in a fact: a token may bear it', async () => {
    const house = '14 Low Petergate Lane';
    expect(await told({ [PENNY]: last(house) })).toEqual([`spot-too-exact ${PENNY} 28 `]);
    expect(await told({ 'cabinet.yaml': (text) => text.replace(/about: .*/, `about: At ${house}.`) })).toEqual(['spot-too-exact cabinet.yaml 5 about']);
    expect(await told({ [SHOW]: (text) => text.replace('One penny.', house) })).toEqual([`spot-too-exact ${SHOW} 3 scope`]);
    expect(await told({ [SHOW]: (text) => text.replace('There is one.', house) })).toEqual([`spot-too-exact ${SHOW} 8 cases.0.groups.0.text`]);
    expect(await told({ [PENNY]: fact(`issuer: Grocer of ${house}`) })).toEqual([]);
  });
  test('of a story that names several the first is told, and one that is parted by a line at its beginning', async () => {
    expect(await told({ [PENNY]: last('Here.\nAt SE 603 523.\nThen TA 015 412.') })).toEqual([`spot-too-exact ${PENNY} 29 `]);
    expect(await told({ [PENNY]: last('It came from SE 603\n523 in clay.') })).toEqual([`spot-too-exact ${PENNY} 28 `]);
  });
  test('what a sheet said of a private column is told in its piece, and of another is not', async () => {
    const said = (name: string) => told({ [PENNY]: fact(`as-written: { ${name}: some words }`) });
    expect(await said('storage')).toEqual([`ledger-in-piece ${PENNY} 2 as-written.storage`]);
    expect(await said('ledger cost')).toEqual([`ledger-in-piece ${PENNY} 2 as-written.ledger cost`]);
    expect(await said('weight')).toEqual([]);
  });
}); // prettier-ignore
