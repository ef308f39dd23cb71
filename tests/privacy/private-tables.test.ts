import { describe, expect, test } from 'vitest';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import type { CabinetFolder } from '../../src/catalogue/files.ts';
import { builtGuardOf, guarded, guardOf } from '../../src/privacy/guard.ts';
import { lettersOf } from '../../src/privacy/letters.ts';
import { privateSums, privateValues } from '../../src/privacy/private-values.ts';
import { isOwn } from '../../src/privacy/told-by-column.ts';
import { changed, markedCabinet } from '../catalogue/small-cabinet.ts';
import type { Change } from '../catalogue/small-cabinet.ts';

const valuesOf = (folder: CabinetFolder) => privateValues(folder, readCabinet(folder).records);
const LEDGER = 'private/ledger.csv';
const MEDAL = 'pieces/old-medal/piece.md';
const told = (folder: CabinetFolder, text: string) =>
  guarded(lettersOf(text), guardOf(folder, readCabinet(folder).records)).map(({ column }) => column);

/** Every table of private/, with all of its columns, and those of them that nobody may learn. */
const TABLES: readonly (readonly [file: string, columns: string, kept: readonly string[]])[] = [
  [
    LEDGER,
    'piece,cost,value,insured,storage,seller,find-spot,certificate,acquired,notes,mine',
    ['cost', 'value', 'insured', 'storage', 'seller', 'find-spot', 'certificate', 'acquired', 'notes', 'mine'],
  ],
  ['private/guide.csv', 'set,place,grade,low,high,currency,source,date', ['source']],
  ['private/life.csv', 'piece,date,event,amount,with,due,deal,note', ['amount', 'with', 'note']],
  ['private/deleted.csv', 'piece,number,title,deleted,seller,notes,mine', ['seller', 'notes', 'mine']],
  [
    'private/prices.csv',
    'piece,set,place,type,grade,price,currency,date,when,how,source,note',
    ['price', 'source', 'note'],
  ],
];
test.for(TABLES)('of %s is looked for what is in its columns, but for what is public anyway', async ([file, columns, kept]) => {
  const names = columns.split(',');
  const cells = names.map((_, at) => `Zealously kept 7${at} words`);
  const values = valuesOf(changed(await markedCabinet(), { [file]: `${columns}\n${cells.join(',')}\n` }));
  const found = names.filter((_, at) => values.some(({ from, value }) => from === file && value === cells[at]?.toLowerCase()));
  expect(found).toEqual(kept);
}); // prettier-ignore

test.for([
  [LEDGER, 'notes', true],
  [LEDGER, 'mine', true],
  [LEDGER, 'seller', false],
  ['private/deleted.csv', 'notes', true],
  ['private/deleted.csv', 'storage', false],
  ['private/guide.csv', 'source', false],
  ['private/life.csv', 'note', true],
  ['private/life.csv', 'with', false],
] as const)('the column %s %s may say what is public anyway: %s', ([file, column, own]) => {
  expect(isOwn(file, column)).toBe(own);
});

describe('sums', () => {
  const sumsOf = async (change: Change) =>
    privateSums(changed(await markedCabinet(), change)).map(({ money, from, column, line }) => [
      money.minor,
      money.currency,
      from,
      column,
      line,
    ]);
  test('of the guide, either end, at their lines; without a currency in the cabinet’s', async () => {
    const guide = 'set,place,grade,low,high,currency\n\nx,y,VF,120,180,EUR\nx,y,EF,300,, \n';
    const sums = await sumsOf({ 'private/guide.csv': guide, [LEDGER]: null });
    const of = 'private/guide.csv';
    expect(sums).toEqual([
      [12000, 'EUR', of, 'low', 3],
      [18000, 'EUR', of, 'high', 3],
      [30000, 'GBP', of, 'low', 4],
    ]);
    const inEuros = { 'cabinet.yaml': (text: string) => `${text}\ncurrency: EUR\n`.replace(/^currency: GBP\n/m, '') };
    const bare = { 'private/guide.csv': 'set,low\nx,120\n', [LEDGER]: null };
    expect(await sumsOf(bare)).toEqual([[12000, 'GBP', of, 'low', 2]]);
    expect(await sumsOf({ ...inEuros, ...bare })).toEqual([[12000, 'EUR', of, 'low', 2]]);
  });
  test('of a range, either end', async () => {
    const sums = await sumsOf({ 'private/guide.csv': null, [LEDGER]: 'piece,cost\nplain-penny,£80-90\n' });
    expect(sums.map(([minor]) => minor)).toEqual([8000, 9000]);
  });
});

test('a single name is looked for in the keeper’s own texts, not in the words of a built site', async () => {
  const folder = changed(await markedCabinet(), { [LEDGER]: 'piece,seller\nplain-penny,Old Tolland\n' });
  const built = builtGuardOf(folder, readCabinet(folder).records);
  expect(told(folder, 'a Tolland piece')).toEqual(['seller']);
  expect(guarded(lettersOf('a Tolland piece'), built)).toEqual([]);
  expect(guarded(lettersOf('from old Tolland'), built)).toHaveLength(1);
});

