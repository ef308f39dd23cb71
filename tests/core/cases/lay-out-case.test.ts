import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Box, CaseGroup, CasePlan } from '../../../src/core/cases/case-plan.ts';
import { layOutCase } from '../../../src/core/cases/lay-out-case.ts';

const face = fc.double({ min: 8, max: 50, noNaN: true });
const cell = fc.record({
  piece: fc.uuid(),
  faces: fc.array(fc.record({ width: face, height: face }), { minLength: 1, maxLength: 2 }),
  label: fc.record({
    width: fc.double({ min: 30, max: 95, noNaN: true }),
    height: fc.double({ min: 5, max: 60, noNaN: true }),
  }),
});
const group: fc.Arbitrary<CaseGroup> = fc.record({
  title: fc.string(),
  heading: fc.double({ min: 6, max: 15, noNaN: true }),
  text: fc.oneof(fc.constant(0), fc.double({ min: 6, max: 40, noNaN: true })),
  cells: fc.array(cell, { minLength: 1, maxLength: 12 }),
});
const exhibit = fc.array(group, { minLength: 1, maxLength: 5 });
/** A common club frame: 32¾ × 20¾ × 2¾ inches inside, as published rules of exhibiting give it. */
const PUBLISHED = { width: 831.85, height: 527.05 };

const boxesOf = (plan: CasePlan): readonly Box[] =>
  plan.groups.flatMap(({ heading, text, cells }) => [
    heading,
    ...(text === null ? [] : [text]),
    ...cells.flatMap(({ faces, label }) => [...faces, label]),
  ]);
const overlap = (a: Box, b: Box): boolean =>
  a.left + a.width > b.left + 1e-6 &&
  b.left + b.width > a.left + 1e-6 &&
  a.top + a.height > b.top + 1e-6 &&
  b.top + b.height > a.top + 1e-6;

describe('a case plan', () => {
  test('no two things overlap, whatever the exhibit', () => {
    fc.assert(
      fc.property(exhibit, (groups) => {
        const boxes = boxesOf(layOutCase(PUBLISHED, groups));
        return boxes.every((one, index) => boxes.slice(index + 1).every((other) => !overlap(one, other)));
      }),
      { numRuns: 500 },
    );
  });

  test('nothing lies outside the case unless the plan says so', () => {
    fc.assert(
      fc.property(exhibit, (groups) => {
        const plan = layOutCase(PUBLISHED, groups);
        const inside = boxesOf(plan).every(
          ({ left, top, width, height }) =>
            left >= 0 && top >= 0 && left + width <= PUBLISHED.width + 1e-6 && top + height <= PUBLISHED.height + 1e-6,
        );
        return inside || plan.misfits.length > 0;
      }),
      { numRuns: 500 },
    );
  });

  test('pieces keep the keeper’s order, row by row', () => {
    fc.assert(
      fc.property(exhibit, (groups) => {
        const order = layOutCase(PUBLISHED, groups).groups.map(({ cells }) => cells.map(({ piece }) => piece));
        return JSON.stringify(order) === JSON.stringify(groups.map(({ cells }) => cells.map(({ piece }) => piece)));
      }),
    );
  });

  test('says by how many millimetres a small case is too low, and what would help', () => {
    const cells = [{ piece: 'crown', faces: [{ width: 38, height: 38 }], label: { width: 90, height: 150 } }];
    const { misfits } = layOutCase({ width: 300, height: 200 }, [{ title: 'Crowns', heading: 10, text: 0, cells }]);
    // 12 edge + 10 heading + 4 + 38 face + 4 + 150 label + 12 edge = 230
    expect(misfits).toMatchObject([{ piece: null, over: 30 }]);
    expect(misfits[0]?.says).toContain('too low by 30 mm');
  });

  test('says by how many millimetres a piece is too wide for a small case', () => {
    const cells = [
      {
        piece: 'medal',
        faces: [
          { width: 150, height: 150 },
          { width: 150, height: 150 },
        ],
        label: { width: 90, height: 10 },
      },
    ];
    const { misfits } = layOutCase({ width: 300, height: 400 }, [{ title: 'Medals', heading: 10, text: 0, cells }]);
    // 150 + 5 + 150 − (300 − 24) = 29
    expect(misfits).toMatchObject([{ piece: 'medal', over: 29 }]);
  });
});
