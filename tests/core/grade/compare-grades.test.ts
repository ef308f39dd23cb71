import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compareGrades, summariseGrades } from '../../../src/core/grade/compare-grades.ts';
import { SCALE_IDS, notGraded } from '../../../src/core/grade/grade.ts';
import type { Grade, ScaleId } from '../../../src/core/grade/grade.ts';
import { parseGrade } from '../../../src/core/grade/parse-grade.ts';
import { SCALES } from '../../../src/core/grade/scales.ts';
import { tries } from '../../tries.ts';

function gradeOf(text: string, scale?: ScaleId): Grade {
  const outcome = parseGrade(text, scale === undefined ? {} : { scale });
  if (!outcome.ok) throw new Error(outcome.problem);
  return outcome.value;
}

describe('is the first better than the second?', () => {
  test.for([
    ['MS-64', 'MS-63', 'certainly better'],
    ['MS-63', 'MS-63', 'not better'],
    ['MS-63+', 'MS-63', 'possibly better'],
    ['MS-63', 'MS-64', 'not better'],
    ['EF-40', 'VF-35', 'certainly better'],
    ['SUP', 'ss', 'certainly better'],
    ['TTB', 'ss', 'possibly better'],
    ['MS-63 details, cleaned', 'VF-20', 'possibly better'],
    ['MS-63', 'VF-20 details, cleaned', 'certainly better'],
    ['MS-63', 'MS-63 details, cleaned', 'possibly better'],
    ['EF-40 details, cleaned', 'VF-20 details, cleaned', 'certainly better'],
    ['EF-40 details, cleaned', 'VF-20 details, holed', 'possibly better'],
    ['VF-20', 'not graded: cut', 'cannot be compared'],
    ['PR-65', 'VF-20', 'cannot be compared'],
    ['PR-65', 'PR-64', 'certainly better'],
  ] as const)('%s against %s: %s', ([a, b, verdict]) => {
    const comparison = compareGrades(gradeOf(a), gradeOf(b));
    expect(comparison.verdict).toBe(verdict);
    expect(comparison.because).toMatch(/^[^.].*\.$/);
  });

  /** Within one scale the order of its labels decides; across scales the numbers. Labels from poor to fine: common practice. */
  test.for([
    ['VF', 'uk', 'F', 'uk', 'certainly better'],
    ['EF', 'uk', 'VF', 'uk', 'certainly better'],
    ['good VF', 'uk', 'VF', 'uk', 'certainly better'],
    ['near EF', 'uk', 'good VF', 'uk', 'certainly better'],
    ['VF', 'uk', 'VF', 'uk', 'not better'],
    ['VF+', 'uk', 'good VF', 'uk', 'not better'],
    ['VF/F', 'uk', 'F', 'uk', 'possibly better'],
    ['VF', 'uk', 'VF/F', 'uk', 'possibly better'],
    ['VF/EF', 'uk', 'F', 'uk', 'certainly better'],
    ['gem Unc', 'us', 'Unc', 'us', 'possibly better'],
    ['choice MS', 'us', 'AU', 'us', 'certainly better'],
    ['gem MS', 'us', 'choice MS', 'us', 'certainly better'],
    ['ss+', 'de', 'ss', 'de', 'certainly better'],
    ['vz', 'de', 'fast vz', 'de', 'certainly better'],
    ['TTB', 'fr', 'TB', 'fr', 'certainly better'],
    ['SPL', 'it', 'qSPL', 'it', 'certainly better'],
    ['VF', undefined, 'F', undefined, 'certainly better'],
    ['VF', 'uk', 'F', 'us', 'certainly better'],
    ['F', 'uk', 'F-12', 'numeric', 'possibly better'],
    ['F', 'uk', 'F', 'us', 'possibly better'],
    ['VF', 'us', 'F', 'uk', 'possibly better'],
    ['VF, cleaned', 'uk', 'F', 'uk', 'possibly better'],
  ] as const)('%s (%s) against %s (%s): %s', ([a, scaleA, b, scaleB, verdict]) => {
    expect(compareGrades(gradeOf(a, scaleA), gradeOf(b, scaleB)).verdict).toBe(verdict);
  });
});

