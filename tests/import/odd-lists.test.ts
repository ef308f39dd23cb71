import { describe, expect, test } from 'vitest';
import type { CabinetFolder } from '../../src/catalogue/files.ts';
import { headingsOfFields } from '../../src/import/columns/heading-of-field.ts';
import { parseMapping } from '../../src/import/columns/parse-mapping.ts';
import { answer } from '../../src/import/columns/question.ts';
import { suggestMapping } from '../../src/import/columns/suggest-mapping.ts';
import { readRows } from '../../src/import/cells/read-rows.ts';
import { bring, EMPTY, textOf } from './plan/bring.ts';
import type { Brought } from './plan/bring.ts';
import { readOne } from './sheets/read-one.ts';

// What lists kept by hand hold besides coins: dittos, blanks that mean the same, copies, wants and lots. Every row is invented.

const NO_LISTS = { rulers: [], mints: [], denominations: [], works: [] };

async function imported(csv: string, mappingText: string, wishes: Parameters<typeof bring>[2] = {}, onto: CabinetFolder = EMPTY): Promise<Brought> {
  const sheet = await readOne(csv);
  const mapping = parseMapping(mappingText);
  if (!mapping.ok) throw new Error(mapping.problem);
  const rows = readRows(sheet, mapping.value);
  return bring(rows.drafts, onto, {
    setAside: rows.setAside,
    headings: headingsOfFields(sheet, mapping.value),
    cells: new Map(sheet.rows.map(({ row, cells }) => [row, cells.map(({ text }) => text)])),
    ...wishes,
  });
} // prettier-ignore

const pieceOf = (folder: CabinetFolder, id: string): string => textOf(folder, `pieces/${id}/piece.md`);

describe('what points to the row above', () => {
  // Common practice in English, German and French lists.
  test.for([
    'ditto',
    'dito',
    'do.',
    'dto.',
    'Idem',
    's. o',
    'w. o.',
    'ebenso',
    '"',
    '– „ –',
    '"   "',
    '~',
    '↓',
    'wie oben',
  ])(
    '%s is asked about in a public column and in a private one, and is read where the mapping says so',
    async (mark) => {
      const cell = `"${mark.replaceAll('"', '""')}"`;
      const csv = `No,Ruler,Mint,Tray\n1,Hadrian,Rome,Tray 4\n2,${cell},${cell},${cell}\n`;
      const columns = 'columns: { No: number, Ruler: ruler, Mint: mint, Tray: ledger storage }\n';
      const asked = await imported(csv, columns);
      expect(asked.plan.unread.filter(({ row }) => row === 3).map(({ field }) => field)).toEqual(['ruler', 'mint', 'ledger storage']); // prettier-ignore
      expect(pieceOf(asked.folder, '2')).not.toMatch(/^(?:ruler|mint):/m);
      expect(textOf(asked.folder, 'private/ledger.csv')).not.toMatch(/storage[^]*\n2,[^]*Tray 4/);
      const told = await imported(csv, `as-above: [Ruler, Mint, Tray]\n${columns}`);
      expect(told.plan.unread).toEqual([]);
      expect(pieceOf(told.folder, '2')).toContain('ruler: hadrian');
      expect(textOf(told.folder, 'private/ledger.csv').match(/Tray 4/g)).toHaveLength(2);
    },
  );

  test('a ditto in one part of a cell is no legend', async () => {
    const { folder, plan } = await imported(
      'No,Legends\n1,EDW R / CIVITAS LONDON\n2,ditto / CIVITAS CANTOR\n',
      'columns: { No: number, Legends: "{obverse legend} / {reverse legend}" }\n',
    );
    expect(pieceOf(folder, '2')).not.toMatch(/^obverse:/m);
    expect(pieceOf(folder, '2')).toContain('CIVITAS CANTOR');
    expect(plan.unread.map(({ text }) => text)).toEqual(['ditto']);
  });

  test('an empty cell says what stands above where the mapping says so, and a heading between the rows begins anew', async () => {
    const csv =
      'No,Land,Nominal,Metall,Jahr\n1,Würzburg,Schilling,Ag,1690\n2,,Kreuzer,Ag,1691\n3,,Pfennig,Ag,1692\n,NOTGELD,,,\n4,,50 Pfennig,Zn,1918\n';
    const columns = 'columns: { No: number, Land: issuer, Nominal: denomination, Metall: metal, Jahr: date }\n';
    const silent = await imported(csv, columns);
    expect(pieceOf(silent.folder, '2')).not.toContain('issuer');
    const { folder } = await imported(csv, `as-above: [Land]\n${columns}`);
    expect(pieceOf(folder, '3')).toContain('issuer: Würzburg');
    expect(pieceOf(folder, '4')).not.toContain('issuer');
    const { questions } = suggestMapping(await readOne(csv.replace('Land', 'Ruler')), NO_LISTS);
    expect(questions.find(({ id }) => id === 'above Ruler')?.choices[0]?.change).toEqual({ asAbove: ['Ruler'] });
  });
});

