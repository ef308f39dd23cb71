import { describe, expect, test } from 'vitest';
import { GRADE_EXAMPLES, GRADE_REFUSALS } from '../../../src/core/grade/grade-examples.ts';
import { parseGrade } from '../../../src/core/grade/parse-grade.ts';
import {
  AXIS_EXAMPLES,
  SIZE_EXAMPLES,
  WEIGHT_EXAMPLES,
  WEIGHT_REFUSALS,
} from '../../../src/core/measures/measure-examples.ts';
import { formatAxis, parseAxis } from '../../../src/core/measures/parse-axis.ts';
import { formatSize, parseSize } from '../../../src/core/measures/parse-size.ts';
import { formatWeight, parseWeight } from '../../../src/core/measures/parse-weight.ts';
import { FINENESS_EXAMPLES, FINENESS_REFUSALS } from '../../../src/core/metal/fineness-examples.ts';
import { formatFineness, parseFineness } from '../../../src/core/metal/parse-fineness.ts';
import type { Outcome } from '../../../src/core/outcome.ts';

const shown = <T>(outcome: Outcome<T>, format: (value: T) => string) =>
  outcome.ok ? format(outcome.value) : outcome.problem;
const upToRemark = (means: string) => means.split(';')[0];

describe('the tables a visitor reads tell the truth', () => {
  test.for(WEIGHT_EXAMPLES)('$write means $means', ({ write, means }) =>
    expect(shown(parseWeight(write), formatWeight)).toBe(upToRemark(means)),
  );
  test.for(SIZE_EXAMPLES)('$write means $means', ({ write, means }) =>
    expect(shown(parseSize(write), formatSize)).toBe(upToRemark(means)),
  );
  test.for(AXIS_EXAMPLES)('$write means $means', ({ write, means }) =>
    expect(shown(parseAxis(write), formatAxis)).toBe(upToRemark(means)),
  );
  test.for(FINENESS_EXAMPLES)('$write means $means', ({ write, means }) =>
    expect(shown(parseFineness(write), formatFineness)).toBe(upToRemark(means)),
  );

  test.for(GRADE_EXAMPLES)('$write ($scale) means $means', ({ write, scale, means }) => {
    const grade = parseGrade(write, scale === undefined ? {} : { scale });
    const numbers = shown(grade, ({ low, high }) =>
      low === null ? 'not graded' : low === high ? String(low) : `${low}–${high ?? ''}`,
    );
    expect(numbers).toBe(upToRemark(means));
  });

  test.for(WEIGHT_REFUSALS)('$write asks', ({ write, means }) =>
    expect(shown(parseWeight(write), formatWeight)).toBe(means),
  );
  test.for(FINENESS_REFUSALS)('$write asks', ({ write, means }) =>
    expect(shown(parseFineness(write), formatFineness)).toBe(means),
  );
  test.for(GRADE_REFUSALS)('$write asks', ({ write, scale, means }) => {
    expect(shown(parseGrade(write, scale === undefined ? {} : { scale }), () => 'read')).toBe(means);
  });
});
