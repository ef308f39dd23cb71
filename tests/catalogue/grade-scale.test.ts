import { expect, test } from 'vitest';
import { linkRecords } from '../../src/catalogue/link.ts';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import { matchHeading } from '../../src/import/columns/match-heading.ts';
import { changed, markedCabinet, problemsOf } from './small-cabinet.ts';

const PENNY = 'pieces/plain-penny/piece.md';

/** The penny of the marked cabinet with another grade, in a cabinet that states a scale or none. */
async function gradedIn(scale: string | null, grade: string) {
  const folder = changed(await markedCabinet(), {
    [PENNY]: (text) => text.replace('grade: VF\ngrade-scale: uk', `grade: ${grade}`),
    'cabinet.yaml': (text) => (scale === null ? text : `${text}grade-scale: ${scale}\n`),
  });
  expect(problemsOf(folder)).toEqual([]);
  return linkRecords(readCabinet(folder).records).pieces.find(({ id }) => id === 'plain-penny')?.grade ?? null;
}

// Common practice: VF is 20 to 35 of 70 in the United States; British tables put it higher.
test('a grade beside which no scale is named is on the scale of the cabinet', async () => {
  expect(await gradedIn('us', 'VF')).toMatchObject({ scale: 'us', low: 20, high: 35 });
  expect((await gradedIn('us', 'VF'))?.alsoOn).toBeUndefined();
  expect(await gradedIn('uk', 'VF')).toMatchObject({ scale: 'uk' });
  expect((await gradedIn(null, 'VF'))?.alsoOn).toContain('us');
});

test('a grade that the scale of the cabinet does not have keeps its own', async () => {
  expect(await gradedIn('uk', 'MS-63')).toMatchObject({ scale: 'numeric', low: 63 });
  expect(await gradedIn('uk', 'ss')).toMatchObject({ scale: 'de' });
});

test('a scale that is none is told', async () => {
  const folder = changed(await markedCabinet(), { 'cabinet.yaml': (text) => `${text}grade-scale: brittish\n` });
  expect(problemsOf(folder).map(({ kind }) => kind)).toEqual(['choice-unknown']);
});

test.for([
  ['Grade (UK)', 'uk'],
  ['Grade UK', 'uk'],
  ['Condition (US)', 'us'],
  ['Grade', null],
] as const)('the heading %s states the scale %s', ([heading, unit]) => {
  expect(matchHeading(heading)).toMatchObject({ kind: 'field', field: 'grade', unit });
});
