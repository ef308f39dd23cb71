import { describe, expect, test } from 'vitest';
import type { Draft } from '../../../src/import/plan/draft.ts';
import { matchPattern } from '../../../src/import/columns/pattern.ts';
import { parseMapping } from '../../../src/import/columns/parse-mapping.ts';
import { readRows } from '../../../src/import/cells/read-rows.ts';
import { whichBook } from '../../../src/import/cells/reference-cell.ts';
import { sheetOf } from '../columns/sheet-of.ts';

function draft(reading: string, cell: string, read = '', language = 'en', words = '{}'): Draft {
  const mapping = parseMapping(`language: ${language}\nread: { unnumbered: row${read === '' ? '' : `, ${read}`} }\nalways: { kind: coin }\nwords: ${words}\ncolumns: { C: ${reading} }\n`);
  if (!mapping.ok) throw new Error(mapping.problem);
  return readRows(sheetOf(['C'], [[cell]]), mapping.value).drafts[0] ?? expect.fail('no draft');
} // prettier-ignore

/** How lists abroad write these things. Common practice, but where a line names its source. */
type Row = readonly [
  reading: string,
  cell: string,
  facts: object,
  settings?: string,
  language?: string,
  words?: string,
];
const READ: readonly Row[] = [
  ['date', '1279-81', { date: '1279-81' }],
  ['date', 'ND (1279)', { date: 'ND (1279)' }],
  ['date', 'AH 294', { date: 'AH 294' }],
  ['date', '1.Jh. v.Chr.', { date: '1.Jh. v.Chr.' }],
  ['date', 'IIe s.', { date: 'IIe s.' }],
  ['date', 'A.D. 134-138', { date: 'A.D. 134-138' }],
  ['date', '264-65 A.D.', { date: '264-65 A.D.' }],
  ['date', '268/270', { date: 'AD 268-270' }, 'years: AD'],
  ['date', 'um 310', { date: 'c. AD 310' }, 'years: AD'],
  ['date', 'vers 98-117', { date: 'c. AD 98-117' }, 'years: AD'],
  ['date', '-44', { date: '44 BC' }, 'minus: BC'],
  ['date', '-44', { date: '45 BC' }, 'minus: astronomical'],
  ['date', '14/05/1911', { date: '1911-05-14' }],
  ['date', '03/04/1911', { date: '1911-04-03' }, 'days: day first'],
  ['date', '03/04/1911', { date: '1911-03-04' }, 'days: month first'],
  ['date', '?', { date: 'unknown' }],
  // A letter beside the year is the mint's, or its master's, and stands on the piece.
  ['date', '1931 D', { date: '1931', dated: '1931 D' }],
  ['date', '1931-D', { date: '1931', dated: '1931-D' }],
  ['date', '1889 CC', { date: '1889', dated: '1889 CC' }],
  ['date', '1784K', { date: '1784', dated: '1784K' }],
  ['date', '1707 E*', { date: '1707', dated: '1707 E*' }],
  ['date', '1808 S.G.H.', { date: '1808', dated: '1808 S.G.H.' }],
  ['date', '1664 C-A', { date: '1664', dated: '1664 C-A' }],
  ['date', '1684-90 A', { date: '1684-90', dated: '1684-90 A' }],
  // Struck again: the year on it is not the year it was made in.
  ['date', '1780 (restrike)', { date: 'after 1780', dated: '1780', peculiarities: ['restrike'] }],
  ['date', '1780 (NP)', { date: 'after 1780', dated: '1780', peculiarities: ['restrike'] }],
  ['date', '1915, riconio', { date: 'after 1915', dated: '1915', peculiarities: ['restrike'] }],
  ['date', '44 v. Chr. (posthum)', { date: '44 v. Chr.', peculiarities: ['posthumous'] }],
  ['date', '1598 (posthumous)', { date: '1598', peculiarities: ['posthumous'] }],
  ['date', '1623/24', { date: '1623/24' }],
  ['date', '1272/1307', { date: '1272/1307' }],
  ['date', 'o.D.', { date: 'o.D.' }],
  ['date', 'Jahr 3 = 286/7', { date: 'AD 286-287' }, 'years: AD'],
  ['date', 'n. a.', {}],
  ['date', 'k. A.', {}],
  ['date', 'ND', { date: 'ND' }],
  ['date', 'n.d. (1880)', { date: 'n.d. (1880)' }],
  ['date', 'n.d. (c. 700-740)', { date: 'c. AD 700-740' }, 'years: AD'],
  ['date', 's.f. (1542-55)', { date: 's.f. (1542-55)' }],
  ['date', '12/3/98', { date: '1998-03-12' }, 'days: day first, short: 1930-2029'],
  ['date', '12/3/05', { date: '2005-12-03' }, 'days: month first, short: 1930-2029'],
  ['date', '25.3.05', { date: '1905-03-25' }, 'short: 1900-1999'],
  ['date', '17th C', { date: '17th C' }],
  ['date', '19-20th c.', { date: '19-20th c.' }, 'years: AD'],
  ['date', '-57 to -38', { date: '57-38 BC' }, 'minus: BC'],
  ['date', '1940 XVIII', { date: '1940', dated: '1940 XVIII' }],
  ['date', '1869 A. XXIV', { date: '1869', dated: '1869 A. XXIV' }],
  ['date', 'AD 134-8', { date: 'AD 134-8' }],
  ['date', 'r. 1279-1307', { date: '1279-1307' }],
  ['date', '16--', { date: '16--' }],
  ['date', '1248-50?', { date: '1248-50?' }],
  ['date', '1280ish', { date: 'c. 1280' }],
  ['date', 'A° 1667', { date: 'A° 1667' }],
  // What the core reads of other languages stays as the sheet has it.
  ['date', 'tweede helft 17e eeuw', { date: 'tweede helft 17e eeuw' }],
  ['date', 'prima metà XV sec.', { date: 'prima metà XV sec.' }],
  ['date', 'mitad del siglo XV', { date: 'mitad del siglo XV' }],
  ['date', 'halverwege de 16e eeuw', { date: 'halverwege de 16e eeuw' }],
  ['date', 'fin XIVe s.', { date: 'fin XIVe s.' }],
  ['date', 'Ende 14. Jh.', { date: 'Ende 14. Jh.' }],
  ['type', 'LC-3b', { type: 'lc-3b' }],
  ['type', 'pence/3a ?', { type: 'pence/3a', sure: { type: 'possible' } }],
  ['type', 'Class 3a', { type: 'Class 3a' }],
  ['type', 'unknown', { type: 'unknown' }],
  ['weight in g', '1,38', { weight: '1.38 g' }],
  ['weight in g', '1.38', { weight: '1.38 g' }],
  ['weight', '1.38 gm', { weight: '1.38 gm' }],
  ['weight', '4,05 gr.', { weight: '4.05 g' }, 'gr: grams'],
  ['weight', '21.3 gr', { weight: '21.3 grains' }, 'gr: grains'],
  ['weight in g', '3,456', { weight: '3.456 g' }, 'decimal: comma'],
  ['diameter in mm', '18,6', { diameter: '18.6 mm' }],
  ['diameter in mm', '18 x 20', { diameter: '18 x 20 mm' }],
  ['diameter in mm', '29x28', { diameter: '29x28 mm' }],
  ['measures', '1.38 g / 18 mm / 6h', { weight: '1.38 g', diameter: '18 mm', axis: '6h' }],
  ['measures', '1,38 g; Ø 18 mm; 180°', { weight: '1.38 g', diameter: 'Ø 18 mm', axis: '6h' }],
  ['grade', 'VF-30 cleaned', { grade: 'VF-30', 'grade-scale': 'numeric', problem: 'cleaned' }],
  ['grade', 'ss, Kratzer', { grade: 'ss', 'grade-scale': 'de', problem: 'Kratzer' }],
  ['grade', 'TTB', { grade: 'TTB', 'grade-scale': 'fr' }],
  ['grade', 'MBC+', { grade: 'MBC+', 'grade-scale': 'es' }],
  ['grade', 'BB', { grade: 'BB', 'grade-scale': 'it' }],
  ['grade', 'Zfr', { grade: 'Zfr', 'grade-scale': 'nl' }],
  ['grade in it', 'SPL', { grade: 'SPL', 'grade-scale': 'it' }],
  ['grade', 'VF', { grade: 'VF' }],
  ['grade in uk', 'VF', { grade: 'VF', 'grade-scale': 'uk' }],
  ['grade in us', 'VF', { grade: 'VF', 'grade-scale': 'us' }],
  ['grade in uk', 'MS-63', { grade: 'MS-63', 'grade-scale': 'numeric' }],
  ['grade in uk', 'ss', { grade: 'ss', 'grade-scale': 'de' }],
  ['metal', 'Ag 925', { metal: 'silver', fineness: '925' }],
  ['metal', 'AR', { metal: 'silver' }],
  ['metal', 'Kupfer', { metal: 'copper' }],
  ['metal', 'Feingold 999,9', { metal: 'gold', fineness: '999.9' }],
  ['metal', 'Cu vers.', { metal: 'copper, silver-plated' }],
  ['metal', 'Cu, verg.', { metal: 'copper, gilt' }],
  ['metal', 'Ag 925, verg.', { metal: 'silver, gilt', fineness: '925' }],
  ['metal', 'gilt bronze', { metal: 'bronze, gilt' }],
  ['metal', 'AR fourrée ?', { metal: 'silver, fourrée', sure: { metal: 'possible' } }],
  ['metal', 'AlBr', { metal: 'aluminium bronze' }],
  ['metal', 'Bi-Metall', { metal: 'bimetallic' }],
  ['metal', 'Böttgerst.', { metal: 'Böttger stoneware' }],
  ['metal', 'Zink/Kriegsmetall', { metal: 'zinc' }],
  ['metal', 'Hartmetall', { metal: 'tungsten carbide' }, '', 'en', '{ metal: { Hartmetall: tungsten carbide } }'],
  ['reverse design', '(einseitig)', { faces: 'uniface' }],
  ['reverse legend', 'uniface', { faces: 'uniface' }],
  ['kind', 'Medaille', { kind: 'medal' }],
  ['kind', 'Bank Token', { kind: 'token' }],
  ['kind', 'medaglia commemorativa', { kind: 'medal' }],
  ['kind', 'hammered coins', { kind: 'coin' }],
  ['axis', '180°', { axis: '6h' }],
  ['ruler', 'Alexander III, posthumous', { peculiarities: ['posthumous'] }],
  ['mint', 'uncertain mint', { mint: 'unknown' }],
  ['grade', 'UNC, boxed', { grade: 'UNC, boxed' }],
]; // prettier-ignore

