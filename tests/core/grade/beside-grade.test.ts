import { expect, test } from 'vitest';
import { formatGrade } from '../../../src/core/grade/format-grade.ts';
import type { Grade } from '../../../src/core/grade/grade.ts';
import { parseGrade } from '../../../src/core/grade/parse-grade.ts';

function gradeOf(text: string): Grade {
  const outcome = parseGrade(text);
  return outcome.ok ? outcome.value : expect.fail(`${text}: ${outcome.problem}`);
}

/** What stands after a grade and is no part of it: all common practice. */
test.for([
  ['MS-64 RD', { words: 'MS-64', colour: 'red' }],
  ['MS-65 RB', { words: 'MS-65', colour: 'red and brown' }],
  ['PR-65 cameo', { words: 'PR-65', remarks: ['cameo'] }],
  ['PR-65 deep cameo', { words: 'PR-65', remarks: ['deep cameo'] }],
  ['MS-63 prooflike', { words: 'MS-63', remarks: ['prooflike'] }],
  ['VF 5/5 4/5', { strike: 5, surface: 4 }],
  ['Ch XF 5/5 - 3/5', { words: 'choice EF', strike: 5, surface: 3 }],
  ['XF, 4/5, 2/5, scratches', { strike: 4, surface: 2, problem: 'scratches' }],
] as const)('%s', ([text, expected]) => {
  expect(gradeOf(text)).toMatchObject(expected);
});

/** A fault is a fault whatever else is said in the same breath, and what is denied is none. Common practice. */
test.for([
  ['VF, cleaned but attractive', 'cleaned but attractive'],
  ['VF, cleaned and toned', 'cleaned and toned'],
  ['VF, well scratched', 'well scratched'],
  ['VF, artificially toned', 'artificially toned'],
  ['VF, edge knock', 'edge knock'],
  ['VF, gilt', 'gilt'],
  ['ZF, gaatje', 'gaatje'],
  ['EF, lustrous with hairlines', 'hairlines'],
  ['VF, weak strike at the edge', undefined],
  ['VF, uncleaned', undefined],
  ['VF, no scratches', undefined],
  ['TTB, sans rayures', undefined],
  ['VF, struck from rusty dies', undefined],
  ['VF, die crack', undefined],
  ['VF, flan crack as made', undefined],
  ['VF, whole flan, lustrous', undefined],
  ['VF, flat rim', undefined],
  ['VF, not cleaned but scratched', 'not cleaned but scratched'],
  ['VF, die crack and scratches', 'die crack and scratches'],
  ['VF, without solder marks but pierced', 'without solder marks but pierced'],
  ['VF, uncleaned with scratches', 'scratches'],
  ['VF, free from scratches and hairlines', undefined],
] as const)('%s: problem %s', ([text, problem]) => {
  expect(gradeOf(text).problem).toBe(problem);
});

test('choice and gem before a number say nothing more than the number', () => {
  expect(gradeOf('Choice AU-58')).toMatchObject({ low: 58, high: 58 });
  expect(gradeOf('Superb Gem MS-67')).toMatchObject({ low: 67, high: 67 });
});

test('it reads back from print', () => {
  for (const text of ['VF 5/5 4/5', 'PR-65 cameo', 'MS-64 RD']) {
    const grade = gradeOf(text);
    expect({ ...gradeOf(formatGrade(grade)), text }).toEqual(grade);
  }
});

test('six is no number out of five, and one number says neither strike nor surface', () => {
  for (const text of ['VF 6/5 4/5', 'VF 5/5']) expect(parseGrade(text).ok).toBe(false);
});