test('a note that a title says is no secret, whatever sign it begins with', async () => {
  const note = (text: string) => ({ [LEDGER]: `piece,notes\nplain-penny,${text}\n` });
  const title = { [MEDAL]: (text: string) => text.replace(/^title: .*$/m, 'title: Medal of Vera 7 of Acomb') };
  expect(told(changed(await markedCabinet(), note('– Vera 7 of Acomb')), 'Vera 7 of Acomb')).toEqual(['notes']);
  expect(told(changed(await markedCabinet(), { ...note('– Vera 7 of Acomb'), ...title }), 'Vera 7 of Acomb')).toEqual([]);
}); // prettier-ignore

// What the lists call by a longer name is public by its parts.
test.for([
  ['a mint', 'name: Kettlebury Minster\n'],
  ['the area of a mint', 'name: X\narea: The Kettlebury wolds\n'],
  ['another name of a mint', 'name: X\nnames: [{ name: Old Kettlebury }]\n'],
] as const)('a place of a find that is within the name of %s is no secret', async ([, mint]) => {
  const ledger = { [LEDGER]: 'piece,find-spot\nplain-penny,"Far Carr, Kettlebury"\n' };
  expect(told(changed(await markedCabinet(), ledger), 'At Kettlebury.')).toEqual(['find-spot']);
  expect(told(changed(await markedCabinet(), { ...ledger, 'mints/x.yaml': mint }), 'At Kettlebury.')).toEqual([]);
});

test('the exact part of a find spot is a secret, also where another find names the same place as its parish', async () => {
  const area = { [MEDAL]: (text: string) => text.replace(/^kind:/m, 'found: { area: Great Kettlewell }\nkind:') };
  const marked = await markedCabinet();
  const values = (rows: string) =>
    valuesOf(changed(marked, { ...area, [LEDGER]: `piece,find-spot\n${rows}` })).map(({ value }) => value);
  expect(values('plain-penny,"Far Carr, Great Kettlewell"\n')).not.toContain('great kettlewell');
  for (const rows of ['plain-penny,"Far Carr, Great Kettlewell"\nold-medal,"Great Kettlewell, by it"\n', 'old-medal,"Great Kettlewell, by it"\n'])
    expect(values(rows)).toContain('great kettlewell');
}); // prettier-ignore

test('which names are rare is asked anew when others are looked for in the same files', async () => {
  const many = Object.fromEntries([1, 2, 3, 4].map((at) => [`pieces/x-${at}/piece.md`, `---\nnumber: "9${at}"\ntitle: X\nkind: coin\n---\nBrocklehurst.\n`])); // prettier-ignore
  const first = changed(await markedCabinet(), { ...many, [LEDGER]: 'piece,seller\nplain-penny,Old Tolland\n' });
  valuesOf(first);
  const ledger = { file: LEDGER, text: 'piece,seller\nplain-penny,Old Brocklehurst\n' };
  const second = { ...first, files: first.files.map((one) => (one.file === LEDGER ? ledger : one)) };
  const values = valuesOf(second).map(({ value }) => value);
  expect([values.includes('old brocklehurst'), values.includes('brocklehurst')]).toEqual([true, false]);
});

test.for([
  [LEDGER, 'seller'],
  [LEDGER, 'storage'],
  [LEDGER, 'notes'],
  [LEDGER, 'home'],
  ['private/life.csv', 'with'],
] as const)('of %s %s a telephone, a mailbox and the street of an address are looked for, in small letters', async ([file, column]) => {
  const cell = '"Vera, 01904 555 0123, V.Q@example.org, Lerchenweg 14"';
  const values = valuesOf(changed(await markedCabinet(), { [file]: `piece,${column}\nplain-penny,${cell}\n` })).filter(({ from }) => from === file).map(({ value }) => value);
  for (const one of ['01904 5550123', 'lerchenweg', 'lerchenwg']) expect(values).toContain(one);
  expect(values.map((value) => value.toLowerCase())).toContain('v.q (at) example (dot) org');
  expect(values.filter((value) => /lerchen/i.test(value) && value !== value.toLowerCase())).toEqual([]);
}); // prettier-ignore

test('with whom pieces were dealt is looked for by each part, in however many rows', async () => {
  const rows = 'plain-penny,2001,lent,"Vera Quill, by post"\n'.repeat(5);
  const values = valuesOf(changed(await markedCabinet(), { 'private/life.csv': `piece,date,event,with\n${rows}` }));
  expect(values.map(({ value }) => value)).toContain('vera quill');
});

test('a name of the lists is no seller, alone or between commas', async () => {
  const values = async (seller: string) =>
    valuesOf(changed(await markedCabinet(), { [LEDGER]: `piece,seller\nplain-penny,"${seller}"\n` }))
      .filter(({ from }) => from === LEDGER)
      .map(({ value }) => value);
  for (const cell of ['Plain Town', ' Plain Town', 'Plain Town ', 'PLAIN TOWN']) expect(await values(cell)).toEqual([]);
  expect(await values('Plain Town, by post')).not.toContain('plain town');
  expect(await values('Plain King, by post')).not.toContain('plain king');
  expect(await values('Plain Tower, by post')).toContain('plain tower');
});