test('where the mapping says so of dittos alone, an empty cell says nothing, and a ditto below it points to nothing', async () => {
  const csv = 'No,Ruler,Metal\n1,Umberto I,Ag\n2,idem,Ag\n3,,Ag\n4,idem,Ag\n5,Pius IX,Ag\n6,",,",Ag\n';
  const { folder, plan } = await imported(
    csv,
    'dittos: [Ruler]\ncolumns: { No: number, Ruler: ruler, Metal: metal }\n',
  );
  const rulers = [1, 2, 3, 4, 5, 6].map((id) => /^ruler: (.*)$/m.exec(pieceOf(folder, String(id)))?.[1]);
  expect(rulers).toEqual(['umberto-i', 'umberto-i', undefined, undefined, 'pius-ix', 'pius-ix']);
  expect(plan.unread.map(({ row, text }) => [row, text])).toEqual([[5, 'idem']]);
  const { questions } = suggestMapping(await readOne(csv), NO_LISTS);
  expect(questions.find(({ id }) => id === 'above Ruler')?.choices.map(({ change }) => change)).toEqual([
    { dittos: ['Ruler'] },
    { asAbove: ['Ruler'] },
  ]);
});

describe('the columns of a purchase', () => {
  // A month and a year of a purchase are ISO 8601 year-month; the era of the coins is nothing to it.
  test.for([
    ['7/98', 'July 1998'],
    ['03/2011', 'March 2011'],
    ['11.2009', '11.2009'],
    ['12/03/98', '1998-03-12'],
    ['2002', '2002'],
  ] as const)('%s is bought in %s, whatever the years of the coins are', async ([said, acquired]) => {
    const { folder } = await imported(
      `No,When,Date\n1,${said},154-5\n`,
      'read: { years: AD, short: 1930-2029, days: day first, minus: BC }\ncolumns: { No: number, When: ledger acquired, Date: date }\n',
    );
    expect(textOf(folder, 'private/ledger.csv')).toContain(acquired);
    expect(textOf(folder, 'private/ledger.csv')).not.toContain('AD');
  });

  test('a column of numbers with one given twice and a row without numbers the pieces, and what numbers the rest is not asked beside it', async () => {
    const rows = Array.from({ length: 30 }, (_, at) => `${at === 7 ? 6 : at === 9 ? '' : at},Hadrian,Spink ${at}`);
    const sheet = await readOne(`No,Ruler,Bought of\n${rows.join('\n')}\n`);
    const { mapping, questions } = suggestMapping(sheet, NO_LISTS);
    expect(mapping.columns.map(({ readings }) => readings[0])).toEqual([
      { kind: 'field', field: 'number' },
      { kind: 'field', field: 'ruler' },
      { kind: 'ledger', column: 'seller' },
    ]);
    expect(questions.map(({ id }) => id)).toEqual(['unnumbered', 'kind']);
  });
});