describe('a cell', () => {
  test.for(READ)('%s of "%s"', ([reading, cell, facts, read, language, words]) => {
    const one = draft(reading, cell, read, language, words);
    expect(one.unread).toEqual([]);
    expect(one.facts).toMatchObject(facts);
  });

  test.each([
    ['date', '03/04/1911', 'days: day first'],
    ['mint', 'dto.', 'row above'],
    ['ruler', 'wie vor', 'row above'],
    ['denomination', '″', 'row above'],
    ['issuer', 'as above', 'row above'],
    ['date', 's.o.', 'row above'],
    ['metal', 's. o.', 'row above'],
    ['date', '1923/1983', '1923 - 1983'],
    ['date', '157?', '1570-1579'],
    ['date', '1622 und 1624', 'one piece is seldom made in several'],
    ['date', '1622 & 1624', 'one piece is seldom made in several'],
    ['kind', 'replica token', 'kind: { replica token: token }'],
    ['kind', 'plaster token', 'under words: in the mapping'],
    ['references', 'Pag. 494', 'reference to'],
    ['date', '268', 'any era'],
    ['date', '12/3/98', 'year of two figures'],
    ['date', '1752 NS', 'may be the sign of an era'],
    ['date', '1640 (1641)', 'may give the year on the piece'],
    ['weight', '4.05 gr', 'grams or grains'],
    ['weight in g', '3,456', 'two ways'],
    ['weight', 'heavy', 'is not a weight'],
    ['metal', 'Papier', 'kinds: paper'],
    ['metal', 'Hartmetall', 'no metal known here'],
    ['metal', 'silver plated', 'no metal known here'],
    ['metal', 'AR/AE', 'names several metals'],
    ['mint', 'London or Canterbury', 'leaves open which'],
    ['mint', '(m)', 'a mint in short'],
    ['mint', '•', 'a mint in short'],
    ['mint', 'Byzantium/Constantinople', 'leaves open which'],
    ['denomination', 'dupondius oder as', 'leaves open which'],
    ['date', '1???', '1XXX'],
    ['references', 'NC 1921 p. 75', 'year of a volume'],
    ['references', 'BNJ 1987, pp. 12-14', 'year of a volume'],
    ['grade', 'lovely', 'is not a grade'],
    ['ledger cost', '45', 'currency'],
  ])('%s of "%s" is not guessed at, and its text is kept', (reading, cell, because) => {
    const one = draft(reading, cell);
    expect(one.unread).toHaveLength(1);
    expect(one.unread[0]).toMatchObject({ row: 2, heading: 'C', text: cell });
    expect(one.unread[0]?.because).toContain(because);
    expect(Object.keys(one.facts).sort()).toEqual(['kind', 'number', 'title']);
  });

  test('of a book of tokens by county keeps the county in the number, and a book that is a letter alone is asked about', () => {
    const books = (cell: string) =>
      (draft('references', cell).names.references ?? []).map(({ name, cited }) => [name, cited.number]);
    expect(books('DH Anglesey 290?; DH 244')).toEqual([['DH', 'Anglesey 290'], ['DH', '244']]); // prettier-ignore
    expect([whichBook('S'), whichBook('S.'), whichBook('RIC')].map((one) => one?.includes('Standard Catalogue'))).toEqual([true, true, undefined]); // prettier-ignore
    expect(['J. N', 'Z', 'D&H', 'BMC'].map((name) => whichBook(name) !== undefined)).toEqual([
      true,
      true,
      false,
      false,
    ]);
    expect(books('sear vol. 2 7445')).toEqual([['sear', '7445']]);
  });

  // Common practice: what lists put beside the name of a mint or a denomination.
  test.for([
    ['denomination', 'Denarius (plated)', 'Denarius', 'plated'],
    ['denomination', 'fourrée denarius', 'denarius', 'fourrée'],
    ['denomination', 'denario suberato', 'denario', 'suberato'],
    ['denomination', 'Cash (cast)', 'Cash', 'cast'],
    ['denomination', 'follis (40 nummi)', 'follis (40 nummi)', null],
    ['mint', 'Siscia (2nd officina)', 'Siscia', '2nd officina'],
    ['mint', 'Siscia, officina B', 'Siscia', 'officina B'],
    ['mint', 'Paris (A)', 'Paris', 'A'],
    ['mint', 'Cambridge (MA)', 'Cambridge (MA)', null],
    ['mint', 'zecca incerta (Sicilia?)', 'unknown', 'Sicilia?'],
  ] as const)('%s of "%s" keeps what is beside the name', ([field, cell, name, beside]) => {
    const one = draft(field, cell);
    const named = one.names[field];
    expect(named?.name ?? one.facts[field]).toBe(name);
    expect(one.unread.map(({ text }) => text)).toEqual(beside === null ? [] : [beside]);
  });

  test('of a purchase is a day of today, whatever the years of the coins are counted from', () => {
    const bought = (cell: string) => draft('ledger acquired', cell, 'years: AD');
    expect(bought('03/2011')).toMatchObject({ unread: [], ledger: { acquired: 'March 2011' } });
    expect(bought('7/98').unread[0]?.because).toContain('any era');
  });

  test('of a ruler gives up the reign in brackets, and a question mark is a doubt', () => {
    expect(draft('ruler', 'Edward I (1272-1307)').names.ruler).toEqual([{ name: 'Edward I', years: '1272-1307' }]);
    expect(draft('ruler', 'Gaius (Caligula)').names.ruler).toEqual([{ name: 'Gaius (Caligula)' }]);
    const doubtful = draft('mint', 'York?');
    expect([doubtful.names.mint, doubtful.facts['sure']]).toEqual([{ name: 'York' }, { mint: 'possible' }]);
  });

  test('of references is parted by book, with what stands before them', () => {
    expect(draft('references', 'N. 1018; S. 1380').names.references).toMatchObject([{ name: 'N.', cited: { number: '1018' } }, { name: 'S.', cited: { number: '1380' } }]);
    expect(draft('references', 'cf. RIC II 243').names.references).toMatchObject([{ name: 'RIC', cited: { relation: 'cf.', volume: 'II', number: '243' } }]);
    expect(draft('reference to North', '1018 var.').names.references).toMatchObject([{ name: 'North', cited: { number: '1018', relation: 'var.' } }]);
  }); // prettier-ignore

  test('with a sum that names no currency stays in the ledger under its own heading', () => {
    expect(draft('ledger cost', '45').ledger).toEqual({ C: '45' });
    expect(draft('ledger cost in EUR', '1.234,50', 'decimal: comma').ledger).toEqual({ cost: '1234.50 EUR' });
  });

  test('with words beside a year is read as far as it goes, and the rest is kept and told of', () => {
    const one = draft('date', '1872 (die 33)');
    expect(one.facts).toMatchObject({ date: '1872' });
    expect(one.unread).toMatchObject([
      { text: 'die 33', because: expect.stringContaining('no field of its own') as string },
    ]);
  });

  test('with a letter beside the year lends it to the title, and two columns that differ are told of', () => {
    const mapping = parseMapping(
      'title: "{denomination}, {date}"\nread: { unnumbered: row }\ncolumns: { Year: date, As struck: dated, What: denomination }\n',
    );
    const sheet = sheetOf(
      ['Year', 'As struck', 'What'],
      [
        ['1889 CC', '', 'Dollar'],
        ['1889 CC', '1889', 'Dollar'],
      ],
    );
    const rows = mapping.ok ? readRows(sheet, mapping.value) : expect.fail(mapping.problem);
    expect(rows.drafts.map(({ facts }) => facts['title'])).toEqual(['Dollar, 1889 CC', 'Dollar, 1889 CC']);
    expect(rows.drafts[1]?.unread).toMatchObject([{ heading: 'As struck', text: '1889' }]);
  });

  test.each(['-', 'n.a.', '—'])('that says "%s" says nothing', (cell) => {
    expect(draft('weight in g', cell).facts).not.toHaveProperty('weight');
    expect(draft('weight in g', cell).unread).toEqual([]);
  });

  test('of a column that the mapping does not name is in the ledger, and nowhere that is published', () => {
    const mapping = parseMapping('columns: { No: number }\n');
    const sheet = sheetOf(['No', 'Cupboard', 'piece', ''], [['1', 'under the stairs', 'x', 'y']]);
    const rows = mapping.ok ? readRows(sheet, mapping.value) : expect.fail(mapping.problem);
    const [one] = rows.drafts;
    expect(one?.ledger).toEqual({ Cupboard: 'under the stairs', 'piece (as in the sheet)': 'x', '[D]': 'y' });
    expect(JSON.stringify([one?.facts, one?.names, one?.story])).not.toMatch(/stairs|"x"|"y"/);
  });

  test('with a point before three figures is not guessed at where decimals have a comma', () => {
    const one = draft('weight in g', '1.384', 'decimal: comma');
    expect(one.facts).not.toHaveProperty('weight');
    expect(one.unread[0]?.because).toContain('may part thousands');
  });

  test('that a formula could not work out is told of', () => {
    const mapping = parseMapping('read: { unnumbered: row }\ncolumns: { C: weight }\n');
    const sheet = sheetOf(['C'], [[{ text: '#REF!', value: { kind: 'error', says: '#REF!' } }]]);
    const rows = mapping.ok ? readRows(sheet, mapping.value) : expect.fail(mapping.problem);
    expect(rows.drafts[0]?.unread[0]?.because).toContain('#REF!');
  });
});

describe('a pattern', () => {
  test.each([
    ['{denomination} of {ruler}, {mint}, {date}. {number}.', 'Penny of Edward I, York, 1279-1281. 7.', ['Penny', 'Edward I', 'York', '1279-1281', '7']],
    ['{ruler} ({date})', 'Edward I (1272-1307)', ['Edward I', '1272-1307']],
    ['{denomination} of {ruler}', 'Penny', null],
    ['{denomination} of {ruler}', ' of Edward I', null],
  ])('%s on "%s"', (pattern, cell, parts) => {
    expect(matchPattern(pattern, cell)?.map(({ text }) => text) ?? null).toEqual(parts);
  }); // prettier-ignore

  test('is soon done with a cell made to be slow', () => {
    const started = performance.now();
    expect(matchPattern('{a}, {b}, {c}, {d}, {e}, {f}!', ', '.repeat(190))).toBeNull();
    expect(performance.now() - started).toBeLessThan(500);
  });
});
