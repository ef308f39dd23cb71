import { describe, expect, test } from 'vitest';
import { parseMapping } from '../../../src/import/columns/parse-mapping.ts';
import { openQuestions, suggestMapping } from '../../../src/import/columns/suggest-mapping.ts';
import { sheetOf } from './sheet-of.ts';

const NO_LISTS = { rulers: [], mints: [], denominations: [], works: [] };

function open(headings: readonly string[], rows: readonly (readonly string[])[], text: string) {
  const mapping = parseMapping(text);
  if (!mapping.ok) throw new Error(mapping.problem);
  return openQuestions(sheetOf(headings, rows), mapping.value);
}

describe('a column that the keeper has named since', () => {
  const DAYS = [['1', '12.3.2010'], ['2', '14/5/99']]; // prettier-ignore

  test('has its conventions found, used and told, and what it leaves open asked', () => {
    const { mapping, found, questions } = open(['No', 'Got'], DAYS, 'columns: { No: number, Got: ledger acquired }\n');
    expect([found, mapping.settings]).toEqual([{ days: 'day first' }, { days: 'day first' }]);
    expect(questions.map(({ id }) => id)).toEqual(['short', 'kind']);
  });

  test('is not asked about what the mapping says, which goes before what the cells show', () => {
    const said =
      'read: { days: month first, short: 1900-1999 }\nalways: { kind: coin }\ncolumns: { No: number, Got: ledger acquired }\n';
    const { found, questions } = open(['No', 'Got'], DAYS, said);
    expect([found, questions]).toEqual([{}, []]);
  });
});

describe('rows without an inventory number', () => {
  test('are offered the column that numbers them, though a line of totals has none', () => {
    const rows = Array.from({ length: 40 }, (_, at) => [`K/${at}`, 'Victoria']);
    const { questions } = suggestMapping(sheetOf(['Own list', 'Ruler'], [...rows, ['', 'in all']]), NO_LISTS);
    const choices = questions.find(({ id }) => id === 'unnumbered')?.choices.map(({ change }) => change);
    expect(choices?.[0]).toEqual({
      columns: [{ heading: 'Own list', readings: [{ kind: 'field', field: 'number' }] }],
    });
    expect(choices?.[1]).toEqual({ settings: { unnumbered: 'row' } });
  });
});

describe('headings between the rows', () => {
  const asked = (...headings: readonly string[]) => {
    const sheet = sheetOf(
      ['No', 'Ruler'],
      Array.from({ length: 12 }, (_, at) => [String(at), 'Victoria']),
    );
    const setAside = headings.map((text, at) => ({
      row: at + 3,
      text,
      because: 'it is a heading',
      isHeading: true as const,
    }));
    const { questions } = suggestMapping({ ...sheet, setAside }, NO_LISTS);
    return questions.find(({ id }) => id === 'sections')?.choices[0]?.change;
  };

  test('of which one names a kind are asked about, each with its word', () => {
    expect(asked('TOKENS')).toEqual({ sections: 'kind' });
    expect(asked('HAMMERED', 'Tokens & medals', 'Medaillen')).toEqual({
      sections: 'kind',
      words: { kind: { HAMMERED: 'coin', 'Tokens & medals': 'unknown' } },
    });
    expect(asked('ROMAN', 'GREEK')).toBeUndefined();
  });
});

test.for([
  ['Spink / other refs', 'references'],
  ['Lit. (Jaeger)', 'references'],
  ['What I gave', 'ledger cost'],
  ['Where it lives', 'ledger storage'],
  ['Von wem', 'ledger seller'],
  ['Acheté à', 'ledger seller'],
  ['Remarques perso', 'ledger notes'],
  ['Wann gekauft', 'ledger acquired'],
  ['Liegt in', 'ledger storage'],
  ['Wert heute', 'ledger value'],
] as const)('the heading %s is %s', ([heading, is]) => {
  const { mapping } = suggestMapping(sheetOf([heading], [['x']]), NO_LISTS);
  const [reading] = mapping.columns[0]?.readings ?? [];
  expect(
    reading?.kind === 'ledger' ? `ledger ${reading.column ?? ''}` : reading?.kind === 'field' ? reading.field : '',
  ).toBe(is);
});
