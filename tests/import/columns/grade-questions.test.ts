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
  return { sheet, mapping, scales: questions.filter(({ id }) => id.startsWith('grade ')) };
};
const oneEach = (words: readonly string[]) => words.map((word) => [word]);

// Which words belong to which country is common practice: Britain and America share VF and EF, which grade differently (AU is American);
// France and Italy share SPL and FDC; TTB is French alone, BB Italian, ss German, MBC Spanish, Zfr Dutch. `F` is Fine, and Dutch fraai.
describe('a column of grades', () => {
  test.for([
    ['Grade', ['VF', 'EF', 'good Fine'], ['British', 'American', 'Ancient']],
    ['Condition', ['F'], ['British', 'American', 'Ancient', 'Dutch']],
    ['Grade', ['VF', 'AU', 'EF'], ['American', 'British', 'Ancient']],
    ['Grade', ['VF', 'TTB', 'ss'], ['British', 'American', 'Ancient']],
    ['État', ['SPL', 'FDC'], ['French', 'Italian', 'British', 'Ancient', 'Spanish', 'Dutch']],
    ['Grade', ['VF, cleaned', 'VF/EF', ''], ['British', 'American', 'Ancient']],
    ['Grade', ['Fr'], ['British', 'American', 'Ancient', 'Dutch']],
  ] as const)('%s of %j is asked about once, the scale that reads most first', ([heading, words, titles]) => {
    const { scales } = asked([heading], oneEach(words));
    expect(scales).toHaveLength(1);
    expect(scales[0]?.choices.map((choice) => choice.answer).toSorted()).toEqual([...titles].toSorted());
    expect(scales[0]?.choices[0]?.answer).toBe(titles[0]);
    const several = words.find((word) => word !== '' && scales[0]?.asks.includes(`"${word}"`));
    expect(several).toBeDefined();
  });

  test('shows its words, and how many of them each scale has', () => {
    const { scales } = asked(['Grade'], oneEach(['VF', 'VF', 'AU', 'lovely']));
    expect(scales[0]?.asks).toBe(
      'On whose scale are the grades under "Grade"? It says "VF", which more than one scale has. Of 3 grades the American scale has 3, the British scale has 2, the Ancient scale has 2.',
    );
  });

  test.for([
    ['of one country', ['TTB', 'SUP']],
    ['of one country', ['ss', 'vz', 'st']],
    ['of numbers, which name their own', ['VF-30', 'MS-63', '58']],
    ['of none', ['not graded: cut', '-', '']],
    ['that is no grade', ['lovely']],
  ] as const)('%s is not asked about: %j', ([, words]) => {
    expect(asked(['Grade'], oneEach(words)).scales).toEqual([]);
  });

  test.for([
    [['TTB', 'SPL'], 'fr'],
    [['BB', 'SPL', 'qFDC'], 'it'],
    [['MBC', 'EBC', 'FDC'], 'es'],
  ] as const)('%j is settled by the word of one country alone, and the mapping says so', ([words, scale]) => {
    const rows = words.map((word, at) => [String(at + 1), word]);
    const { mapping, scales, sheet } = asked(['Inv. no.', 'Grade'], rows);
    expect(scales).toEqual([]);
    expect(mapping.columns[1]?.readings).toEqual([{ kind: 'field', field: 'grade', unit: scale }]);
    expect(readRows(sheet, mapping).drafts.map(({ facts }) => facts['grade-scale'])).toEqual(words.map(() => scale));
  });

  test('next to a column of scales is not asked about', () => {
    expect(asked(['Grade', 'Grade scale'], [['VF', 'uk']]).scales).toEqual([]);
    expect(asked(['Grade (US)'], [['VF']]).scales).toEqual([]);
  });

  test('that nobody answers for is imported without a scale; the answer is taken, but for words of another country', () => {
    const { sheet, mapping, scales } = asked(['No.', 'Grade'], [['1', 'VF'], ['2', 'TTB'], ['3', 'MS-63']]); // prettier-ignore
    const scaleOf = (by: typeof mapping) => readRows(sheet, by).drafts.map(({ facts }) => facts['grade-scale']);
    expect(scaleOf(mapping)).toEqual([undefined, 'fr', 'numeric']);
    const british = scales[0]?.choices.find((choice) => choice.answer === 'British');
    if (british === undefined) throw new Error('nothing to choose');
    expect(scaleOf(answer(mapping, british))).toEqual(['uk', 'fr', 'numeric']);
  });

  test('is asked about again while the mapping does not say, and no longer', () => {
    const sheet = sheetOf(['Grade'], [['VF']]);
    const left = (text: string) => {
      const mapping = parseMapping(text);
      return mapping.ok
        ? openQuestions(sheet, mapping.value).questions.filter(({ id }) => id.startsWith('grade ')).length
        : expect.fail(mapping.problem);
    };
    expect(left('columns: { Grade: grade }\n')).toBe(1);
    expect(left('columns: { Grade: grade in uk }\n')).toBe(0);
    expect(left('always: { grade-scale: us }\ncolumns: { Grade: grade }\n')).toBe(0);
  });
});
