import { describe, expect, test } from 'vitest';
import { odsOf } from './make-workbook.ts';
import { headingsOf, readOne, textsOf } from './read-one.ts';

const text = (word: string): string => `<t:table-cell o:value-type="string"><text:p>${word}</text:p></t:table-cell>`;
const HEAD = `<t:table-row>${text('No')}${text('Title')}</t:table-row>`;

// Clauses are of OpenDocument 1.3 part 3.
describe('cells of an OpenDocument workbook made by hand', () => {
  test.for([
    [
      'paragraphs, spans, blanks and breaks (6.1)',
      '<t:table-cell o:value-type="string"><text:p>Pen<text:span>ny</text:span>,<text:s text:c="2"/>York<text:line-break/>3b</text:p><text:p>second\n   line</text:p></t:table-cell>',
      'Penny,  York\n3b\nsecond line',
      undefined,
    ],
    [
      'a comment, which is not its text (14.1)',
      '<t:table-cell o:value-type="string"><o:annotation><dc:creator>K</dc:creator><text:p>from an aunt</text:p></o:annotation><text:p>Penny</text:p></t:table-cell>',
      'Penny',
      undefined,
    ],
    [
      'how a word is pronounced, which is not its text (6.4)',
      '<t:table-cell o:value-type="string"><text:p><text:ruby><text:ruby-base>銀</text:ruby-base><text:ruby-text>ぎん</text:ruby-text></text:ruby></text:p></t:table-cell>',
      '銀',
      undefined,
    ],
    [
      'a number with its form (19.389)',
      '<t:table-cell o:value-type="float" o:value="1.3799999999999999"><text:p>1,38</text:p></t:table-cell>',
      '1,38',
      { kind: 'number', figure: '1.38' },
    ],
    [
      'a number without',
      '<t:table-cell o:value-type="float" o:value="1.38"/>',
      '1.38',
      { kind: 'number', figure: '1.38' },
    ],
    [
      'a sum (19.383)',
      '<t:table-cell o:value-type="currency" o:currency="SEK" o:value="50"><text:p>50 kr</text:p></t:table-cell>',
      '50 kr',
      { kind: 'money', figure: '50', currency: 'SEK' },
    ],
    [
      'a day',
      '<t:table-cell o:value-type="date" o:date-value="2011-05-14T10:00:00"><text:p>14 May 2011</text:p></t:table-cell>',
      '14 May 2011',
      { kind: 'day', iso: '2011-05-14' },
    ],
    [
      'a day before the calendar of today, of which only what is shown is told',
      '<t:table-cell o:value-type="date" o:date-value="1066-10-14"><text:p>14/10/1066</text:p></t:table-cell>',
      '14/10/1066',
      undefined,
    ],
    [
      'a day of which the year is shown',
      '<t:table-cell o:value-type="date" o:date-value="1279-01-01"><text:p>1279</text:p></t:table-cell>',
      '1279',
      undefined,
    ],
    [
      'a share',
      '<t:table-cell o:value-type="percentage" o:value="0.925"><text:p>92.5%</text:p></t:table-cell>',
      '92.5%',
      { kind: 'number', figure: '0.925' },
    ],
    ['a truth', '<t:table-cell o:value-type="boolean" o:boolean-value="true"/>', 'TRUE', undefined],
    [
      'an error',
      '<t:table-cell t:formula="of:=1/0" o:value-type="string" o:string-value="" calcext:value-type="error"><text:p>#DIV/0!</text:p></t:table-cell>',
      '#DIV/0!',
      { kind: 'error', says: '#DIV/0!' },
    ],
    [
      'an error by number',
      '<t:table-cell t:formula="of:=A(" o:value-type="float" o:value="0"><text:p>Err:502</text:p></t:table-cell>',
      'Err:502',
      { kind: 'error', says: 'Err:502' },
    ],
    [
      'a caption drawn on the cell, which is not its text',
      '<t:table-cell o:value-type="string"><draw:frame><draw:text-box><text:p>drawn</text:p></draw:text-box></draw:frame><text:p>Penny</text:p></t:table-cell>',
      'Penny',
      undefined,
    ],
  ] as const)('%s', async ([, cell, shown, value]) => {
    const sheet = await readOne(odsOf(`${HEAD}<t:table-row>${text('a')}${cell}</t:table-row>`));
    expect(sheet.rows[0]?.cells[1]).toEqual(value === undefined ? { text: shown } : { text: shown, value });
  });

  test('repeated cells and rows are so many (19.675, 19.677); a million empty ones are none', async () => {
    const repeated = `<t:table-row t:number-rows-repeated="2"><t:table-cell t:number-columns-repeated="2" o:value-type="float" o:value="7"><text:p>7</text:p></t:table-cell></t:table-row>`;
    const empty =
      '<t:table-row t:number-rows-repeated="1048573"><t:table-cell t:number-columns-repeated="16384"/></t:table-row>';
    const sheet = await readOne(odsOf(`${HEAD}${repeated}${empty}`));
    expect(sheet.rows.map(({ row, cells }) => [row, cells.length])).toEqual([
      [2, 2],
      [3, 2],
    ]);
  });

  test('a merged text covers its rows (19.678), and a title its columns', async () => {
    const rows = `<t:table-row>${text('1')}<t:table-cell t:number-rows-spanned="2"><text:p>Edward I</text:p></t:table-cell></t:table-row><t:table-row>${text('2')}<t:covered-table-cell/></t:table-row>`;
    expect(textsOf(await readOne(odsOf(`${HEAD}${rows}`)))).toEqual([
      ['1', 'Edward I'],
      ['2', 'Edward I'],
    ]);
  });

  test('columns, rows and groups of rows may be hidden (19.749, 19.614)', async () => {
    const rows = `<t:table-column/><t:table-column t:visibility="collapse"/>${HEAD}<t:table-row t:visibility="filter">${text('1')}${text('x')}</t:table-row><t:table-row-group t:display="false"><t:table-row>${text('2')}${text('y')}</t:table-row></t:table-row-group><t:table-row>${text('3')}${text('z')}</t:table-row>`;
    const sheet = await readOne(odsOf(rows));
    expect(sheet.columns.map(({ isHidden }) => isHidden)).toEqual([false, true]);
    expect(sheet.rows.map(({ isHidden }) => isHidden)).toEqual([true, true, undefined]);
  });

  test('a filter says where the headings are (9.4.15)', async () => {
    const rows = `${HEAD}<t:table-row>${text('Number')}${text('Name')}</t:table-row><t:table-row>${text('1')}${text('Penny')}</t:table-row>`;
    const after =
      '<t:database-ranges><t:database-range t:display-filter-buttons="true" t:target-range-address="Coins.A2:Coins.B3"/></t:database-ranges>';
    expect(headingsOf(await readOne(odsOf(rows, '', after)))).toEqual(['Number', 'Name']);
  });

  test('what was deleted is no sheet and no cell (9.9)', async () => {
    const before = `<t:tracked-changes><t:deletion><t:table-cell o:value-type="string"><text:p>gone</text:p></t:table-cell></t:deletion></t:tracked-changes>`;
    expect(
      textsOf(await readOne(odsOf(`${HEAD}<t:table-row>${text('1')}${text('Penny')}</t:table-row>`, before))),
    ).toEqual([['1', 'Penny']]);
  });
});
