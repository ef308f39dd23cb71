import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Mark } from '../../../../src/site/models/paper/marks.ts';
import { A4, furniture, layOnSheets, LETTER, MARGIN, roomOn } from '../../../../src/site/models/paper/paper.ts';
import type { CutOut } from '../../../../src/site/models/paper/paper.ts';

const card = (width: number, height: number): CutOut => ({
  width,
  height,
  cut: 'own',
  marks: [{ kind: 'frame', box: { left: 0, top: 0, width, height }, weight: 0.1, dashed: false }],
});
const framesOf = (marks: readonly Mark[]) => marks.flatMap((mark) => (mark.kind === 'frame' ? [mark.box] : []));
const cards = fc.array(
  fc.record({
    width: fc.double({ min: 20, max: 190, noNaN: true }),
    height: fc.double({ min: 10, max: 240, noNaN: true }),
  }),
  { minLength: 1, maxLength: 30 },
);

describe('cut-outs on sheets', () => {
  test.for([A4, LETTER])('none overlaps another or leaves the room of $name, and none is lost', (paper) => {
    fc.assert(
      fc.property(cards, (sizes) => {
        const sheets = layOnSheets(
          sizes.map(({ width, height }) => card(width, height)),
          paper,
          'Cards',
        );
        const room = roomOn(paper);
        expect(sheets.flatMap(({ marks }) => framesOf(marks))).toHaveLength(sizes.length);
        for (const { marks } of sheets) {
          const boxes = framesOf(marks);
          for (const [at, one] of boxes.entries()) {
            expect(one.left + one.width).toBeLessThanOrEqual(MARGIN.side + room.width + 1e-6);
            expect(one.top + one.height).toBeLessThanOrEqual(MARGIN.top + room.height + 1e-6);
            for (const other of boxes.slice(at + 1)) {
              const apart =
                one.left + one.width <= other.left || other.left + other.width <= one.left ||
                one.top + one.height <= other.top || other.top + other.height <= one.top; // prettier-ignore
              expect(apart).toBe(true);
            }
          }
        }
      }),
    );
  });

  test('one that is larger than the sheet is cut off, and said to be, never made smaller', () => {
    const [sheet] = layOnSheets([card(250, 100)], A4, 'Cards');
    const window = sheet?.marks.find((mark) => mark.kind === 'window');
    expect(window?.box.width).toBe(192);
    expect(window?.marks).toEqual(card(250, 100).marks);
    expect(JSON.stringify(sheet?.marks)).toContain('Cut off here: this is 250 × 100 mm');
  });

  test('each corner has two cut marks, outside the cut-out', () => {
    const [sheet] = layOnSheets([{ width: 90, height: 40, marks: [] }], A4, 'Cards');
    const lines = sheet?.marks.filter((mark) => mark.kind === 'line') ?? [];
    expect(lines).toHaveLength(8);
    const inside = lines.filter(
      ({ x1, y1 }) => x1 > MARGIN.side && x1 < MARGIN.side + 90 && y1 > MARGIN.top && y1 < MARGIN.top + 40,
    );
    expect(inside).toEqual([]);
  });
});

test('the check rule is 100 mm long and has a tick at every centimetre', () => {
  const lines = furniture(A4, 'A', 'B').filter((mark) => mark.kind === 'line');
  const [rule] = lines.filter(({ y1, y2 }) => y1 === y2);
  expect((rule?.x2 ?? 0) - (rule?.x1 ?? 0)).toBe(100);
  expect(lines.filter(({ x1, x2 }) => x1 === x2).map(({ x1 }) => x1 - (rule?.x1 ?? 0))).toEqual([
    0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100,
  ]);
});