test.for([
  ['a copy', 'Brass 3d', 'modern replica, NOT REAL', /^rows? 2: this speaks of a copy/],
  ['a copy in German', '3 Mark', 'KOPIE!', /^row 2: this speaks of a copy/],
  ['one that has gone', 'Penny', 'GONE - given to grandson', /^row 2: this may tell that the piece is no longer here/],
  ['a want', 'Taler', 'FEHLT NOCH! Suchliste', /^row 2: this may tell that the piece is only wanted/],
  ['several', 'Bun pennies (6)', '', /^row 2: this speaks of several pieces/],
  ['a set', 'Maundy set', '', /^row 2: this speaks of several pieces/],
  ['some', '10 Pfennig 4x', '', /^row 2: this speaks of several pieces/],
  ['a lot in a note', '10 francs', 'lot de 6', /^row 2: this speaks of several pieces/],
  ['two in a note that begins so', '5 marks', '2x: D and G', /^row 2: this speaks of several pieces/],
  ['one that is sold', 'Penny', 'sold 2021 to a friend', /^row 2: this may tell that the piece is no longer here/],
  ['an imitation', 'Penny', 'contemporary imitation?', /^row 2: this speaks of a copy, an imitation/],
  ['a lot in a German note', '10 DM', '4 St. im Etui', /^row 2: this speaks of several pieces/],
  [
    'damage in a note that stays private',
    'Penny',
    'Slight crease',
    /^row 2: this names damage or another fault in what stays private/,
  ],
  ['damage in a German note', '10 Pf', 'kleiner Kratzer im Feld', /^row 2: this names damage/],
  ['a jeton in the older spelling', 'Jetton', '', /^row 2: the title names a jeton, and the kind is medal/],
  ['a seal', 'Siegelstempel', '', /^row 2: the title names a piece of the kind other, and the kind is medal/],
  ['a bar', 'Goldbarren 20 g', '', /^row 2: the title names an ingot, and the kind is medal/],
  ['a coin below medals', 'Sterbetaler', '', /^row 2: the title names a coin, and the kind is medal/],
] as const)('%s is told of before it is written', async ([, what, note, says]) => {
  const { plan } = await imported(
    `No,What,Remarks\n1,${what},${note}\n`,
    'always: { kind: medal }\ntitle: "{denomination}"\ncolumns: { No: number, What: denomination, Remarks: ledger notes }\n',
  );
  expect(plan.remarks.filter((one) => says.test(one))).toHaveLength(1);
});

// Common practice: lists of swaps count the pieces of a row.
test('a row that a column of quantities counts as several is told of', async () => {
  const { plan } = await imported(
    'No,What,Qty\n1,5 agorot,4\n2,1 lira,1\n',
    'always: { kind: coin }\ncolumns: { No: number, What: denomination }\n',
  );
  expect(plan.remarks.map((one) => one.slice(0, 36))).toEqual(['row 2: this speaks of several pieces']);
});

// Common practice: a fault is a part of the condition, and a page that leaves it out says too much.
test('damage that the piece has said, or that no note names, is not told of', async () => {
  const { plan } = await imported(
    'No,Grade,Remarks\n1,"VF, creased",Slight crease\n2,VF,From the fair in March\n',
    'columns: { No: number, Grade: grade, Remarks: ledger notes }\n',
  );
  expect(plan.remarks.filter((one) => one.includes('damage'))).toEqual([]);
});

test.for(['A', 'D, F, G, J', 'CA', 'Wü.', 'various', 'versch.'])(
  'a mint called %s is asked about, and the mapping may say which it is',
  async (mint) => {
    const csv = `No,Mint\n1,"${mint}"\n`;
    const asked = await imported(csv, 'columns: { No: number, Mint: mint }\n');
    expect(pieceOf(asked.folder, '1')).not.toMatch(/^mint:/m);
    expect(asked.plan.unread).toHaveLength(1);
    const told = await imported(csv, `words: { mint: { "${mint}": Berlin } }\ncolumns: { No: number, Mint: mint }\n`);
    expect(pieceOf(told.folder, '1')).toContain('mint: berlin');
  },
);

