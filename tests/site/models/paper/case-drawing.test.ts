import { beforeAll, expect, test } from 'vitest';
import { lineText, widthOfText } from '../../../../src/core/cases/typeset-text.ts';
import type { SetCase } from '../../../../src/site/models/exhibit/planned-case.ts';
import { setCase } from '../../../../src/site/models/exhibit/planned-case.ts';
import { shownExhibit } from '../../../../src/site/models/exhibit/shown-exhibit.ts';
import { smallCaseDrawing } from '../../../../src/site/models/paper/case-drawing.ts';
import { withApostrophes } from '../../../../src/site/words/no-break.ts';
import { wholeCabinet } from '../../whole-cabinet.ts';

/** Millimetres in a point: 1/72 inch. */
const POINT = 25.4 / 72;

let cases: readonly SetCase[] = [];
beforeAll(async () => {
  const cabinet = await wholeCabinet('content');
  cases = cabinet.lists.exhibits
    .map((exhibit) => shownExhibit(cabinet, exhibit))
    .flatMap((shown) => shown.cases.map((one) => setCase(one, shown.label)));
});

// Common practice: print that is to be read without a glass is no smaller than 7 points.
// The smallest is a tenth of a metre wide.
test.for([1, 2, 5, 6])(
  'the names of groups can be read in a plan drawn %i times smaller, and lie on nothing',
  (scale) => {
    expect(cases.length).toBeGreaterThan(1);
    for (const one of cases) {
      const marks = smallCaseDrawing(one, scale);
      const names = marks.flatMap((mark) => (mark.kind === 'text' && mark.face === 'book' ? [mark] : []));
      expect(names.map(({ line }) => lineText(line)).join(' ')).toBe(
        one.groups.map(({ group }) => withApostrophes(group.title)).join(' '),
      );
      const lying = marks.flatMap((mark) =>
        (mark.kind === 'frame' || mark.kind === 'oval') && mark.name !== 'case' ? [mark.box] : [],
      );
      for (const { x, y, size, line } of names) {
        expect(size / POINT).toBeGreaterThanOrEqual(7);
        const right = x + widthOfText(lineText(line), size / POINT);
        expect(y - size).toBeGreaterThanOrEqual(0);
        for (const { left, top, width, height } of lying) {
          const isOver = x < left + width && right > left && y > top && y - 0.7 * size < top + height;
          expect(isOver ? lineText(line) : null).toBeNull();
        }
      }
    }
  },
);
