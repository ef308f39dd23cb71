import { describe, expect, test } from 'vitest';
import { parseMapping } from '../../../src/import/columns/parse-mapping.ts';
import { formatReading } from '../../../src/import/columns/parse-column-rule.ts';
import { answer } from '../../../src/import/columns/question.ts';
import { readRows } from '../../../src/import/cells/read-rows.ts';
import { openQuestions, suggestMapping } from '../../../src/import/columns/suggest-mapping.ts';
import { readCsv } from '../../../src/catalogue/csv.ts';
import { piecesCsv } from '../../../src/publish/pieces-csv.ts';
import { sheetOf } from './sheet-of.ts';

const NO_LISTS = { rulers: [], mints: [], denominations: [], works: [] };
const suggested = (headings: readonly string[], rows: readonly (readonly string[])[]) => {
  const sheet = sheetOf(headings, rows);
  const { mapping, questions } = suggestMapping(sheet, NO_LISTS);
  return { sheet, mapping, questions, columns: Object.fromEntries(mapping.columns.map(({ heading, readings }) => [heading, readings.map(formatReading).join(', ')])) };
}; // prettier-ignore

describe('a sheet in English', () => {
  const { columns, questions, mapping, sheet } = suggested(
    ['No.', 'Ruler', 'Mint', 'Denomination', 'Date', 'Wt (g)', 'Ø mm', 'Axis', 'Grade', 'Price paid', 'Box', 'Wibble'],
    [
      ['1', 'Edward I (1272-1307)', 'York', 'Penny', 'c. 1280', '1.38', '18.6', '6h', 'VF-30 cleaned', '£45', 'tray 2', 'x1'],
      ['2', 'Edward I (1272-1307)', 'London', 'Penny', '1279-81', '1.41', '19', '3', 'gVF', '£60', 'tray 2', 'x2'],
    ],
  ); // prettier-ignore

  test('is mapped by its headings, and what nobody knows stays private', () => {
    expect(columns).toEqual({
      'No.': 'number', Ruler: 'ruler', Mint: 'mint', Denomination: 'denomination', Date: 'date', 'Wt (g)': 'weight in g', 'Ø mm': 'diameter in mm',
      Axis: 'axis', Grade: 'grade', 'Price paid': 'ledger cost', Box: 'ledger storage', Wibble: 'ledger',
    });
  }); // prettier-ignore

  test('asks only what sort of objects they are, and whose gVF it is', () => {
    expect(questions.map(({ id }) => id)).toEqual(['grade Grade', 'kind']);
  });

  test('becomes drafts once that is answered, with a title made of what is known', () => {
    const [choice] = questions[1]?.choices ?? [];
    const { drafts } = readRows(sheet, choice === undefined ? mapping : answer(mapping, choice));
    expect(drafts[0]).toEqual({
      row: 2,
      facts: {
        number: '1', title: 'Penny of Edward I, York', kind: 'coin', date: 'c. 1280', weight: '1.38 g', diameter: '18.6 mm', axis: '6h',
        grade: 'VF-30', 'grade-scale': 'numeric', problem: 'cleaned',
      },
      names: { ruler: [{ name: 'Edward I', years: '1272-1307' }], mint: { name: 'York' }, denomination: { name: 'Penny' } },
      titledBy: '{denomination} of {ruler}, {mint}',
      story: '',
      ledger: { cost: '£45', storage: 'tray 2', Wibble: 'x1' },
      unread: [],
    });
  }); // prettier-ignore
});

test('a column called From is of years or of sellers, and a heading lends its currency, as its cells say', () => {
  const rows = [
    ['1', 'a fair', '35'],
    ['2', 'trade', '12'],
  ];
  expect(suggested(['No.', 'From', 'Paid (CDN)'], rows).columns).toMatchObject({
    From: 'ledger seller',
    'Paid (CDN)': 'ledger cost in CAD',
  });
  const years = [
    ['1', '1272', '1307'],
    ['2', '1307', '1327'],
  ];
  expect(suggested(['No.', 'From', 'To'], years).columns).toMatchObject({ From: 'date from', To: 'date to' });
});

test('a heading that is a unit gives it, one that is short for a book asks, and a number in a pattern numbers the rows', () => {
  const rows = [
    ['1', '38', 'KM 5.1'],
    ['2', '23.5', 'Y 46'],
  ];
  const { columns, questions } = suggested(['No.', 'mm', 'KM#'], rows);
  expect(columns).toMatchObject({ mm: 'diameter in mm', 'KM#': 'ledger' });
  const [asked] = questions.filter(({ id }) => id === 'column KM#');
  expect(asked?.choices.map(({ change }) => change.columns?.[0]?.readings.map(formatReading))).toEqual([
    ['reference to KM'],
    ['references'],
    ['ledger certificate'],
    ['ledger'],
  ]);
  const mapping = parseMapping('always: { kind: coin }\ncolumns: { Title: "{denomination} {number}" }\n');
  const sheet = sheetOf(['Title'], [['Penny 7']]);
  expect(mapping.ok && openQuestions(sheet, mapping.value).questions.map(({ id }) => id)).toEqual([]);
});

