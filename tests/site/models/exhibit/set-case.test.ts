import { beforeAll, describe, expect, test } from 'vitest';
import { widthOfText } from '../../../../src/core/cases/typeset-text.ts';
import type { SetCase } from '../../../../src/site/models/exhibit/planned-case.ts';
import { CARD_MARGIN } from '../../../../src/core/cases/card.ts';
import { setCase } from '../../../../src/site/models/exhibit/planned-case.ts';
import type { ShownExhibit } from '../../../../src/site/models/exhibit/shown-exhibit.ts';
import { piecesShown, shownExhibit } from '../../../../src/site/models/exhibit/shown-exhibit.ts';
import { wholeCabinet } from '../../whole-cabinet.ts';

let shown: ShownExhibit;
let cases: readonly SetCase[] = [];
beforeAll(async () => {
  const cabinet = await wholeCabinet('content');
  const [first] = cabinet.lists.exhibits;
  if (first === undefined) throw new Error('The demo has no exhibit.');
  shown = shownExhibit(cabinet, first);
  cases = shown.cases.map((one) => setCase(one, shown.label));
});

describe('the demo exhibit', () => {
  test('fits its two cases', () => expect(cases.flatMap(({ misfits }) => misfits)).toEqual([]));

  test('has every piece in its place, in the keeper’s order', () => {
    const laid = cases.flatMap(({ groups }) => groups.flatMap(({ cells }) => cells.map((cell) => cell.shown.key)));
    expect(laid).toEqual(piecesShown(shown).map(({ key }) => key));
  });

  test('nothing in a case overlaps or leaves it', () => {
    for (const { shown: one, groups } of cases) {
      const boxes = groups.flatMap(({ headingBox, text, cells }) => [
        headingBox,
        ...(text === null ? [] : [text.box]),
        ...cells.flatMap(({ labelBox, faces }) => [labelBox, ...faces.map(({ box }) => box)]),
      ]);
      for (const [at, a] of boxes.entries()) {
        expect(a.left >= 0 && a.left + a.width <= one.inside.width).toBe(true);
        expect(a.top >= 0 && a.top + a.height <= one.inside.height).toBe(true);
        for (const b of boxes.slice(at + 1)) {
          const apart =
            a.left + a.width <= b.left + 1e-6 || b.left + b.width <= a.left + 1e-6 ||
            a.top + a.height <= b.top + 1e-6 || b.top + b.height <= a.top + 1e-6; // prettier-ignore
          expect(apart).toBe(true);
        }
      }
    }
  });

  test('no line is wider than its label', () => {
    for (const { label } of cases.flatMap(({ groups }) => groups.flatMap(({ cells }) => cells)))
      for (const line of label.lines)
        expect(widthOfText(line.map(({ text }) => text).join(''), label.points)).toBeLessThanOrEqual(
          label.width - 2 * CARD_MARGIN,
        );
  });
});

describe('a case that is too small', () => {
  test('says what is too wide by its title, and by how much', () => {
    const [first] = shown.cases;
    if (first === undefined) throw new Error('The exhibit has no case.');
    const below = { ...shown.label, width: 120, stand: 'below' } as const;
    const narrow = setCase(
      { ...first, inside: { width: 100, height: 2000, depth: null, unit: 'mm', text: '' } },
      below,
    );
    // A label of 120 mm in a case of 100 mm with 12 mm clear on either side: 44 mm too wide.
    expect(narrow.misfits[0]?.says).toContain(
      `“${first.groups[0]?.pieces[0]?.piece.title ?? ''}” and its label are wider by 44 mm than the room for them in the case. It fits if you`,
    );
  });

  test('says by how much it is too low', () => {
    const [first] = shown.cases;
    if (first === undefined) throw new Error('The exhibit has no case.');
    const low = setCase(
      { ...first, inside: { width: 831.85, height: 280, depth: null, unit: 'mm', text: '' } },
      shown.label,
    );
    expect(low.misfits.map(({ says }) => says)).toEqual([
      expect.stringMatching(/^The case is too low by [\d.]+ mm for what it holds\. It fits if you do one of these: /),
    ]);
  });
});
