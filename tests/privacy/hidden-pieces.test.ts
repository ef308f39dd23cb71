import { expect, test } from 'vitest';
import { namedByHiddenOnly, pieceSearch, piecesIn } from '../../src/privacy/hidden-pieces.ts';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import type { Records } from '../../src/catalogue/records.ts';
import { changed, markedCabinet } from '../catalogue/small-cabinet.ts';

/** A cabinet of hidden pieces in folders that are only numbers. */
const hidden = (count: number): Pick<Records, 'pieces'> => ({
  pieces: Array.from({ length: count }, (_, at) => ({
    id: String(100 + at),
    file: '',
    story: '',
    pictures: [],
    fields: { publish: 'no', title: `Hidden ${at}`, number: String(at) },
  })) as unknown as Records['pieces'],
});

/** Where a number is an address or the first cell of a row, and where it is any number. */
const TEXTS = [
  ['<a href="/pieces/105/">', ['105']],
  ['<img src="/photographs/105/obverse.webp">', ['105']],
  ['{"id":"105"}', ['105']],
  ['{"id": "105"}', ['105']],
  ['piece,cost\n105,x', ['105']],
  ['<a href="/pieces/1050/">', []],
  ['<a href="/pieces/105-a/">', []],
  ['weighs 105 grains', []],
  ['/pieces/105/ and /pieces/106/', ['105', '106']],
] as const;

test.for([3, 10, 60].flatMap((count) => TEXTS.map(([text, ids]) => ({ count: Math.max(count, 7), text, ids }))))(
  'of $count pieces in folders that are numbers, “$text” tells of $ids',
  ({ count, text, ids }) => {
    expect(piecesIn(pieceSearch(hidden(count)), 'index.html', text).map(({ id }) => id)).toEqual(ids);
  },
);

/** Hidden pieces with these names, and as many others as it takes to look for them in the way of a large cabinet. */
type Names = { readonly id: string; readonly title?: string; readonly number?: string; readonly publish?: string; readonly formerly?: readonly string[] }; // prettier-ignore
const cabinet = (names: readonly Names[], others: number): Pick<Records, 'pieces'> => ({
  pieces: [
    ...names,
    ...Array.from({ length: others }, (_, at) => ({ id: `other-${at}`, number: `OTHER-${at}` })),
    ...Array.from({ length: others }, (_, at) => ({ id: String(90_000 + at) })),
  ].map(({ id, ...fields }: Names) => ({
    id,
    fields: { publish: 'no', title: `Title of ${id}`, number: '1', ...fields },
  })) as unknown as Records['pieces'],
});
const told = (names: Names | readonly Names[], text: string, others: number, file = 'index.html'): readonly string[] =>
  piecesIn(pieceSearch(cabinet([names].flat(), others)), file, text, text.toLowerCase().replaceAll('-', ' ')).map(
    ({ id, publish }) => `${id} ${publish}`,
  );

