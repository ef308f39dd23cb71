import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Box, CaseGroup, Cell, Misfit, Size } from '../../../src/core/cases/boxes.ts';
import { overlapOf, SPACING } from '../../../src/core/cases/boxes.ts';
import { layOutCase } from '../../../src/core/cases/lay-out-case.ts';
import { misfitsOf } from '../../../src/core/cases/misfits.ts';
import { parsePosition } from '../../../src/core/cases/position.ts';
import { tries } from '../../tries.ts';

const CASE: Size = { width: 300, height: 200 };
const HOW = { stand: 'below', headings: 'above', isLoose: false } as const;

function pieceOf(id: string, width: number, height: number, at?: { left: number; top: number }): Cell {
  return {
    piece: id,
    title: id,
    faces: [{ width, height }],
    label: { width: 20, height: 8 },
    ...(at === undefined ? {} : { at }),
  };
}

function groupOf(...cells: readonly Cell[]): CaseGroup {
  return { title: 'Pennies', heading: { width: 50, height: 10 }, text: null, cells };
}

function misfits(cells: readonly Cell[], inside = CASE): readonly Misfit[] {
  return layOutCase(inside, [groupOf(...cells)], HOW).misfits;
}

/** The box of a fixed piece: its face, and a label of 20 × 8 mm below. */
function boxOf(width: number, height: number, at: { left: number; top: number }): Box {
  const [left, right] = [
    Math.min(at.left, at.left + (width - 20) / 2),
    Math.max(at.left + width, at.left + (width + 20) / 2),
  ];
  return { left, top: at.top, width: right - left, height: height + SPACING.label + 8 };
}

describe('what does not fit is told in millimetres', () => {
  test('a piece larger than the case itself, in the way that is worse', () => {
    expect(misfits([pieceOf('plaque', 320, 40)])).toContainEqual({
      kind: 'wide',
      piece: 'plaque',
      over: 20,
      says: '“plaque” is itself larger than the case, by 20 mm.',
    });
    expect(misfits([pieceOf('roundel', 310, 215)])).toContainEqual(
      expect.objectContaining({ kind: 'high', piece: 'roundel', over: 15 }),
    );
  });

  test('a piece without a title is named by its id', () => {
    const untitled: Cell = { piece: 'plaque', faces: [{ width: 320, height: 40 }], label: { width: 20, height: 8 } };
    expect(misfits([untitled])[0]?.says).toBe('plaque is itself larger than the case, by 20 mm.');
  });

  test('a piece and its label wider than the room between the edges, told once', () => {
    const wide = misfits([pieceOf('tray', 290, 40)]);
    // The case is 300 wide, and 12 are kept clear at either side.
    expect(wide).toEqual([
      {
        kind: 'wide',
        piece: 'tray',
        over: 290 - (300 - 2 * SPACING.edge),
        says: '“tray” and its label are wider by 14 mm than the room for them in the case.',
      },
    ]);
  });

  test('a case too low, and by no less than is wanting', () => {
    const many = Array.from({ length: 12 }, (_, at) => pieceOf(`medal-${String(at)}`, 60, 60));
    const [high] = misfits(many).filter(({ kind }) => kind === 'high');
    if (high === undefined) return expect.fail('the case was high enough');
    expect(high.piece).toBeNull();
    // A case higher by as much holds everything; one lower than that by a millimetre does not.
    expect(misfits(many, { ...CASE, height: CASE.height + high.over })).toEqual([]);
    expect(misfits(many, { ...CASE, height: CASE.height + high.over - 1 })).not.toEqual([]);
  });

  test('nothing at all where everything fits', () => {
    expect(misfits([pieceOf('penny', 18, 18), pieceOf('groat', 25, 25)])).toEqual([]);
    expect(misfitsOf(CASE, [], [], [], 0, 276)).toEqual([]);
  });
});

describe('what the keeper has fixed', () => {
  const at = fc.record({ left: fc.integer({ min: -40, max: 320 }), top: fc.integer({ min: -40, max: 220 }) });
  const fixed = fc.record({ width: fc.integer({ min: 10, max: 60 }), height: fc.integer({ min: 10, max: 60 }), at });

  test('is told when it reaches out, by how much, and the place advised is inside', () => {
    fc.assert(
      fc.property(fixed, ({ width, height, at: where }) => {
        const box = boxOf(width, height, where);
        const out = Math.max(
          -box.left,
          -box.top,
          box.left + box.width - CASE.width,
          box.top + box.height - CASE.height,
        );
        const outside = misfits([pieceOf('medal', width, height, where)]).find(({ kind }) => kind === 'outside');
        if (out <= 1e-6) {
          expect(outside).toBeUndefined();
          return;
        }
        if (outside === undefined) return expect.fail('it was said to lie inside');
        expect(outside.over).toBeCloseTo(out, 6);
        const advised = parsePosition(/Write at: (?<place>.+)\.$/.exec(outside.says)?.groups?.['place'] ?? '');
        if (!advised.ok) return expect.fail(advised.problem);
        const again = misfits([pieceOf('medal', width, height, advised.value)]);
        expect(again.filter(({ kind }) => kind === 'outside')).toEqual([]);
      }),
      { numRuns: tries(300) },
    );
  });

  test('is told when one lies over another, and moving the second as advised parts them', () => {
    fc.assert(
      fc.property(fixed, fixed, (one, other) => {
        const [a, b] = [boxOf(one.width, one.height, one.at), boxOf(other.width, other.height, other.at)];
        const both = overlapOf(a, b);
        const told = misfits([
          pieceOf('first', one.width, one.height, one.at),
          pieceOf('second', other.width, other.height, other.at),
        ]).find(({ kind }) => kind === 'overlap');
        if (both === null) {
          expect(told).toBeUndefined();
          return;
        }
        if (told === undefined) return expect.fail('the two were said to lie apart');
        expect(told.over).toBeCloseTo(Math.min(both.width, both.height), 6);
        const [right = 0, down = 0] = [
          ...(/(?<right>[\d.]+) mm to the right, or (?<down>[\d.]+) mm down/.exec(told.says)?.slice(1) ?? []),
        ].map(Number);
        expect(overlapOf(a, { ...b, left: b.left + right })).toBeNull();
        expect(overlapOf(a, { ...b, top: b.top + down })).toBeNull();
      }),
      { numRuns: tries(300) },
    );
  });

  test('takes a larger case where it could stand nowhere', () => {
    const [first] = misfits([pieceOf('banner', 250, 195, { left: 10, top: 10 })]).filter(
      ({ kind }) => kind === 'outside',
    );
    expect(first?.says).toMatch(/Take a larger case\.$/);
  });
});
