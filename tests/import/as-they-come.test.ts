import { describe, expect, test } from 'vitest';
import { checkAll } from '../../src/catalogue/check-records.ts';
import type { CabinetFolder } from '../../src/catalogue/files.ts';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import { PRIVACY } from '../../src/privacy/privacy.ts';
import { headingsOfFields } from '../../src/import/columns/heading-of-field.ts';
import { parseMapping } from '../../src/import/columns/parse-mapping.ts';
import { suggestMapping } from '../../src/import/columns/suggest-mapping.ts';
import { readRows } from '../../src/import/cells/read-rows.ts';
import { parseDate } from '../../src/core/dating/parse-date.ts';
import { bring, EMPTY, textOf } from './plan/bring.ts';
import { changed, TODAY } from '../catalogue/small-cabinet.ts';
import { readOne } from './sheets/read-one.ts';

// Four sheets of the shapes that lists have; every piece, name and price in them is invented.

async function imported(csv: string, mappingText: string, onto: CabinetFolder = EMPTY) {
  const sheet = await readOne(csv);
  const mapping = parseMapping(mappingText);
  if (!mapping.ok) throw new Error(mapping.problem);
  const rows = readRows(sheet, mapping.value);
  const { plan, folder } = bring(rows.drafts, onto, {
    setAside: rows.setAside,
    headings: headingsOfFields(sheet, mapping.value),
  });
  const { records, problems } = readCabinet(folder);
  return {
    plan,
    folder,
    problems: [...problems, ...checkAll(records, folder, PRIVACY, TODAY)].map(({ says }) => says),
  };
}

const pieceOf = (folder: CabinetFolder, id: string): string => textOf(folder, `pieces/${id}/piece.md`);

describe('a list of mixed kinds, with headings between its rows', () => {
  const CSV = `No,What it is,Ruler,Metal,Struck,Mint\nROMAN,,,,,\n1,,Trajan,Ar,AD 103-111,Rome\n2,paper money,,paper,1914,Berlin\nTOKENS,,,,,\n3,,Nobody,copper,1794,London\n4,decoration,,gilt,1902,Paris\n`;
  const MAPPING = `always: { kind: coin }\nwords: { kind: { ROMAN: coin, tokens: token, Paper Money: paper } }\nsections: kind\ncolumns: { No: number, What it is: kind, Ruler: ruler, Metal: metal, Struck: date, Mint: mint }\n`;

  test('a word of the table is what the keeper says, a heading lends its kind, and a refused kind is not filled', async () => {
    const { folder, problems, plan } = await imported(CSV, MAPPING);
    expect(problems).toEqual([]);
    expect(['1', '2', '3', '4'].map((id) => /^kind: .*$/m.exec(pieceOf(folder, id))?.[0])).toEqual([
      'kind: coin',
      'kind: paper',
      'kind: token',
      'kind: unknown',
    ]);
    expect(pieceOf(folder, '4')).toContain('as-written: { kind: decoration, metal: gilt }');
    expect(plan.unread.map(({ row, field }) => [row, field])).toEqual([
      [4, 'metal'],
      [7, 'kind'],
      [7, 'metal'],
    ]);
  });

  test('without a word of the keeper, headings between rows say nothing of them', async () => {
    const { folder } = await imported(
      CSV,
      MAPPING.replace('sections: kind\n', '').replace('always: { kind: coin }\n', ''),
    );
    expect(pieceOf(folder, '1')).toContain('kind: unknown');
  });
});

