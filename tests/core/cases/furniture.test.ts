import { describe, expect, test } from 'vitest';
import type { CaseToSet, PieceToSet } from '../../../src/core/cases/case-to-plan.ts';
import {
  depthNeeded, formatHolder, inCaseUnit, parseCaseSize, parseHolder, roomInHolder,
} from '../../../src/core/cases/furniture.ts'; // prettier-ignore
import { layCase } from '../../../src/core/cases/plan-case.ts';

describe('the inside of a case', () => {
  // An inch is 25.4 mm (International yard and pound agreement of 1959); the products are worked by hand.
  test.for([
    ['300 x 200 x 40 mm', [300, 200, 40], '300 × 200 × 40 mm'],
    ['831.85 x 527.05 mm', [831.85, 527.05, null], '831.85 × 527.05 mm'],
    ['83 × 52,5 × 7 cm', [830, 525, 70], '83 × 52,5 × 7 cm'],
    ['32 3/4 x 20 3/4 x 2 3/4 in', [831.85, 527.05, 69.85], '32¾ × 20¾ × 2¾ in'],
    ['32¾ x 20¾ in', [831.85, 527.05, null], '32¾ × 20¾ in'],
    ['10" x 8" x 1 1/2"', [254, 203.2, 38.1], '10 × 8 × 1½ in'],
    ['10 inches by 8 inches', [254, 203.2, null], '10 × 8 in'],
  ] as const)('%s', ([text, [width, height, depth], said]) => {
    const read = parseCaseSize(text);
    expect(read.ok && read.value.width).toBeCloseTo(width, 6);
    expect(read.ok && read.value.height).toBeCloseTo(height, 6);
    if (depth === null) expect(read.ok && read.value.depth).toBeNull();
    else expect(read.ok && read.value.depth).toBeCloseTo(depth, 6);
    expect(read.ok && read.value.text).toBe(said);
    expect(parseCaseSize(said)).toEqual(read);
  });

  test.for(['300', '300 x 200', '300 mm', 'wide x high mm', '0 x 20 mm', '30 cm x 200 mm', '3 x 4 x 5 x 6 mm', ''])(
    '“%s” is asked about',
    (text) => {
      const read = parseCaseSize(text);
      expect(read.ok ? 'read' : read.problem).toContain('Write width x height x depth');
    },
  );

  test('a size is told in the unit of the keeper, never too small', () => {
    expect(inCaseUnit({ width: 831, height: 527.1 })).toBe('831 × 528 mm');
    expect(inCaseUnit({ width: 831, height: 527.1 }, 'cm')).toBe('83.5 × 53 cm');
    // 24 and 16 inches by the inch of 25.4 mm, without the remainder of a division.
    expect(inCaseUnit({ width: 609.6, height: 406.4 }, 'in')).toBe('24 × 16 in');
    expect(inCaseUnit({ width: 831, height: 527.1 }, 'in')).toBe('32¾ × 21 in');
    for (let inches = 1; inches <= 100; inches += 1)
      expect(inCaseUnit({ width: inches * 25.4, height: 25.4 }, 'in')).toBe(`${inches} × 1 in`);
  });
});

describe('what pieces lie in', () => {
  // That a 2 × 2 is two inches square outside is common practice; other sizes are the keeper's.
  test.for([
    ['2x2', { kind: '2x2', width: 50.8, height: 50.8, isRound: false, depth: null }],
    ['2 × 2 inches', { kind: '2x2', width: 50.8, height: 50.8, isRound: false, depth: null }],
    ['capsule 40 mm', { kind: 'capsule', width: 40, height: 40, isRound: true, depth: null }],
    ['capsule 40 x 5 mm', { kind: 'capsule', width: 40, height: 40, isRound: true, depth: 5 }],
    ['slab 60 x 86 x 7 mm', { kind: 'slab', width: 60, height: 86, isRound: false, depth: 7 }],
    ['slab 6 x 8.6 cm', { kind: 'slab', width: 60, height: 86, isRound: false, depth: null }],
    ['ticket 38 mm', { kind: 'ticket', width: 38, height: 38, isRound: true, depth: null }],
    ['ticket 2 x 2 in', { kind: 'ticket', width: 50.8, height: 50.8, isRound: false, depth: null }],
    ['pocket 50 x 45 mm', { kind: 'pocket', width: 50, height: 45, isRound: false, depth: null }],
    ['none', null],
  ] as const)('%s', ([text, is]) => {
    const read = parseHolder(text);
    expect(read).toEqual({ ok: true, value: is });
    expect(read.ok && parseHolder(formatHolder(read.value))).toEqual(read);
  });

  test.for([
    ['slab', 'Write slab 60 x 86 x 7 mm.'],
    ['slab 86 mm', 'Write slab 60 x 86 x 7 mm.'],
    ['capsule', 'Write capsule 40 mm.'],
    ['slab 60 x 86', 'Write slab 60 x 86 x 7 mm.'],
    ['matchbox 50 mm', 'Write one of 2x2'],
    ['', 'Write one of 2x2'],
  ] as const)('“%s” is asked about', ([text, says]) => {
    const read = parseHolder(text);
    expect(read.ok ? 'read' : read.problem).toContain(says);
  });

  test('a holder decides the room; a piece larger than its ticket keeps its own', () => {
    const holder = (text: string) => {
      const read = parseHolder(text);
      return read.ok ? read.value : null;
    };
    expect(roomInHolder({ width: 19, height: 19 }, holder('slab 60 x 86 mm'))).toEqual({ width: 60, height: 86 });
    expect(roomInHolder({ width: 40, height: 30 }, holder('ticket 38 mm'))).toEqual({ width: 40, height: 38 });
    expect(roomInHolder({ width: 19, height: 18 }, null)).toEqual({ width: 19, height: 18 });
    expect(depthNeeded(2, null)).toBe(2);
    expect(depthNeeded(2, holder('slab 60 x 86 x 7 mm'))).toBe(7);
    expect(depthNeeded(2, holder('slab 60 x 86 mm'))).toBeNull();
    expect(depthNeeded(2, holder('ticket 38 mm'))).toBe(2);
  });
});

