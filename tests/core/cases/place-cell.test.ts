import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Box, Cell, LabelStand } from '../../../src/core/cases/boxes.ts';
import { around, overlapOf, SPACING } from '../../../src/core/cases/boxes.ts';
import { facesSize, placeCell, placeFixed, roomOfCell, rowHeight } from '../../../src/core/cases/place-cell.ts';
import { lettersPerLine, MILLIMETRES_PER_POINT } from '../../../src/core/cases/type-size.ts';

const size = fc.record({ width: fc.integer({ min: 8, max: 60 }), height: fc.integer({ min: 8, max: 60 }) });
const cell: fc.Arbitrary<Cell> = fc.record({
  piece: fc.constant('penny'),
  faces: fc.array(size, { minLength: 1, maxLength: 3 }),
  label: size,
});
const stand = fc.constantFrom<LabelStand>('below', 'beside');
const middle = ({ top, height }: Box) => top + height / 2;
const centre = ({ left, width }: Box) => left + width / 2;

/** A penny of 18 mm and its label of 40 × 12 mm, laid out with a ruler on paper. */
const PENNY: Cell = {
  piece: 'penny',
  faces: [
    { width: 18, height: 18 },
    { width: 18, height: 18 },
  ],
  label: { width: 40, height: 12 },
};
const GAPS = { ...SPACING, faces: 5, label: 4 };

describe('a piece in its room', () => {
  test('below: the faces over the middle of the label', () => {
    expect(roomOfCell(PENNY, 'below', 0, GAPS)).toEqual({ width: 41, height: 34 });
    const room = { left: 100, top: 50, width: 41, height: 34 };
    expect(placeCell(PENNY, room, { faces: 18, stand: 'below', facesRoom: 0 }, GAPS)).toEqual({
      piece: 'penny',
      faces: [
        { left: 100, top: 50, width: 18, height: 18 },
        { left: 123, top: 50, width: 18, height: 18 },
      ],
      label: { left: 100.5, top: 72, width: 40, height: 12 },
    });
  });

  test('beside: the label begins behind the room for faces, on their middle line', () => {
    expect(roomOfCell(PENNY, 'beside', 60, GAPS)).toEqual({ width: 104, height: 18 });
    const room = { left: 0, top: 0, width: 104, height: 18 };
    expect(placeCell(PENNY, room, { faces: 18, stand: 'beside', facesRoom: 60 }, GAPS)).toEqual({
      piece: 'penny',
      faces: [
        { left: 9.5, top: 0, width: 18, height: 18 },
        { left: 32.5, top: 0, width: 18, height: 18 },
      ],
      label: { left: 64, top: 3, width: 40, height: 12 },
    });
  });

  test('a row is as high as its highest face and its highest label', () => {
    const tall: Cell = { piece: 'medal', faces: [{ width: 40, height: 45 }], label: { width: 40, height: 6 } };
    expect(rowHeight([PENNY, tall], 'below', GAPS)).toBe(45 + 4 + 12);
    expect(rowHeight([PENNY, tall], 'beside', GAPS)).toBe(45);
  });

  test('fills its room and no more; nothing lies on anything; faces stand on one middle line', () => {
    fc.assert(
      fc.property(cell, stand, fc.integer({ min: 0, max: 80 }), (held, where, facesRoom) => {
        const room = { left: 7, top: 11, ...roomOfCell(held, where, facesRoom, SPACING) };
        const faces = facesSize(held.faces, SPACING).height;
        const laid = placeCell(held, room, { faces, stand: where, facesRoom }, SPACING);
        const boxes = [...laid.faces, laid.label];
        const round = around(boxes);
        expect(round.left).toBeGreaterThanOrEqual(room.left - 1e-9);
        expect(round.top).toBeGreaterThanOrEqual(room.top - 1e-9);
        expect(round.left + round.width).toBeLessThanOrEqual(room.left + room.width + 1e-9);
        expect(round.top + round.height).toBeLessThanOrEqual(room.top + room.height + 1e-9);
        for (const [at, one] of boxes.entries())
          for (const other of boxes.slice(at + 1)) expect(overlapOf(one, other)).toBeNull();
        for (const face of laid.faces) expect(middle(face)).toBeCloseTo(middle(laid.faces[0] ?? face), 9);
        if (where === 'below') expect(centre(around(laid.faces))).toBeCloseTo(centre(laid.label), 9);
        else expect(middle(laid.label)).toBeCloseTo(middle(room), 9);
      }),
    );
  });

  test('fixed: its first face stands where the keeper put it, to the hair', () => {
    fc.assert(
      fc.property(cell, stand, fc.nat(300), fc.nat(300), (held, where, left, top) => {
        const laid = placeFixed(held, { left, top }, where, SPACING);
        expect(laid.faces[0]?.left).toBe(left);
        expect(laid.faces[0]?.top).toBeCloseTo(top, 9);
        for (const face of laid.faces) expect(overlapOf(face, laid.label)).toBeNull();
      }),
    );
  });
});

test('a point is the seventy-second part of an inch of 25.4 mm (the desktop point; common practice)', () => {
  expect(72 * MILLIMETRES_PER_POINT).toBeCloseTo(25.4, 12);
  // The Smithsonian asks for lines of at most 55 characters: at 18 pt, with letters 0.42 em wide, 147 mm.
  expect(lettersPerLine(147, 18)).toBe(55);
  expect(lettersPerLine(0, 18)).toBe(1);
});
