import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatPosition, parsePosition } from '../../../src/core/cases/position.ts';
import type { CaseToSet, LabelStyle } from '../../../src/core/cases/case-to-plan.ts';
import { planCase } from '../../../src/core/cases/plan-case.ts';
import { boxesOf, CLUB_CASE, groups, isInside, overlap } from './random-exhibits.ts';

const STYLE: LabelStyle = { width: 90, points: 18, height: null, stand: 'below' };
const corner = fc.record({ left: fc.integer({ min: 0, max: 800 }), top: fc.integer({ min: 0, max: 500 }) });

function crowns(at: readonly ({ left: number; top: number } | undefined)[]): CaseToSet {
  const pieces = at.map((fixed, index) => ({
    key: index + 1,
    piece: `crown-${index + 1}`,
    title: `Crown ${index + 1}`,
    faces: [{ width: 38, height: 38 }],
    thickness: 2.5,
    label: 'A crown.',
    facts: null,
    ...(fixed === undefined ? {} : { at: fixed }),
  }));
  return { inside: CLUB_CASE, groups: [{ title: 'Crowns', text: null, pieces }] };
}

describe('a place in a case', () => {
  test('is read and written', () => {
    fc.assert(
      fc.property(corner, (at) => {
        expect(parsePosition(formatPosition(at))).toEqual({ ok: true, value: at });
      }),
    );
  });

  test('may have a comma between', () => {
    expect(parsePosition('120, 80 mm')).toEqual({ ok: true, value: { left: 120, top: 80 } });
  });

  test.for(['120', '120, 80', '120.80 mm', '12 cm, 8 cm', '-3, 4 mm', '120; 80 mm', 'top left'])(
    '"%s" is asked about',
    (text) => {
      const outcome = parsePosition(text);
      expect(outcome.ok ? '' : outcome.problem).toMatch(/Write 120 80 mm\.$/);
    },
  );
});

describe('what the keeper has fixed', () => {
  test('lies there to the millimetre, and the rest goes round it, in 100 random exhibits', () => {
    fc.assert(
      fc.property(groups, corner, fc.nat(), (held, at, which) => {
        const order = held.flatMap(({ pieces }) => pieces);
        const chosen = order[which % order.length]?.key;
        const fixed = held.map((group) => ({
          ...group,
          pieces: group.pieces.map((piece) => (piece.key === chosen ? { ...piece, at } : piece)),
        }));
        const laid = planCase({ inside: CLUB_CASE, groups: fixed }, STYLE);
        const cells = laid.groups.flatMap((group) => group.cells);
        const face = cells[order.findIndex(({ key }) => key === chosen)]?.faces[0];
        expect([face?.left, face?.top]).toEqual([expect.closeTo(at.left, 6), expect.closeTo(at.top, 6)]);
        const boxes = boxesOf(laid);
        boxes.forEach((one, index) => {
          for (const other of boxes.slice(index + 1)) expect(overlap(one, other)).toBe(false);
        });
        const isOut = boxes.some((box) => !isInside(box, CLUB_CASE));
        if (isOut) expect(laid.misfits).not.toEqual([]);
      }),
      { numRuns: 100 },
    );
  });

  test('a heading may be fixed too', () => {
    const one = crowns([undefined, undefined]);
    const laid = planCase(
      { ...one, groups: one.groups.map((group) => ({ ...group, at: { left: 300, top: 450 } })) },
      STYLE,
    );
    expect(laid.misfits).toEqual([]);
    expect(laid.groups[0]?.headingBox).toMatchObject({ left: 300, top: 450 });
  });

  test('two over one another are told of in millimetres, and moving by what is said parts them', () => {
    // Each label is 90 mm wide and centred under its crown: they share 90 − 40 = 50 mm across.
    const { misfits } = planCase(
      crowns([
        { left: 200, top: 100 },
        { left: 240, top: 100 },
      ]),
      STYLE,
    );
    expect(misfits).toMatchObject([{ kind: 'overlap', piece: 'crown-2' }]);
    const says = misfits[0]?.says ?? '';
    expect(says).toMatch(/^“Crown 1” and “Crown 2” are fixed one over the other, by 50 mm across/);
    const right = Number(/Move the second ([\d.]+) mm to the right/.exec(says)?.[1]);
    expect(
      planCase(
        crowns([
          { left: 200, top: 100 },
          { left: 240 + right, top: 100 },
        ]),
        STYLE,
      ).misfits,
    ).toEqual([]);
    const down = Number(/or ([\d.]+) mm down/.exec(says)?.[1]);
    expect(
      planCase(
        crowns([
          { left: 200, top: 100 },
          { left: 240, top: 100 + down },
        ]),
        STYLE,
      ).misfits,
    ).toEqual([]);
  });

  test('what reaches out of the case is told of in millimetres, and the place that is said fits', () => {
    // A label of 90 mm centred under a crown of 38: it begins 26 mm to the left of the crown.
    const { misfits } = planCase(crowns([{ left: 10, top: 100 }]), STYLE);
    expect(misfits).toMatchObject([{ kind: 'outside', over: 16 }]);
    const says = misfits[0]?.says ?? '';
    expect(says).toBe(
      '“Crown 1” is fixed where it reaches out of the case, by 16 mm at the left. Write at: 26 100 mm.',
    );
    expect(planCase(crowns([{ left: 26, top: 100 }]), STYLE).misfits).toEqual([]);
    const far = planCase(crowns([{ left: 900, top: 600 }]), STYLE).misfits[0]?.says ?? '';
    const at = parsePosition(/Write at: (.*)\.$/.exec(far)?.[1] ?? '');
    expect(at.ok ? planCase(crowns([at.value]), STYLE).misfits : at).toEqual([]);
  });
});
