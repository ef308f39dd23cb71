import { describe, expect, test } from 'vitest';
import { tellWithout, totalsOf } from '../../src/catalogue/ledger-totals.ts';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import { readCsv } from '../../src/catalogue/csv.ts';
import { changed } from './small-cabinet.ts';

const LEDGER = `piece,value,storage
a,10 GBP,"Cabinet A, tray 1, well 3"
b,20.50 GBP,"Cabinet A, tray 1, well 4"
c,5 EUR,"Cabinet A, tray 2, well 1"
d,,Box
sold,900 GBP,Box
example-penny,45 GBP,
`;
const piece = (number: string, more = '') => `---\nnumber: "${number}"\ntitle: T\nkind: coin\n${more}---\n`;
const { records } = readCabinet(
  changed(
    { at: '', files: [] },
    {
      'pieces/a/piece.md': piece('1', 'metal: silver\n'),
      'pieces/b/piece.md': piece('2', 'metal: copper\n'),
      'pieces/c/piece.md': piece('3', 'metal: silver\n'),
      'pieces/d/piece.md': piece('4'),
      'pieces/sold/piece.md': piece('5', 'status: sold\n'),
      'pieces/example-penny/piece.md': piece('6'),
    },
  ),
);
const ledger = new Map(readCsv(LEDGER).rows.map((row) => [row['piece'] ?? '', row]));

describe('the totals of a cabinet', () => {
  // Added up by hand: 10 + 20.50 GBP, 5 EUR; d has none; the sold piece and the example are left out.
  test('add up each currency by itself, and name what has no figure', () => {
    const { all, leftOut } = totalsOf(records.pieces, ledger, 'value', 'nothing');
    expect(all).toEqual({ name: 'All', pieces: 4, sums: ['EUR 5.00', 'GBP 30.50'], without: ['d'] });
    expect(tellWithout(all, 'value')).toBe('1 piece has no value: d.');
    expect(leftOut.map(({ pieces }) => pieces)).toEqual([['sold'], ['example-penny']]);
  });

  // Added up by hand: 10 + 20.50 to 25.50 GBP.
  test('keep a range a range: the low ends and the high ends add up each for themselves', () => {
    const ranged = new Map(ledger).set('b', { piece: 'b', value: '£20.50 to £25.50', storage: '' });
    expect(totalsOf(records.pieces, ranged, 'value', 'nothing').all).toMatchObject({
      sums: ['EUR 5.00', 'GBP 30.50 to GBP 35.50'],
      without: ['d'],
    });
  });

  test('by tray and by metal come to the same pieces', () => {
    const trays = totalsOf(records.pieces, ledger, 'value', 'storage').groups;
    expect(trays.map(({ name, sums }) => [name, sums])).toEqual([
      ['Box', []],
      ['Cabinet A, tray 1', ['GBP 30.50']],
      ['Cabinet A, tray 2', ['EUR 5.00']],
    ]);
    const metals = totalsOf(records.pieces, ledger, 'value', 'metal').groups;
    expect(metals.map(({ name, pieces }) => [name, pieces])).toEqual([['copper', 1], ['metal not recorded', 1], ['silver', 2]]); // prettier-ignore
  });
});