test('a sheet in German is read in German', () => {
  const { columns, mapping } = suggested(
    ['Inventarnummer', 'Münzherr', 'Münzstätte', 'Nominal', 'Jahr', 'Gewicht in Gramm', 'Ø', 'Erhaltung', 'Kaufpreis (€)', 'Bemerkungen'],
    [['12', 'Friedrich II.', 'Berlin', 'Taler', '1764', '22,27', '37,5', 'ss-vz', '1.250,00', 'vom Onkel']],
  ); // prettier-ignore
  expect(mapping).toMatchObject({
    language: 'de',
    title: '{denomination}, {ruler}, {mint}',
    settings: { decimal: 'comma' },
  });
  expect(columns).toMatchObject({
    'Gewicht in Gramm': 'weight in g',
    'Kaufpreis (€)': 'ledger cost in EUR',
    Bemerkungen: 'ledger notes',
  });
});

describe('where it may not guess it asks, and until then keeps private', () => {
  test.each([
    ['Date', '14/05/2011', 'column Date', 'ledger acquired'],
    ['Value', '50', 'column Value', 'ledger value'],
    ['Location', 'York', 'column Location', 'ledger storage'],
    ['Provenance', 'ex a friend', 'column Provenance', 'ledger'],
    ['Description', 'a bust', 'column Description', 'ledger'],
  ])('%s', (heading, cell, id, reading) => {
    const { columns, questions } = suggested(['Inventory no.', heading], [['1', cell]]);
    expect(columns[heading]).toBe(reading);
    const asked = questions.find((question) => question.id === id);
    expect(asked).toMatchObject({ example: cell });
    expect(asked?.choices.length).toBeGreaterThan(1);
    expect(asked?.otherwise).not.toBe('');
  });

  test.each([
    ['decimal', ['Weight (g)'], ['3,456']],
    ['days', ['Date acquired'], ['03/04/2011']],
    ['years', ['Year'], ['268']],
    ['minus', ['From'], ['-44']],
    ['alone', ['From', 'To'], ['1279', '']],
    ['gr', ['Poids (gr)'], ['4.05']],
    ['currency', ['Price'], ['45']],
    ['unnumbered', ['Ruler'], ['Edward I']],
  ] as const)('%s', (id, headings, row) => {
    const { questions, mapping } = suggested(headings, [row]);
    expect(questions.map((question) => question.id)).toContain(id);
    expect(mapping.settings).not.toHaveProperty(id);
  });

  test('numbers that repeat are no inventory numbers', () => {
    expect(suggested(['No.'], [['7'], ['7']]).columns['No.']).toBe('ledger');
  });

  test('days that tell which comes first are not asked about', () => {
    const { questions, mapping } = suggested(['Date acquired'], [['03/04/2011'], ['14/05/2011']]);
    expect(questions.map(({ id }) => id)).not.toContain('days');
    expect(mapping.settings.days).toBe('day first');
  });
});

test('our own pieces.csv maps itself without a question', () => {
  const facts = { id: 'york-penny', number: '1', title: 'Penny', kind: 'coin', ruler: ['edward-i'], date: '1280/1281', edtf: '1280/1281', references: ['north 1017', 'cf. withers 23a'], obverse: { legend: "+EDW R'" }, sure: { mint: 'probable' }, makers: [{ name: 'Oban', role: 'moneyer' }], weight: '21.3 grains', address: 'https://example.org/pieces/york-penny/' }; // prettier-ignore
  const { headings, rows } = readCsv(piecesCsv([facts]));
  const { mapping, questions, sheet } = suggested(headings, rows.map((row) => headings.map((heading) => row[heading] ?? ''))); // prettier-ignore
  expect(questions).toEqual([]);
  expect(readRows(sheet, mapping).drafts).toMatchObject([
    {
      row: 2,
      id: 'york-penny',
      facts: { number: '1', title: 'Penny', kind: 'coin', date: '1280/1281', weight: '21.3 grains', obverse: { legend: "+EDW R'" }, sure: { mint: 'probable' }, makers: [{ name: 'Oban', role: 'moneyer' }] },
      names: { ruler: [{ name: 'edward-i' }], references: [{ name: 'north', cited: { number: '1017' } }, { name: 'withers', cited: { number: '23a', relation: 'cf.' } }] },
      story: '',
      ledger: {},
      unread: [],
    },
  ]);
}); // prettier-ignore

test('headings between the rows that are kinds are asked about, and an answer lends them to the rows below', () => {
  const sheet = {
    ...sheetOf(['No.', 'King/Queen', 'Cond.'], [['1', 'Edward I', 'VF'], ['2', 'Victoria', 'F']]),
    setAside: [{ row: 1, text: 'TOKENS', because: 'a heading', isHeading: true as const }],
  }; // prettier-ignore
  const { mapping, questions } = suggestMapping(sheet, NO_LISTS);
  expect(mapping.columns.flatMap(({ readings }) => readings.map(formatReading))).toEqual(['number', 'ruler', 'grade']);
  const [choice] = questions.find(({ id }) => id === 'sections')?.choices ?? [];
  const answered = choice === undefined ? mapping : answer(mapping, choice);
  expect(answered.sections).toBe('kind');
  expect(readRows(sheet, answered).drafts.map(({ facts }) => facts['kind'])).toEqual(['token', 'token']);
});