/** What each name is seen in, and what it is not seen in. An id that is a plain word is seen as an address alone. */
const SEEN: readonly (readonly [what: string, names: Names | readonly Names[], inside: readonly string[], not: readonly string[]])[] = [
  ['an id of several words', { id: 'york-penny' }, ['see york-penny.', 'york-penny', '/york-penny/', '(york-penny)'], ['york-penny-2', 'new-york-penny', 'york-pennyx', 'xyork-penny', '2york-penny', 'york-penny2', 'york']],
  ['an id with a figure', { id: 'no17' }, ['see no17'], ['no171', 'no1']],
  ['an id of three letters', { id: 'a-1' }, ['<a href="/pieces/a-1/">'], ['lot a-1']],
  ['an id that is a long word', { id: 'quincunxes' }, ['the quincunxes'], ['quincunx']],
  ['an id that is a short word', { id: 'florin' }, ['/pieces/florin/', '/iiif/florin/', '/compare/florin', '"id":"florin"', 'piece\nflorin,1'], ['a florin', 'x/florin/', 'piece\nflorin 1']],
  ['an id of figures', { id: '1279-2' }, ['/pieces/1279-2/', '/photographs/1279-2/'], ['1279-2 and', '/pieces/1279-21/']],
  ['an old id', { id: 'york-penny', formerly: ['penny-of-old', 'old'] }, ['a penny-of-old', '/pieces/old/'], ['an old one']],
  ['a title', { id: 'x1', title: 'Noble of Erewhon' }, ['the Noble of Erewhon.', 'NOBLE OF EREWHON'], ['Noble of Erewhonia', 'xnoble of Erewhon']],
  ['a title and a number with dashes round them', { id: 'x1', title: '– Noble of Erewhon –', number: '_AB77_' }, ['the Noble of Erewhon.', 'no. ab77'], []],
  ['a number with letters', { id: 'x1', number: 'AB-77' }, ['number ab-77'], ['ab-778', 'ab 7']],
  ['a number of figures alone', { id: 'x1', number: '123456' }, [], ['number 123456']],
  ['a short number with a letter', { id: 'x1', number: 'A12' }, [], ['lot A12']],
  ['a title that a listed piece has too', [{ id: 'x1', title: 'Penny of John' }, { id: 'y1', title: 'Penny of John', publish: 'yes' }], [], ['a Penny of John']],
  ['a title that is in one of a listed piece', [{ id: 'x1', title: 'Penny of John' }, { id: 'y1', title: 'Cut Penny of John, York', publish: 'yes' }], [], ['a Penny of John']],
  ['a title that holds one of a listed piece', [{ id: 'x1', title: 'Cut Penny of John' }, { id: 'y1', title: 'Penny of John', publish: 'yes' }], ['a Cut Penny of John'], ['a Penny of John']],
  ['a title that another hidden piece has too', [{ id: 'x1', title: 'Penny of John' }, { id: 'x2', title: 'Penny of John' }], ['a Penny of John'], []],
]; // prettier-ignore
test.for([0, 30].flatMap((others) => SEEN.map((row) => ({ others, row, what: row[0] }))))(
  '$what, beside $others other hidden pieces',
  ({ others, row: [, names, inside, not] }) => {
    for (const text of inside) expect([text, told(names, text, others).length]).toEqual([text, 1]);
    for (const text of not) expect([text, told(names, text, others)]).toEqual([text, []]);
  },
);

test.for([0, 30])('a listed piece is never told of, an unlisted one as unlisted (beside %s others)', (others) => {
  expect(told({ id: 'york-penny', publish: 'yes' }, 'york-penny, Title of york-penny, /pieces/york-penny/', others)).toEqual([]);
  expect(told({ id: 'york-penny', publish: 'unlisted' }, 'york-penny', others)).toEqual(['york-penny unlisted']);
}); // prettier-ignore

test.for([0, 30])('beneath pieces/ a plain id may be the next folder (beside %s others)', (others) => {
  expect(told({ id: '12' }, '<a href="../12/">', others, 'pieces/a/index.html')).toEqual(['12 no']);
  expect(told({ id: '12' }, '<a href="../12/">', others, 'sets/a/index.html')).toEqual([]);
  expect(told({ id: '12' }, '<a href="/pieces/12/">', others, 'pieces/a/index.html')).toEqual(['12 no']);
  expect(told({ id: '12' }, '<a href="ab/12/">', others, 'pieces/a/index.html')).toEqual([]);
});

test.for([0, 30])('two of one plain name are both told of (beside %s others)', (others) => {
  expect(told([{ id: 'crown' }, { id: 'x1', formerly: ['crown'] }], '/pieces/crown/', others)).toEqual(['crown no', 'x1 no']); // prettier-ignore
});

test('what only a piece that is not published names is told of, and what another names as well is not', async () => {
  const change = (names: string) => ({
    'rulers/second-king.yaml': 'name: Second\n',
    'mints/second-town.yaml': 'name: Second\n',
    'denominations/second.yaml': 'name: second\n',
    'pieces/hidden-noble/piece.md': (text: string) => text.replace(/^ruler: .*\nmint: .*$/m, names),
  });
  const named = async (names: string) => namedByHiddenOnly(readCabinet(changed(await markedCabinet(), change(names))).records);
  expect(await named('ruler: [plain-king, second-king]')).toEqual(['rulers/second-king']);
  expect(await named('ruler: plain-king\nstruck-for: second-king')).toEqual(['rulers/second-king']);
  expect(await named('ruler: plain-king\ndenomination: second')).toEqual(['denominations/second']);
  expect(await named('ruler: plain-king\nmint: second-town')).toEqual(['mints/second-town']);
  expect(await named('ruler: plain-king')).toEqual([]);
  const { records } = readCabinet(await markedCabinet());
  const hidden = records.pieces.find(({ fields }) => fields.publish === 'no')?.fields;
  expect(namedByHiddenOnly(records)).toContain(`rulers/${String([hidden?.ruler].flat()[0])}`);
}); // prettier-ignore