describe('a list of a museum: names that are nearly the same', () => {
  const CSV = `No,Ruler,Realm,Mint,Region,Denomination,Struck\n${[
    '1,Friedrich II,Holy Roman Empire,Nishapur,Khorasan,half-shekel,1220',
    '2,Frederick II,Prussia,Bishapur,Fars,half shekel,1750',
    '3,Anon,Roman Empire,Philadelphia,Lydia,aes II,AD 350',
    '4,Anon,Roman Empire,Philadelphia,Coele-Syria,aes IV,AD 350',
    '5,Francesco Foscari? (1423-1457),Venice,Fu Zhou,Fujian,a,1430',
    '6,Posthuma I (1500-1510),Nowhere,Su Zhou,Jiangsu,aa,1530',
  ].join('\n')}\n`;
  const MAPPING = `always: { kind: coin }\ncolumns: { No: number, Ruler: ruler, Realm: realm, Mint: mint, Region: mint area, Denomination: denomination, Struck: date }\n`;

  test('nothing is joined by a letter, a numeral, a word or another language; places are split by their region', async () => {
    const { folder, plan, problems } = await imported(CSV, MAPPING);
    const said = (field: string) =>
      ['1', '2', '3', '4', '5', '6'].map((id) => new RegExp(`^${field}: (.*)$`, 'm').exec(pieceOf(folder, id))?.[1]);
    expect(problems).toEqual([]);
    expect(said('mint')).toEqual([
      'nishapur',
      'bishapur',
      'philadelphia-lydia',
      'philadelphia-coele-syria',
      'fu-zhou',
      'su-zhou',
    ]);
    expect(said('denomination')).toEqual(['half-shekel', 'half-shekel', 'aes-ii', 'aes-iv', 'a', 'aa']);
    expect(textOf(folder, 'denominations/half-shekel.yaml')).toMatch(/^name: half-shekel$/m);
    expect(new Set(said('ruler')).size).toBe(5);
    expect(pieceOf(folder, '5')).toContain('sure: { ruler: possible }');
    expect(
      plan.questions
        .filter(({ like }) => like.length > 0)
        .map(({ id, uses, like }) => [id, uses, like.map((one) => one.id)]),
    ).toEqual(expect.arrayContaining([['nishapur', 1, ['bishapur']]]));
  });

  test('books, realms, mints and makers that are one word apart stay apart', async () => {
    const { folder, plan, problems } = await imported(
      `No,Ruler,Realm,Mint,Cited,Maker\n${[
        '1,James,Ireland,Bei Ping,Williams 1965 12,Oban (of York)',
        '2,James,Northern Ireland,Bei Jing,Williams 1972 12,Hunfrid (moneyer)',
        '3,Anon,Nowhere,Ely,Walker v.I 5,',
        '4,Anon,Nowhere,Ely,Walker v.II 5,',
      ].join('\n')}\n`,
      'always: { kind: coin }\ncolumns: { No: number, Ruler: ruler, Realm: realm, Mint: mint, Cited: references, Maker: makers }\n',
    );
    const said = (field: string) =>
      ['1', '2', '3', '4'].map((id) => new RegExp(`^${field}: (.*)$`, 'm').exec(pieceOf(folder, id))?.[1]);
    expect(problems).toEqual([]);
    expect(said('mint')).toEqual(['bei-ping', 'bei-jing', 'ely', 'ely']);
    expect(new Set(said('ruler').slice(0, 2)).size).toBe(2);
    const cited = said('references').map((one, at) => one ?? plan.unread.find(({ row }) => row === at + 2)?.text);
    expect(new Set(cited).size).toBe(4);
    expect(new Set(plan.lists.filter(({ kind }) => kind === 'works').map(({ name }) => name))).not.toContain(
      'Williams',
    );
    expect(pieceOf(folder, '1')).toContain('Oban (of York)');
    expect(pieceOf(folder, '2')).toContain('{ name: Hunfrid, role: moneyer }');
  });

  test('a date outside the reign is kept, and remarked on', async () => {
    const { folder, plan } = await imported(CSV, MAPPING);
    expect(pieceOf(folder, '6')).toContain('date: 1530');
    expect(plan.remarks.join('\n')).toContain('row 7: Posthuma I ruled 1500 to 1510; this piece is dated 1530.');
  });
});