/** Numbers with their prefixes, pluses and problems: MS-63+, PR-65, AU-58 details, cleaned. */
const numbered: fc.Arbitrary<Grade> = fc
  .tuple(
    fc.constantFrom('VF-20', 'VF-35', 'EF-45', 'AU-58', 'MS-60', 'MS-63', 'MS-64', 'MS-70', 'PR-63', 'PR-65'),
    fc.constantFrom('', '+'),
    fc.constantFrom('', ' details, cleaned', ' details, holed'),
  )
  .filter(([grade, plus]) => plus === '' || !/-(?:60|70)$/.test(grade))
  .map((written) => gradeOf(written.join('')));

const worded: fc.Arbitrary<Grade> = fc
  .tuple(fc.constantFrom(...SCALE_IDS), fc.nat(), fc.constantFrom('', ', cleaned', ', holed'), fc.nat(9))
  .map(([scale, at, problem, ungraded]) => {
    const { words } = SCALES[scale];
    return ungraded === 0 ? notGraded('cut') : gradeOf(`${words[at % words.length]?.word ?? ''}${problem}`, scale);
  });
const anyGrade = fc.oneof(worded, numbered);

describe('laws', () => {
  test('certainly better is transitive, and never holds both ways', () => {
    fc.assert(
      fc.property(anyGrade, anyGrade, anyGrade, (a, b, c) => {
        const surely = (x: Grade, y: Grade) => compareGrades(x, y).verdict === 'certainly better';
        if (surely(a, b)) expect(surely(b, a)).toBe(false);
        if (surely(a, b) && surely(b, c)) expect(surely(a, c)).toBe(true);
      }),
      { numRuns: tries(5000) },
    );
  });

  test('a details piece is never certainly better than a straight one', () => {
    fc.assert(
      fc.property(anyGrade, anyGrade, (a, b) => {
        if (a.problem !== undefined && b.problem === undefined)
          expect(compareGrades(a, b).verdict).not.toBe('certainly better');
      }),
    );
  });

  test('across scales certainly better only when the low end is above the high end', () => {
    fc.assert(
      fc.property(anyGrade, anyGrade, (a, b) => {
        if (a.scale !== b.scale && compareGrades(a, b).verdict === 'certainly better')
          expect(a.low ?? 0).toBeGreaterThan(b.high ?? 70);
      }),
    );
  });
});

describe('the summary of a cabinet', () => {
  const grades = [
    gradeOf('VF', 'uk'),
    gradeOf('EF', 'uk'),
    gradeOf('VF', 'uk'),
    gradeOf('good F', 'uk'),
    gradeOf('ss', 'de'),
    gradeOf('VF, cleaned', 'uk'),
    gradeOf('VF'),
    notGraded('cut'),
    notGraded('cut'),
    notGraded('an ingot'),
  ];
  const summary = summariseGrades(grades);

  test('each scale stands alone, its words from poorest to best with their counts', () => {
    expect(
      summary.scales.map(({ scale, rows }) => [scale, rows.map(({ words, count }) => `${words} ${count}`)]),
    ).toEqual([
      ['uk', ['good F 1', 'VF 2', 'EF 1']],
      ['de', ['ss 1']],
      [null, ['VF 1']],
    ]);
  });

  test('details pieces and ungraded pieces are counted apart', () => {
    expect(summary.details.map(({ rows }) => rows.map(({ words, count }) => `${words} ${count}`))).toEqual([['VF 1']]);
    expect(summary.notGraded).toEqual([
      { reason: 'cut', count: 2 },
      { reason: 'an ingot', count: 1 },
    ]);
  });

  test('nobody is left out', () => {
    const counted = [...summary.scales, ...summary.details]
      .flatMap(({ rows }) => rows)
      .reduce((sum, { count }) => sum + count, 0);
    expect(counted + summary.notGraded.reduce((sum, { count }) => sum + count, 0)).toBe(grades.length);
  });
});
