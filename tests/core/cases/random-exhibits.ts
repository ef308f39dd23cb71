import fc from 'fast-check';
import type { Box } from '../../../src/core/cases/boxes.ts';
import type { CaseToSet, LabelStyle } from '../../../src/core/cases/case-to-plan.ts';
import type { LaidCase } from '../../../src/core/cases/plan-case.ts';

/** A common club frame: 32¾ × 20¾ × 2¾ inches inside, as published rules of exhibiting give it. */
export const CLUB_CASE = { width: 831.85, height: 527.05, depth: 69.85 };
export const SMALL_CASE = { width: 300, height: 200, depth: null };

const across = fc.double({ min: 8, max: 60, noNaN: true });
const prose = fc
  .array(fc.stringMatching(/^[a-zæþA-Z0-9,.-]{1,14}$/), { minLength: 1, maxLength: 30 })
  .map((words) => words.join(' '));
const piece = fc.record({
  faces: fc.array(fc.record({ width: across, height: across }), { minLength: 1, maxLength: 2 }),
  label: prose,
});
const group = fc.record({
  title: prose.map((text) => text.slice(0, 40)),
  text: fc.option(prose),
  pieces: fc.array(piece, { minLength: 1, maxLength: 9 }),
});

/** Groups of pieces as an exhibit may hold them, keyed through. */
export const groups: fc.Arbitrary<CaseToSet['groups']> = fc.array(group, { minLength: 1, maxLength: 5 }).map(keyed);

export const style: fc.Arbitrary<LabelStyle> = fc.record({
  width: fc.integer({ min: 40, max: 120 }),
  points: fc.integer({ min: 8, max: 24 }),
  height: fc.constant(null),
  stand: fc.constantFrom(null, 'below', 'beside', 'key'),
});

type Bare = {
  title: string;
  text: string | null;
  pieces: { faces: { width: number; height: number }[]; label: string }[];
};

function keyed(bare: readonly Bare[]): CaseToSet['groups'] {
  let key = 0;
  return bare.map(({ title, text, pieces }) => ({
    title,
    text,
    pieces: pieces.map(({ faces, label }) => {
      key += 1;
      return {
        key,
        piece: `piece-${String(key)}`,
        title: `Piece ${String(key)}`,
        faces,
        thickness: null,
        label,
        facts: null,
      };
    }),
  }));
}

/** Everything that lies in a case. */
export function boxesOf({ groups: laid }: LaidCase): readonly Box[] {
  return laid.flatMap(({ headingBox, text, cells }) => [
    headingBox,
    ...(text === null ? [] : [text.box]),
    ...cells.flatMap(({ faces, labelBox }) => [...faces, labelBox]),
  ]);
}

export function overlap(a: Box, b: Box): boolean {
  return (
    a.left + a.width > b.left + 1e-6 &&
    b.left + b.width > a.left + 1e-6 &&
    a.top + a.height > b.top + 1e-6 &&
    b.top + b.height > a.top + 1e-6
  );
}

export function isInside({ left, top, width, height }: Box, inside: { width: number; height: number }): boolean {
  return left >= -1e-6 && top >= -1e-6 && left + width <= inside.width + 1e-6 && top + height <= inside.height + 1e-6;
}