describe('a column of dates with a convention of its own', () => {
  // Years before Christ: 44 BC is -43 in astronomical years (ISO 8601); the pairs are common practice of printed lists.
  test.for([
    ['-57 to -38', 'minus: BC', '-0056/-0037'],
    ['-530.0', 'minus: BC', '-0529'],
    ['-530.0', 'minus: astronomical', '-0530'],
    ['-27 to 14', 'minus: BC, years: AD', '-0026/0014'],
    ['498 to 507', 'years: AD', '0498/0507'],
    ['625/600-522', 'years: BC', '-0624/-0521'],
    ['398/97', 'years: BC', '-0397/-0396'],
    ['1902-10', 'hyphen: range', '1902/1910'],
    ['1902-10', 'hyphen: month', '1902-10'],
    ['1965.0', 'years: AD', '1965'],
    ['398-57', 'years: BC', null],
    ['-57-38', 'minus: BC', null],
    ['1902-10', 'years: AD', null],
    ['498 to 307', 'years: AD', null],
    ['-44', 'years: AD', null],
    ['4th century BC', 'years: BC', '-0399/-0300'],
    ['4th century', 'years: BC', null],
    ['166-', 'years: AD', null],
  ] as const)('%s where %s is %s', async ([cell, read, edtf]) => {
    const sheet = await readOne(`No,Struck\n1,${cell}\n`);
    const mapping = parseMapping(`read: { ${read} }\ncolumns: { No: number, Struck: date }\n`);
    const [draft] = mapping.ok ? readRows(sheet, mapping.value).drafts : [];
    const date = draft?.facts['date'];
    const dating = typeof date === 'string' ? parseDate(date) : null;
    expect(dating?.ok === true ? dating.value.edtf : null).toBe(edtf);
    expect(draft?.unread.length).toBe(edtf === null ? 1 : 0);
  });

  // AH 1255 year 15 is AH 1269 under Abdulmejid I, 15 October 1852 to 3 October 1853; the realm settles which way the pair counts.
  test.for([
    ['No,Ruler,Struck\n1,Abdulmejid I,AH 1255/15\n', 'No: number, Ruler: ruler, Struck: date'],
    ['No,Struck,Realm\n1,AH 1255/15,Ottoman Empire\n', 'No: number, Struck: date, Realm: realm'],
  ] as const)('a date that its ruler or realm settles: %s', async ([csv, columns]) => {
    const mapping = parseMapping(`columns: { ${columns} }\n`);
    const ruler = {
      names: ['Abdülmecid I', 'Abdulmejid I'],
      realm: 'Ottoman Empire',
      reigns: [{ ruler: 'Abdulmejid I', names: ['Abdulmejid I'], from: '1839-07-02', to: '1861-06-25' }],
    };
    const dateWith = async (rulers: readonly (typeof ruler)[]) =>
      mapping.ok ? readRows(await readOne(csv), mapping.value, rulers).drafts[0]?.facts['date'] : undefined;
    expect(await dateWith([ruler])).toBe('1852/1853');
    expect(await dateWith([])).toBe(csv.includes('Realm') ? '1852/1853' : undefined);
  });

  const suggested = async (csv: string) =>
    suggestMapping(await readOne(csv), { rulers: [], mints: [], denominations: [], works: [] });

  test('is found once: hyphens by the cells with one reading, an era by its column', async () => {
    const hyphens = await suggested('No,Year\n1,1902-10\n2,1958-64\n3,1890\n');
    expect(hyphens.mapping.settings.hyphen).toBe('range');
    const asked = await suggested('No,Year\n1,1902-10\n2,1890\n');
    expect(asked.mapping.settings.hyphen).toBeUndefined();
    expect(asked.questions.map(({ id }) => id)).toContain('hyphen');
    const eras = await suggested('No,Year from,Year to,Era\n1,57,38,BC\n2,98,117,AD\n');
    expect(eras.mapping.calendars).toEqual([
      { column: 'Era', is: 'BC', years: 'BC' },
      { column: 'Era', is: 'AD', years: 'AD' },
    ]);
    const { drafts } = readRows(await readOne('No,Year from,Year to,Era\n1,57,38,BC\n2,98,117,AD\n'), eras.mapping);
    expect(drafts.map(({ facts }) => facts['date'])).toEqual(['-0056/-0037', '0098/0117']);
  });
});

