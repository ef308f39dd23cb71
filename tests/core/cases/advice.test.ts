import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { remediesFor } from '../../../src/core/cases/advice.ts';
import type { CaseToSet, LabelStyle } from '../../../src/core/cases/case-to-plan.ts';
import { fits, layCase, planCase } from '../../../src/core/cases/plan-case.ts';
import { boxesOf, groups, isInside, overlap, SMALL_CASE } from './random-exhibits.ts';

const STYLE: LabelStyle = { width: 90, points: 18, height: null, stand: null };

function pennies(many: number, label: string, inside: CaseToSet['inside'], faces = 1): CaseToSet {
  const half = Math.ceil(many / 2);
  const pieces = Array.from({ length: many }, (_, at) => ({
    key: at + 1,
    piece: `penny-${at + 1}`,
    title: `Penny ${at + 1}`,
    faces: Array.from({ length: faces }, () => ({ width: 19, height: 19 })),
    thickness: null,
    label,
    facts: null,
  }));
  return {
    inside,
    groups: [
      { title: 'First', text: null, pieces: pieces.slice(0, half) },
      { title: 'Second', text: null, pieces: pieces.slice(half) },
    ],
  };
}
const LABEL = 'Penny of York, 1280. Silver, 1.38 g. North 1017. It was found in a field and bought at a fair.';

describe('what is said to make a case fit', () => {
  test('makes it fit: laid out again as it says, nothing overlaps and nothing lies outside, in 20 random exhibits', () => {
    fc.assert(
      fc.property(groups, fc.constantFrom(40, 60, 90, 120), fc.constantFrom(10, 14, 18), (held, width, points) => {
        const one: CaseToSet = { inside: SMALL_CASE, groups: held };
        const style: LabelStyle = { ...STYLE, width, points };
        fc.pre(!fits(one, style));
        const remedies = remediesFor(one, style, fits);
        // There is always at least one: a case can be larger.
        expect(remedies.length).toBeGreaterThan(0);
        for (const { says, cases, style: other } of remedies) {
          expect(says).not.toBe('');
          for (const each of cases) {
            const laid = planCase(each, { ...other, stand: other.stand });
            expect(laid.misfits).toEqual([]);
            const boxes = boxesOf(laid);
            expect(boxes.every((box) => isInside(box, each.inside))).toBe(true);
            expect(boxes.some((a, at) => boxes.slice(at + 1).some((b) => overlap(a, b)))).toBe(false);
          }
          // Nothing is lost on the way: the same pieces lie in the case, or in that and a further one.
          const keys = cases.flatMap((each) => each.groups.flatMap(({ pieces }) => pieces.map(({ key }) => key)));
          expect(keys).toEqual(held.flatMap(({ pieces }) => pieces.map(({ key }) => key)));
        }
      }),
      { numRuns: 20 },
    );
  });

  test('names the width of labels that helps, and where labels might stand', () => {
    const [group] = pennies(8, LABEL, { width: 300, height: 130, depth: null }).groups;
    const one: CaseToSet = {
      inside: { width: 300, height: 130, depth: null },
      groups: group === undefined ? [] : [group],
    };
    const below: LabelStyle = { ...STYLE, stand: 'below' };
    const says = layCase(one, below)
      .misfits.map((misfit) => misfit.says)
      .join('\n');
    expect(says).toMatch(/take out stand: below and let the plan choose/);
    const width = Number(/make the labels narrower, label: \{ width: (\d+) mm \}/.exec(says)?.[1]);
    expect(planCase(one, { ...below, width }).misfits).toEqual([]);
    expect(planCase(one, { ...below, stand: null }).key).toEqual([]);
  });

  test('names the group to move', () => {
    const says = layCase(pennies(8, LABEL, { width: 420, height: 160, depth: null }), { ...STYLE, stand: 'below' })
      .misfits.map((misfit) => misfit.says)
      .join('\n');
    expect(says).toMatch(/move “Second” to a further case of 420 × 160 mm/);
  });

  test('names the face to leave out', () => {
    const medals = pennies(2, 'A medal.', { width: 150, height: 400, depth: null }, 2);
    const large = {
      ...medals,
      groups: medals.groups.map((group) => ({
        ...group,
        pieces: group.pieces.map((piece) => ({ ...piece, faces: piece.faces.map(() => ({ width: 80, height: 80 })) })),
      })),
    };
    const { misfits } = layCase(large, { ...STYLE, stand: 'below' });
    // 80 + 5 + 80 − (150 − 24) = 39
    expect(misfits[0]).toMatchObject({ kind: 'wide', over: 39 });
    expect(misfits[0]?.says).toMatch(/show one face of “Penny 1” and “Penny 2”/);
  });
});

describe('labels that do not fit by their pieces', () => {
  const many = pennies(16, LABEL, { width: 300, height: 200, depth: null });
  const laid = layCase(many, STYLE);

  test('go on a key, with the number of each piece by it', () => {
    expect(laid.stand).toBe('key');
    expect(laid.misfits).toEqual([]);
    expect(laid.key).toHaveLength(16);
    expect(laid.key[15]).toEqual({ key: 16, says: LABEL });
    expect(laid.groups[1]?.cells[7]?.label.lines).toEqual([[{ text: '16' }]]);
  });

  test('and the plan says why, and what would bring them back', () => {
    expect(laid.whyKey).toMatch(
      /^The labels do not fit by their pieces, so the plan puts them on a key\. It fits if you/,
    );
  });

  test('stand beside their pieces where there is more width than height', () => {
    const wide = layCase(pennies(2, 'Short.', { width: 300, height: 78, depth: null }), STYLE);
    expect([wide.stand, wide.misfits, wide.key]).toEqual(['beside', [], []]);
  });
});
