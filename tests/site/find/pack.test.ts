import { expect, test } from 'vitest';
import { NO_ADDRESSES } from '../../../src/catalogue/addresses.ts';
import { handOver } from '../../../src/catalogue/handed-over.ts';
import { readFolder } from '../../../src/catalogue/files.ts';
import { readCabinet } from '../../../src/catalogue/read-cabinet.ts';
import { readNumbers, writeNumbers } from '../../../src/site/find/number-list.ts';
import { packRecords, packTexts } from '../../../src/site/find/pack.ts';
import { FACETS, PARTS } from '../../../src/site/find/record.ts';
import type { FindRecord } from '../../../src/site/find/record.ts';
import { placesOf, shownAt, tableOf } from '../../../src/site/find/table.ts';
import { findRecords } from '../../../src/site/models/find/record-of.ts';
import { wholeCabinet } from '../whole-cabinet.ts';

const folder = (await readFolder('content')) ?? { at: 'content', files: [] };
handOver({ records: readCabinet(folder).records, photographs: '', hasAddress: true, addresses: NO_ADDRESSES });
const records = await findRecords(await wholeCabinet('content'));
const table = tableOf(packRecords(records, 'a'), packTexts(records, 'a'));

test.for([[[]], [[0]], [[31, 32, 33]], [[0, 1, 2, 1023, 1024, 1056, 99_999, 1_048_575]]])(
  'rising numbers are read as they were written: %j',
  ([numbers = []]) => {
    expect([...readNumbers(writeNumbers(numbers))]).toEqual(numbers);
  },
);

test('a list of every record is a sign a record', () => {
  expect(writeNumbers([...Array(1000).keys()])).toHaveLength(1000);
});

test('every record is laid as it was before it was packed', () => {
  const laid = ({ id, to, title, number, line, grade, note, face, by }: FindRecord): unknown => ({ id, to, title, number, line, grade, note, face, by }); // prettier-ignore
  expect(records.map((_record, at) => shownAt(table, at))).toEqual(records.map(laid));
});

test('a copy without a server names the page as well, and the piece is known all the same', () => {
  const packed = { ...packRecords(records, 'a'), to: records.map(({ id }) => `../pieces/${id}/index.html`) };
  const copied = tableOf(packed, null);
  expect(records.map((_record, at) => shownAt(copied, at).id)).toEqual(records.map(({ id }) => id));
});

test('texts of another making of the site are refused: a place in them is another piece', () => {
  expect(() => tableOf(packRecords(records, 'a'), packTexts(records, 'b'))).toThrow('another site');
});

test('each word of each part has just the records that hold it', () => {
  const held = (part: string, of: (record: FindRecord) => readonly string[] | undefined): readonly string[] =>
    records.flatMap((record, at) => (of(record) ?? []).map((value) => `${part} ${value} ${at}`));
  const known = [...table.words.values()].flatMap(({ word, in: lists }) =>
    lists.flatMap(({ part, list }) => Array.from(placesOf(list), (at) => `${part} ${word} ${at}`)),
  );
  expect(known.toSorted()).toEqual(PARTS.flatMap((part) => held(part, ({ words }) => words[part])).toSorted());
  const facets = FACETS.flatMap((facet) =>
    table.facets[facet].flatMap(([value, list]) => Array.from(placesOf(list), (at) => `${facet} ${value} ${at}`)),
  );
  expect(facets.toSorted()).toEqual(FACETS.flatMap((facet) => held(facet, (one) => one.facets[facet])).toSorted());
});