test('a title says a doubt as the fact does', async () => {
  const { folder } = await imported(
    'No,Ruler,Mint,What\n1,Charles I,Oxford?,Half crown\n',
    'title: "{denomination} of {ruler}, {mint}"\ncolumns: { No: number, Ruler: ruler, Mint: mint, What: denomination }\n',
  );
  expect(pieceOf(folder, '1')).toContain('title: Half crown of Charles I, possibly Oxford');
});

test('a field beside a pattern that names it is for the cells which the pattern does not fit', async () => {
  const { folder, plan } = await imported(
    'No,Land\n1,"Rom, Augustus"\n2,Hadrian\n',
    'columns: { No: number, Land: ["{issuer}, {ruler}", ruler] }\n',
  );
  expect(plan.unread).toEqual([]);
  expect(pieceOf(folder, '1')).toContain('ruler: augustus');
  expect(pieceOf(folder, '2')).toContain('ruler: hadrian');
});

test('a sheet whose lists were taken from the program changes nothing the second time', async () => {
  const lent = {
    at: '/program',
    files: [
      { file: 'cabinet.yaml', text: 'title: Lists\nkeeper: A keeper\n' },
      { file: 'denominations/half-crown.yaml', text: 'name: Half-crown\nplural: half-crowns\n' },
    ],
  };
  const csv = 'No,What\n1,Half crown\n';
  const mapping = 'title: "{denomination}"\ncolumns: { No: number, What: denomination }\n';
  const first = await imported(csv, mapping, { lent, takesOffers: true });
  expect(pieceOf(first.folder, '1')).toContain('title: Half-crown');
  const second = await imported(csv, mapping, { lent, before: first.before }, first.folder);
  expect(second.plan.pieces.map(({ state }) => state)).toEqual(['same']);
});

test('a note below the rows is no heading that is asked about, a heading in capitals is one in any column, and a total may bear a remark', async () => {
  const rows = ['1,Hadrian,denarius,3.1,DDR', '2,Trajan,denarius,3.2,Rome'];
  const sheet = await readOne(
    `No,Ruler,What,Weight,Mint\n${rows.join('\n')}\n,,,,TOKENS\n3,Nobody,halfpenny,9.1,London\nInsured with a company of Ely to 5500 pounds. The key is with the neighbour,,,,\nTotal,,without guarantee,15.4,\n`,
  );
  const { questions } = suggestMapping(sheet, NO_LISTS);
  expect(sheet.rows.map(({ cells }) => cells[0]?.text)).toEqual(['1', '2', '3']);
  expect(questions.find(({ id }) => id === 'sections')?.example).toBe('TOKENS');
});

test('a column that would be published and speaks as private notes do stays private until that is answered', async () => {
  const csv = 'No,Ruler,Weight,Issuer\n1,Hadrian,3.1,bought off Ned\n2,Trajan,3.2,Bank of Ely\n3,Nerva,3.3,drawer 4\n';
  const { mapping, questions } = suggestMapping(await readOne(csv), NO_LISTS);
  expect(mapping.columns.at(-1)).toEqual({ heading: 'Issuer', readings: [{ kind: 'ledger' }] });
  const asked = questions.find(({ id }) => id === 'column Issuer') ?? expect.fail();
  expect(asked.asks).toMatch(/published as issuer, and 2 of its cells speak of (buying|keeping)\. May it be\?$/);
  expect(asked.example).toBe('bought off Ned');
  const yes = answer(mapping, asked.choices[0] ?? expect.fail());
  expect(yes.columns.at(-1)?.readings).toEqual([{ kind: 'field', field: 'issuer' }]);
  const plain = suggestMapping(
    await readOne(csv.replace('bought off Ned', 'Ned').replace('drawer 4', 'Ely')),
    NO_LISTS,
  );
  expect(plain.mapping.columns.at(-1)?.readings).toEqual([{ kind: 'field', field: 'issuer' }]);
  expect(plain.questions.some(({ id }) => id === 'column Issuer')).toBe(false);
});