describe('a list with private columns that repeat public words', () => {
  const CSV = `No,Title,References,Series,Shop\n1,Penny of the bridge series,North 1018; Sear 1380,bridge series B 7,Hal of Nowhere 12\n2,Groat bought at Hal of Nowhere 12,"sear 12, p. 45; 1921 75-97",tower series,Hal of Nowhere 12\n`;
  const MAPPING = `always: { kind: coin }\ncolumns: { No: number, Title: [title], References: references, Series: ledger, Shop: ledger seller }\n`;

  test('asks once of each column, and what it writes passes check', async () => {
    const { plan, problems, folder } = await imported(CSV, MAPPING);
    expect(problems).toEqual([]);
    expect(plan.secrets).toEqual([{ column: 'seller', field: 'title', rows: [3] }]);
    expect(plan.pieces.map(({ id }) => id)).toEqual(['1', '2']);
    expect(pieceOf(folder, '1')).toContain('references: [north 1018, sear 1380]');
    expect(/^title: (.*)$/m.exec(pieceOf(folder, '2'))?.[1]).toBe('Coin 2');
    expect(textOf(folder, 'private/ledger.csv')).toContain('Groat bought at Hal of Nowhere 12');
  });

  test('two private values in one text take the text out once, and the row stays', async () => {
    const { plan, problems, folder } = await imported(
      'No,Title,About,Found at,From\n1,Penny,"Found by Oddwick mill, bought of Fenwright the smith.",Oddwick mill,Fenwright the smith\n',
      'always: { kind: coin }\ncolumns: { No: number, Title: title, About: story, Found at: ledger find-spot, From: ledger seller }\n',
    );
    expect([problems, plan.setAside]).toEqual([[], []]);
    expect(pieceOf(folder, '1')).not.toMatch(/Oddwick|Fenwright/);
    expect(textOf(folder, 'private/ledger.csv')).toContain('Found by Oddwick mill, bought of Fenwright the smith.');
    expect(plan.secrets.map(({ column }) => column).sort()).toEqual(['find-spot', 'seller']);
  });

  test('what another file of the cabinet tells is told in the trial, as check tells it; a common word is no secret', async () => {
    const onto = changed(EMPTY, {
      'eras/wheldrake.yaml':
        'title: Wheldrake heritage\nsource: mine\nend-years: shared\nperiods: [{ id: a, name: A, from: 1, to: 2 }]\n',
    });
    const csv = (shop: string) => `No,Title,Shop\n1,Penny,${shop}\n`;
    const mapping = 'always: { kind: coin }\ncolumns: { No: number, Title: title, Shop: ledger seller }\n';
    const told = async (shop: string) => {
      const { plan, problems } = await imported(csv(shop), mapping, onto);
      return [
        plan.remarks.filter((one) => one.includes('eras/wheldrake.yaml')).length,
        problems.some((one) => one.includes('seller')),
      ];
    };
    expect(await told('Wheldrake')).toEqual([1, true]);
    expect(await told('héritage')).toEqual([0, false]);
  });

  test('a column that guards nothing holds nothing back, in import and check alike', async () => {
    const answered = changed(EMPTY, { 'private/not-secret.csv': 'column,value,date\nseller,*,2026-11-29\n' });
    const { plan, problems } = await imported(CSV, MAPPING, answered);
    expect([plan.secrets, problems, plan.pieces.length]).toEqual([[], [], 2]);
  });

  test('a year and pages without a book are asked about, a page word is none of the name', async () => {
    const answered = changed(EMPTY, { 'private/not-secret.csv': 'column,value,date\nseller,*,2026-11-29\n' });
    const { folder, plan } = await imported(CSV, MAPPING, answered);
    expect(pieceOf(folder, '2')).toContain('references: ["sear 12, p. 45"]');
    expect(plan.unread.map(({ text }) => text)).toEqual(['1921 75-97']);
  });

  test('a book with a page word or a volume behind it is one book, and a column of books joins one of numbers', async () => {
    const { folder, plan, problems } = await imported(
      'No,Cited,Book,Nr\n1,sear 12,North,1018\n2,sear page 45,North,1019/2\n3,"sear vol. 2, 77",,12\n4,sear 13,North,\n',
      'always: { kind: coin }\ncolumns: { No: number, Cited: references, Book: reference work, Nr: reference number }\n',
    );
    expect(problems).toEqual([]);
    expect(plan.lists.filter(({ kind }) => kind === 'works').map(({ file }) => file)).toEqual([
      'works/sear.yaml',
      'works/north.yaml',
    ]);
    expect(pieceOf(folder, '1')).toContain('references: [sear 12, north 1018]');
    expect(/^references: (.*)$/m.exec(pieceOf(folder, '2'))?.[1]).toMatch(/^\[.*sear.*p\. 45.*, north 1019\/2\]$/);
    expect(/^references: (.*)$/m.exec(pieceOf(folder, '3'))?.[1]).toContain('77');
    // A number without its book, and a book without a number, are asked about.
    expect(plan.unread.map(({ row, text }) => [row, text])).toEqual([
      [4, '12'],
      [5, 'North'],
    ]);
  });

  test('a number that equals a private cell is no leak', async () => {
    const { problems, plan } = await imported(
      'No,Title,Old label\nA-1234-56,Penny,A-1234-56\n',
      'always: { kind: coin }\ncolumns: { No: number, Title: title }\n',
    );
    expect([problems, plan.pieces.length, plan.secrets]).toEqual([[], 1, []]);
  });
});

describe('a title in words, of which a pattern finds more than a name', () => {
  const PATTERNS = `always: { kind: coin }
columns:
  No: number
  Title: ['Coin of {ruler}, {mint}', '{denomination} with head of {ruler}', '{denomination} with {obverse design}', '{denomination} of {ruler}']
`;
  test.for([
    ['Denarius with head of Trajan', { ruler: 'trajan', denomination: 'denarius' }, []],
    // Gods are on coins and strike none: common practice.
    ['Litra with head of Apollo', { denomination: 'litra', obverse: { design: 'head of Apollo' } }, []],
    ['Stater of Macedonia with head of Herakles', {}, ['denomination', 'ruler']],
    ['Litra with bust of Arethusa; struck at Syracuse', {}, ['obverse design']],
    ['"Litra with Herakles, issued by the city"', {}, ['obverse design']],
    ['Coin with head of Trajan', { ruler: 'trajan' }, ['denomination']],
    ['"Coin of Apamea on the Orontes, Apamea"', { mint: 'apamea' }, ['ruler']],
  ] as const)('%s', async ([title, facts, asked]) => {
    const { plan } = await imported(`No,Title\n1,${title}\n`, PATTERNS);
    const [piece] = plan.pieces;
    expect(piece?.base.facts).toMatchObject(facts);
    expect(plan.unread.map(({ field }) => field)).toEqual(asked);
  });
});
