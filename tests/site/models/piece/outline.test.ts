import { expect, test } from 'vitest';
import type { PublicPiece } from '../../../../src/publish/public-piece.ts';
import type { Cabinet } from '../../../../src/site/cabinet.ts';
import { usualPieceOf } from '../../../../src/site/models/piece/outline.ts';
import { parseSize } from '../../../../src/core/measures/parse-size.ts';

const sized = (name: string, millimetres: number): PublicPiece => {
  const size = parseSize(`${String(millimetres)} mm`);
  if (!size.ok) throw new Error(size.problem);
  return { denomination: { id: name, name }, size: size.value } as unknown as PublicPiece;
};
const holding = (...listed: readonly PublicPiece[]): Cabinet => ({ listed }) as unknown as Cabinet;

test('the usual piece is of the denomination of which there are most, and as wide as the middle one of them', () => {
  const pennies = [18, 19, 18.5, 20, 17].map((wide) => sized('Penny', wide));
  expect(usualPieceOf(holding(...pennies, sized('Crown', 38)))).toEqual({ name: 'penny', millimetres: 18.5 });
});

test('of few pieces nothing is usual', () => {
  expect(usualPieceOf(holding(sized('Penny', 18), sized('Penny', 19)))).toBeNull();
});