describe('a case of holders', () => {
  const style = { width: 60, points: 18, height: null, stand: null };
  const read = parseHolder('slab 60 x 86 x 7 mm');
  const slab = read.ok ? read.value : null;
  if (slab === null) throw new Error('A slab is read above.');
  const piece = (key: number, own: Partial<PieceToSet> = {}): PieceToSet => ({
    key, piece: `piece-${String(key)}`, title: `Piece ${String(key)}`, faces: [{ width: 60, height: 86 }], thickness: 7,
    holder: { is: slab, piece: { width: 19, height: 19 } }, label: 'Words.', facts: null, ...own,
  }); // prettier-ignore
  const shallow: CaseToSet = {
    inside: { width: 831.85, height: 527.05, depth: 5, unit: 'in' },
    groups: [{ title: 'Slabs', text: null, pieces: [piece(1), piece(2)] }],
  };

  test('eight slabs and twenty holders lie in two cases of a club and in neither over one another', () => {
    const round = { width: 50.8, height: 50.8 };
    const pieces = Array.from({ length: 14 }, (_, at) =>
      at < 4 ? piece(at + 1) : piece(at + 1, { faces: [round], holder: undefined }),
    );
    const laid = layCase(
      { inside: { width: 831.85, height: 527.05, depth: 69.85 }, groups: [{ title: 'One', text: null, pieces }] },
      { ...style, points: 14 },
    );
    expect(laid.misfits).toEqual([]);
    const boxes = laid.groups.flatMap(({ cells }) => cells.flatMap(({ faces }) => faces));
    for (const [at, one] of boxes.entries()) {
      expect(one.left >= 0 && one.left + one.width <= 831.85 && one.top >= 0 && one.top + one.height <= 527.05).toBe(
        true,
      );
      for (const other of boxes.slice(at + 1)) {
        const apart =
          one.left + one.width <= other.left || other.left + other.width <= one.left ||
          one.top + one.height <= other.top || other.top + other.height <= one.top; // prettier-ignore
        expect(apart).toBe(true);
      }
    }
  });

  test('a slab of 7 mm is too thick for a case 5 mm deep', () => {
    expect(layCase(shallow, style).misfits.map(({ kind, over }) => [kind, over])).toEqual([
      ['deep', 2],
      ['deep', 2],
    ]);
  });

  test('without a thickness the plan says that the depth was not checked', () => {
    const unknown = { ...shallow, groups: [{ title: 'Slabs', text: null, pieces: [piece(1, { thickness: null })] }] };
    expect(layCase(unknown, style).notes).toEqual([
      'The depth was not checked for the piece: the thickness of the piece, or of its holder, is not recorded.',
    ]);
  });

  test('a piece larger than its holder, and bare pieces on a slope, are told', () => {
    const large = piece(1, { holder: { is: slab, piece: { width: 70, height: 70 } } });
    const bare = piece(2, { holder: undefined });
    const laid = layCase(
      { ...shallow, kind: 'sloped', groups: [{ title: 'X', text: null, pieces: [large, bare] }] },
      style,
    );
    expect(laid.misfits.find(({ kind }) => kind === 'holder')?.over).toBe(10);
    expect(laid.notes).toEqual(['The case is sloped: 1 of 2 pieces lies without a holder and will slide unless held.']);
  });
});
