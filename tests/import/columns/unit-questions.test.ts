import { describe, expect, test } from 'vitest';
import { parseMapping } from '../../../src/import/columns/parse-mapping.ts';
import { answer } from '../../../src/import/columns/question.ts';
import { readRows } from '../../../src/import/cells/read-rows.ts';
import { openQuestions, suggestMapping } from '../../../src/import/columns/suggest-mapping.ts';
import { sheetOf } from './sheet-of.ts';

const NO_LISTS = { rulers: [], mints: [], denominations: [], works: [] };
const asked = (headings: readonly string[], rows: readonly (readonly string[])[]) => {
  const sheet = sheetOf(headings, rows);
  const { mapping, questions } = suggestMapping(sheet, NO_LISTS);
  return { sheet, mapping, units: questions.filter(({ id }) => id.startsWith('unit ')) };
};

// Weights of the standards: pennies 22.2222 grains = 1.44 g (Allen, NC 165; Craik); sovereign 123.27447 gr = 7.98805 g (Coinage Act 1870,
// First Schedule); crown 436.36363 gr = 28.27590 g (the same); dollar 412.5 gr (Act of 18 January 1837). Diameters: common practice.
describe('a column of figures without a unit', () => {
  test.for([
    [
      'pennies in grams',
      [
        ['1.41', '19'],
        ['1.38', '18.5'],
        ['1.44', '18'],
      ],
      'Likely they are grams',
    ],
    [
      'pennies in grains',
      [
        ['22.2', '19'],
        ['21.8', '18.5'],
        ['22.0', '18'],
      ],
      'Likely they are grains',
    ],
    [
      'gold in grains',
      [
        ['123.27', '22'],
        ['61.6', '19'],
        ['122.9', '22'],
      ],
      'Likely they are grains',
    ],
    [
      'dollars in grains',
      [
        ['412.5', '38.1'],
        ['411', '38.1'],
      ],
      'Likely they are grains',
    ],
    [
      'crowns in grams',
      [
        ['28.28', '38.6'],
        ['28.1', '38.5'],
      ],
      'Likely they are grams',
    ],
    [
      'crowns in grams beside no diameter',
      [
        ['28.28', ''],
        ['28.1', ''],
      ],
      'either is usual',
    ],
  ] as const)('%s is asked about, and the figures tell what is likely', ([, rows, guess]) => {
    const { units } = asked(['Wt', 'Diam'], rows);
    expect(units.find(({ id }) => id === 'unit Wt')?.asks).toContain(guess);
  });

  test('is not read until somebody answers, and then is', () => {
    const { sheet, mapping, units } = asked(['No.', 'Wt'], [['1', '1.41'], ['2', '1.38']]); // prettier-ignore
    expect(readRows(sheet, mapping).drafts.flatMap(({ unread }) => unread)).toHaveLength(2);
    const [grams, grains] = units[0]?.choices ?? [];
    if (grams === undefined || grains === undefined) throw new Error('nothing to choose');
    const weights = (choice: typeof grams) =>
      readRows(sheet, answer(mapping, choice)).drafts.map(({ facts }) => facts['weight']);
    expect(weights(grams)).toEqual(['1.41 g', '1.38 g']);
    expect(weights(grains)).toEqual(['1.41 grains', '1.38 grains']);
  });

  test.for([
    ['Weight (g)', '1.41'],
    ['Weight', '1.41 g'],
    ['Weight', '-'],
  ])('%s over "%s" is not asked about', ([heading, cell]) => {
    expect(asked([heading ?? ''], [[cell ?? '']]).units).toEqual([]);
  });

  test('of which most cells name their own is not asked about', () => {
    expect(asked(['Wt'], [['1.41 g'], ['1.38 g'], ['1.40 g'], ['1.44']]).units).toEqual([]); // prettier-ignore
    expect(asked(['Wt'], [['1.41 g'], ['1.38'], ['1.44']]).units).toHaveLength(1); // prettier-ignore
  });

  test.for([
    ['Ø', '25.3', 'usual in millimetres.'],
    ['Size', '1.5', 'usual in centimetres or inches.'],
    ['Diameter', '4', 'usual in centimetres.'],
    ['Thickness', '1.2', 'usual in millimetres.'],
  ])('%s of %s is said to be %s', ([heading, cell, guess]) => {
    expect(asked([heading ?? ''], [[cell ?? '']]).units[0]?.asks).toContain(guess);
  });

  test('is asked about again while the mapping does not say, and no longer', () => {
    const sheet = sheetOf(['Wt'], [['1.41']]);
    const left = (reading: string) => {
      const mapping = parseMapping(`columns: { Wt: ${reading} }\n`);
      return mapping.ok
        ? openQuestions(sheet, mapping.value).questions.filter(({ id }) => id.startsWith('unit ')).length
        : expect.fail(mapping.problem);
    };
    expect([left('weight'), left('weight in g'), left('ledger')]).toEqual([1, 0, 0]);
  });
});
