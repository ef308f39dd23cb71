import { expect, test } from 'vitest';
import { pieceSearch, piecesIn } from '../../src/privacy/hidden-pieces.ts';
import type { Records } from '../../src/catalogue/records.ts';

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
